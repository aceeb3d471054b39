-- Cases of rules/fire.lua: R902 in the model, and in the invented Quillrun
-- County what places add: classes by zone, whole roofs, bans, wildfire details.

local WOOD = { ["covering.kind"] = "wood_shake", ["covering.fire_class"] = "B",
  ["covering.fire_proof"] = "listing", ["covering.fire_test"] = "E108",
  ["covering.wood_pressure_treated"] = true, ["covering.wood_bundles_labeled"] = true,
  ["covering.wood_weathering_years"] = 5 }

local function but(facts, changes)
  local with = {}
  for place, value in pairs(facts) do with[place] = value end
  for place, value in pairs(changes) do with[place] = value end
  return with
end

cases "fire.class" {
  under = "model/irc-2018",
  { "far from the lot line no class is asked for", expect = "not_applicable" },
  { "exactly 3 ft from it", with = { ["site.lot_line_ft"] = 3 }, expect = "not_applicable" },
  { "under 3 ft, class A", with = { ["site.lot_line_ft"] = 2.9 }, expect = "pass",
    found = "A" },
  { "under 3 ft, class C is the lowest", with = { ["site.lot_line_ft"] = 2.9,
    ["covering.fire_class"] = "C" }, expect = "pass" },
  { "under 3 ft, class B", with = { ["site.lot_line_ft"] = 2.9,
    ["covering.fire_class"] = "B" }, expect = "pass" },
  { "just under 3 ft, no class", with = { ["site.lot_line_ft"] = 2.99,
    ["covering.fire_class"] = "none" }, expect = "fail", found = "none" },
  { "class not known", with = { ["site.lot_line_ft"] = 2.9 },
    without = { "covering.fire_class" }, expect = "open" },
  { "lot line not known", without = { "site.lot_line_ft" }, expect = "open" },
  { "tile on a concrete deck counts as A", with = { ["site.lot_line_ft"] = 1,
    ["covering.kind"] = "clay_tile", ["covering.fire_class"] = "none",
    ["covering.over_noncombustible_deck"] = true }, expect = "pass", found = "A" },
  { "tile on plywood does not", with = { ["site.lot_line_ft"] = 1,
    ["covering.kind"] = "clay_tile", ["covering.fire_class"] = "none",
    ["covering.over_noncombustible_deck"] = false }, expect = "fail" },
  { "tile on a deck not described", with = { ["site.lot_line_ft"] = 1,
    ["covering.kind"] = "clay_tile", ["covering.fire_class"] = "none" }, expect = "open" },
  { "concrete tile on one does", with = { ["site.lot_line_ft"] = 1,
    ["covering.kind"] = "concrete_tile", ["covering.fire_class"] = "none",
    ["covering.over_noncombustible_deck"] = true }, expect = "pass", found = "A" },
  { "metal shingles too", with = { ["site.lot_line_ft"] = 1,
    ["covering.kind"] = "metal_shingle", ["covering.fire_class"] = "none",
    ["covering.over_noncombustible_deck"] = true }, expect = "pass", found = "A" },
  { "slate counts on any deck", with = { ["site.lot_line_ft"] = 1, ["covering.kind"] = "slate",
    ["covering.fire_class"] = "none" }, expect = "pass", found = "A" },
  { "copper of 16 oz, exactly", with = { ["site.lot_line_ft"] = 1,
    ["covering.kind"] = "metal_panel", ["covering.fire_class"] = "none",
    ["covering.over_noncombustible_deck"] = false, ["covering.copper_oz"] = 16 },
    expect = "pass", found = "A" },
  { "copper just under", with = { ["site.lot_line_ft"] = 1, ["covering.kind"] = "metal_panel",
    ["covering.fire_class"] = "none", ["covering.over_noncombustible_deck"] = false,
    ["covering.copper_oz"] = 15.999 }, expect = "fail" },
  { "copper of 12 oz", with = { ["site.lot_line_ft"] = 1, ["covering.kind"] = "metal_panel",
    ["covering.fire_class"] = "none", ["covering.over_noncombustible_deck"] = false,
    ["covering.copper_oz"] = 12 }, expect = "fail" },
}

