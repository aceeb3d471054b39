-- Cases of Massachusetts: the 10th edition's first day, and the end of the overlap (the
-- state's pages).

cases "deck.nail_field" {
  under = "us-ma", with = { ["decks[1].nails.field_spacing_in"] = 12 },
  { "the day before the 9th", date = "2017-12-31", expect = "refused", says = "from 2018-01-01" },
  { "12 in on its first day", date = "2018-01-01", expect = "pass", required = 12 },
  { "12 in on the last day of the 9th alone", date = "2024-10-10", expect = "pass",
    required = 12 },
  { "12 in on the first day of the 10th", date = "2024-10-11", expect = "fail", required = 6,
    says = "could still go by the 9th" },
  { "the last day both were taken", date = "2025-06-30", expect = "fail",
    says = "could still go by the 9th" },
  { "the 10th alone", date = "2025-07-01", expect = "fail", says = "what the state changed" },
}
