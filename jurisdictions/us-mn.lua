-- Minnesota: the Residential Code of 2020 (Minnesota Rules 1309 on IRC 2018).
--
-- A cold state: every part of it lies in climate zone 6 or 7, and the ice
-- barrier is asked for everywhere. The next book, on a later base, is in
-- preparation; in August 2026 its day was not set.
--
-- Ventilation goes by IRC 2018 R806; a city's handout on the state code of 2015, an
-- older base, has the same figures and asks for both conditions of 1/300 already.
--
-- Cities differ in whether an attached, unheated garage needs the ice barrier, and
-- some bar overlays or metal roofs: that is for profiles of their own.

local ICE = "a city's roofing page citing R905.1.2; statewide reach read second-hand"
local GUIDE = "a guide to asphalt roofing under the state's code"

local function edition(from, to, unsure)
  jurisdiction "us-mn" {
    title = "Minnesota",
    follows = "model/irc-2018",
    unsure = unsure,
    from = from,
    to = to,
    code = "Minnesota Rules",
    edition = "Minnesota Residential Code 2020 (on IRC 2018)",
    as_seen = "2026-11-25",
    figures = {
      ["energy.bare_rafters_count"] = { true, cite = "N1109.1.1", status = "parallel",
        source = "the model code's line; the state has an energy code of its own, not read for it" },
      -- Every reroof of an existing house; the city says which looks it takes.
      ["permit.every"] = { cite = "1309.0010", status = "seen", source = GUIDE },
      ["flashing.kickout_required"] = { cite = "1309.0903, R903.2.2", status = "seen",
        source = "a city's roofing page: on reroofs too" },
      -- Whoever asks for the look gives the inspector a way up.
      ["inspection.access_required"] = { cite = "1300.0210 subp. 4", status = "memory",
        source = "read second-hand on inspectors' pages" },

      ["ice_barrier.required"] = { true, cite = "1309.0905, R905.1.2", status = "seen",
        source = ICE },
      ["ice_barrier.kinds"] = { { "self_adhered", "two_cemented_plies" },
        cite = "1309.0905, R905.1.2", status = "seen", source = ICE },
      ["ice_barrier.inside_wall_least"] = { 24, cite = "1309.0905, R905.1.2", status = "seen",
        source = ICE },
      ["ice_barrier.unheated_exempt"] = { false, cite = "1309.0905, R905.1.2", status = "seen",
        source = "a city's handout asks for it over attached garages, heated or not",
        disputed = "a trade forum lets unheated garages off: ask the building department" },
    },
  }
end

edition("2020-03-31", "2026-08-01")
edition("2026-08-01", nil, "the state's next book was in preparation in August 2026, its day "
  .. "not set: ask whether it has begun")
