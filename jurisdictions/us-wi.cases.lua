-- Cases of Wisconsin: what was read of SPS 321 is judged, and nothing else is,
-- whatever the model code says.

cases "slope.least" {
  under = "us-wi",
  { "5:12 does not pass", expect = "open", where = "main front",
    says = "dwelling code of its own" },
  { "1:12 does not fail", with = { ["roof.slopes[1].pitch"] = "1:12" }, expect = "open",
    where = "main front" },
}
cases "layers.total" {
  under = "us-wi", { "one layer", expect = "open" },
}
cases "drip_edge.eave" {
  under = "us-wi",
  { "none", with = { ["roof.edges[1].drip_edge"] = false }, expect = "open",
    where = "front eave" },
  { "there", expect = "open", where = "front eave" },
}
cases "ice_barrier.kind" {
  under = "us-wi", { "self-adhered", expect = "open" },
}
cases "ice_barrier.reach" {
  under = "us-wi", { "dropped for the state's own", expect = "not_applicable" },
}
cases "papers.contract" {
  under = "us-wi", { "a paper that the model leaves to the place", expect = "open" },
}
-- What only practice asks for stays advice.
cases "deck.panel_gap" {
  under = "us-wi", { "1/8 in", expect = "pass" },
}

local BOARDS = { ["decks[1].kind"] = "board", ["decks[1].work"] = "replaced",
  ["decks[1].support_spacing_in"] = 24, ["house.year_built"] = 1994 }
cases "deck.board_thickness" {
  under = "us-wi", with = BOARDS,
  { "5/8 in, exactly", with = { ["decks[1].thickness_in"] = 0.625 }, expect = "warn",
    required = 0.625, says = "1980" },
  { "1/2 in", with = { ["decks[1].thickness_in"] = 0.5 }, expect = "fail", required = 0.625 },
  { "1/2 in kept from before is not settled", with = { ["decks[1].thickness_in"] = 0.5,
    ["decks[1].work"] = "kept" }, expect = "open" },
  { "1 in on rafters too far apart", with = { ["decks[1].support_spacing_in"] = 25,
    ["decks[1].thickness_in"] = 1 }, expect = "fail", required = 1.5 },
  { "not known", without = { "decks[1].thickness_in" }, expect = "open" },
}

cases "deck.spaced_board_thickness" {
  under = "us-wi", with = { ["decks[1].kind"] = "spaced_board",
    ["decks[1].support_spacing_in"] = 24 },
  { "3/4 in, exactly", with = { ["decks[1].thickness_in"] = 0.75 }, expect = "pass",
    required = 0.75 },
  { "5/8 in", with = { ["decks[1].thickness_in"] = 0.625 }, expect = "fail", required = 0.75 },
  { "rafters farther apart", with = { ["decks[1].thickness_in"] = 0.75,
    ["decks[1].support_spacing_in"] = 25 }, expect = "open" },
  { "a house of 1979", with = { ["house.year_built"] = 1979 }, expect = "not_applicable",
    says = "local code" },
  { "a house of 1980", with = { ["house.year_built"] = 1980 }, expect = "open",
    says = "1 June" },
  { "a house of 1981", with = { ["house.year_built"] = 1981,
    ["decks[1].thickness_in"] = 0.625 }, expect = "fail" },
  { "not known", without = { "decks[1].thickness_in" }, expect = "open" },
}

cases "wind.uplift" {
  under = "us-wi", with = { ["scope.structure_altered"] = true },
  { "20 psf, exactly", with = { ["roof.uplift_psf"] = 20 }, expect = "pass", required = 20 },
  { "just under", with = { ["roof.uplift_psf"] = 19.99 }, expect = "fail" },
  { "not known", expect = "open" },
  { "framing left alone", with = { ["scope.structure_altered"] = false },
    expect = "not_applicable" },
}
cases "wind.framing_ties" {
  under = "us-wi", with = { ["scope.structure_altered"] = true },
  { "strapped", with = { ["roof.rafter_span_ft"] = 14, ["roof.ties_at_each_rafter"] = true },
    expect = "pass" },
  { "not", with = { ["roof.rafter_span_ft"] = 14, ["roof.ties_at_each_rafter"] = false },
    expect = "fail" },
  { "6 ft, exactly", with = { ["roof.rafter_span_ft"] = 6 }, expect = "not_applicable" },
  { "a hair over 6 ft", with = { ["roof.rafter_span_ft"] = 6.01,
    ["roof.ties_at_each_rafter"] = false }, expect = "fail" },
  { "span not known", expect = "open" },
}

-- At 4:12: (12 + 6) x 1.0541 + 12 = 31.0 in; with no overhang, 6.3 + 12 is less
-- than 30. The 12 in are already along the slope.
local function eave(reach, pitch, overhang)
  return { ["roof.slopes[1].pitch"] = pitch or "4:12",
    ["roof.edges[1].overhang_in"] = overhang or 12,
    ["roof.edges[1].ice_barrier_reach_in"] = reach }
end
cases "ice_barrier.up_slope" {
  under = "us-wi",
  { "31 in, exactly", with = eave(31), expect = "warn", where = "front eave", required = 30.974 },
  { "30 in with an overhang of 12", with = eave(30), expect = "fail", where = "front eave",
    required = 30.974 },
  { "30 in with none, exactly", with = eave(30, "4:12", 0), expect = "warn",
    where = "front eave", required = 30 },
  { "29 in", with = eave(29, "4:12", 0), expect = "fail", where = "front eave", required = 30 },
  { "too short on a steeper slope: not settled", with = eave(29, "5:12"), expect = "open",
    where = "front eave", says = "flatter slopes" },
  { "far enough on a steeper slope", with = eave(66, "5:12"), expect = "warn",
    where = "front eave" },
  { "measured, the shortest counts", stage = "dry-in",
    with = { ["roof.slopes[1].pitch"] = "4:12",
      ["roof.edges[1].measured_ice_barrier_reach_in"] = { 40, 28, 36 } },
    expect = "fail", where = "front eave", found = 28 },
  { "no heated space", expect = "not_applicable", where = "porch eave" },
  { "a house of 1979", with = { ["house.year_built"] = 1979 }, expect = "not_applicable",
    where = "front eave" },
  { "not known", without = { "roof.edges[1].ice_barrier_reach_in" }, expect = "open",
    where = "front eave" },
}

-- A thousandth short.
cases "deck.spaced_board_thickness" {
  under = "us-wi", with = { ["decks[1].kind"] = "spaced_board",
    ["decks[1].support_spacing_in"] = 24, ["decks[1].thickness_in"] = 0.749 },
  { "0.749 in", expect = "fail", required = 0.75 },
}
-- (12 + 6) x 1.05409 + 12 = 30.97367: 30.974 in is the least that will do.
cases "ice_barrier.up_slope" {
  under = "us-wi",
  { "30.974 in", with = eave(30.974), expect = "warn", where = "front eave", required = 30.974 },
  { "30.973 in", with = eave(30.973), expect = "fail", where = "front eave", required = 30.974 },
  { "29.999 in with no overhang", with = eave(29.999, "4:12", 0), expect = "fail",
    where = "front eave", required = 30 },
  { "too short at 4.01:12 is not settled", with = eave(20, "4.01:12"), expect = "open",
    where = "front eave", says = "flatter slopes" },
}
