-- Cases of Saratoga Springs, beside the state.

cases "permit.certificate" {
  under = "us-ny/saratoga-springs", from = "paperwork",
  { "issued", with = { ["permit.certificate"] = true }, expect = "pass" },
  { "none", with = { ["permit.certificate"] = false }, expect = "fail" },
  { "not known", expect = "open" },
  { "under the state", under = "us-ny", with = { ["permit.certificate"] = false },
    expect = "not_applicable" },
}

cases "inspection.dry_in" {
  under = "us-ny/saratoga-springs", from = "paperwork",
  { "an affidavit does", with = { ["inspection.dry_in.proof"] = "affidavit" },
    expect = "pass" },
  { "photographs do not", with = { ["inspection.dry_in.proof"] = "photos" }, expect = "fail" },
  { "under the state", under = "us-ny", with = { ["inspection.dry_in.proof"] = "none" },
    expect = "open" },
}

cases "papers.affidavit" {
  under = "us-ny/saratoga-springs", from = "paperwork",
  { "none is due after a visit", with = { ["papers.affidavit.covers"] = { "none" },
    ["inspection.deck.proof"] = "none" }, expect = "not_applicable" },
  { "without one", with = { ["inspection.dry_in.proof"] = "affidavit",
    ["papers.affidavit.covers"] = { "deck_nailing" } }, expect = "fail",
    says = "ice barrier" },
  { "on the ice barrier", with = { ["inspection.dry_in.proof"] = "affidavit",
    ["papers.affidavit.covers"] = { "ice_barrier" } }, expect = "pass" },
}

local function open(days, explained)
  return { ["permit.open_days"] = days, ["permit.delay_explained"] = explained }
end

cases "permit.open" {
  under = "us-ny/saratoga-springs", from = "paperwork",
  { "45 days, exactly", with = open(45), expect = "pass", required = 45 },
  { "46", with = open(46, false), expect = "fail" },
  { "46, with a reason given", with = open(46, true), expect = "pass" },
  { "46, reason not known", with = { ["permit.open_days"] = 46 }, expect = "open" },
  { "under the state", under = "us-ny", with = open(400, false), expect = "not_applicable" },
}

cases "permit.overdue" {
  under = "us-ny/saratoga-springs", from = "paperwork",
  { "another one left open", with = { ["contractor.overdue_permits"] = true },
    expect = "fail" },
}

cases "inspection.dry_in" {
  under = "us-ny/saratoga-springs", from = "paperwork",
  { "a visit", expect = "pass" },
}

-- The final is from the ground.
cases "inspection.access" {
  under = "us-ny/saratoga-springs", from = "paperwork",
  { "no way up", with = { ["inspection.access"] = "none" }, expect = "not_applicable" },
  { "no way up, under the state", under = "us-ny", with = { ["inspection.access"] = "none" },
    expect = "fail" },
}

cases "permit.every" {
  under = "us-ny/saratoga-springs", from = "paperwork",
  { "issued", expect = "pass" },
  { "none", with = { ["permit.status"] = "none" }, expect = "fail" },
}
