-- Cases of Redwood City's draft, beside the state. A draft is not law: what the state
-- takes and the draft would not is disputed, and nothing fails by the draft alone.

local function piece(share, earlier)
  return { ["scope.roof_share_percent"] = share, ["covering.fire_class"] = "C",
    ["site.fire_zone"] = "none", ["site.state_fire_area"] = false,
    ["scope.earlier_roofing"] = earlier or {} }
end

cases "fire.class" {
  under = "us-ca/redwood-city",
  { "exactly a quarter may match", with = piece(25), expect = "pass", says = "either way" },
  { "more may not", with = piece(26), expect = "warn", says = "draft of 1993" },
  { "two pieces in a year", with = piece(15, { { done_on = "2025-09-01",
    roof_share_percent = 15 } }), expect = "warn", says = "one of A, B" },
  { "class C under the state", under = "us-ca", with = piece(100), expect = "pass" },
}
