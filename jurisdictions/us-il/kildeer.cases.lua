-- Cases of Kildeer, beside IRC 2012.

-- (12 overhang + 6 wall + 36 inside) x 1.0833 at 5:12 = 58.5 in; 45.5 by 24 in.
cases "ice_barrier.reach" {
  under = "us-il/kildeer",
  { "58.5 in, exactly", with = { ["roof.edges[1].ice_barrier_reach_in"] = 58.5 },
    expect = "pass", where = "front eave", required = 58.5 },
  { "what would do at 24 in", with = { ["roof.edges[1].ice_barrier_reach_in"] = 45.5 },
    expect = "fail", where = "front eave", required = 58.5 },
  { "not asked for by the table elsewhere", under = "model/irc-2012",
    with = { ["roof.edges[1].ice_barrier_reach_in"] = 0 }, expect = "not_applicable",
    where = "front eave" },
}

local function rake(reach)
  return { ["roof.edges[4].overhang_in"] = 6, ["roof.edges[4].wall_thickness_in"] = 6,
    ["roof.edges[4].ice_barrier_reach_in"] = reach }
end

cases "ice_barrier.rakes" {
  under = "us-il/kildeer",
  { "6 overhang + 6 wall + 36, exactly", with = rake(48), expect = "pass",
    where = "front left rake", required = 48 },
  { "one course of 36 in", with = rake(36), expect = "fail", where = "front left rake" },
  { "not known", expect = "open", where = "front left rake" },
  { "not asked for by IRC 2012", under = "model/irc-2012", with = rake(0),
    expect = "not_applicable", where = "front left rake" },
}

cases "ice_barrier.valleys" {
  under = "us-il/kildeer",
  { "none", with = { ["roof.valleys"] = { { name = "valley", ice_barrier = false } } },
    expect = "fail", where = "valley" },
  { "there", with = { ["roof.valleys"] = { { name = "valley", ice_barrier = true } } },
    expect = "pass", where = "valley" },
  { "not known", with = { ["roof.valleys"] = { { name = "valley" } } }, expect = "open",
    where = "valley" },
  { "not asked for by IRC 2012", under = "model/irc-2012",
    with = { ["site.ice_barrier_in_table"] = true,
      ["roof.valleys"] = { { name = "valley", ice_barrier = false } } },
    expect = "not_applicable", where = "valley" },
}

cases "permit.grade" {
  under = "us-il/kildeer", from = "paperwork",
  { "laminated", expect = "pass" },
  { "three-tab", with = { ["covering.grade"] = "three_tab" }, expect = "fail" },
  { "under IRC 2012", under = "model/irc-2012", with = { ["covering.grade"] = "three_tab" },
    expect = "not_applicable" },
}

cases "permit.warranty" {
  under = "us-il/kildeer", from = "paperwork",
  { "30 years only", with = { ["covering.lifetime_warranty"] = false }, expect = "fail" },
}

cases "deck.thickness" {
  under = "us-il/kildeer",
  { "7/16", expect = "fail", required = 0.5 },
  { "1/2 in, exactly", with = { ["decks[1].thickness_in"] = 0.5 }, expect = "pass" },
  { "7/16 that stays", with = { ["decks[1].work"] = "kept" }, expect = "open" },
  { "7/16 under IRC 2012", under = "model/irc-2012", expect = "not_applicable" },
}

cases "fire.material_ban" {
  under = "us-il/kildeer",
  { "metal shingles too", with = { ["covering.kind"] = "metal_shingle" }, expect = "fail" },
  { "metal panels", with = { ["covering.kind"] = "metal_panel" }, expect = "fail" },
  { "shingles of asphalt may be laid, on a page of an older code", expect = "pass" },
}

cases "drip_edge.rake" {
  under = "us-il/kildeer", with = { ["roof.edges[4].drip_edge"] = false },
  { "none asked for", expect = "not_applicable", where = "front left rake" },
}

-- Laid over: asphalt may be, all that the page names may not.
local function over(kind)
  return { ["scope.method"] = "overlay", ["existing.layers_removed"] = 0,
    ["existing.coverings"] = { { kind = kind, thickness_in = 0.25, removed = false } } }
end
cases "layers.base_kind" {
  under = "us-il/kildeer",
  { "asphalt", with = over "asphalt_shingle", expect = "pass" },
  { "slate", with = over "slate", expect = "fail" },
  { "clay tile", with = over "clay_tile", expect = "fail" },
  { "concrete tile", with = over "concrete_tile", expect = "fail" },
  { "asbestos cement", with = over "asbestos_cement", expect = "fail" },
  { "wood shakes, which IRC 2012 bars too", with = over "wood_shake", expect = "fail" },
}

-- A thousandth short; and boards, whose kind the page does not let off.
cases "ice_barrier.reach" {
  under = "us-il/kildeer",
  { "58.499 in", with = { ["roof.edges[1].ice_barrier_reach_in"] = 58.499 },
    expect = "fail", where = "front eave", required = 58.5 },
}
cases "deck.thickness" {
  under = "us-il/kildeer",
  { "0.499 in", with = { ["decks[1].thickness_in"] = 0.499 }, expect = "fail", required = 0.5 },
  { "thin new boards", with = { ["decks[1].kind"] = "board", ["decks[1].work"] = "replaced" },
    expect = "fail", required = 0.5 },
  { "thin new spaced boards", with = { ["decks[1].kind"] = "spaced_board",
    ["decks[1].work"] = "replaced" }, expect = "fail", required = 0.5 },
}

cases "papers.contract" {
  under = "us-il/kildeer", from = "paperwork",
  { "handed in", expect = "pass" },
  { "not", with = { ["papers.contract"] = false }, expect = "fail" },
}

cases "papers.liability" {
  under = "us-il/kildeer", from = "paperwork",
  { "a million dollars, exactly", expect = "pass", required = 1000000 },
  { "a dollar less", with = { ["contractor.liability_usd"] = 999999 }, expect = "fail" },
}

cases "papers.association" {
  under = "us-il/kildeer", from = "paperwork",
  { "its letter", expect = "pass" },
  { "without", with = { ["papers.association_letter"] = false }, expect = "fail" },
}

cases "permit.license" {
  under = "us-il/kildeer", from = "paperwork",
  { "a roofer's", expect = "pass" },
  { "a general one", with = { ["contractor.license"] = "general" }, expect = "fail" },
}

cases "drip_edge.eave" {
  under = "us-il/kildeer",
  { "none", with = { ["roof.edges[1].drip_edge"] = false },
    expect = "not_applicable", where = "front eave" },
}

cases "drip_edge.rake" {
  under = "us-il/kildeer",
  { "none", with = { ["roof.edges[4].drip_edge"] = false },
    expect = "not_applicable", where = "front left rake" },
}
