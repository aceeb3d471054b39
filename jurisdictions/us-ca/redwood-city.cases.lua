-- Cases of Redwood City's draft, beside the state.

local function piece(share, earlier)
  return { ["scope.roof_share_percent"] = share, ["covering.fire_class"] = "C",
    ["site.fire_zone"] = "none", ["site.state_fire_area"] = false,
    ["scope.earlier_roofing"] = earlier or {} }
end

cases "fire.class" {
  under = "us-ca/redwood-city",
  { "exactly a quarter may match", with = piece(25), expect = "not_applicable" },
  { "more may not", with = piece(26), expect = "fail" },
  { "two pieces in a year", with = piece(15, { { done_on = "2025-09-01",
    roof_share_percent = 15 } }), expect = "fail" },
  { "class C under the state", under = "us-ca", with = piece(100), expect = "warn" },
}
