-- Cases of Countryside, beside IRC 2021.

cases "permit.by_deck" {
  under = "us-il/countryside", from = "paperwork", with = { ["permit.status"] = "none" },
  { "sheathing replaced", expect = "fail" },
  { "none replaced", with = { ["decks[1].work"] = "kept" }, expect = "pass" },
  { "any reroof under IRC 2021", under = "model/irc-2021", expect = "not_applicable" },
}
