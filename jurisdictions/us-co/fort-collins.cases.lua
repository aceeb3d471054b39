-- Cases of Fort Collins, against IRC 2012.

cases "fire.class" {
  under = "us-co/fort-collins",
  { "class A", expect = "pass" },
  { "class B", with = { ["covering.fire_class"] = "B", ["site.historic"] = false },
    expect = "fail" },
  { "class B on a historic house", with = { ["covering.fire_class"] = "B",
    ["site.historic"] = true }, expect = "open", says = "exceptions for historic buildings" },
  { "class B, not known whether historic", with = { ["covering.fire_class"] = "B" },
    expect = "open", says = "/site/historic" },
  { "class A on a historic house", with = { ["site.historic"] = true }, expect = "pass" },
  { "class B under IRC 2012", under = "model/irc-2012",
    with = { ["covering.fire_class"] = "B" }, expect = "not_applicable" },
}
