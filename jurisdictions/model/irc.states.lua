-- Switches of what single states add to the code, off here: the sections named were
-- read and have no such line. The figures that go with a switch stand with the state
-- that turns it on.

-- What was read: code texts of states that took the editions of 2015 to 2024 over,
-- not the printed books. In another edition such a figure counts as parallel.
local TEXTS = "state code texts on the editions of 2015 to 2024"
local BOOKS = { "IRC 2015", "IRC 2018", "IRC 2021", "IRC 2024" }

local function off(cite)
  return { false, sense = "equals", cite = cite, status = "seen", source = TEXTS,
    read_in = BOOKS }
end

figures {
  -- Decks: nailed again by how they were nailed before; nails and panels by wind.
  ["deck.renail_by_old_nails"] = off "R908.1",
  ["deck.nails_by_wind"] = off "Table R602.3(1)",
  ["deck.panels_by_wind"] = off "R803.2.2",

  -- Underlayment: laps by the roll, caps and tape by kind.
  -- Half the roll and so much more: also of the model's 2024 edition.
  ["underlayment.double_lap_by_roll"] = { false, sense = "equals", cite = "Table R905.1.1(2)",
    status = "seen", source = TEXTS, read_in = { "IRC 2015", "IRC 2018", "IRC 2021" } },
  ["underlayment.double_lap_past_half_least"] = { 2, unit = "in", sense = "at_least",
    cite = "Table R905.1.1(2)", status = "seen", source = "state code text on the 2024 edition",
    read_in = { "IRC 2024" } },
  ["underlayment.metal_caps_count"] = off "Table R905.1.1(3)",
  ["underlayment.tape_kinds_count"] = off "R905.1.1",
  ["underlayment.third_course_counts"] = off "Table R905.1.1(2)",
  ["underlayment.old_needs_nails_shown"] = off "R908.3",
  ["underlayment.shanks"] = { { "ringed", "smooth", "staple" }, sense = "one_of",
    cite = "Table R905.1.1(3)", status = "seen", source = TEXTS,
    read_in = { "IRC 2015", "IRC 2018" } },

  ["underlayment.wind_counts"] = { true, sense = "equals", cite = "Table R905.1.1(1)",
    status = "seen", source = TEXTS, read_in = BOOKS },
  ["underlayment.wind_by_region"] = off "Table R905.1.1(1)",

  -- The ice barrier by January's mean or by history, and how its reach is measured.
  ["ice_barrier.by_january_mean"] = off "R905.1.2",
  ["ice_barrier.by_history"] = off "R905.1.2",
  ["ice_barrier.inside_along_slope"] = off "R905.1.2",
  ["ice_barrier.unheated_at_wall_exempt"] = off "R905.1.2",

  -- Attic vents where the deck is new alone.
  ["ventilation.with_new_deck_only"] = off "R908.1",

  -- What a state leaves to its cities, or to a code that was not read.
  ["permit.life_is_local"] = off "R105.5",
  ["alarms.co_not_read"] = off "R315.2",
  ["alarms.co_in_every_house"] = off "R315.2",
  ["alarms.co_owner_exempt"] = off "R315.2.2",
  ["alarms.co_by_sources"] = { true, sense = "equals", cite = "R315.2", status = "seen",
    source = TEXTS, read_in = BOOKS },

  -- Drip edge.
  ["drip_edge.not_read"] = off "R905.2.8.5",
  ["drip_edge.cement_required"] = off "R905.2.8.5",
  ["drip_edge.primed_flange_allowed"] = off "R905.2.8.5",

  -- Wind classes named by the table of ASTM D3161.
  ["shingle.D3161_classes"] = { { "A", "D", "F" }, sense = "one_of", cite = "Table R905.2.4.1",
    status = "seen", source = TEXTS, read_in = { "IRC 2018", "IRC 2021", "IRC 2024" } },

  -- Fire zones whose classes stand in a code that was not read, and alarms by the stove.
  ["fire.zones_not_read"] = { {}, sense = "among", cite = "R902.1", status = "seen",
    source = TEXTS, read_in = BOOKS },
  ["alarms.cooking_counts"] = off "R314.3",

  -- A section of the roof by itself, beside the whole of it.
  ["permit.rest_by_section"] = off "R908.1",

  -- Flashing.
  ["flashing.by_metal"] = off "R903.2.1",
  ["flashing.step_has_size"] = { true, sense = "equals", cite = "R905.2.8.3", status = "seen",
    source = TEXTS, read_in = BOOKS },
}