cases "fire.class" {
  under = "example/quillrun", with = { ["scope.roof_share_percent"] = 100 },
  { "C outside the zones", with = { ["site.fire_zone"] = "none",
    ["covering.fire_class"] = "C" }, expect = "pass" },
  { "C in the moderate zone", with = { ["site.fire_zone"] = "moderate",
    ["covering.fire_class"] = "C" }, expect = "fail" },
  { "B in the moderate zone", with = { ["site.fire_zone"] = "moderate",
    ["covering.fire_class"] = "B" }, expect = "pass" },
  { "A where B would do", with = { ["site.fire_zone"] = "moderate" }, expect = "pass" },
  { "B in the very high zone", with = { ["site.fire_zone"] = "very_high",
    ["covering.fire_class"] = "B" }, expect = "fail" },
  { "zone not known", expect = "open", says = "/site/fire_zone" },
  { "a quarter of the roof, exactly, may match the old", with = { ["site.fire_zone"] = "high",
    ["scope.roof_share_percent"] = 25, ["covering.fire_class"] = "C" },
    expect = "not_applicable" },
  { "in the very high zone too", with = { ["site.fire_zone"] = "very_high",
    ["scope.roof_share_percent"] = 25, ["covering.fire_class"] = "C" },
    expect = "not_applicable" },
  { "more than a quarter may not", with = { ["site.fire_zone"] = "high",
    ["scope.roof_share_percent"] = 25.1, ["covering.fire_class"] = "C" }, expect = "fail" },
  { "share not known", with = { ["site.fire_zone"] = "high" },
    without = { "scope.roof_share_percent" }, expect = "open" },
}

cases "fire.class" {
  under = "example/quillrun", date = "2026-07-01",
  { "the county floor outside the zones", with = { ["site.fire_zone"] = "none",
    ["covering.fire_class"] = "C" , ["site.state_fire_area"] = false }, expect = "fail" },
  { "floor met", with = { ["site.fire_zone"] = "none", ["covering.fire_class"] = "B",
    ["site.state_fire_area"] = false }, expect = "pass" },
  { "state land asks for more", with = { ["site.fire_zone"] = "none",
    ["covering.fire_class"] = "B", ["site.state_fire_area"] = true }, expect = "fail" },
  { "and has it", with = { ["site.fire_zone"] = "none", ["site.state_fire_area"] = true },
    expect = "pass" },
  { "but not in the moderate zone", with = { ["site.fire_zone"] = "moderate",
    ["covering.fire_class"] = "B" }, expect = "pass" },
  { "whose land is not known", with = { ["site.fire_zone"] = "none" }, expect = "open",
    says = "/site/state_fire_area" },
}

cases "fire.proof" {
  under = "model/irc-2018", with = { ["site.lot_line_ft"] = 2 },
  { "wrapper of a glass-felt shingle: its standard carries the class", expect = "warn",
    says = "sister" },
  { "a listing of such a shingle by a fire test", with = { ["covering.fire_test"] = "E108" },
    expect = "pass" },
  { "listing by a fire test", with = { ["covering.fire_proof"] = "listing",
    ["covering.fire_test"] = "UL_790" }, expect = "pass" },
  { "an evaluation report", with = { ["covering.fire_proof"] = "evaluation_report",
    ["covering.fire_test"] = "E108" }, expect = "pass" },
  { "no paper", with = { ["covering.fire_proof"] = "none" }, expect = "fail" },
  { "a paper that names no test", with = { ["covering.fire_test"] = "none" },
    expect = "fail" },
  { "paper not known", without = { "covering.fire_proof" }, expect = "open" },
  { "slate needs none", with = { ["covering.kind"] = "slate", ["covering.fire_class"] = "none" },
    expect = "not_applicable" },
  { "no class asked for", with = { ["site.lot_line_ft"] = 3 }, expect = "not_applicable" },
}

-- More than half within a year; the same day a year back still counts.
cases "fire.whole_roof" {
  under = "example/quillrun",
  with = { ["site.fire_zone"] = "high", ["scope.earlier_roofing"] = {},
    ["existing.fire_class_left"] = "C" },
  { "half, exactly, is not more", with = { ["scope.roof_share_percent"] = 50 },
    expect = "pass", required = 50, found = 50, says = "not more" },
  { "just under half", with = { ["scope.roof_share_percent"] = 49.9 },
    expect = "not_applicable" },
  { "over half, the rest below the class", with = { ["scope.roof_share_percent"] = 50.1 },
    expect = "fail", found = "C" },
  { "over half, the rest of the class", with = { ["scope.roof_share_percent"] = 60,
    ["existing.fire_class_left"] = "A" }, expect = "pass" },
  { "the whole roof", with = { ["scope.roof_share_percent"] = 100,
    ["existing.fire_class_left"] = "nothing_left" }, expect = "pass" },
  { "two jobs within the year", with = { ["scope.roof_share_percent"] = 30,
    ["scope.earlier_roofing"] = { { done_on = "2025-03-02", roof_share_percent = 30 } } },
    expect = "fail" },
  { "the other a day longer ago", with = { ["scope.roof_share_percent"] = 30,
    ["scope.earlier_roofing"] = { { done_on = "2025-03-01", roof_share_percent = 30 } } },
    expect = "not_applicable" },
  { "earlier work not known", with = { ["scope.roof_share_percent"] = 30 },
    without = { "scope.earlier_roofing" }, expect = "open" },
  { "what stays not known", with = { ["scope.roof_share_percent"] = 60 },
    without = { "existing.fire_class_left" }, expect = "open" },
}

