-- Cases of Dunmarrow County, invented: its own field and rules, and the day
-- that its second ordinance begins.

local function class(name)
  return { ["covering.hail_class"] = name }
end

cases "shingle.hail_class" {
  under = "example/dunmarrow", date = "2026-02-28",
  { "class 3 under the first ordinance, on its last day", with = class "class_3",
    expect = "pass" },
  { "class 4 does too", with = class "class_4", expect = "pass" },
  { "class 2", with = class "class_2", expect = "fail", says = "class 2" },
  { "no class", with = class "none", expect = "fail" },
  { "not known", expect = "open", says = "/covering/hail_class" },
}

cases "shingle.hail_class" {
  under = "example/dunmarrow", date = "2026-03-01",
  { "class 3 on the first day of the second ordinance", with = class "class_3",
    expect = "fail", says = "demanded one of class 4" },
  { "class 4", with = class "class_4", expect = "pass" },
  { "not known", expect = "open" },
  { "metal is not judged", with = { ["covering.kind"] = "metal_panel" },
    expect = "not_applicable" },
}

cases "shingle.hail_class" {
  under = "example/dunmarrow",
  { "on the first day of the first ordinance", date = "2023-09-01", with = class "class_3",
    expect = "pass" },
  { "the day before, no edition is in force", date = "2023-08-31", with = class "class_3",
    expect = "refused", says = "from 2023-09-01" },
  { "elsewhere the job may not say it", under = "model/irc-2021", with = class "class_3",
    expect = "refused", says = "hail_class" },
}

cases "shingle.hail_wrapper" {
  under = "example/dunmarrow", stage = "final",
  { "kept", date = "2026-03-01", with = { ["covering.hail_wrapper_kept"] = true },
    expect = "pass" },
  { "thrown away", date = "2026-03-01", with = { ["covering.hail_wrapper_kept"] = false },
    expect = "fail" },
  { "not known", date = "2026-03-01", expect = "open" },
  { "not asked for the day before", date = "2026-02-28",
    with = { ["covering.hail_wrapper_kept"] = false }, expect = "not_applicable" },
}

cases "ice_barrier.kind" {
  under = "example/dunmarrow",
  { "not asked for under the first ordinance", date = "2026-02-28",
    with = { ["ice_barrier.kind"] = "none" }, expect = "not_applicable" },
  { "asked for under the second", date = "2026-03-01", with = { ["ice_barrier.kind"] = "none" },
    expect = "fail" },
}

cases "ice_barrier.reach" {
  under = "example/dunmarrow", date = "2026-03-01",
  { "the unheated porch is let off", expect = "not_applicable", where = "porch eave" },
  { "the house is not", with = { ["roof.edges[1].ice_barrier_reach_in"] = 0 },
    expect = "fail", where = "front eave", found = 0 },
}

local OVERLAY = { ["scope.method"] = "overlay", ["existing.layers_removed"] = 0,
  ["existing.coverings[1].removed"] = false, ["site.hail_exposure"] = "severe" }

cases "layers.hail" {
  under = "example/dunmarrow",
  { "an overlay in hail under the first ordinance", date = "2026-02-28", with = OVERLAY,
    expect = "not_applicable" },
  { "under the second", date = "2026-03-01", with = OVERLAY, expect = "fail" },
}

-- Each ordinance follows another model code: the field nails of the deck go
-- from 12 in to 6 in with it.
cases "deck.nail_field" {
  under = "example/dunmarrow", with = { ["decks[1].nails.field_spacing_in"] = 12 },
  { "12 in under the first", date = "2026-02-28", expect = "pass", required = 12 },
  { "12 in under the second", date = "2026-03-01", expect = "fail", required = 6 },
}
