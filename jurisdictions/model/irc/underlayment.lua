-- Underlayment: R905.1.1 and its three tables since 2015, R905.2.7 before.

-- What was read: code texts of states that took the editions over, not the printed books. In
-- an edition that was not read such a figure counts as parallel.
local TEXTS = "state code texts on the editions of 2015 to 2024"
local EDITION = "state code text on this edition"
local LEFT_OVER = "a paragraph left over from this edition in the text of 2015 (R905.16.4.2)"
local BOOKS = { "IRC 2015", "IRC 2018", "IRC 2021", "IRC 2024" }
local IN_7_10 = { "IRC 2015", "IRC 2018" }
local IN_7_22 = { "IRC 2024" }
local HEIGHTS_IN = { "IRC 2015", "IRC 2018", "IRC 2021" }
local SINCE_2018 = { "IRC 2018", "IRC 2021", "IRC 2024" }

-- Underlayment. R905.1.1 and its three tables since 2015.
figure "underlayment.on_overlay_required" { false, "R908.1", sense = "equals",
  practice = "common practice: old shingles are not stripped", stricter = true }

figure "underlayment.plies_least" { 1, "Table R905.1.1(2)", unit = "plies", sense = "at_least",
  seen = TEXTS, read_in = BOOKS,
  ["2012"] = { cite = "R905.2.7" },
}

figure "underlayment.kinds_normal" {
  { "D226_I", "D4869_I", "D4869_II", "D4869_III", "D4869_IV", "D6757" }, "Table R905.1.1(1)",
  sense = "one_of", seen = TEXTS, read_in = BOOKS,
  ["2012"] = { { "D226_I", "D4869_I", "D6757" }, "R905.2.3",
    parallel = "page of an older edition in a city file" },
  ["2021"] = { { "D226_I", "D226_II", "D4869_I", "D4869_II", "D4869_III", "D4869_IV", "D6757" },
    "Table R905.1.1(1)", seen = EDITION },
  ["2024"] = {
    { "D226_I", "D226_II", "D1970", "D4869_I", "D4869_II", "D4869_III", "D4869_IV", "D6757",
      "D8257" }, "Table R905.1.1(1)", seen = EDITION },
}

figure "underlayment.kinds_high_wind" { { "D226_II", "D4869_III", "D4869_IV", "D6757" },
  "Table R905.1.1(1)", sense = "one_of", seen = TEXTS, read_in = BOOKS,
  ["2012"] = { { "D226_II", "D4869_IV", "D6757" }, "R905.2.7.2", parallel = LEFT_OVER },
  ["2015"] = { { "D226_II", "D4869_IV", "D6757" }, "Table R905.1.1(1)", seen = EDITION },
  ["2021"] = { { "D226_II", "D4869_III", "D4869_IV" }, "Table R905.1.1(1)", seen = EDITION },
  ["2024"] = { { "D226_II", "D1970", "D4869_III", "D4869_IV", "D8257" }, "Table R905.1.1(1)",
    seen = EDITION },
}

figure "underlayment.kinds_self_adhered" { { "D1970" }, "R905.1.1 exc. 1", sense = "one_of",
  seen = TEXTS, read_in = BOOKS,
  ["2012"] = { cite = "R905.2.7.2 exc.", parallel = LEFT_OVER },
}

figure "underlayment.kinds_by_report" { { "D8257", "other_synthetic" }, "R905.1.1",
  sense = "among", practice = "trade magazine: synthetics were accepted by evaluation report",
  ["2012"] = { cite = "R905.2.3" },
}

-- What some place prints beside the tables: it must not cast doubt on them.
figure "underlayment.any_wind_counts" { false, "R905.1.1", sense = "equals", seen = TEXTS,
  read_in = BOOKS, stricter = true,
  ["2012"] = { cite = "R905.2.7.2" },
}

figure "underlayment.wind_by_map" { false, "Table R905.1.1(1)", sense = "equals", seen = TEXTS,
  read_in = BOOKS, stricter = "neither", behind = "underlayment.wind_counts",
  ["2012"] = { cite = "R905.2.7.2", memory = "recalled" },
  -- The tables ask for a map of where wind design is required, not for 140 mph.
  ["2021"] = { true, "Table R905.1.1(1), Figure R301.2.1.1", seen = EDITION },
  ["2024"] = { true, "Table R905.1.1(1), Figure R301.2.1.1", seen = EDITION },
}

