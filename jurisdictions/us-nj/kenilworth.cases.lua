-- Cases of Kenilworth, beside IRC 2021 and its neighbor Montville's test.

cases "permit.by_deck" {
  under = "us-nj/kenilworth", from = "paperwork", with = { ["permit.status"] = "none" },
  { "sheathing replaced", expect = "fail" },
  { "none replaced", with = { ["decks[1].work"] = "kept" }, expect = "warn", says = "stale" },
  { "another test in the neighbor's", under = "us-nj/montville", expect = "not_applicable" },
  { "any reroof under IRC 2021", under = "model/irc-2021", expect = "not_applicable" },
}
