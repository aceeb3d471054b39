-- Cases of Baldwin County: 140 mph x 1.291 = 181 mph on today's scale, 110 = 142.

local function house(zone, speed)
  return { ["site.local_wind_zone"] = zone, ["site.wind_vult_mph"] = speed }
end

cases "wind.local_speed" {
  under = "us-al/baldwin-county",
  { "181 mph south of the first road", with = house("south_of_US_98", 181), expect = "pass",
    required = 140 },
  { "140 on today's scale is not 140 on the old", with = house("south_of_US_98", 140),
    expect = "fail", required = 140, found = 108 },
  { "168 mph in the next part", with = house("US_98_to_I_10", 168), expect = "pass",
    required = 130 },
  { "155 mph in the third", with = house("I_10_to_I_65", 155), expect = "pass",
    required = 120 },
  { "142 mph in the north", with = house("north_of_I_65", 142), expect = "pass",
    required = 110 },
  -- 0.7746 of them: 139.4, 129.4, 119.3 and 109.2 mph.
  { "180 mph falls short by one", with = house("south_of_US_98", 180), expect = "fail",
    required = 140, found = 139 },
  { "167 mph in the next part", with = house("US_98_to_I_10", 167), expect = "fail",
    required = 130, found = 129 },
  { "154 mph in the third", with = house("I_10_to_I_65", 154), expect = "fail",
    required = 120, found = 119 },
  { "141 mph in the north", with = house("north_of_I_65", 141), expect = "fail",
    required = 110, found = 109 },
  { "part not known", expect = "open", says = "/site/local_wind_zone" },
  { "under IRC 2012", under = "model/irc-2012", expect = "not_applicable" },
}

cases "shingle.wind_label" {
  under = "us-al/baldwin-county",
  { "class F", expect = "pass" },
  { "class A", with = { ["covering.D3161_class"] = "A" }, expect = "fail" },
}

cases "drip_edge.eave" {
  under = "us-al/baldwin-county",
  { "none", with = { ["roof.edges[1].drip_edge"] = false },
    expect = "not_applicable", where = "front eave" },
}

cases "drip_edge.rake" {
  under = "us-al/baldwin-county",
  { "none", with = { ["roof.edges[4].drip_edge"] = false },
    expect = "not_applicable", where = "front left rake" },
}
