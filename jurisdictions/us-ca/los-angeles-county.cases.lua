-- Cases of Los Angeles County, beside the state.

local SHAKES = { ["covering.kind"] = "wood_shake", ["covering.fire_class"] = "A" }

cases "fire.material_ban" {
  under = "us-ca/los-angeles-county", with = SHAKES,
  { "shakes of class A in a moderate zone", with = { ["site.fire_zone"] = "moderate" },
    expect = "fail" },
  { "in a high zone", with = { ["site.fire_zone"] = "high" }, expect = "fail" },
  { "in a very high zone", with = { ["site.fire_zone"] = "very_high" }, expect = "fail" },
  { "outside all zones", with = { ["site.fire_zone"] = "none" }, expect = "pass" },
  { "zone not known", expect = "open", says = "/site/fire_zone" },
  { "under the state", under = "us-ca", with = { ["site.fire_zone"] = "moderate" },
    expect = "not_applicable" },
}

-- Practice alone only warns; the county's own words make it fail.
cases "fire.gaps" {
  under = "us-ca/los-angeles-county", with = { ["site.fire_zone"] = "high",
    ["covering.kind"] = "concrete_tile", ["covering.leaves_space"] = true,
    ["covering.space_is"] = "cap_sheet" },
  { "72 lb, exactly", with = { ["covering.cap_sheet_lb"] = 72 }, expect = "pass",
    required = 72 },
  { "60 lb", with = { ["covering.cap_sheet_lb"] = 60 }, expect = "fail" },
  { "60 lb under the state", under = "us-ca", with = { ["covering.cap_sheet_lb"] = 60 },
    expect = "warn" },
}
