-- Flashing and crickets (R903.2, R905.2.8, R1003.20, R908.5 and R908.6).

-- What was read: code texts of states that took the editions of 2015 to 2024 over,
-- not the printed books. In another edition such a figure counts as parallel.
local TEXTS = "state code texts on the editions of 2015 to 2024"
local BOOKS = { "IRC 2015", "IRC 2018", "IRC 2021", "IRC 2024" }

figures {
  ["flashing.required"] = { true, sense = "equals", cite = "R903.2.1", status = "seen",
    source = TEXTS, read_in = BOOKS },
  -- "by_instructions" is what the maker prints; the code gives no dimension.
  ["flashing.sidewall_methods"] = { { "step", "continuous" }, sense = "one_of", cite = "R905.2.8.3",
    status = "seen", source = TEXTS, read_in = BOOKS },
  ["flashing.headwall_methods"] = { { "step", "continuous", "by_instructions" }, sense = "one_of",
    cite = "R905.2.8.4", status = "seen", source = TEXTS, read_in = BOOKS },
  ["flashing.slope_change_methods"] = { { "step", "continuous", "by_instructions" },
    sense = "one_of", cite = "R903.2.1", status = "seen", source = TEXTS, read_in = BOOKS },
  ["flashing.sidewall_up_least"] = { 4, unit = "in", sense = "at_least", cite = "R905.2.8.3",
    status = "seen", source = TEXTS, read_in = BOOKS },
  ["flashing.sidewall_out_least"] = { 4, unit = "in", sense = "at_least", cite = "R905.2.8.3",
    status = "seen", source = TEXTS, read_in = BOOKS },
  ["flashing.wall_covers"] = { { "siding", "counterflashing" }, sense = "one_of",
    cite = "R905.2.8.3", status = "seen", source = TEXTS, read_in = BOOKS },
  ["flashing.primed_counts"] = { false, sense = "equals", cite = "R908.6", status = "seen",
    source = TEXTS .. ": primed before bitumen goes on; off until a place looks at it",
    read_in = BOOKS },
  ["flashing.rusted_metal_counts"] = { false, sense = "equals", cite = "R908.5", status = "seen",
    source = TEXTS .. ": replaced where rusted or damaged; off until a place looks at it",
    read_in = BOOKS },
  ["flashing.kickout_required"] = { true, sense = "equals", cite = "R903.2.1", status = "seen",
    source = TEXTS, read_in = BOOKS },

  ["flashing.masonry_counterflashed"] = { true, sense = "equals",
    cite = "R905.2.8.4 leaves it to the maker", status = "practice",
    source = "common practice: a masonry chimney is counterflashed all around" },
  ["flashing.cricket_counterflashed"] = { true, sense = "equals", cite = "R1003.20",
    status = "seen", source = TEXTS, read_in = BOOKS },
  ["flashing.cricket_required"] = { true, sense = "equals", cite = "R903.2.2", status = "seen",
    source = TEXTS, read_in = BOOKS },
  ["flashing.cricket_over"] = { 30, unit = "in", sense = "over", cite = "R903.2.2", status = "seen",
    source = TEXTS, read_in = BOOKS },
  ["flashing.cricket_covers"] = { { "sheet_metal", "roof_covering" }, sense = "one_of",
    cite = "R903.2.2", status = "seen", source = TEXTS, read_in = BOOKS },
  ["flashing.cricket_skylight_exempt"] = { true, sense = "equals", cite = "R903.2.2 exc.",
    status = "seen", source = TEXTS, read_in = BOOKS },
  ["flashing.cricket_by_table"] = { true, sense = "equals", cite = "R1003.20, Table R1003.20",
    status = "seen", source = TEXTS, read_in = BOOKS },

  ["flashing.metal_least"] = { 0.019, unit = "in", sense = "at_least",
    cite = "R903.2.1, R905.2.8.1", status = "seen", source = TEXTS, read_in = BOOKS },
  ["flashing.base_kinds"] = { { "metal", "mineral_roll" }, sense = "one_of", cite = "R905.2.8.1",
    status = "seen", source = TEXTS, read_in = BOOKS },
  ["flashing.base_roll_least"] = { 77, unit = "lb_per_square", sense = "at_least",
    cite = "R905.2.8.1", status = "seen", source = TEXTS, read_in = BOOKS },
  ["flashing.cap_least"] = { 0.019, unit = "in", sense = "at_least", cite = "R905.2.8.1",
    status = "seen", source = TEXTS, read_in = BOOKS },

  ["flashing.reuse_allowed"] = { true, sense = "equals", cite = "R908.5", status = "seen",
    source = TEXTS, read_in = BOOKS },
  ["flashing.reuse_barred"] = { { "rusted", "damaged", "decayed" }, sense = "none_of",
    cite = "R908.5", status = "seen", source = TEXTS, read_in = BOOKS },
}
