-- Cases of Ohio: the first day (a city's notice of the new code), and the year
-- of a reported revision.

cases "slope.least" {
  under = "us-oh",
  { "the day before", date = "2019-06-30", expect = "refused", says = "from 2019-07-01" },
  { "on the first day", date = "2019-07-01", expect = "pass", where = "main front" },
  { "before the reported revision", date = "2023-12-31", expect = "pass", where = "main front" },
  { "since", date = "2024-01-01", expect = "pass", where = "main front", says = "2024" },
  { "exactly 2:12", date = "2023-12-31", with = { ["roof.slopes[1].pitch"] = "2:12" },
    expect = "pass", where = "main front", required = 2 },
  { "under it", date = "2023-12-31", with = { ["roof.slopes[1].pitch"] = "1.9:12" },
    expect = "fail", where = "main front" },
}
