-- Cases of Azle, beside IRC 2018.

cases "permit.by_deck_share" {
  under = "us-tx/azle", from = "paperwork", with = { ["permit.status"] = "none" },
  { "some sheets", expect = "warn", says = "what lies between" },
  { "a full redeck", with = { ["decks[1].work"] = "replaced" }, expect = "fail" },
  { "any reroof under IRC 2018", under = "model/irc-2018", expect = "not_applicable" },
}

cases "deck.panel_thickness" {
  under = "us-tx/azle",
  { "7/16 at 24/16, exactly", expect = "pass", required = 0.4375 },
  { "3/8", with = { ["decks[1].thickness_in"] = 0.375 }, expect = "fail" },
}

-- 1,288 of 1,289.3 sq ft are 99.9 percent.
cases "permit.by_deck_share" {
  under = "us-tx/azle", from = "paperwork", with = { ["permit.status"] = "none" },
  { "all but a square foot", with = { ["decks[1].replaced_sqft"] = 1288 }, expect = "warn",
    found = 99.9 },
}
