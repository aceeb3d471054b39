-- Cases of Denver: the less of two triggers, against IRC 2021. A roof of 1,289 sq
-- ft has a tenth of 128.9; one of 3,564 has 356, so there the 200 bite first.

local function unpermitted(share, area)
  return { ["permit.status"] = "none", ["scope.roof_share_percent"] = share,
    ["scope.area_sqft"] = area }
end

-- Planes of 115 ft in place of 40: 3,564 sq ft in all.
local function of_large_roof(share, area)
  local with = unpermitted(share, area)
  for i = 1, 2 do
    with["roof.slopes[" .. i .. "].eave_ft"] = 115
    with["roof.slopes[" .. i .. "].ridge_ft"] = 115
  end
  with["roof.ridge_ft"] = 115
  return with
end

cases "permit.by_share" {
  under = "us-co/denver", from = "paperwork",
  { "exactly 10 percent is free", with = unpermitted(10, 128.9), expect = "pass",
    required = 10 },
  { "11 percent of a small roof", with = unpermitted(11, 141.8), expect = "fail" },
  { "7 percent of a large one", with = of_large_roof(7, 250), expect = "pass" },
}

cases "permit.by_area" {
  under = "us-co/denver", from = "paperwork",
  { "exactly 2 squares are free", with = of_large_roof(5.6, 200), expect = "warn",
    required = 200 },
  { "more than 2 squares of a large roof", with = of_large_roof(7, 250), expect = "fail" },
  { "11 percent of a small one", with = unpermitted(11, 141.8), expect = "warn" },
  { "every reroof needs a permit by IRC 2021", under = "model/irc-2021",
    with = of_large_roof(7, 250), expect = "not_applicable" },
}

cases "ice_barrier.kind" {
  under = "us-co/denver",
  with = { ["site.ice_barrier_in_table"] = true, ["ice_barrier.kind"] = "none" },
  { "a one-family house is let off", expect = "not_applicable" },
  { "a two-family house is not", with = { ["house.kind"] = "two_family" }, expect = "fail" },
  { "kind of house not known", without = { "house.kind" }, expect = "open" },
  { "a one-family house under IRC 2021", under = "model/irc-2021", expect = "fail" },
}

-- The base was read second-hand: nothing passes clean.
cases "slope.least" {
  under = "us-co/denver",
  { "2:12", with = { ["roof.slopes[1].pitch"] = "2:12" }, expect = "pass",
    where = "main front", says = "second-hand" },
}
