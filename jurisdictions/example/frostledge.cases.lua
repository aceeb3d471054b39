-- The model's own line and word, which are common practice: what meets them warns. The front
-- eave at 5:12: (12 in overhang + 6 in wall + 24 in) x 1.08333 = 45.5 in.

cases "ice_barrier.reach" {
  under = "example/frostledge", date = "2025-03-02",
  { "at 7,000 ft, exactly, none", with = { ["site.elevation_ft"] = 7000,
    ["roof.edges[1].ice_barrier_reach_in"] = 0 }, expect = "fail", where = "front eave" },
  { "a foot below", with = { ["site.elevation_ft"] = 6999,
    ["roof.edges[1].ice_barrier_reach_in"] = 0 }, expect = "not_applicable",
    where = "front eave" },
  { "how high is not known", expect = "open", where = "front eave" },
}

cases "ice_barrier.reach" {
  under = "example/frostledge", date = "2026-03-02",
  { "in the ice zone, none", with = { ["site.local_ice_zone"] = "ice",
    ["roof.edges[1].ice_barrier_reach_in"] = 0 }, expect = "fail", where = "front eave" },
  { "in the mild one", with = { ["site.local_ice_zone"] = "mild",
    ["roof.edges[1].ice_barrier_reach_in"] = 0 }, expect = "not_applicable",
    where = "front eave" },
  { "which is not known", expect = "open", where = "front eave" },
}

-- What else the county draws by height: as the model has the lines, and by lines of its own.
local function so_high(feet, facts)
  local with = { ["site.elevation_ft"] = feet }
  for place, value in pairs(facts or {}) do with[place] = value end
  return with
end
local B = { ["covering.fire_class"] = "B" }
local C = { ["covering.fire_class"] = "C" }

cases "fire.class" {
  under = "example/frostledge", date = "2025-03-02",
  { "class A at 7,000 ft", with = so_high(7000), expect = "pass" },
  { "class B there", with = so_high(7000, B), expect = "fail" },
  { "class B just below", with = so_high(6999.99, B), expect = "not_applicable" },
}
cases "fire.class" {
  under = "example/frostledge", date = "2026-03-02",
  { "class B at the line", with = so_high(5000, B), expect = "pass" },
  { "class A there", with = so_high(5000), expect = "pass" },
  { "class C at the line", with = so_high(5000, C), expect = "fail" },
  { "class C just below it", with = so_high(4999.99, C), expect = "not_applicable" },
  { "how high is not known", with = C, expect = "open" },
}

local BARE = { ["underlayments[1].deck_joints_taped"] = false }
local TAPED = { ["underlayments[1].deck_joints_taped"] = true,
  ["underlayments[1].tape_width_in"] = 4 }
cases "underlayment.sealed_deck" {
  under = "example/frostledge", date = "2025-03-02", where = "main front",
  { "bare joints at 7,000 ft", with = so_high(7000, BARE), expect = "fail" },
  { "just below", with = so_high(6999.99, BARE), expect = "not_applicable" },
}
cases "underlayment.sealed_deck" {
  under = "example/frostledge", date = "2026-03-02", where = "main front",
  { "taped at the line", with = so_high(8000, TAPED), expect = "pass" },
  { "bare joints at the line", with = so_high(8000, BARE), expect = "fail" },
  { "bare joints just below it", with = so_high(7999.99, BARE), expect = "not_applicable" },
  { "how high is not known", with = BARE, expect = "open" },
}

cases "wind.vult_high" {
  under = "example/frostledge", date = "2025-03-02",
  { "the model's speed is recalled", with = so_high(7000), expect = "warn", required = 115 },
  { "slower by a mile an hour", with = so_high(7000, { ["site.wind_vult_mph"] = 114 }),
    expect = "fail" },
  { "just below", with = so_high(6999.99, { ["site.wind_vult_mph"] = 114 }),
    expect = "not_applicable" },
}
cases "wind.vult_high" {
  under = "example/frostledge", date = "2026-03-02",
  { "the county's speed", with = so_high(6000, { ["site.wind_vult_mph"] = 130 }),
    expect = "pass", required = 130 },
  { "slower by a mile an hour", with = so_high(6000, { ["site.wind_vult_mph"] = 129 }),
    expect = "fail" },
  { "just below the line", with = so_high(5999.99, { ["site.wind_vult_mph"] = 129 }),
    expect = "not_applicable" },
  { "how high is not known", expect = "open" },
}
