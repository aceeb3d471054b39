-- Cases of the Texas windstorm rule (the insurance department's pages; 28 TAC 5.4603).

cases "papers.windstorm_book" {
  under = "us-tx-windstorm",
  { "certificate wanted", with = { ["site.windstorm_certificate"] = true }, expect = "pass" },
  { "none wanted: the wrong profile", with = { ["site.windstorm_certificate"] = false },
    expect = "fail" },
  { "on the first day", date = "2020-09-01", with = { ["site.windstorm_certificate"] = true },
    expect = "pass" },
  { "not known", expect = "open" },
  { "the day before", date = "2020-08-31", expect = "refused", says = "from 2020-09-01" },
}

cases "papers.windstorm_application" {
  under = "us-tx-windstorm", with = { ["site.windstorm_certificate"] = true },
  { "filed", with = { ["papers.windstorm_applied"] = true }, expect = "pass" },
  { "not filed", with = { ["papers.windstorm_applied"] = false }, expect = "fail" },
  { "not known", expect = "open" },
  { "no certificate wanted", with = { ["site.windstorm_certificate"] = false },
    expect = "not_applicable" },
}
cases "papers.windstorm_products" {
  under = "us-tx-windstorm", with = { ["site.windstorm_certificate"] = true },
  { "listed", with = { ["papers.windstorm_listed"] = true }, expect = "pass" },
  { "not listed", with = { ["papers.windstorm_listed"] = false }, expect = "fail" },
  { "not known", expect = "open" },
}
cases "inspection.windstorm" {
  under = "us-tx-windstorm", stage = "deck", with = { ["site.windstorm_certificate"] = true },
  { "an appointed engineer", with = { ["inspection.windstorm_by"] = "appointed_engineer" },
    expect = "pass" },
  { "the city alone", with = { ["inspection.windstorm_by"] = "city" }, expect = "fail" },
  { "not known", expect = "open" },
}

-- The edition of 2018 takes an overlay in hail.
cases "layers.overlay" {
  under = "us-tx-windstorm", with = { ["scope.method"] = "overlay",
    ["existing.layers_removed"] = 0, ["existing.coverings[1].removed"] = false,
    ["site.hail_exposure"] = "severe" },
  { "severe hail", expect = "pass" },
}

cases "inspection.windstorm" {
  under = "us-tx-windstorm", stage = "deck", with = { ["site.windstorm_certificate"] = true },
  { "the department", with = { ["inspection.windstorm_by"] = "department" }, expect = "pass" },
}

-- The book by the day of application: one for all before March 2026, in doubt for a month,
-- the next from April. In a mapped area the book of 2024 takes no one ply of light felt.
cases "deck.nail_field" {
  under = "us-tx-windstorm", with = { ["decks[1].nails.field_spacing_in"] = 12 },
  { "12 in on the last day before", date = "2026-02-28", expect = "pass", required = 12 },
  { "12 in in the month of doubt", date = "2026-03-31", expect = "pass", required = 12,
    says = "from 1 March 2026" },
  { "12 in by the book of 2024", date = "2026-04-01", expect = "fail", required = 6,
    says = "read second-hand" },
}
