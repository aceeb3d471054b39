-- Wisconsin: the Uniform Dwelling Code (SPS 320 to 325), not the IRC.
--
-- Only what was read of it is judged: boards of the deck, uplift and ties of
-- the framing, and, second-hand, the ice-dam sheet. All else is open, whatever
-- the model code says of it; the model only gives the questions a name. No day
-- on which these sections began was read, so none is set.
--
-- Houses from before 1 June 1980 fall to local codes. A job says only the year.
-- What the sheet may be made of was not read: ice_barrier.kind stays open.

local BOARDS = "SPS 321.27(9)"
local CHAPTER = "the state's published chapter"
local COPY = "read second-hand: a scraped copy; a roofer's page agrees on the 30 in"
local OLDER = "houses from before 1 June 1980 fall to local codes"

jurisdiction "us-wi" {
  title = "Wisconsin",
  follows = "model/irc-2018",
  borrowed = "Wisconsin has a dwelling code of its own, not this model, and what it says here was "
    .. "not read",
  code = "Wisconsin",
  edition = "Uniform Dwelling Code, SPS 320 to 325 (not the IRC)",
  as_seen = "2026-11-25",
  rules = "us-wi.rules.lua",
  figures = {
    ["permit.dwelling_code_from"] = { 1980, unit = "year", sense = "from",
      cite = "SPS 320 to 325", status = "seen", source = "an inspectors' page: 1 June 1980" },

    ["deck.board_spacing_most"] = { 24, cite = BOARDS, status = "seen", source = CHAPTER,
      disputed = OLDER },
    ["deck.board_thickness_least"] = { 0.625, cite = BOARDS, status = "seen", source = CHAPTER,
      disputed = OLDER },
    ["deck.board_thickness_least_wide"] = { 1.5, cite = BOARDS, status = "seen",
      source = CHAPTER, disputed = OLDER },
    ["deck.spaced_thickness_least"] = { 0.75, unit = "in", sense = "at_least", cite = BOARDS,
      status = "seen", source = CHAPTER },

    ["wind.uplift_least"] = { 20, unit = "psf", sense = "at_least", cite = "SPS 321.27(3)",
      status = "seen", source = CHAPTER },
    ["wind.ties_span_over"] = { 6, unit = "ft", sense = "over", cite = "SPS 321.27(3)",
      status = "seen", source = CHAPTER },

    ["ice_barrier.up_slope_least"] = { 30, unit = "in", sense = "at_least",
      cite = "SPS 321.28(4)", status = "memory", source = COPY },
    ["ice_barrier.past_inner_face_least"] = { 12, unit = "in", sense = "at_least",
      cite = "SPS 321.28(4)", status = "memory", source = "read second-hand: a scraped copy" },
    ["ice_barrier.pitch_most"] = { 4, unit = "rise_in_12", sense = "at_most",
      cite = "SPS 321.28", status = "memory", source = "read second-hand on a roofer's page",
      disputed = "the scraped copy ties the sheet to no slope" },
  },
  drop = {
    ["ice_barrier.reach"] = "measured up the slope here: ice_barrier.up_slope",
  },
}
