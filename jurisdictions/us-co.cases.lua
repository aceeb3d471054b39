-- Cases of Colorado: nothing passes or fails for want of a state code (pages of
-- its cities and counties, each on an edition of its own).

cases "layers.total" {
  under = "us-co",
  { "one layer does not pass", expect = "open", says = "no state residential code" },
  { "nor does a third fail", with = { ["scope.method"] = "overlay",
    ["existing.layers"] = 2, ["existing.layers_removed"] = 0, ["existing.coverings"] = {
      { kind = "asphalt_shingle", thickness_in = 0.25, removed = false },
      { kind = "asphalt_shingle", thickness_in = 0.25, removed = false } } },
    expect = "open" },
}
cases "ice_barrier.kind" {
  under = "us-co",
  { "the city says whether", expect = "open" },
}
cases "inspection.mid_roof" {
  under = "us-co",
  { "asked for by some of its counties", expect = "open",
    says = "was not read: its pages on visits" },
}
