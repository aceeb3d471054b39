-- The ice barrier (R905.1.2, R905.2.7.1).

-- What was read: code texts of states that took the editions over, not the printed books. In
-- an edition that was not read such a figure counts as parallel.
local TEXTS = "state code texts on the editions of 2015 to 2024"
local NO_LINE = TEXTS .. ": no such line"
local EDITION = "state code text on this edition"
local NO_PAGE = "local pages, nearly all of which print no such thing"
local BOOKS = { "IRC 2015", "IRC 2018", "IRC 2021", "IRC 2024" }

-- Ice barrier. A model names no place, so it leaves it to the entry in the
-- place's own climate table, which the job must quote. A place that asks for
-- it outright sets "required"; one that never does turns "by_table" off.
figure "ice_barrier.by_table" { true, "R905.1.2, Table R301.2(1)", sense = "equals",
  seen = "trade journal; a town's table says no, a city's says yes", read_in = BOOKS,
  stricter = true,
  -- Ice barrier: no longer reach on steep slopes yet.
  ["2012"] = { cite = "R905.2.7.1, Table R301.2(1)" },
  ["2021"] = { cite = "R905.1.2, Table R301.2" },
  ["2024"] = { cite = "R905.1.2, Table R301.2" },
}

figure "ice_barrier.required" { false, "R905.1.2, Table R301.2(1)", sense = "equals",
  seen = "trade journal; a town's table says no, a city's says yes", read_in = BOOKS,
  stricter = true,
  ["2012"] = { cite = "R905.2.7.1, Table R301.2(1)" },
  ["2021"] = { cite = "R905.1.2, Table R301.2" },
  ["2024"] = { cite = "R905.1.2, Table R301.2" },
}

figure "ice_barrier.on_overlay_required" { true, "R908.1, R905.1.2", sense = "equals",
  seen = TEXTS, read_in = BOOKS,
  disputed = "the text does not speak of closed eaves under an overlay; ask the department",
  stricter = true,
  ["2012"] = { cite = "R907.1, R905.2.7.1" },
}

figure "ice_barrier.coverings" {
  { "asphalt_shingle", "metal_shingle", "roll_roofing", "slate", "wood_shingle", "wood_shake" },
  "R905.1.2", sense = "among", seen = "city page citing R905.1.2", read_in = BOOKS,
  ["2012"] = { cite = "R905.2.7.1",
    parallel = "a state code on this edition: each covering's own section" },
}

figure "ice_barrier.kinds" { { "self_adhered", "two_cemented_plies" }, "R905.1.2",
  sense = "one_of", seen = "city handouts; a roofing trade association", read_in = BOOKS,
  ["2012"] = { cite = "R905.2.7.1" },
}

figure "ice_barrier.inside_wall_least" { 24, "R905.1.2", unit = "in", sense = "at_least",
  seen = "city pages; code officials' forum", read_in = BOOKS,
  ["2012"] = { cite = "R905.2.7.1" },
}

figure "ice_barrier.wall_counts" { true, "R905.1.2", sense = "equals",
  seen = "trade-journal examples; a roofing trade association", read_in = BOOKS,
  disputed = "the words can be read from the outer face of the wall, which needs less",
  rival = false, stricter = true,
  ["2012"] = { cite = "R905.2.7.1" },
}

figure "ice_barrier.steep_applies" { true, "R905.1.2", sense = "equals", seen = TEXTS,
  read_in = BOOKS, stricter = true,
  ["2012"] = { false, "R905.2.7.1",
    memory = "recalled; code officials' forum: the longer reach came in 2015" },
  ["2024"] = { true, "R905.1.2", seen = EDITION,
    disputed = "a code officials' forum says that this edition let it go; four copies of the "
      .. "text still print it", rival = false },
}

figure "ice_barrier.steep_from" { 8, "R905.1.2", unit = "rise_in_12", sense = "from",
  seen = TEXTS, read_in = BOOKS, behind = "ice_barrier.steep_applies" }
figure "ice_barrier.steep_reach_least" { 36, "R905.1.2", unit = "in", sense = "at_least",
  seen = TEXTS, read_in = BOOKS, behind = "ice_barrier.steep_applies" }

figure "ice_barrier.unheated_exempt" { false, "R905.1.2", sense = "equals",
  seen = "city handout: only a detached building is let off", read_in = BOOKS, stricter = false,
  ["2012"] = { cite = "R905.2.7.1" },
}

figure "ice_barrier.one_family_exempt" { false, "R905.1.2", sense = "equals", seen = NO_PAGE,
  stricter = false }
figure "ice_barrier.strip_required" { false, "R905.1.2", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, stricter = true }
figure "ice_barrier.strip_allowed" { false, "R905.1.2", sense = "equals", seen = NO_PAGE,
  stricter = false }

figure "ice_barrier.strip_least" { 36, "R905.1.2", unit = "in", sense = "at_least",
  practice = "common practice: one course, as wide as the roll" }

figure "ice_barrier.rakes_required" { false, "R905.1.2", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, stricter = true }
figure "ice_barrier.valleys_required" { false, "R905.1.2", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, stricter = true }

-- The ice barrier by January's mean or by history, and how its reach is measured.
figure "ice_barrier.by_january_mean" { false, "R905.1.2", sense = "equals", seen = TEXTS,
  read_in = BOOKS, stricter = true }

figure "ice_barrier.by_history" { false, "R905.1.2", sense = "equals", seen = TEXTS,
  read_in = BOOKS, stricter = true }
-- A place in the hills may draw the line by height, or on a map of its own.
figure "ice_barrier.by_elevation" { false, "R905.1.2", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, stricter = true }
figure "ice_barrier.elevation_from" { 7000, "R905.1.2", unit = "ft", sense = "from",
  practice = "common practice: mountain counties draw such a line, each its own",
  behind = "ice_barrier.by_elevation" }
figure "ice_barrier.by_local_zone" { false, "R905.1.2", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, stricter = true }
figure "ice_barrier.local_zones" { { "ice" }, "R905.1.2", sense = "among",
  practice = "common practice: the part of a place's map where it is asked for",
  behind = "ice_barrier.by_local_zone" }
figure "ice_barrier.inside_along_slope" { false, "R905.1.2", sense = "equals", seen = TEXTS,
  read_in = BOOKS, stricter = false }
figure "ice_barrier.unheated_at_wall_exempt" { false, "R905.1.2", sense = "equals", seen = TEXTS,
  read_in = BOOKS, stricter = false }
