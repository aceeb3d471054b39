-- Cases of Oregon: the book's first day and the day it became the only one (a
-- public programme's page), the layers, forest land (ORS 215.730), and what the code's
-- text of 2023 has of its own (R105.2, R902, R905, R908).

cases "layers.total" {
  under = "us-or",
  { "the day before", date = "2023-09-30", expect = "refused", says = "from 2023-10-01" },
  { "on the first day", date = "2023-10-01", expect = "pass", found = 1 },
  { "one laid over two", date = "2024-04-01", with = { ["scope.method"] = "overlay",
    ["existing.layers"] = 2, ["existing.layers_removed"] = 0, ["existing.coverings"] = {
      { kind = "asphalt_shingle", thickness_in = 0.25, removed = false },
      { kind = "asphalt_shingle", thickness_in = 0.25, removed = false } } },
    expect = "fail", required = 2, found = 3 },
  { "one laid over one", date = "2024-04-01", with = { ["scope.method"] = "overlay",
    ["existing.layers_removed"] = 0, ["existing.coverings[1].removed"] = false },
    expect = "pass", found = 2 },
}

cases "slope.least" {
  under = "us-or",
  { "while the book before could be used", date = "2024-03-31", expect = "pass",
    where = "main front", says = "until 1 April 2024" },
  { "since it is the only one", date = "2024-04-01", expect = "pass", where = "main front" },
  { "on the day the next was to begin", date = "2026-10-01", expect = "pass",
    where = "main front", says = "1 October 2026" },
}

cases "fire.forest_roof" {
  under = "us-or", with = { ["site.forest_zoned"] = true },
  { "fire-retardant", with = { ["covering.fire_retardant"] = true }, expect = "pass" },
  { "not", with = { ["covering.fire_retardant"] = false }, expect = "fail" },
  { "not known", expect = "open" },
  { "no forest land", with = { ["site.forest_zoned"] = false }, expect = "not_applicable" },
  { "zoning not known", without = { "site.forest_zoned" }, expect = "open" },
}

-- A reroof is free up to 30 percent of the live load (R105.2, Table R301.6): 250 lb to the
-- square and No. 15 felt, at 5:12 over 16 psf; with a new 7/16 deck.
local FREE = { ["permit.status"] = "none", ["decks[1].work"] = "kept",
  ["covering.weight_lb_per_square"] = 250, ["underlayments[1].weight_lb_per_square"] = 15 }
local function free(facts)
  local with = {}
  for name, value in pairs(FREE) do with[name] = value end
  for name, value in pairs(facts) do with[name] = value end
  return with
end
cases "permit.by_load_share" {
  under = "us-or", date = "2024-06-03",
  { "light shingles, deck kept", with = FREE, expect = "pass", where = "main front",
    required = 30, says = "calls for no permit" },
  -- (428.08 + 15) / 100 x 1.0833 = 4.8 psf, 30 percent of 16.
  { "just at the share", with = free { ["covering.weight_lb_per_square"] = 428.08 },
    expect = "pass", where = "main front" },
  { "just over it", with = free { ["covering.weight_lb_per_square"] = 430 }, expect = "fail",
    where = "main front" },
  { "over it with a permit", with = free { ["covering.weight_lb_per_square"] = 430,
    ["permit.status"] = "applied" }, expect = "pass", where = "main front" },
  { "a new deck counts", with = free { ["decks[1].work"] = "replaced",
    ["covering.weight_lb_per_square"] = 400 }, expect = "fail", where = "main front" },
  -- At 3.9:12 the load is 20: (550.6 + 15) / 100 x 1.0515 = 5.95 psf, 29.7 percent.
  { "a flatter roof carries more", with = free { ["roof.slopes[1].pitch"] = "3.9:12",
    ["covering.weight_lb_per_square"] = 550 }, expect = "pass", where = "main front" },
  { "at 4:12 no longer", with = free { ["roof.slopes[1].pitch"] = "4:12",
    ["covering.weight_lb_per_square"] = 550 }, expect = "fail", where = "main front" },
  -- At 12:12 the load is 12: 2.65 x 1.4142 = 3.75 psf, 31 percent; at 11.9 it is 16.
  { "at 12:12 less", with = free { ["roof.slopes[1].pitch"] = "12:12" }, expect = "fail",
    where = "main front" },
  { "at 11.9:12", with = free { ["roof.slopes[1].pitch"] = "11.9:12" }, expect = "pass",
    where = "main front" },
  { "weight not known", with = { ["permit.status"] = "none" }, expect = "open",
    where = "main front" },
  { "once the work has begun, issued", stage = "deck", with = free {
    ["covering.weight_lb_per_square"] = 430, ["permit.status"] = "issued" }, expect = "pass",
    where = "main front" },
}
-- The edges of each live load, to the last digit that a share prints: a hundredth of a
-- pound less or more would judge these otherwise.
for _, row in ipairs { { "2:12", 577.793, 577.852 }, { "5:12", 428.793, 428.838 },
  { "12:12", 239.97, 239.995 } } do
  cases "permit.by_load_share" {
    under = "us-or", date = "2024-06-03", with = free { ["roof.slopes[1].pitch"] = row[1] },
    { "the last weight that is free at " .. row[1], where = "main front", expect = "pass",
      with = { ["covering.weight_lb_per_square"] = row[2] } },
    { "the first that is not at " .. row[1], where = "main front", expect = "fail",
      with = { ["covering.weight_lb_per_square"] = row[3] } },
  }
