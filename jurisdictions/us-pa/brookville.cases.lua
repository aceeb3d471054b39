-- Cases of Brookville.

cases "permit.every" {
  under = "us-pa/brookville", from = "paperwork", with = { ["permit.status"] = "none" },
  { "new shingles", expect = "not_applicable" },
  { "under IRC 2021", under = "model/irc-2021", expect = "fail" },
}

cases "permit.by_structure" {
  under = "us-pa/brookville", from = "paperwork",
  { "new trusses are another matter", with = { ["permit.status"] = "none",
    ["scope.structure_altered"] = true }, expect = "fail" },
}
