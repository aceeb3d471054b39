-- Cases of Kettlebend County, invented: each figure it loosens and each rule it
-- drops, beside what the code it follows says of the same job.

-- An overlay of so many old layers.
local function overlay(layers, changes)
  local coverings = {}
  for i = 1, layers do
    coverings[i] = { kind = "asphalt_shingle", thickness_in = 0.25, removed = false }
  end
  local with = { ["scope.method"] = "overlay", ["existing.layers"] = layers,
    ["existing.layers_removed"] = 0, ["existing.coverings"] = coverings }
  for place, value in pairs(changes or {}) do with[place] = value end
  return with
end

cases "layers.total" {
  under = "example/kettlebend",
  { "a third covering, exactly", with = overlay(2), expect = "pass", required = 3, found = 3 },
  { "a fourth", with = overlay(3), expect = "fail", required = 3, found = 4 },
  { "a third under the code it follows", under = "model/irc-2018", with = overlay(2),
    expect = "fail", required = 2, found = 3 },
  { "on the day the county code begins", date = "2024-04-01", with = overlay(2),
    expect = "pass", required = 3 },
  { "the day before, no edition is in force", date = "2024-03-31", with = overlay(2),
    expect = "refused", says = "from 2024-04-01" },
}

cases "layers.maker" {
  under = "example/kettlebend",
  { "the maker is not asked", with = overlay(1, { ["covering.maker_allows_overlay"] = false }),
    expect = "not_applicable", says = "not asked for" },
  { "the maker is asked by the code it follows", under = "model/irc-2018",
    with = overlay(1, { ["covering.maker_allows_overlay"] = false }), expect = "fail" },
}

cases "drip_edge.rake" {
  under = "example/kettlebend",
  { "none at the rake", with = { ["roof.edges[4].drip_edge"] = false },
    expect = "not_applicable", where = "front left rake", says = "no drip edge is asked for" },
  { "none at the rake under the code it follows", under = "model/irc-2018",
    with = { ["roof.edges[4].drip_edge"] = false }, expect = "fail",
    where = "front left rake" },
}

cases "drip_edge.eave" {
  under = "example/kettlebend",
  { "the eave still needs its own", with = { ["roof.edges[1].drip_edge"] = false },
    expect = "fail", where = "front eave" },
}

cases "fasteners.kind" {
  under = "example/kettlebend",
  { "staples will do", with = { ["fasteners.kind"] = "staple" }, expect = "pass" },
  { "not under the code it follows", under = "model/irc-2018",
    with = { ["fasteners.kind"] = "staple" }, expect = "fail" },
}

-- Ten measured spacings against 6 in: one over is one in ten.
cases "deck.nail_edges" {
  under = "example/kettlebend", stage = "deck",
  { "one in ten over by an inch, exactly",
    with = { ["decks[1].nails.measured_edge_spacing_in"] = { 6, 6, 6, 6, 6, 6, 6, 6, 6, 7 } },
    expect = "warn", required = 6 },
  { "one in ten over by more than an inch",
    with = { ["decks[1].nails.measured_edge_spacing_in"] = { 6, 6, 6, 6, 6, 6, 6, 6, 6, 7.5 } },
    expect = "fail", found = 7.5 },
  { "two in ten over",
    with = { ["decks[1].nails.measured_edge_spacing_in"] = { 6, 6, 6, 6, 6, 6, 6, 6, 7, 7 } },
    expect = "fail", found = 7 },
  { "one in ten over under the code it follows", under = "model/irc-2018",
    with = { ["decks[1].nails.measured_edge_spacing_in"] = { 6, 6, 6, 6, 6, 6, 6, 6, 6, 7 } },
    expect = "fail", found = 7 },
}

-- 1,250 sq ft / 200 x 144 = 900 sq in; the vents give 972.
cases "ventilation.net_free_area" {
  under = "example/kettlebend",
  { "a larger attic than the model's full area allows",
    with = { ["attics[1].area_sqft"] = 1250 }, expect = "pass", required = 900, found = 972 },
  { "exactly", with = { ["attics[1].area_sqft"] = 1350 }, expect = "pass", required = 972 },
  { "larger still falls back on the smaller area", with = { ["attics[1].area_sqft"] = 1400 },
    expect = "warn", required = 672 },
}

cases "deck.panel_gap" {
  under = "example/kettlebend",
  { "panels laid tight", with = { ["decks[1].panel_gap_in"] = 0 }, expect = "not_applicable",
    says = "waived by Kettlebend County Code 8-121" },
  { "panels laid tight under the code it follows", under = "model/irc-2018",
    with = { ["decks[1].panel_gap_in"] = 0 }, expect = "warn" },
}

cases "shingle.instructions" {
  under = "example/kettlebend",
  { "no instructions on the site", with = { ["covering.instructions_on_site"] = false },
    expect = "not_applicable", says = "Dropped by Kettlebend County" },
}
