-- Cases of New Jersey: the subcode's first day, and the ice barrier by January's mean
-- (R905.1.2).

cases "ice_barrier.kind" {
  under = "us-nj", with = { ["ice_barrier.kind"] = "none" },
  { "the day before", date = "2022-09-05", expect = "refused", says = "from 2022-09-06" },
  { "25 F on the first day, exactly", date = "2022-09-06",
    with = { ["site.january_mean_F"] = 25 }, expect = "fail" },
  { "26 F, whatever a table says", date = "2026-03-02", with = { ["site.january_mean_F"] = 26,
    ["site.ice_barrier_in_table"] = true }, expect = "not_applicable" },
  { "the last day of which the text was read", date = "2026-01-14",
    with = { ["site.january_mean_F"] = 26 }, expect = "not_applicable" },
  { "the next day, on which a newer book may have begun", date = "2026-01-15",
    with = { ["site.january_mean_F"] = 25 }, expect = "fail" },
  { "not known", date = "2026-03-02", expect = "open" },
  { "in Montville too", under = "us-nj/montville", date = "2026-03-02",
    with = { ["site.january_mean_F"] = 25 }, expect = "fail" },
}
