-- Cases of Tamarack County, invented: each figure it tightens, shown to bind
-- there, and not the day before its code began or under the code it follows.

local OVERLAY = { ["scope.method"] = "overlay", ["existing.layers_removed"] = 0,
  ["existing.coverings[1].removed"] = false }

cases "layers.total" {
  under = "example/tamarack",
  { "a tear-off leaves one", expect = "pass", required = 1, found = 1 },
  { "an overlay of one makes two", with = OVERLAY, expect = "fail", required = 1, found = 2 },
  { "on the day the county code begins", date = "2025-07-01", with = OVERLAY, expect = "fail",
    required = 1 },
  { "the day before, no edition is in force", date = "2025-06-30", expect = "refused",
    says = "from 2025-07-01" },
  { "layers not known", without = { "existing.layers", "existing.layers_removed" },
    expect = "open" },
  { "the same overlay under the code it follows", under = "model/irc-2021", with = OVERLAY,
    expect = "pass", required = 2, found = 2 },
}

cases "slope.double_underlayment" {
  under = "example/tamarack",
  { "one ply at 4:12 is too few here", expect = "fail", where = "porch", required = 2,
    found = 1 },
  { "exactly 5:12 needs one", expect = "not_applicable", where = "main front" },
  { "just under 5:12", with = { ["roof.slopes[1].pitch"] = "4.99:12" }, expect = "fail",
    where = "main front" },
  { "at 4:12 one does under the code it follows", under = "model/irc-2021",
    expect = "not_applicable", where = "porch" },
}

cases "underlayment.kind" {
  under = "example/tamarack",
  { "the light felt", expect = "fail", where = "main front", says = "D226 I;" },
  { "the heavy one", with = { ["underlayments[1].kind"] = "D226_II" }, expect = "pass",
    where = "main front" },
  { "the light felt under the code it follows", under = "model/irc-2021", expect = "pass",
    where = "main front" },
}

for _, kind in ipairs { "D4869_III", "D4869_IV", "D6757" } do
  cases "underlayment.kind" {
    under = "example/tamarack",
    { kind, with = { ["underlayments[1].kind"] = kind }, expect = "pass",
      where = "main front" },
  }
end

-- (12 overhang + 6 wall + 30 inside) x 1.0833 at 5:12 = 52 in, where the code
-- it follows would ask for (12 + 6 + 24) x 1.0833 = 45.5 in if it asked at all.
cases "ice_barrier.reach" {
  under = "example/tamarack",
  { "66 in at the front eave", expect = "pass", where = "front eave", required = 52,
    found = 66 },
  { "exactly enough", with = { ["roof.edges[1].ice_barrier_reach_in"] = 52 },
    expect = "pass", where = "front eave", required = 52 },
  { "what would do at 24 in inside", with = { ["roof.edges[1].ice_barrier_reach_in"] = 45.5 },
    expect = "fail", where = "front eave", required = 52, found = 45.5 },
  { "wall not known", without = { "roof.edges[1].wall_thickness_in" }, expect = "open",
    where = "front eave" },
  { "an overlay opens no eaves", with = OVERLAY, expect = "not_applicable",
    where = "front eave" },
  { "not asked for by the code it follows", under = "model/irc-2021",
    expect = "not_applicable", where = "front eave" },
}

cases "drip_edge.lap" {
  under = "example/tamarack",
  { "2 in", expect = "fail", required = 3, found = 2 },
  { "3 in, exactly", with = { ["drip_edge.lap_in"] = 3 }, expect = "pass", required = 3 },
  { "2 in under the code it follows", under = "model/irc-2021", expect = "pass",
    required = 2 },
}

cases "drip_edge.fastener_spacing" {
  under = "example/tamarack",
  { "12 in", expect = "fail", required = 8, found = 12 },
  { "8 in, exactly", with = { ["drip_edge.fastener_spacing_in"] = 8 }, expect = "pass",
    required = 8 },
  { "12 in under the code it follows", under = "model/irc-2021", expect = "pass",
    required = 12 },
}

cases "fasteners.count" {
  under = "example/tamarack",
  { "four", expect = "fail", required = 6, found = 4 },
  { "six, exactly", with = { ["fasteners.per_shingle"] = 6 }, expect = "pass", required = 6 },
  { "counted at the final, one with five", stage = "final",
    with = { ["fasteners.measured_per_shingle"] = { 6, 6, 5 } }, expect = "fail", required = 6,
    found = 5 },
  { "four under the code it follows", under = "model/irc-2021", expect = "pass",
    required = 4 },
}

cases "deck.nail_edges" {
  under = "example/tamarack",
  { "6 in", expect = "fail", required = 4, found = 6 },
  { "4 in, exactly", with = { ["decks[1].nails.edge_spacing_in"] = 4 }, expect = "pass",
    required = 4 },
  { "6 in under the code it follows", under = "model/irc-2021", expect = "pass",
    required = 6 },
}

-- The county's own duty.
cases "deck.pictures" {
  under = "example/tamarack",
  { "pictures planned", with = { ["decks[1].pictures_before_cover"] = true }, expect = "pass" },
  { "none planned", with = { ["decks[1].pictures_before_cover"] = false }, expect = "fail" },
  { "not known", expect = "open", says = "/decks/0/pictures_before_cover" },
  { "an overlay opens no deck", with = OVERLAY, expect = "not_applicable" },
}
