-- Flashing and crickets (R903.2, R905.2.8, R1003.20, R908.5 and R908.6).

-- What was read: code texts of states that took the editions over, not the printed books. In
-- an edition that was not read such a figure counts as parallel.
local TEXTS = "state code texts on the editions of 2015 to 2024"
local BOOKS = { "IRC 2015", "IRC 2018", "IRC 2021", "IRC 2024" }
-- Of the edition of 2012: the first page of chapter 9 of a city's code on it.
-- Another page of that edition prints R905.2.8.2 and R905.2.8.3.
local PAGE_2012 = "a page of this edition's book in a city's permit file"
local BOOK_2012 = "a city's residential code on this edition"

figure "flashing.required" { true, "R903.2.1", sense = "equals", seen = TEXTS, read_in = BOOKS,
  stricter = true }

-- "by_instructions" is what the maker prints; the code gives no dimension.
figure "flashing.sidewall_methods" { { "step", "continuous" }, "R905.2.8.3", sense = "one_of",
  seen = TEXTS, read_in = BOOKS,
  ["2012"] = { cite = "R905.2.8.3",
    seen = "inspectors' forum printing this edition beside the one before" },
}

figure "flashing.headwall_methods" { { "step", "continuous", "by_instructions" }, "R905.2.8.4",
  sense = "one_of", seen = TEXTS, read_in = BOOKS,
  ["2012"] = { cite = "R905.2.8.4", memory = "recalled; as in the 2015 edition" },
}

figure "flashing.slope_change_methods" { { "step", "continuous", "by_instructions" }, "R903.2.1",
  sense = "one_of", seen = TEXTS, read_in = BOOKS }
figure "flashing.sidewall_up_least" { 4, "R905.2.8.3", unit = "in", sense = "at_least",
  seen = TEXTS, read_in = BOOKS,
  ["2012"] = { cite = "R905.2.8.3", seen = PAGE_2012 },
}
figure "flashing.sidewall_out_least" { 4, "R905.2.8.3", unit = "in", sense = "at_least",
  seen = TEXTS, read_in = BOOKS,
  ["2012"] = { cite = "R905.2.8.3", seen = PAGE_2012 },
}

figure "flashing.wall_covers" { { "siding", "counterflashing" }, "R905.2.8.3", sense = "one_of",
  seen = TEXTS, read_in = BOOKS,
  ["2012"] = { cite = "R905.2.8.3",
    seen = "inspectors' forum printing this edition beside the one before" },
}

figure "flashing.primed_counts" { false, "R908.6", sense = "equals",
  seen = "state code texts on the editions of 2015 to 2024: primed before bitumen goes on; off "
    .. "until a place looks at it", read_in = BOOKS, stricter = true,
  -- Reroofing: R907, which moved to R908 in 2015.
  ["2012"] = { cite = "R907.6",
    parallel = "the text of 2006 and the building code of 2012, in the same words" },
}

figure "flashing.rusted_metal_counts" { false, "R908.5", sense = "equals",
  seen = "state code texts on the editions of 2015 to 2024: replaced where rusted or damaged; "
    .. "off until a place looks at it", read_in = BOOKS, stricter = true,
  ["2012"] = { cite = "R907.5",
    parallel = "the text of 2006 and the building code of 2012, in the same words" },
}

figure "flashing.kickout_required" { true, "R903.2.1", sense = "equals", seen = TEXTS,
  read_in = BOOKS, stricter = true,
  ["2012"] = { cite = "R903.2.1", seen = BOOK_2012 },
}

figure "flashing.masonry_counterflashed" { true, "R905.2.8.4 leaves it to the maker",
  sense = "equals", practice = "common practice: a masonry chimney is counterflashed all around",
  stricter = true }

figure "flashing.cricket_counterflashed" { true, "R1003.20", sense = "equals", seen = TEXTS,
  read_in = BOOKS, stricter = true, behind = "flashing.cricket_required" }
figure "flashing.cricket_required" { true, "R903.2.2", sense = "equals", seen = TEXTS,
  read_in = BOOKS, stricter = true,
  ["2012"] = { cite = "R903.2.2", seen = BOOK_2012 },
}
figure "flashing.cricket_over" { 30, "R903.2.2", unit = "in", sense = "over", seen = TEXTS,
  read_in = BOOKS, behind = "flashing.cricket_required",
  ["2012"] = { cite = "R903.2.2", seen = BOOK_2012 },
}
figure "flashing.cricket_covers" { { "sheet_metal", "roof_covering" }, "R903.2.2",
  sense = "one_of", seen = TEXTS, read_in = BOOKS, behind = "flashing.cricket_required",
  ["2012"] = { cite = "R903.2.2", seen = BOOK_2012 },
}

figure "flashing.cricket_skylight_exempt" { true, "R903.2.2 exc.", sense = "equals", seen = TEXTS,
  read_in = BOOKS, stricter = false, behind = "flashing.cricket_required",
  ["2012"] = { cite = "R903.2.2 exc.", seen = BOOK_2012 },
}

figure "flashing.cricket_by_table" { true, "R1003.20, Table R1003.20", sense = "equals",
  seen = TEXTS, read_in = BOOKS, stricter = true, behind = "flashing.cricket_required" }
figure "flashing.metal_least" { 0.019, "R903.2.1, R905.2.8.1", unit = "in", sense = "at_least",
  seen = TEXTS, read_in = BOOKS,
  ["2012"] = { cite = "R903.2.1", seen = BOOK_2012 },
}

figure "flashing.base_kinds" { { "metal", "mineral_roll" }, "R905.2.8.1", sense = "one_of",
  seen = TEXTS, read_in = BOOKS,
  ["2012"] = { cite = "R905.2.8.1", parallel = "state code texts on the 2015 edition" },
}

figure "flashing.base_roll_least" { 77, "R905.2.8.1", unit = "lb_per_square", sense = "at_least",
  seen = TEXTS, read_in = BOOKS,
  ["2012"] = { cite = "R905.2.8.1", parallel = "state code texts on the 2015 edition" },
}

figure "flashing.cap_least" { 0.019, "R905.2.8.1", unit = "in", sense = "at_least", seen = TEXTS,
  read_in = BOOKS,
  ["2012"] = { cite = "R905.2.8.1", parallel = "state code texts on the 2015 edition" },
}

figure "flashing.reuse_allowed" { true, "R908.5", sense = "equals", seen = TEXTS, read_in = BOOKS,
  stricter = false,
  ["2012"] = { cite = "R907.5" },
}

figure "flashing.reuse_barred" { { "rusted", "damaged", "decayed" }, "R908.5", sense = "none_of",
  seen = TEXTS, read_in = BOOKS,
  ["2012"] = { cite = "R907.5", parallel = "state code texts on the 2015 edition" },
}

-- Flashing.
figure "flashing.by_metal" { false, "R903.2.1", sense = "equals", seen = TEXTS, read_in = BOOKS,
  stricter = "neither" }

figure "flashing.step_has_size" { true, "R905.2.8.3", sense = "equals", seen = TEXTS,
  read_in = BOOKS, stricter = true }
