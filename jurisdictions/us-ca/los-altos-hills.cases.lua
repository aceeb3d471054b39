-- Cases of Los Altos Hills, beside the state.

cases "fire.class" {
  under = "us-ca/los-altos-hills",
  with = { ["site.fire_zone"] = "none", ["site.state_fire_area"] = false },
  { "class C outside all zones", with = { ["covering.fire_class"] = "C" }, expect = "fail" },
  { "class A", expect = "pass" },
  { "class C under the state", under = "us-ca", with = { ["covering.fire_class"] = "C" },
    expect = "pass" },
}
