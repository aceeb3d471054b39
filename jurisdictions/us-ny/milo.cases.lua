-- Cases of Milo, beside the model edition that the state's book of 2025 rests on.

cases "permit.by_deck" {
  under = "us-ny/milo", from = "paperwork", with = { ["permit.status"] = "none" },
  { "sheathing replaced", expect = "fail" },
  { "none replaced", with = { ["decks[1].work"] = "kept" }, expect = "pass" },
  { "any reroof under IRC 2024", under = "model/irc-2024", expect = "not_applicable" },
}

cases "inspection.notice" {
  under = "us-ny/milo", from = "paperwork",
  { "24 hours, exactly", expect = "pass", required = 24 },
  { "23", with = { ["inspection.notice_hours"] = 23 }, expect = "fail" },
}

cases "papers.lead_firm" {
  under = "us-ny/milo", from = "paperwork", with = { ["contractor.lead_safe_firm"] = false },
  { "a house of 1977", with = { ["house.year_built"] = 1977 }, expect = "fail" },
  { "of 1978", with = { ["house.year_built"] = 1978 }, expect = "not_applicable" },
}

cases "permit.by_deck" {
  under = "us-ny/milo", from = "paperwork", with = { ["permit.status"] = "none" },
  { "a tenth of a square foot", with = { ["decks[1].replaced_sqft"] = 0.1 }, expect = "fail" },
}

cases "papers.insurance" {
  under = "us-ny/milo", from = "paperwork",
  { "workers' compensation", with = { ["contractor.insurance"] = { "workers_comp" } },
    expect = "pass" },
  { "liability only", with = { ["contractor.insurance"] = { "liability" } }, expect = "fail",
    says = "workers comp" },
}
