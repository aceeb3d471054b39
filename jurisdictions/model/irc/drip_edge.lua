-- Drip edge (R905.2.8.5).

-- What was read: code texts of states that took the editions over, not the printed books. In
-- an edition that was not read such a figure counts as parallel.
local TEXTS = "state code texts on the editions of 2015 to 2024"
local NO_PAGE = "local pages, nearly all of which print no such thing"
local BOOKS = { "IRC 2015", "IRC 2018", "IRC 2021", "IRC 2024" }
-- Of the edition of 2012 a page prints the paragraph, and another says that in 2015 only
-- its wording changed.
local PAGE_2012 = "pages that print this edition's paragraph, and say what changed of it since"

-- Drip edge.
figure "drip_edge.eave_required" { true, "R905.2.8.5", sense = "equals", seen = TEXTS,
  read_in = BOOKS, stricter = true,
  -- Drip edge: this edition brought it, at eaves and gables.
  ["2012"] = { cite = "R905.2.8.5",
    seen = "city page and insurance commentary: from this edition on" },
}

figure "drip_edge.rake_required" { true, "R905.2.8.5", sense = "equals", seen = TEXTS,
  read_in = BOOKS, stricter = true,
  ["2012"] = { cite = "R905.2.8.5",
    seen = "city page and insurance commentary: from this edition on, at gables" },
}

figure "drip_edge.on_overlay_required" { true, "R908.1, R905.2.8.5", sense = "equals",
  seen = TEXTS, read_in = BOOKS, stricter = true,
  ["2012"] = { cite = "R907.1, R905.2.8.5" },
}

figure "drip_edge.lap_least" { 2, "R905.2.8.5", unit = "in", sense = "at_least", seen = TEXTS,
  read_in = BOOKS,
  ["2012"] = { cite = "R905.2.8.5", seen = PAGE_2012 },
}
figure "drip_edge.down_least" { 0.25, "R905.2.8.5", unit = "in", sense = "at_least", seen = TEXTS,
  read_in = BOOKS,
  ["2012"] = { cite = "R905.2.8.5", seen = PAGE_2012 },
}
figure "drip_edge.back_least" { 2, "R905.2.8.5", unit = "in", sense = "at_least", seen = TEXTS,
  read_in = BOOKS,
  ["2012"] = { cite = "R905.2.8.5", seen = PAGE_2012 },
}
figure "drip_edge.orders_eave" { { "over_metal" }, "R905.2.8.5", sense = "one_of", seen = TEXTS,
  read_in = BOOKS,
  ["2012"] = { cite = "R905.2.8.5", seen = PAGE_2012 },
}

figure "drip_edge.orders_rake" { { "under_metal" }, "R905.2.8.5", sense = "one_of", seen = TEXTS,
  read_in = BOOKS,
  ["2012"] = { cite = "R905.2.8.5",
    disputed = "copies of this edition print the words on rakes garbled" },
}

figure "drip_edge.sealed_flange_allowed" { false, "R905.2.8.5", sense = "equals", seen = TEXTS,
  read_in = BOOKS, stricter = false }
figure "drip_edge.fastener_spacing_most" { 12, "R905.2.8.5", unit = "in", sense = "at_most",
  seen = TEXTS, read_in = BOOKS,
  ["2012"] = { cite = "R905.2.8.5", seen = PAGE_2012 },
}

-- Closer fastening in strong wind or on a tall house: some states have it,
-- the model code does not. Its figures are asked for only when it is on.
figure "drip_edge.close_fastening" { false, "R905.2.8.5", sense = "equals", seen = TEXTS,
  read_in = BOOKS, stricter = true }

figure "drip_edge.close_spacing_most" { 4, "R905.2.8.5 as some states amend it", unit = "in",
  sense = "at_most", seen = "a state residential code of 2023",
  behind = "drip_edge.close_fastening" }

figure "drip_edge.close_wind_from" { 110, "R905.2.8.5 as some states amend it", unit = "mph",
  sense = "from", seen = "a state residential code of 2023",
  behind = "drip_edge.close_fastening" }

figure "drip_edge.close_wind_on_vasd" { true, "R905.2.8.5 as some states amend it",
  sense = "equals", seen = "a state residential code of 2023", stricter = false,
  behind = "drip_edge.close_fastening" }

figure "drip_edge.close_height_over" { 33, "R905.2.8.5 as some states amend it", unit = "ft",
  sense = "over", seen = "a state residential code of 2023",
  behind = "drip_edge.close_fastening" }

figure "drip_edge.variance_allowed" { false, "R104.10", sense = "equals", seen = NO_PAGE,
  stricter = false }

-- Drip edge.
figure "drip_edge.not_read" { false, "R905.2.8.5", sense = "equals", seen = TEXTS,
  read_in = BOOKS, stricter = true }

figure "drip_edge.cement_required" { false, "R905.2.8.5", sense = "equals", seen = TEXTS,
  read_in = BOOKS, stricter = true }
figure "drip_edge.primed_flange_allowed" { false, "R905.2.8.5", sense = "equals", seen = TEXTS,
  read_in = BOOKS, stricter = false }
