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

-- Carbon monoxide alarms in every house but an old one that its owner lives in (R315.2.2),
-- and the last day.
cases "alarms.co" {
  under = "us-wa", date = "2026-03-02", with = { ["alarms.co_at"] = { "none" },
    ["permit.status"] = "applied", ["house.co_sources"] = { "none" } },
  { "let to others", with = { ["house.owner_lives_there"] = false }, expect = "fail" },
  { "the owner lives there", with = { ["house.owner_lives_there"] = true },
    expect = "not_applicable" },
  { "of 2009", with = { ["house.owner_lives_there"] = true, ["house.year_built"] = 2009 },
    expect = "fail" },
  { "of 2008", with = { ["house.owner_lives_there"] = true, ["house.year_built"] = 2008 },
    expect = "not_applicable" },
  { "two families", with = { ["house.owner_lives_there"] = true,
    ["house.kind"] = "two_family" }, expect = "fail" },
  { "not known who lives there", expect = "open" },
  { "outside the bedrooms alone", with = { ["house.owner_lives_there"] = false,
    ["alarms.co_at"] = { "outside_bedrooms" } }, expect = "fail" },
  { "on each story alone", with = { ["house.owner_lives_there"] = false,
    ["alarms.co_at"] = { "each_story" } }, expect = "fail" },
  { "both", with = { ["house.owner_lives_there"] = false,
    ["alarms.co_at"] = { "outside_bedrooms", "each_story" } }, expect = "pass" },
}
cases "alarms.smoke" {
  under = "us-wa", date = "2026-03-02",
  { "let off", with = { ["alarms.smoke_at"] = { "none" } }, expect = "not_applicable" },
}
cases "slope.least" {
  under = "us-wa",
  { "on the last day", date = "2027-05-02", expect = "pass", where = "main front" },
  { "the codes of 2024 are not carried", date = "2027-05-03", expect = "refused",
    says = "to 2027-05-03" },
}
