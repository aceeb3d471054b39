-- Valleys of shingle roofs (R905.2.8.2).

-- What was read: code texts of states that took the editions over, not the printed books. In
-- an edition that was not read such a figure counts as parallel.
local TEXTS = "state code texts on the editions of 2015 to 2024"
local EDITION = "state code text on this edition"
local BOOKS = { "IRC 2015", "IRC 2018", "IRC 2021", "IRC 2024" }
-- Of the edition of 2012 the page was read; it is known by what it refers to.
local PAGE_2012 = "a page of this edition's book in a city's permit file"

figure "valley.lining_required" { true, "R905.2.8.2", sense = "equals", seen = TEXTS,
  read_in = BOOKS, stricter = true,
  ["2012"] = { cite = "R905.2.8.2", seen = PAGE_2012 },
}

figure "valley.on_overlay_required" { true, "R908.1, R905.2.8.2", sense = "equals", seen = TEXTS,
  read_in = BOOKS, stricter = true,
  ["2012"] = { cite = "R907.1, R905.2.8.2" },
}

figure "valley.lined_first" { true, "R905.2.8.2", sense = "equals", seen = TEXTS, read_in = BOOKS,
  stricter = true,
  ["2012"] = { cite = "R905.2.8.2", seen = PAGE_2012 },
}
figure "valley.linings_open" { { "metal", "two_ply_roll" }, "R905.2.8.2 items 1 and 2",
  sense = "one_of", seen = TEXTS, read_in = BOOKS,
  ["2012"] = { cite = "R905.2.8.2 items 1 and 2", seen = PAGE_2012 },
}
figure "valley.linings_closed" { { "smooth_roll", "self_adhered", "metal", "two_ply_roll" },
  "R905.2.8.2 item 3", sense = "one_of", seen = TEXTS, read_in = BOOKS,
  ["2012"] = { cite = "R905.2.8.2 item 3", seen = PAGE_2012 },
}
figure "valley.metal_width_least" { 24, "R905.2.8.2 item 1", unit = "in", sense = "at_least",
  seen = TEXTS, read_in = BOOKS,
  ["2012"] = { cite = "R905.2.8.2 item 1", seen = PAGE_2012 },
}
figure "valley.roll_bottom_width_least" { 18, "R905.2.8.2 item 2", unit = "in",
  sense = "at_least", seen = TEXTS, read_in = BOOKS,
  ["2012"] = { cite = "R905.2.8.2 item 2", seen = PAGE_2012 },
}
figure "valley.roll_top_width_least" { 36, "R905.2.8.2 item 2", unit = "in", sense = "at_least",
  seen = TEXTS, read_in = BOOKS,
  ["2012"] = { cite = "R905.2.8.2 item 2", seen = PAGE_2012 },
}
figure "valley.smooth_width_least" { 36, "R905.2.8.2 item 3", unit = "in", sense = "at_least",
  seen = TEXTS, read_in = BOOKS,
  ["2012"] = { cite = "R905.2.8.2 item 3", seen = PAGE_2012 },
}

figure "valley.self_adhered_width_least" { 36, "R905.2.8.2 item 3", unit = "in",
  sense = "at_least",
  practice = "the width of the lining it stands in for: no width of its own was read",
  ["2024"] = { 36, "R905.2.8.2 item 3", seen = EDITION },
}

-- Table R905.2.8.2.
figure "valley.metals" {
  { "copper", "high_yield_copper", "lead_coated_copper", "lead_coated_high_yield_copper",
    "aluminum", "stainless", "galvanized", "zinc", "lead", "painted_terne" }, "Table R905.2.8.2",
  sense = "one_of", seen = TEXTS, read_in = BOOKS }

figure "valley.metals_by_gage" { { "stainless" }, "Table R905.2.8.2", sense = "among",
  seen = TEXTS, read_in = BOOKS }
figure "valley.metals_by_weight" { { "lead", "painted_terne" }, "Table R905.2.8.2",
  sense = "among", seen = TEXTS, read_in = BOOKS }

-- Thicknesses in thousandths of an inch.
figure "valley.metal_mils_least" { unit = "mil", sense = "at_least", by = "roof.valleys[].metal",
  cite = "Table R905.2.8.2", seen = TEXTS, read_in = BOOKS,
  rows = {
    copper = { 21.6 },
    high_yield_copper = { 16.2 },
    lead_coated_copper = { 21.6 },
    lead_coated_high_yield_copper = { 16.2 },
    aluminum = { 24 },
    galvanized = { 17.9 },
    zinc = { 27 },
  },
}

figure "valley.metal_gage_most.stainless" { 28, "Table R905.2.8.2", unit = "gage",
  sense = "at_most", seen = TEXTS, read_in = BOOKS }

figure "valley.metal_weight_least" { unit = "lb", sense = "at_least", by = "roof.valleys[].metal",
  cite = "Table R905.2.8.2", seen = TEXTS, read_in = BOOKS,
  rows = {
    lead = { 2.5 },
    painted_terne = { 20 },
  },
}

figure "valley.nails_from_center_least" { 6, "R905.2.8.2 gives no figure", unit = "in",
  sense = "at_least", practice = "recalled trade practice" }
