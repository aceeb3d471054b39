-- Cases of Festus: duties that must not fire, beside IRC 2012.

cases "drip_edge.eave" {
  under = "us-mo/festus", with = { ["roof.edges[1].drip_edge"] = false },
  { "none asked for", expect = "not_applicable", where = "front eave" },
  { "under IRC 2012", under = "model/irc-2012", expect = "fail", where = "front eave" },
}

cases "drip_edge.lap" {
  under = "us-mo/festus", with = { ["drip_edge.lap_in"] = 0.5 },
  { "what is there is not measured", expect = "not_applicable", says = "does not name" },
  { "under IRC 2012", under = "model/irc-2012", expect = "fail" },
}

cases "ice_barrier.kind" {
  under = "us-mo/festus", with = { ["ice_barrier.kind"] = "none" },
  { "none asked for, whatever the job says of a table",
    with = { ["site.ice_barrier_in_table"] = true }, expect = "not_applicable" },
  { "under IRC 2012 the table decides", under = "model/irc-2012",
    with = { ["site.ice_barrier_in_table"] = true }, expect = "fail" },
}

cases "permit.by_deck" {
  under = "us-mo/festus", from = "paperwork", with = { ["permit.status"] = "none" },
  { "sheathing replaced", expect = "fail" },
  { "an ordinary reroof", with = { ["decks[1].work"] = "kept" }, expect = "pass" },
}

cases "permit.by_structure" {
  under = "us-mo/festus", from = "paperwork",
  { "a truss", with = { ["permit.status"] = "none", ["scope.structure_altered"] = true },
    expect = "fail" },
}

cases "permit.registration" {
  under = "us-mo/festus", from = "paperwork",
  { "not licensed with the city", with = { ["contractor.registered"] = false },
    expect = "fail" },
  { "under IRC 2012", under = "model/irc-2012", with = { ["contractor.registered"] = false },
    expect = "not_applicable" },
}

cases "drip_edge.rake" {
  under = "us-mo/festus",
  { "none", with = { ["roof.edges[4].drip_edge"] = false },
    expect = "not_applicable", where = "front left rake" },
}
