-- Cases of Minneapolis, beside the state.

local function boards(gap)
  return { ["decks[1].kind"] = "board", ["decks[1].work"] = "kept",
    ["decks[1].board_gap_in"] = gap }
end

local function over(thickness, bare)
  return { ["decks[1].kind"] = "board", ["decks[1].work"] = "paneled_over",
    ["decks[1].over_panel_thickness_in"] = thickness, ["decks[1].panel_edges_bare"] = bare }
end

-- The state has no figure: common practice of 1/4 in only warns.
cases "deck.board_gap" {
  under = "us-mn/minneapolis",
  { "1/2 in, exactly", with = boards(0.5), expect = "warn", required = 0.5 },
  { "5/8 in", with = boards(0.625), expect = "fail", required = 0.5 },
  { "5/8 in under the state", under = "us-mn", with = boards(0.625), expect = "warn",
    required = 0.25 },
}

cases "deck.thickness" {
  under = "us-mn/minneapolis",
  { "11/32 over boards, exactly", with = over(0.34375, false), expect = "warn",
    required = 0.34375 },
  { "5/16", with = over(0.3125, false), expect = "fail" },
  { "boards that stay bare", with = boards(0.5), expect = "not_applicable" },
  { "under the state", under = "us-mn", with = over(0.3125, false),
    expect = "not_applicable" },
}

cases "deck.panel_edges" {
  under = "us-mn/minneapolis",
  { "hidden", with = over(0.34375, false), expect = "warn" },
  { "bare", with = over(0.34375, true), expect = "fail" },
  { "not looked at", with = over(0.34375), expect = "open" },
  { "under the state", under = "us-mn", with = over(0.34375, true), expect = "not_applicable" },
}

-- A thousandth past the figures, and decks of other kinds.
cases "deck.board_gap" {
  under = "us-mn/minneapolis",
  { "0.501 in", with = boards(0.501), expect = "fail", required = 0.5 },
}
cases "deck.thickness" {
  under = "us-mn/minneapolis",
  { "0.343 in over boards", with = over(0.343, false), expect = "fail", required = 0.34375 },
  { "5/16 over spaced boards", expect = "fail", with = { ["decks[1].kind"] = "spaced_board",
    ["decks[1].work"] = "paneled_over", ["decks[1].over_panel_thickness_in"] = 0.3125 } },
  { "5/16 over panels: the handout speaks of boards", expect = "not_applicable",
    with = { ["decks[1].work"] = "paneled_over",
      ["decks[1].over_panel_thickness_in"] = 0.3125 } },
}
