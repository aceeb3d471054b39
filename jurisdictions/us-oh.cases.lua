-- Cases of Ohio: the first day (a city's notice of the new code), and what the code's
-- text of January 2026 has of its own (105.4, 806.2, 905.1.2, 905.2.8.5).

cases "slope.least" {
  under = "us-oh",
  { "the day before", date = "2019-06-30", expect = "refused", says = "from 2019-07-01" },
  { "on the first day", date = "2019-07-01", expect = "pass", where = "main front" },
  { "before the amendments were read", date = "2023-12-31", expect = "pass", where = "main front" },
  { "since its text was read", date = "2024-01-01", expect = "pass", where = "main front" },
  { "exactly 2:12", date = "2023-12-31", with = { ["roof.slopes[1].pitch"] = "2:12" },
    expect = "pass", where = "main front", required = 2 },
  { "under it", date = "2023-12-31", with = { ["roof.slopes[1].pitch"] = "1.9:12" },
    expect = "fail", where = "main front" },
}

-- No metal edge is asked for; the maker says whether and how.
for _, name in ipairs { "eave", "rake" } do
  cases("drip_edge." .. name) {
    under = "us-oh", date = "2026-03-02",
    { "no metal at the " .. name, with = { ["roof.edges[1].drip_edge"] = false,
      ["roof.edges[4].drip_edge"] = false }, expect = "not_applicable",
      where = name == "eave" and "front eave" or "front left rake" },
  }
end

-- From the outer face, 24 in along the slope: 12 in of overhang at 6:12 are 13.416 along
-- it, so 37.4 in all.
local function reach(inches, facts)
  local with = { ["site.ice_barrier_in_table"] = true, ["roof.slopes[1].pitch"] = "6:12",
    ["roof.edges[1].ice_barrier_reach_in"] = inches }
  for name, value in pairs(facts or {}) do with[name] = value end
  return with
end
cases "ice_barrier.reach" {
  under = "us-oh", date = "2026-03-02",
  { "37.42 in", with = reach(37.42), expect = "pass", where = "front eave", required = 37.416 },
  { "37.3 in", with = reach(37.3), expect = "fail", where = "front eave" },
  { "the model code goes from the inner face", under = "model/irc-2018", with = reach(37.42),
    expect = "fail", where = "front eave" },
  { "an unheated porch that ends at the house", with = { ["site.ice_barrier_in_table"] = true,
    ["roof.slopes[3].ends_at_wall"] = true, ["roof.edges[3].ice_barrier_reach_in"] = 0 },
    expect = "not_applicable", where = "porch eave" },
  { "one that does not", with = { ["site.ice_barrier_in_table"] = true,
    ["roof.slopes[3].ends_at_wall"] = false, ["roof.edges[3].ice_barrier_reach_in"] = 0 },
    expect = "fail", where = "porch eave" },
  { "where it ends not known", with = { ["site.ice_barrier_in_table"] = true },
    expect = "open", where = "porch eave" },
  { "the model code lets neither off", under = "model/irc-2018",
    with = { ["site.ice_barrier_in_table"] = true, ["roof.slopes[3].ends_at_wall"] = true,
      ["roof.edges[3].ice_barrier_reach_in"] = 0 }, expect = "fail", where = "porch eave" },
}
cases "permit.life" {
  under = "us-oh", date = "2026-03-02", stage = "deck",
  { "181 days, exactly", with = { ["permit.longest_idle_days"] = 181 }, expect = "pass" },
  { "182", with = { ["permit.longest_idle_days"] = 182 }, expect = "fail" },
}
cases "ventilation.net_free_area" {
  under = "us-oh", date = "2026-03-02", with = { ["site.climate_zone"] = "6A",
    ["attics[1].area_sqft"] = 1500,
    as_meant = { { at = "/attics" } }, -- larger than the base job's roof
    ["attics[1].vapor_retarder"] = "none" },
  { "no zone asks for a retarder", expect = "warn", where = "attic", required = 720 },
}
cases "wood.spaced_deck" {
  under = "us-oh", date = "2026-03-02", with = { ["covering.kind"] = "wood_shingle",
    ["decks[1].kind"] = "spaced_board", ["site.seismic_category"] = "D2" },
  { "spaced boards are barred nowhere", expect = "pass" },
}
