-- Cases of that city, beside the state.

cases "fire.class" {
  under = "us-ca/unnamed-crc-2025-ab",
  with = { ["site.state_fire_area"] = false, ["site.fire_zone"] = "none" },
  { "class C", with = { ["covering.fire_class"] = "C" }, expect = "fail" },
  { "class B, the floor", with = { ["covering.fire_class"] = "B" }, expect = "pass" },
  { "class C under the state", under = "us-ca", with = { ["covering.fire_class"] = "C" },
    expect = "pass" },
}
