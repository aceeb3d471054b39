-- Cases of North Richland Hills, beside IRC 2018.

cases "permit.by_deck" {
  under = "us-tx/north-richland-hills", from = "paperwork",
  with = { ["permit.status"] = "none" },
  { "deck repaired", expect = "fail" },
  { "shingles only", with = { ["decks[1].work"] = "kept" }, expect = "pass" },
}

-- A duty without a permit.
cases "flashing.kickout" {
  under = "us-tx/north-richland-hills", with = { ["permit.status"] = "none",
    ["roof.walls"] = { { name = "wall", kind = "sidewall", eave_ends_here = true,
      kickout = false } } },
  { "no kick-out", expect = "fail", where = "wall" },
}

cases "ice_barrier.kind" {
  under = "us-tx/north-richland-hills",
  with = { ["site.ice_barrier_in_table"] = true, ["ice_barrier.kind"] = "none" },
  { "never asked for", expect = "not_applicable" },
  { "by the table under IRC 2018", under = "model/irc-2018", expect = "fail" },
}

cases "underlayment.plies" {
  under = "us-tx/north-richland-hills",
  { "none laid anew", with = { ["underlayments[1].plies"] = 0 }, expect = "fail",
    where = "main front" },
}

cases "papers.double_deck" {
  under = "us-tx/north-richland-hills", from = "paperwork",
  with = { ["decks[1].work"] = "paneled_over", ["papers.engineer_report"] = false },
  { "panels over panels", expect = "fail" },
  { "panels over spaced boards", with = { ["decks[1].kind"] = "spaced_board" },
    expect = "not_applicable" },
  { "under IRC 2018", under = "model/irc-2018", expect = "open" },
}

cases "layers.total" {
  under = "us-tx/north-richland-hills",
  { "a second layer, exactly", with = { ["scope.method"] = "overlay",
    ["existing.layers_removed"] = 0, ["existing.coverings[1].removed"] = false },
    expect = "pass", required = 2 },
}

cases "underlayment.old_left" {
  under = "us-tx/north-richland-hills",
  { "an old ice barrier covered again", with = { ["existing.adhered_left"] = "ice_barrier",
    ["existing.adhered_left_covered"] = true }, expect = "open", says = "says nothing" },
}
