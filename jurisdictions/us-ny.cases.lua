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

-- What the text of 2025 has of its own: a longer reach on steep slopes, hurricane-prone
-- regions, the life of a permit left to cities, carbon monoxide left to the fire code.
cases "ice_barrier.reach" {
  under = "us-ny", date = "2026-03-02", with = { ["site.ice_barrier_in_table"] = true,
    ["roof.slopes[1].pitch"] = "8:12", ["roof.edges[1].overhang_in"] = 0,
    ["roof.edges[1].wall_thickness_in"] = 4 },
  { "34 in at 8:12", with = { ["roof.edges[1].ice_barrier_reach_in"] = 34 }, expect = "fail",
    where = "front eave", required = 36 },
  { "36 in, exactly", with = { ["roof.edges[1].ice_barrier_reach_in"] = 36 }, expect = "pass",
    where = "front eave" },
  { "34 in at 7.9:12", with = { ["roof.slopes[1].pitch"] = "7.9:12",
    ["roof.edges[1].ice_barrier_reach_in"] = 34 }, expect = "pass", where = "front eave" },
}
cases "underlayment.fasteners" {
  under = "us-ny", date = "2026-03-02", with = { ["underlayments[1].fastener"] = "nail" },
  { "hurricane-prone", with = { ["site.hurricane_prone_region"] = true }, expect = "fail",
    where = "main front" },
  { "not, though the map shades it", with = { ["site.hurricane_prone_region"] = false,
    ["site.wind_design_required"] = true }, expect = "not_applicable", where = "main front" },
  { "not known", expect = "open", where = "main front" },
  { "the map decides in the model code", under = "model/irc-2024",
    with = { ["site.hurricane_prone_region"] = true }, expect = "not_applicable",
    where = "main front" },
}
cases "permit.life" {
  under = "us-ny", date = "2026-03-02", stage = "deck",
  { "the city says how long", expect = "open", says = "leaves it to" },
}
cases "alarms.co" {
  under = "us-ny",
  { "in a code that was not read", date = "2026-03-02", expect = "open", says = "fire code" },
  { "let off by the book before", date = "2025-12-30", expect = "not_applicable" },
}