figure "underlayment.wind_from" { 140, "Table R905.1.1(1)", unit = "mph", sense = "from",
  seen = TEXTS, read_in = BOOKS, behind = "underlayment.wind_counts",
  ["2012"] = { 120, "R905.2.7.2", parallel = LEFT_OVER },
}

figure "underlayment.wind_on_vasd" { false, "R301.2.1", sense = "equals", seen = TEXTS,
  read_in = BOOKS, stricter = false, behind = "underlayment.wind_counts",
  ["2012"] = { true, "R301.2.1", seen = "engineer's page on this edition's map" },
}

figure "underlayment.head_lap_least" { 2, "Table R905.1.1(2)", unit = "in", sense = "at_least",
  seen = TEXTS, read_in = BOOKS,
  ["2012"] = { cite = "R905.2.7" },
}

figure "underlayment.head_lap_high_wind_least" { 4, "Table R905.1.1(2)", unit = "in",
  sense = "at_least", seen = TEXTS, read_in = IN_7_10,
  ["2012"] = { cite = "R905.2.7.2", parallel = LEFT_OVER },
}

-- From 2021 on the wind asks for two plies at every slope.
figure "underlayment.plies_high_wind_least" { 1, "Table R905.1.1(2)", unit = "plies",
  sense = "at_least", seen = TEXTS, read_in = IN_7_10,
  ["2012"] = { cite = "R905.2.7.2" },
  ["2021"] = { 2, "Table R905.1.1(2)", seen = EDITION },
  ["2024"] = { 2, "Table R905.1.1(2)", seen = EDITION },
}

figure "underlayment.head_lap_double_least" { 19, "Table R905.1.1(2)", unit = "in",
  sense = "at_least", seen = TEXTS, read_in = HEIGHTS_IN,
  ["2012"] = { cite = "R905.2.7" },
  ["2024"] = { 20, "Table R905.1.1(2)", seen = EDITION },
}

figure "underlayment.end_lap_least" { 4, "Table R905.1.1(2)", unit = "in", sense = "at_least",
  seen = TEXTS, read_in = BOOKS,
  ["2012"] = { cite = "R905.2.7" },
}

figure "underlayment.end_lap_double_least" { 4, "Table R905.1.1(2)", unit = "in",
  sense = "at_least", seen = TEXTS, read_in = SINCE_2018,
  ["2012"] = { cite = "R905.2.7" },
  ["2015"] = { 4, "Table R905.1.1(2), by its row of one ply",
    practice = "the row of one ply; the rows under 4:12 name no end lap" },
}

figure "underlayment.end_lap_offset_least" { 6, "Table R905.1.1(2)", unit = "ft",
  sense = "at_least", seen = TEXTS, read_in = BOOKS,
  ["2012"] = { cite = "R905.2.7" },
}

figure "underlayment.starter_width_least" { 19, "Table R905.1.1(2)", unit = "in",
  sense = "at_least", seen = TEXTS, read_in = HEIGHTS_IN,
  ["2012"] = { cite = "R905.2.7" },
  ["2024"] = { 18, "Table R905.1.1(2)", seen = EDITION },
}

figure "underlayment.fasteners_wind" { { "cap_nail", "cap_staple" }, "Table R905.1.1(3)",
  sense = "one_of", seen = TEXTS, read_in = IN_7_10,
  ["2012"] = { { "cap_nail" }, "R905.2.7.2", parallel = LEFT_OVER },
  ["2021"] = { { "cap_nail" }, "Table R905.1.1(3)", seen = EDITION },
  ["2024"] = { { "cap_nail" }, "Table R905.1.1(3)", seen = EDITION },
}

figure "underlayment.lap_spacing_wind_most" { 6, "Table R905.1.1(3)", unit = "in",
  sense = "at_most", seen = TEXTS, read_in = BOOKS,
  ["2012"] = { cite = "R905.2.7.2", parallel = LEFT_OVER },
}

