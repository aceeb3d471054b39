-- Cases of Illinois: nothing passes or fails on the model code (the state
-- board's answers: new houses only).

cases "slope.least" {
  under = "us-il",
  { "5:12 does not pass", expect = "open", where = "main front", says = "own code binds" },
  { "1:12 does not fail", with = { ["roof.slopes[1].pitch"] = "1:12" }, expect = "open",
    where = "main front" },
}
cases "ice_barrier.kind" {
  under = "us-il",
  { "no duty of the state", with = { ["ice_barrier.kind"] = "none" },
    expect = "not_applicable" },
}
cases "drip_edge.eave" {
  under = "us-il",
  { "no duty of the state", with = { ["roof.edges[1].drip_edge"] = false },
    expect = "not_applicable", where = "front eave" },
}
cases "permit.every" {
  under = "us-il",
  { "the city says whether", with = { ["permit.status"] = "none" }, expect = "open" },
}
cases "inspection.dry_in" {
  under = "us-il",
  { "a look that the model leaves to the place", expect = "open",
    says = "was not read: its pages on visits" },
}

cases "drip_edge.rake" {
  under = "us-il",
  { "none", with = { ["roof.edges[4].drip_edge"] = false }, expect = "not_applicable",
    where = "front left rake" },
}