end
cases "permit.by_house_kind" {
  under = "us-or", date = "2024-06-03", with = { ["permit.status"] = "none" },
  { "a townhouse", with = { ["house.kind"] = "townhouse" }, expect = "fail" },
  { "with a permit", with = { ["house.kind"] = "townhouse", ["permit.status"] = "applied" },
    expect = "pass" },
  { "a one-family house", expect = "not_applicable" },
  { "two families", with = { ["house.kind"] = "two_family" }, expect = "not_applicable" },
  { "kind not known", without = { "house.kind" }, expect = "open" },
}
cases "permit.by_wildfire_zone" {
  under = "us-or", date = "2024-06-03", with = { ["permit.status"] = "none" },
  { "in one", with = { ["site.wildfire_hazard_zone"] = true }, expect = "fail" },
  { "with a permit", with = { ["site.wildfire_hazard_zone"] = true,
    ["permit.status"] = "applied" }, expect = "pass" },
  { "in none", with = { ["site.wildfire_hazard_zone"] = false }, expect = "pass" },
  { "not known", expect = "open" },
}
cases "permit.by_solar_roof" {
  under = "us-or", date = "2024-06-03", with = { ["permit.status"] = "none" },
  { "built in", with = { ["covering.integrated_solar"] = true }, expect = "fail" },
  { "with a permit", with = { ["covering.integrated_solar"] = true,
    ["permit.status"] = "applied" }, expect = "pass" },
  { "none", with = { ["covering.integrated_solar"] = false }, expect = "pass" },
  { "not known", expect = "open" },
}

-- The ice barrier by January's mean or by history (R905.1.2).
local function cold(mean, history)
  return { ["site.january_mean_F"] = mean, ["site.ice_history"] = history,
    ["ice_barrier.kind"] = "none" }
end
cases "ice_barrier.kind" {
  under = "us-or", date = "2024-06-03",
  { "25 F, exactly", with = cold(25), expect = "fail" },
  { "26 F, no history", with = cold(26, false), expect = "not_applicable" },
  { "26 F, and ice was known", with = cold(26, true), expect = "fail" },
  { "26 F, history not known", with = cold(26), expect = "open" },
  { "mean not known", with = { ["ice_barrier.kind"] = "none" }, expect = "open" },
  { "the climate table does not matter", with = { ["site.january_mean_F"] = 40,
    ["site.ice_history"] = false, ["site.ice_barrier_in_table"] = true,
    ["ice_barrier.kind"] = "none" }, expect = "not_applicable" },
  { "nor the mean in the model code", under = "model/irc-2021", with = cold(10),
    expect = "not_applicable" },
  { "nor history there", under = "model/irc-2021", with = cold(40, true),
    expect = "not_applicable" },
}

-- One column of underlayment at any wind; classes to 142 mph; step flashing alone.
cases "underlayment.kind" {
  under = "us-or", date = "2024-06-03", with = { ["site.wind_vult_mph"] = 139,
    ["site.wind_design_required"] = true },
  { "light felt where the wind is strong", expect = "pass", where = "main front" },
}
cases "underlayment.cap" {
  under = "us-or", date = "2024-06-03", with = { ["site.wind_vult_mph"] = 139,
    ["site.wind_design_required"] = true },
  { "no caps are asked for", expect = "not_applicable", where = "main front" },
}
for class, test in pairs { G = "D7158", H = "D7158", F = "D3161" } do
  local label = { ["covering.D7158_class"] = "none", ["covering.D3161_class"] = "none" }
  label["covering." .. test .. "_class"] = class
  local function at(mph)
    local with = { ["site.wind_vult_mph"] = mph }
    for name, value in pairs(label) do with[name] = value end
    return with
  end
  cases "shingle.wind_class" {
    under = "us-or", date = "2024-06-03",
    { class .. " at 142, exactly", with = at(142), expect = "pass", required = 142 },
    { class .. " at 143", with = at(143), expect = "fail", required = 142 },
  }