figure "underlayment.field_spacing_wind_most" { 12, "Table R905.1.1(3)", unit = "in",
  sense = "at_most", seen = TEXTS, read_in = BOOKS,
  ["2012"] = { cite = "R905.2.7.2", parallel = LEFT_OVER },
}

figure "underlayment.cap_wind_least" { 1, "Table R905.1.1(3)", unit = "in", sense = "at_least",
  seen = TEXTS, read_in = BOOKS,
  ["2012"] = { cite = "R905.2.7.2", parallel = LEFT_OVER },
}

-- A sealed deck: off in the model code, where its ways are exceptions to
-- the high-wind tables. A state that wants one turns it on.
figure "underlayment.sealed_deck_required" { false, "R905.1.1", sense = "equals",
  seen = "state code texts on the editions of 2015 to 2024: its ways are exceptions, not a "
    .. "duty", read_in = BOOKS, stricter = true }

-- Or from some height on.
figure "underlayment.sealed_deck_by_elevation" { false, "R905.1.1", sense = "equals",
  seen = TEXTS .. ": no such line", read_in = BOOKS, stricter = true }

figure "underlayment.sealed_deck_elevation_from" { 7000, "R905.1.1", unit = "ft", sense = "from",
  practice = "common practice: mountain counties draw such a line, each its own",
  behind = "underlayment.sealed_deck_by_elevation" }

figure "underlayment.sealed_deck_methods" { { "full_self_adhered", "taped_joints", "two_plies" },
  "R905.1.1 exc. 1, 2 and 3", sense = "one_of", seen = TEXTS, read_in = { "IRC 2018" },
  behind = "underlayment.sealed_deck_required",
  ["2012"] = { { "full_self_adhered" }, "R905.2.7.2 exc.", parallel = LEFT_OVER },
  ["2015"] = { { "full_self_adhered", "taped_joints" }, "R905.1.1 exc. 1 and 2", seen = EDITION },
  ["2021"] = { { "full_self_adhered", "taped_joints" }, "R905.1.1 exc. 1 and 2", seen = EDITION },
  ["2024"] = { { "full_self_adhered", "taped_joints", "two_plies" }, "Table R905.1.1(2)",
    seen = EDITION },
}

figure "underlayment.sealed_deck_decks" { { "panel", "board", "spaced_board" }, "R905.1.1",
  sense = "among", practice = "every deck, until a place names its own",
  behind = "underlayment.sealed_deck_required" }

figure "underlayment.tape_width_least" { 4, "R905.1.1 exc. 2", unit = "in", sense = "at_least",
  seen = TEXTS, read_in = BOOKS }

figure "underlayment.tape_kinds" {
  { "D226_I", "D226_II", "D4869_I", "D4869_II", "D4869_III", "D4869_IV", "D6757" },
  "R905.1.1 exc. 2", sense = "one_of", seen = TEXTS, read_in = BOOKS }

figure "underlayment.tape_frees_kind" { true, "R905.1.1 exc. 2", sense = "equals", seen = TEXTS,
  read_in = HEIGHTS_IN, stricter = false,
  ["2012"] = { cite = "R905.2.7.2" },
  ["2024"] = { false, "Table R905.1.1(1)", seen = EDITION },
}

figure "underlayment.two_ply_kinds" { { "D226_II", "D4869_III", "D4869_IV" }, "R905.1.1 exc. 3",
  sense = "one_of", seen = TEXTS, read_in = { "IRC 2018" } }

-- Fasteners in moderate wind: in 2012 only.
figure "underlayment.mid_wind_applies" { false, "Table R905.1.1(3)", sense = "equals",
  seen = TEXTS, read_in = BOOKS, stricter = true,
  ["2012"] = { true, "R905.2.7.2", memory = "recalled" },
}

figure "underlayment.mid_wind_over" { 110, "R905.2.7.2 of 2012", unit = "mph", sense = "over",
  parallel = "a paragraph left over from that edition in the text of 2015",
  behind = "underlayment.mid_wind_applies",
  ["2012"] = { cite = "R905.2.7.2" },
}

