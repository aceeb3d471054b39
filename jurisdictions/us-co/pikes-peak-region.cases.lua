-- Cases of the Pikes Peak region: the change of 1 June 2018, and who calls.

local BARE = { ["roof.edges[1].drip_edge"] = false, ["permit.variances"] = { "none" } }

cases "drip_edge.eave" {
  under = "us-co/pikes-peak-region", with = BARE,
  { "no metal the day before the change", date = "2018-05-31", expect = "not_applicable",
    where = "front eave" },
  { "no metal on the day of the change", date = "2018-06-01", expect = "fail",
    where = "front eave" },
  { "no metal, by variance", date = "2018-06-01",
    with = { ["permit.variances"] = { "drip_edge" } }, expect = "warn", where = "front eave" },
  { "a variance for something else", date = "2018-06-01",
    with = { ["permit.variances"] = { "underlayment" } }, expect = "fail",
    where = "front eave" },
  { "no metal, variance not told", date = "2018-06-01", without = { "permit.variances" },
    expect = "open", where = "front eave" },
  { "no variance helps under the model code", under = "model/irc-2012",
    with = { ["permit.variances"] = { "drip_edge" } }, expect = "fail",
    where = "front eave" },
}

cases "inspection.holder_calls" {
  under = "us-co/pikes-peak-region", from = "paperwork",
  { "the holder", expect = "warn" },
  { "the owner, whose permit it is not", with = { ["inspection.called_by"] = "owner" },
    expect = "fail" },
  { "the owner may call under the model code", under = "model/irc-2012",
    with = { ["inspection.called_by"] = "owner" }, expect = "open" },
}

-- The page counts from the day of issue, not the days without work.
cases "permit.open" {
  under = "us-co/pikes-peak-region", stage = "deck",
  with = { ["permit.longest_idle_days"] = 20, ["permit.extended"] = false },
  { "180 days after issue, exactly", with = { ["permit.open_days"] = 180 }, expect = "pass",
    required = 180 },
  { "181 days after issue, at the deck", with = { ["permit.open_days"] = 181 },
    expect = "fail", required = 180, found = 181 },
  { "200 days, at the dry-in", with = { ["permit.open_days"] = 200 }, stage = "dry-in",
    expect = "fail" },
  { "200 days, extended", with = { ["permit.open_days"] = 200, ["permit.extended"] = true },
    expect = "pass", required = 360 },
  { "361 days: there is one extension only", with = { ["permit.open_days"] = 361,
    ["permit.extended"] = true }, expect = "fail" },
  { "200 days, extended or not is not known", with = { ["permit.open_days"] = 200 },
    without = { "permit.extended" }, expect = "open" },
  { "days since issue not known", expect = "open" },
  { "before the work", with = { ["permit.open_days"] = 200 }, stage = "permit",
    expect = "not_applicable" },
  { "the model code counts days without work", under = "model/irc-2012",
    with = { ["permit.open_days"] = 200 }, expect = "not_applicable" },
}

cases "permit.life" {
  under = "us-co/pikes-peak-region", from = "paperwork",
  { "180 days, exactly", with = { ["permit.longest_idle_days"] = 180 }, expect = "warn",
    required = 180 },
  { "181 days", with = { ["permit.longest_idle_days"] = 181 }, expect = "fail" },
  { "181 days, extended", with = { ["permit.longest_idle_days"] = 181,
    ["permit.extended"] = true }, expect = "warn", required = 360 },
  { "361 days: there is one extension only", with = { ["permit.longest_idle_days"] = 361,
    ["permit.extended"] = true }, expect = "fail", required = 360 },
}

cases "drip_edge.rake" {
  under = "us-co/pikes-peak-region", date = "2018-05-31",
  { "none", with = { ["roof.edges[4].drip_edge"] = false },
    expect = "not_applicable", where = "front left rake" },
}
