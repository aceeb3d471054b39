-- Cases of New York: the day of application picks the book, and a permit is
-- for new deck (state advice as a town's form restates it; a city differs).

cases "deck.nail_field" {
  under = "us-ny", with = { ["decks[1].nails.field_spacing_in"] = 12 },
  { "the day before the book of 2020", date = "2020-05-11", expect = "refused",
    says = "from 2020-05-12" },
  { "12 in on its first day", date = "2020-05-12", expect = "pass", required = 12 },
  { "12 in on its last", date = "2025-12-30", expect = "pass", required = 12 },
  { "12 in on the first day of the book of 2025", date = "2025-12-31", expect = "fail",
    required = 6, found = 12 },
}

-- What was read in the model does not pass clean where the base is recalled.
cases "slope.least" {
  under = "us-ny", date = "2024-06-03",
  { "5:12", expect = "pass", where = "main front", says = "recalled, not read" },
  { "under 2:12", with = { ["roof.slopes[1].pitch"] = "1.5:12" }, expect = "fail",
    where = "main front" },
}

cases "permit.by_deck" {
  under = "us-ny", with = { ["permit.status"] = "none" },
  { "a sheet of deck and no permit", expect = "fail" },
  { "with the permit", with = { ["permit.status"] = "applied" }, expect = "warn",
    says = "every reroof" },
  { "no deck, no permit", with = { ["decks[1].work"] = "kept" }, expect = "warn",
    says = "calls for no permit" },
  { "how much deck is not known", without = { "decks[1].replaced_sqft" }, expect = "open" },
}
cases "permit.every" {
  under = "us-ny",
  { "not every reroof", expect = "not_applicable" },
}