cases "fire.whole_roof" {
  under = "example/quillrun", date = "2026-07-01",
  with = { ["site.fire_zone"] = "high", ["site.state_fire_area"] = false,
    ["scope.earlier_roofing"] = {}, ["existing.fire_class_left"] = "C" },
  { "half or more: exactly half", with = { ["scope.roof_share_percent"] = 50 },
    expect = "fail" },
  { "just under", with = { ["scope.roof_share_percent"] = 49.9 }, expect = "not_applicable" },
}

cases "fire.whole_roof" {
  under = "model/irc-2021",
  { "no such share in the model", expect = "not_applicable" },
  { "nor where a class is asked for", with = { ["site.lot_line_ft"] = 2,
    ["scope.roof_share_percent"] = 60, ["scope.earlier_roofing"] = {},
    ["existing.fire_class_left"] = "none" }, expect = "not_applicable" },
}

cases "fire.material_ban" {
  under = "example/quillrun",
  { "shakes in a high zone, whatever their class", with = but(WOOD,
    { ["site.fire_zone"] = "high", ["covering.fire_class"] = "A" }), expect = "fail" },
  { "and in a very high one", with = but(WOOD, { ["site.fire_zone"] = "very_high" }),
    expect = "fail" },
  { "shakes in the moderate zone", with = but(WOOD, { ["site.fire_zone"] = "moderate" }),
    expect = "pass" },
  { "shingles of asphalt", with = { ["site.fire_zone"] = "high" }, expect = "pass" },
  { "zone not known", with = WOOD, expect = "open" },
  { "banned everywhere later", date = "2026-07-01", with = { ["covering.kind"] = "roll_roofing" },
    expect = "fail" },
  { "on other houses as well", date = "2026-07-01", with = {
    ["covering.kind"] = "roll_roofing", ["house.kind"] = "townhouse" }, expect = "fail" },
  { "nothing else is", date = "2026-07-01", expect = "pass" },
}

cases "fire.material_ban" {
  under = "model/irc-2021",
  { "nothing banned in the model", with = WOOD, expect = "not_applicable" },
}

-- Classes by kind of covering, in the invented Emberlow: what a list names, and kinds of
-- which none is asked.
local LISTS = { asphalt_shingle = "A", metal_panel = "AB", metal_shingle = "AB",
  wood_shingle = "ABC", wood_shake = "ABC" }
local by_kind = { under = "example/emberlow", date = "2026-06-01" }
for kind, list in pairs(LISTS) do
  for i, class in ipairs { "A", "B", "C", "none" } do
    table.insert(by_kind, { kind .. " of class " .. class, with = { ["covering.kind"] = kind,
      ["covering.fire_class"] = class }, expect = i <= string.len(list) and "pass" or "fail" })
  end
end
for _, kind in ipairs { "slate", "clay_tile", "concrete_tile", "roll_roofing", "coating",
  "built_up", "coal_tar_built_up", "modified_bitumen", "thermoset_membrane",
  "thermoplastic_membrane", "spray_foam" } do
  table.insert(by_kind, { kind .. " of no class", with = { ["covering.kind"] = kind,
    ["covering.fire_class"] = "none" }, expect = "not_applicable" })
end
table.insert(by_kind, { "class not known", without = { "covering.fire_class" },
  expect = "open" })
cases "fire.class_by_material"(by_kind)

cases "fire.wood_treated" {
  under = "model/irc-2018", with = but(WOOD, { ["site.lot_line_ft"] = 2 }),
  { "pressure-treated", expect = "pass" },
  { "coated", with = { ["covering.wood_pressure_treated"] = false }, expect = "fail" },
  { "not known", without = { "covering.wood_pressure_treated" }, expect = "open" },
  { "no class asked for", with = { ["site.lot_line_ft"] = 3 }, expect = "not_applicable" },
}