figure "underlayment.lap_spacing_mid_most" { 36, "R905.2.7.2 of 2012", unit = "in",
  sense = "at_most", parallel = "a paragraph left over from that edition in the text of 2015",
  behind = "underlayment.mid_wind_applies",
  ["2012"] = { cite = "R905.2.7.2" },
}

-- The fasteners of the underlayment in wind.
figure "underlayment.cap_mils_least" { unit = "mil", sense = "at_least",
  by = "underlayments[].cap_made_of", cite = "Table R905.1.1(3)", seen = TEXTS, read_in = BOOKS,
  ["2012"] = { cite = "R905.2.7.2", parallel = LEFT_OVER },
  rows = {
    metal = { 13.4 },
    power_driven_metal = { 10 },
    plastic = { 35 },
  },
}

figure "underlayment.shank_least" { unit = "in", sense = "at_least", cite = "Table R905.1.1(3)",
  seen = TEXTS, read_in = BOOKS,
  rows = {
    ringed = { 0.083,
      ["2012"] = { 0.105, "R905.2.7.2", parallel = LEFT_OVER },
    },
    smooth = { 0.091,
      ["2012"] = { 0.105, "R905.2.7.2", parallel = LEFT_OVER },
    },
    staple = { 0.032 },
  },
}

figure "underlayment.bite_least" { 0.75, "Table R905.1.1(3)", unit = "in", sense = "at_least",
  seen = TEXTS, read_in = BOOKS,
  ["2012"] = { cite = "R905.2.7.2", parallel = LEFT_OVER },
}

-- What old adhered sheet may stay on a stripped deck, covered again.
figure "underlayment.old_may_stay" { { "ice_barrier" }, "R908.3 exc.", sense = "one_of",
  seen = TEXTS, read_in = BOOKS,
  ["2012"] = { {}, "R907.3", memory = "recalled: the exception came in 2015" },
  ["2024"] = { { "ice_barrier", "underlayment" }, "R908.3 exc.", seen = EDITION },
}

-- Underlayment: laps by the roll, caps and tape by kind.
-- Half the roll and so much more: also of the model's 2024 edition.
figure "underlayment.double_lap_by_roll" { false, "Table R905.1.1(2)", sense = "equals",
  seen = TEXTS, read_in = HEIGHTS_IN, stricter = true,
  ["2012"] = { cite = "R905.2.7" },
  -- Half the sheet and 2 in: 20 in of common felt; the starter is half a sheet.
  ["2024"] = { true, "Table R905.1.1(2)", seen = EDITION },
}

figure "underlayment.double_lap_past_half_least" { 2, "Table R905.1.1(2)", unit = "in",
  sense = "at_least", seen = "state code text on the 2024 edition", read_in = IN_7_22 }
figure "underlayment.metal_caps_count" { false, "Table R905.1.1(3)", sense = "equals",
  seen = TEXTS, read_in = BOOKS, stricter = true }
figure "underlayment.tape_kinds_count" { false, "R905.1.1", sense = "equals", seen = TEXTS,
  read_in = BOOKS, stricter = true }
figure "underlayment.third_course_counts" { false, "Table R905.1.1(2)", sense = "equals",
  seen = TEXTS, read_in = BOOKS, stricter = true }
figure "underlayment.old_needs_nails_shown" { false, "R908.3", sense = "equals", seen = TEXTS,
  read_in = BOOKS, stricter = true }

figure "underlayment.shanks" { { "ringed", "smooth", "staple" }, "Table R905.1.1(3)",
  sense = "one_of", seen = TEXTS, read_in = IN_7_10,
  ["2012"] = { cite = "R905.2.7.2" },
  ["2021"] = { { "ringed" }, "Table R905.1.1(3)", seen = EDITION },
  ["2024"] = { { "ringed" }, "Table R905.1.1(3)", seen = EDITION },
}

figure "underlayment.wind_counts" { true, "Table R905.1.1(1)", sense = "equals", seen = TEXTS,
  read_in = BOOKS, stricter = true }
figure "underlayment.wind_by_region" { false, "Table R905.1.1(1)", sense = "equals", seen = TEXTS,
  read_in = BOOKS, stricter = "neither", behind = "underlayment.wind_counts" }
