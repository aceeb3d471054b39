-- Cases of Wheeling, beside IRC 2018.

cases "inspection.dry_in" {
  under = "us-il/wheeling", from = "paperwork",
  { "looked at", expect = "pass" },
  { "not", with = { ["inspection.dry_in.proof"] = "none" }, expect = "fail" },
  { "left to the place by IRC 2018", under = "model/irc-2018",
    with = { ["inspection.dry_in.proof"] = "none" }, expect = "open" },
}