cases "fire.wood_label" {
  under = "model/irc-2018", with = but(WOOD, { ["site.lot_line_ft"] = 2 }),
  { "every bundle", expect = "pass" },
  { "not every bundle", with = { ["covering.wood_bundles_labeled"] = false },
    expect = "fail" },
  { "not known", without = { "covering.wood_bundles_labeled" }, expect = "open" },
}

cases "fire.wood_weathering" {
  under = "example/quillrun", with = WOOD,
  { "5 years, exactly", expect = "pass", required = 5, found = 5 },
  { "just under", with = { ["covering.wood_weathering_years"] = 4.999 }, expect = "fail" },
  { "the model code asks for none", under = "model/irc-2021",
    with = { ["covering.wood_weathering_years"] = 4 }, expect = "not_applicable" },
  { "not known", without = { "covering.wood_weathering_years" }, expect = "open" },
}

cases "fire.pv" {
  under = "model/irc-2018",
  with = { ["site.lot_line_ft"] = 2, ["solar.put_on"] = true, ["solar.fire_class"] = "A" },
  { "panels of class A", expect = "pass" },
  { "panels of class C, which is a class", with = { ["solar.fire_class"] = "C" },
    expect = "pass" },
  { "panels of no class", with = { ["solar.fire_class"] = "none" }, expect = "fail" },
  { "class not known", without = { "solar.fire_class" }, expect = "open" },
  { "whether panels go on not known", without = { "solar" }, expect = "open" },
  { "no panels", with = { ["solar.put_on"] = false }, expect = "not_applicable" },
  { "no class asked for", with = { ["site.lot_line_ft"] = 20 }, expect = "not_applicable" },
}

cases "fire.pv" {
  under = "model/irc-2012",
  with = { ["site.lot_line_ft"] = 2, ["solar.put_on"] = true, ["solar.fire_class"] = "none" },
  { "not yet in 2012", expect = "not_applicable" },
}

-- Wildfire details: advice at first (a warning), binding from mid-2026.
local TILE = { ["site.fire_zone"] = "high", ["covering.kind"] = "clay_tile",
  ["covering.leaves_space"] = true, ["covering.space_is"] = "firestopped",
  ["covering.ends_stopped"] = true }

cases "fire.gaps" {
  under = "example/quillrun", with = TILE,
  { "stopped", expect = "pass" },
  { "open, while it is advice", with = { ["covering.space_is"] = "open" }, expect = "warn",
    found = "open" },
  { "open, once it binds", date = "2026-07-01", with = { ["covering.space_is"] = "open" },
    expect = "fail", found = "open" },
  { "cap sheet of 72 lb, exactly", date = "2026-07-01", with =
    { ["covering.space_is"] = "cap_sheet", ["covering.cap_sheet_lb"] = 72 }, expect = "pass" },
  { "cap sheet just under", date = "2026-07-01", with =
    { ["covering.space_is"] = "cap_sheet", ["covering.cap_sheet_lb"] = 71.9 }, expect = "fail",
    required = 72, found = 71.9 },
  { "not known", without = { "covering.space_is" }, expect = "open" },
  { "flat on the deck", with = { ["covering.leaves_space"] = false },
    expect = "not_applicable" },
  { "outside the zones", with = { ["site.fire_zone"] = "none" }, expect = "not_applicable" },
  { "in the moderate zone, while it is advice", with = { ["site.fire_zone"] = "moderate" },
    expect = "pass" },
  { "no longer, once it binds", date = "2026-07-01", with = { ["site.fire_zone"] = "moderate" },
    expect = "not_applicable" },
}

cases "fire.gaps" {
  under = "model/irc-2021", with = TILE,
  { "off in the model", with = { ["covering.space_is"] = "open" }, expect = "not_applicable" },
}

cases "fire.eave_stop" {
  under = "example/quillrun", date = "2026-07-01", with = TILE,
  { "closed", expect = "pass" },
  { "open", with = { ["covering.ends_stopped"] = false }, expect = "fail" },
  { "not known", without = { "covering.ends_stopped" }, expect = "open" },
}

