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
