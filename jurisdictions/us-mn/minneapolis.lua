-- Minneapolis, Minnesota: a roofer's summary of the city's handout on IRC 2006, an
-- example and hardly present law. The state's book of 2020 binds, so it is
-- followed. Gaps over 1/2 in are filled with strips, or the deck covered with
-- panels of 11/32 in whose edges do not show.

local function told(value, cite)
  return { value, cite = cite or "handout on IRC 2006", status = "memory",
    source = "read second-hand in a roofer's summary of the city's handout" }
end

jurisdiction "us-mn/minneapolis" {
  title = "Minneapolis, Minnesota",
  follows = "us-mn",
  edition = "Minnesota Residential Code 2020; a handout on IRC 2006",
  as_seen = "2026-11-25",
  figures = {
    ["deck.board_gap_most"] = told(0.5),
    ["deck.thickness_counts"] = told(true),
    ["deck.thickness_kinds"] = told { "board", "spaced_board" },
    ["deck.thickness_over_only"] = told(true),
    ["deck.thickness_least"] = told(0.34375),
    ["deck.panel_edges_hidden_required"] = told(true),
    ["flashing.reuse_allowed"] = told(true),
  },
}