end
local function wall(kind)
  return { ["roof.walls"] = { { name = "side", kind = "sidewall", flashing_is = "new",
    flashing = kind, eave_ends_here = true, kickout = false } } }
end
cases "flashing.walls" {
  under = "us-or", date = "2024-06-03",
  { "step", with = wall "step", expect = "pass", where = "side" },
  { "one continuous piece", with = wall "continuous", expect = "fail", where = "side" },
}
cases "flashing.kickout" {
  under = "us-or", date = "2024-06-03",
  { "not turned out", with = wall "step", expect = "fail", where = "side" },
}
-- Class A without a test, on any deck (R902.1).
for _, kind in ipairs { "slate", "clay_tile", "concrete_tile", "metal_panel",
  "metal_shingle" } do
  cases "fire.class" {
    under = "us-or", date = "2024-06-03", with = { ["site.lot_line_ft"] = 2.9,
      ["covering.kind"] = kind, ["covering.fire_class"] = "none",
      ["covering.over_noncombustible_deck"] = false, ["covering.copper_oz"] = 0 },
    { kind .. " on plywood", expect = "pass" },
  }
end
cases "fire.class" {
  under = "us-or", date = "2024-06-03", with = { ["site.lot_line_ft"] = 2.9,
    ["covering.kind"] = "wood_shingle", ["covering.fire_class"] = "none",
    ["covering.over_noncombustible_deck"] = false },
  { "wood does not count", expect = "fail" },
}

-- Vents are looked at where sheathing is replaced (R908.1.1).
local LITTLE = { ["attics[1].area_sqft"] = 4000,
  as_meant = { { at = "/attics" } }, -- larger than the base job's roof
  ["attics[1].vents[1].left_as_is"] = true,
  ["attics[1].vents[2].left_as_is"] = true }
cases "ventilation.net_free_area" {
  under = "us-or", date = "2024-06-03", with = LITTLE,
  { "new sheathing, too little air", expect = "fail", where = "attic" },
  { "none replaced", with = { ["decks[1].work"] = "kept" }, expect = "not_applicable",
    where = "attic" },
  { "none replaced, under the model code", under = "model/irc-2021",
    with = { ["decks[1].work"] = "kept" }, expect = "fail", where = "attic" },
}
-- The numbers of the zones are struck out: a retarder in none, or in any.
for _, zone in ipairs { "4C", "5B", "5C", "6B" } do
  cases "ventilation.net_free_area" {
    under = "us-or", date = "2024-06-03", with = { ["attics[1].area_sqft"] = 1500,
      as_meant = { { at = "/attics" } }, -- larger than the base job's roof
      ["site.climate_zone"] = zone },
    { "zone " .. zone .. " with a retarder", expect = "warn", where = "attic",
      required = 720 },
    { "zone " .. zone .. " without", with = { ["attics[1].vapor_retarder"] = "none" },
      expect = "warn", where = "attic", says = "struck out" },
  }
end

cases "fire.pv" {
  under = "us-or",
  { "panels of no class near the lot line", with = { ["site.lot_line_ft"] = 2,
    ["solar.put_on"] = true, ["solar.fire_class"] = "none" }, expect = "not_applicable" },
}

-- A new deck by what it is made of, and new panels over an old one.
cases "permit.by_load_share" {
  under = "us-or", date = "2024-06-03",
  { "new boards count as boards", with = free { ["decks[1].kind"] = "board",
    ["decks[1].thickness_in"] = 0.75, ["decks[1].work"] = "replaced",
    ["covering.weight_lb_per_square"] = 400 }, expect = "fail", where = "main front" },
  { "panels over the old deck count", with = free { ["decks[1].work"] = "paneled_over",
    ["decks[1].over_panel_thickness_in"] = 0.5, ["covering.weight_lb_per_square"] = 400 },
    expect = "fail", where = "main front" },
}
