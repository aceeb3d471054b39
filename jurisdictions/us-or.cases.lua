-- Cases of Oregon: the book's first day and the day it became the only one (a
-- public programme's page), the layers, and forest land (ORS 215.730).

cases "layers.total" {
  under = "us-or",
  { "the day before", date = "2023-09-30", expect = "refused", says = "from 2023-10-01" },
  { "on the first day", date = "2023-10-01", expect = "warn", found = 1 },
  { "one laid over two", date = "2024-04-01", with = { ["scope.method"] = "overlay",
    ["existing.layers"] = 2, ["existing.layers_removed"] = 0, ["existing.coverings"] = {
      { kind = "asphalt_shingle", thickness_in = 0.25, removed = false },
      { kind = "asphalt_shingle", thickness_in = 0.25, removed = false } } },
    expect = "fail", required = 2, found = 3 },
  { "one laid over one", date = "2024-04-01", with = { ["scope.method"] = "overlay",
    ["existing.layers_removed"] = 0, ["existing.coverings[1].removed"] = false },
    expect = "warn", found = 2 },
}

cases "slope.least" {
  under = "us-or",
  { "while the book before could be used", date = "2024-03-31", expect = "pass",
    where = "main front", says = "until 1 April 2024, and" },
  { "since it is the only one", date = "2024-04-01", expect = "pass", where = "main front",
    says = "that the state's book" },
}

cases "fire.forest_roof" {
  under = "us-or", with = { ["site.forest_zoned"] = true },
  { "fire-retardant", with = { ["covering.fire_retardant"] = true }, expect = "pass" },
  { "not", with = { ["covering.fire_retardant"] = false }, expect = "fail" },
  { "not known", expect = "open" },
  { "no forest land", with = { ["site.forest_zoned"] = false }, expect = "not_applicable" },
  { "zoning not known", without = { "site.forest_zoned" }, expect = "open" },
}