cases "fire.valley_underlay" {
  under = "example/quillrun", date = "2026-07-01",
  with = { ["site.fire_zone"] = "very_high", ["roof.valleys"] = {
    { name = "valley", kind = "open", lining = "metal", cap_sheet_width_in = 36,
      cap_sheet_lb = 72, cap_sheet_full_length = true } } },
  { "36 in of 72 lb, exactly", expect = "pass", where = "valley" },
  { "just under", with = { ["roof.valleys[1].cap_sheet_width_in"] = 35.999 }, expect = "fail",
    where = "valley", required = 36, found = 35.999 },
  { "not the full length", with = { ["roof.valleys[1].cap_sheet_full_length"] = false },
    expect = "fail", where = "valley" },
  { "not known", without = { "roof.valleys[1].cap_sheet_width_in" }, expect = "open",
    where = "valley" },
  { "shingled over", with = { ["roof.valleys[1].kind"] = "closed" },
    expect = "not_applicable", where = "valley" },
}

-- No. 26 gage, as recalled of one state's wildfire chapter.
cases "fire.valley_metal" {
  under = "example/quillrun", date = "2026-07-01",
  with = { ["site.fire_zone"] = "very_high", ["roof.valleys"] = {
    { name = "valley", kind = "open", lining = "metal", thickness_in = 0.019 } } },
  { "0.019 in, exactly", expect = "pass", where = "valley", required = 0.019 },
  { "the 0.0179 that does elsewhere", with = { ["roof.valleys[1].thickness_in"] = 0.0179 },
    expect = "fail", where = "valley", found = 0.0179 },
  { "not known", without = { "roof.valleys[1].thickness_in" }, expect = "open",
    where = "valley" },
  { "shingled over", with = { ["roof.valleys[1].kind"] = "closed" },
    expect = "not_applicable", where = "valley" },
  { "outside the zones", with = { ["site.fire_zone"] = "none" }, expect = "not_applicable",
    where = "valley" },
}

cases "fire.gutters" {
  under = "example/quillrun", date = "2026-07-01", with = { ["site.fire_zone"] = "high",
    ["gutters.fitted"] = true, ["gutters.guarded"] = true },
  { "guarded", expect = "pass" },
  { "not guarded", with = { ["gutters.guarded"] = false }, expect = "fail" },
  { "not known", without = { "gutters.guarded" }, expect = "open" },
  { "no gutters", with = { ["gutters.fitted"] = false }, expect = "not_applicable" },
}

local function vent(changes)
  local with = { ["site.fire_zone"] = "high", ["attics[1].vents[1].ember_listed"] = false,
    ["attics[1].vents[1].mesh_noncombustible"] = true,
    ["attics[1].vents[1].screen_opening_in"] = 0.125 }
  for place, value in pairs(changes) do with[place] = value end
  return with
end

cases "fire.vent_mesh" {
  under = "example/quillrun", date = "2026-07-01",
  { "1/8 in, exactly", with = vent {}, expect = "pass", where = "attic, ridge vent" },
  { "1/16 in, exactly", with = vent { ["attics[1].vents[1].screen_opening_in"] = 0.0625 },
    expect = "pass", where = "attic, ridge vent" },
  { "the 1/4 in of older houses", with = vent { ["attics[1].vents[1].screen_opening_in"] = 0.25 },
    expect = "fail", where = "attic, ridge vent", required = 0.125, found = 0.25 },
  { "just wider than 1/8 in", with = vent { ["attics[1].vents[1].screen_opening_in"] = 0.126 },
    expect = "fail", where = "attic, ridge vent", required = 0.125, found = 0.126 },
  { "finer than 1/16 in", with = vent { ["attics[1].vents[1].screen_opening_in"] = 0.0619 },
    expect = "fail", where = "attic, ridge vent", required = 0.0625 },
  { "plastic mesh", with = vent { ["attics[1].vents[1].mesh_noncombustible"] = false },
    expect = "fail", where = "attic, ridge vent" },
  { "listed, whatever its mesh", with = vent { ["attics[1].vents[1].ember_listed"] = true,
    ["attics[1].vents[1].screen_opening_in"] = 0.25 }, expect = "pass",
    where = "attic, ridge vent" },
  { "not known", with = vent {}, without = { "attics[1].vents[1].screen_opening_in" },
    expect = "open", where = "attic, ridge vent" },
}

cases "fire.vent_mesh" {
  under = "example/quillrun",
  { "1/4 in, while it is advice", with = vent { ["attics[1].vents[1].screen_opening_in"] = 0.25 },
    expect = "warn", where = "attic, ridge vent", found = 0.25 },
}
