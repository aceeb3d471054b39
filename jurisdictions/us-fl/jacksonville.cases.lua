-- Cases of Jacksonville's old handout, beside the state.

cases "inspection.final" {
  under = "us-fl/jacksonville", from = "paperwork",
  with = { ["inspection.final.proof"] = "none" },
  { "2,500, exactly", with = { ["scope.price_usd"] = 2500 }, expect = "not_applicable" },
  { "2,501", with = { ["scope.price_usd"] = 2501 }, expect = "fail" },
  { "price not known", without = { "scope.price_usd" }, expect = "open" },
  { "2,500 under the state", under = "us-fl", with = { ["scope.price_usd"] = 2500 },
    expect = "fail" },
}

local function repair(area, kind)
  return { ["scope.extent"] = "repair", ["scope.roof_share_percent"] = 38,
    ["scope.area_sqft"] = area, ["permit.kind"] = kind }
end

cases "permit.kind" {
  under = "us-fl/jacksonville", from = "paperwork",
  { "a small permit for 4.9 squares", with = repair(490, "small_repair"), expect = "pass" },
  { "for exactly 5", with = repair(500, "small_repair"), expect = "fail" },
  { "for a reroof", with = { ["permit.kind"] = "small_repair" }, expect = "fail" },
  { "a reroof's permit does for both", with = repair(490, "reroof"), expect = "pass" },
  { "not known", expect = "open" },
  { "under the state", under = "us-fl", with = repair(490, "reroof"),
    expect = "not_applicable" },
}

cases "permit.every" {
  under = "us-fl/jacksonville", from = "paperwork",
  { "a repair needs one too", with = { ["permit.status"] = "none", ["scope.extent"] = "repair",
    ["scope.area_sqft"] = 129, ["scope.roof_share_percent"] = 10 }, expect = "fail" },
}

cases "permit.kind" {
  under = "us-fl/jacksonville", from = "paperwork",
  { "a small permit for 499.9 sq ft", with = repair(499.9, "small_repair"), expect = "pass" },
}
