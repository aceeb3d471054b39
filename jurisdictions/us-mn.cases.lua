-- Cases of Minnesota. The ice barrier is asked for everywhere, to 24 in inside
-- the wall (a city page citing R905.1.2); the smaller vent area needs both the
-- retarder and the split (a city's handout on the state code of 2015).

cases "ice_barrier.kind" {
  under = "us-mn",
  { "a self-adhered sheet", expect = "pass" },
  { "two plies cemented", with = { ["ice_barrier.kind"] = "two_cemented_plies" },
    expect = "pass" },
  { "none", with = { ["ice_barrier.kind"] = "none" }, expect = "fail" },
  { "not known", without = { "ice_barrier.kind" }, expect = "open" },
  { "not asked for by the code it follows", under = "model/irc-2018",
    with = { ["ice_barrier.kind"] = "none" }, expect = "not_applicable" },
}

cases "ice_barrier.kind" {
  under = "us-mn",
  { "on the day the code begins", date = "2020-03-31", with = { ["ice_barrier.kind"] = "none" },
    expect = "fail" },
  { "the day before, no edition is carried", date = "2020-03-30", expect = "refused",
    says = "from 2020-03-31" },
}

-- (12 overhang + 6 wall + 24 inside) x 1.0833 at 5:12 = 45.5 in.
cases "ice_barrier.reach" {
  under = "us-mn",
  { "exactly enough", with = { ["roof.edges[1].ice_barrier_reach_in"] = 45.5 },
    expect = "pass", where = "front eave", required = 45.5 },
  { "one course of 36 in", with = { ["roof.edges[1].ice_barrier_reach_in"] = 36 },
    expect = "fail", where = "front eave", required = 45.5, found = 36 },
  { "the unheated porch is not let off", with = { ["roof.edges[3].ice_barrier_reach_in"] = 0 },
    expect = "fail", where = "porch eave", found = 0 },
}

-- Zone 6 or 7 everywhere: 1,500 sq ft needs 1,440 sq in, or 720 by both conditions.
cases "ventilation.net_free_area" {
  under = "us-mn", with = { ["site.climate_zone"] = "6A", ["attics[1].area_sqft"] = 1500,
    as_meant = { { at = "/attics" } } }, -- larger than the base job's roof
  { "split and class II retarder", expect = "warn", required = 720, found = 972 },
  { "split alone", with = { ["attics[1].vapor_retarder"] = "none" }, expect = "fail",
    required = 1440 },
  { "retarder alone", with = { ["attics[1].vents[1].below_ridge_ft"] = 4 }, expect = "fail",
    required = 1440 },
}

-- A permit for every reroof (a guide to the state's code), kick-outs on reroofs
-- too (a city's page), a way up for the inspector.
cases "permit.every" {
  under = "us-mn", with = { ["permit.status"] = "applied" },
  { "applied for", expect = "pass" },
  { "none", with = { ["permit.status"] = "none" }, expect = "fail" },
  { "not known", without = { "permit.status" }, expect = "open" },
  { "a small repair", with = { ["scope.extent"] = "repair" }, expect = "not_applicable" },
}

local function wall(kickout)
  return { ["roof.walls"] = { { name = "chimney side", kind = "sidewall",
    eave_ends_here = true, kickout = kickout } } }
end
cases "flashing.kickout" {
  under = "us-mn",
  { "there", with = wall(true), expect = "pass", where = "chimney side" },
  { "not there", with = wall(false), expect = "fail", where = "chimney side" },
}

cases "inspection.access" {
  under = "us-mn",
  { "a ladder", expect = "pass" },
  { "nothing", with = { ["inspection.access"] = "none" }, expect = "fail" },
}

-- The next book was in preparation in August 2026.
cases "slope.least" {
  under = "us-mn",
  { "on the last day of July", date = "2026-07-31", expect = "pass", where = "main front" },
  { "since", date = "2026-08-01", expect = "pass", where = "main front",
    says = "in preparation in August 2026" },
}
