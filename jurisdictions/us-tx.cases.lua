-- Cases of Texas by default: the statute's text of 1 May 2012, and the job that
-- belongs under the windstorm rule.

cases "slope.least" {
  under = "us-tx",
  { "the day before", date = "2021-12-31", expect = "refused", says = "from 2022-01-01" },
  { "on the first day", date = "2022-01-01", expect = "warn", where = "main front",
    says = "later edition" },
  { "too flat", date = "2022-01-01", with = { ["roof.slopes[1].pitch"] = "1.5:12" },
    expect = "fail", where = "main front" },
}

-- The edition of 2012 bars laying over where hail is moderate or severe.
cases "layers.hail" {
  under = "us-tx", with = { ["scope.method"] = "overlay", ["existing.layers_removed"] = 0,
    ["existing.coverings[1].removed"] = false },
  { "severe hail", with = { ["site.hail_exposure"] = "severe" }, expect = "fail" },
  { "little hail", expect = "pass" },
}

cases "papers.windstorm_book" {
  under = "us-tx",
  { "no certificate wanted", with = { ["site.windstorm_certificate"] = false },
    expect = "pass" },
  { "certificate wanted: the wrong profile", with = { ["site.windstorm_certificate"] = true },
    expect = "fail" },
  { "not known", expect = "open" },
}
