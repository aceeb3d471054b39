-- Cases of Vail, against IRC 2012.

cases "fire.material_ban" {
  under = "us-co/vail",
  { "shingles", expect = "pass" },
  { "wood shakes", with = { ["covering.kind"] = "wood_shake" }, expect = "fail" },
  { "wood shingles", with = { ["covering.kind"] = "wood_shingle" }, expect = "fail" },
  { "wood shakes of class A as well", with = { ["covering.kind"] = "wood_shake",
    ["covering.fire_class"] = "A" }, expect = "fail" },
  { "kind not known", without = { "covering.kind" }, expect = "open" },
  { "not banned by IRC 2012", under = "model/irc-2012",
    with = { ["covering.kind"] = "wood_shake" }, expect = "not_applicable" },
}

cases "fire.class" {
  under = "us-co/vail",
  { "class A", expect = "pass" },
  { "class B", with = { ["covering.fire_class"] = "B" }, expect = "fail" },
}
