-- Cases of Washington: the first day after two delays (engineers' and code
-- services' notices).

cases "slope.least" {
  under = "us-wa",
  { "on the day it was first to begin", date = "2023-07-01", expect = "refused",
    says = "from 2024-03-15" },
  { "the day before", date = "2024-03-14", expect = "refused", says = "from 2024-03-15" },
  { "on the first day", date = "2024-03-15", expect = "pass", where = "main front" },
  { "too flat", date = "2024-03-15", with = { ["roof.slopes[1].pitch"] = "1.5:12" },
    expect = "fail", where = "main front" },
}
cases "deck.nail_field" {
  under = "us-wa",
  { "12 in, which the edition before took", date = "2024-03-15",
    with = { ["decks[1].nails.field_spacing_in"] = 12 }, expect = "fail", required = 6 },
}
