-- Layers of covering: overlay or tear-off. The section moved from R907 to R908 in 2015.

-- What was read: code texts of states that took the editions over, not the printed books. In
-- an edition that was not read such a figure counts as parallel.
local TEXTS = "state code texts on the editions of 2015 to 2024"
local EDITION = "state code text on this edition"
local NO_PAGE = "local pages, nearly all of which print no such thing"
local BOOKS = { "IRC 2015", "IRC 2018", "IRC 2021", "IRC 2024" }

-- Layers. The section moved from R907 to R908 in 2015.
figure "layers.most" { 2, "R908.3.1.1", unit = "layers", sense = "at_most", seen = TEXTS,
  read_in = BOOKS,
  ["2012"] = { cite = "R907.3 item 3",
    parallel = "the text of 2006 and the building code of 2012, in the same words" },
  ["2024"] = { cite = "R908.4 exceptions", seen = EDITION },
}

-- Two or more on now, and all of them come off: peeling one does not help.
figure "layers.peeled_counts" { true, "R908.3.1.1 item 3", sense = "equals", seen = TEXTS,
  read_in = BOOKS, stricter = true,
  ["2012"] = { cite = "R907.3 item 3",
    parallel = "the text of 2006 and the building code of 2012, in the same words" },
  ["2024"] = { cite = "R908.4 exceptions", seen = EDITION },
}

figure "layers.overlay_allowed" { true, "R908.3.1", sense = "equals", seen = TEXTS,
  read_in = BOOKS, stricter = false,
  ["2012"] = { cite = "R907.3",
    parallel = "the text of 2006 and the building code of 2012, in the same words" },
  ["2024"] = { cite = "R908.4", seen = EDITION },
}

figure "layers.overlay_needs_maker" { true, "R908.3.1 item 1", sense = "equals", seen = TEXTS,
  read_in = BOOKS, stricter = true,
  ["2012"] = { cite = "R907.1, R905.1", memory = "recalled" },
  ["2024"] = { cite = "R908.4", seen = EDITION },
}

figure "layers.bases_allowed" { { "sound" }, "R908.3.1.1 item 1", sense = "one_of", seen = TEXTS,
  read_in = BOOKS,
  ["2012"] = { cite = "R907.3 item 1",
    parallel = "the text of 2006 and the building code of 2012, in the same words" },
  ["2024"] = { cite = "R908.4 exceptions", seen = EDITION },
}

figure "layers.not_over" { { "slate", "clay_tile", "concrete_tile", "asbestos_cement" },
  "R908.3.1.1 item 2", sense = "none_of", seen = TEXTS, read_in = BOOKS,
  ["2012"] = { cite = "R907.3 item 2",
    parallel = "the text of 2006 and the building code of 2012, in the same words" },
  ["2024"] = { cite = "R908.4 exceptions", seen = EDITION },
}

figure "layers.over_wood_shake_allowed" { true, "R908.3.1.1 item 2", sense = "equals",
  seen = TEXTS, read_in = BOOKS, stricter = false,
  ["2012"] = { false, "R907.3 item 2",
    parallel = "the text of 2006 and the building code of 2012, in the same words" },
  ["2024"] = { cite = "R908.4 exceptions", seen = EDITION },
}

figure "layers.wood_hollow_needs_cover" { true, "R908.4", sense = "equals", seen = TEXTS,
  read_in = BOOKS, stricter = true,
  ["2012"] = { cite = "R907.4", memory = "recalled" },
  ["2024"] = { cite = "R908.4.1", seen = EDITION },
}

figure "layers.hail_bars_overlay" { false, "R908.3.1.1", sense = "equals", seen = TEXTS,
  read_in = BOOKS, stricter = true,
  ["2012"] = { true, "R907.3 item 4, Figure R903.5",
    parallel = "the text of 2006 and the building code of 2012, in the same words" },
  ["2024"] = { cite = "R908.4", seen = EDITION },
}

figure "layers.hail_zones_barred" { { "moderate", "severe" }, "R907.3 of the older editions",
  sense = "none_of", seen = "inspectors' forum quoting R907.3; a city reroof handout",
  ["2012"] = { cite = "R907.3 item 4, Figure R903.5" },
}

figure "layers.tear_off_to_deck" { true, "R202, R908.3", sense = "equals", seen = TEXTS,
  read_in = BOOKS, stricter = true,
  ["2012"] = { cite = "R202, R907.3", memory = "recalled" },
}

-- Of what the list of 2021 names, modified and single-ply count as built-up here.
figure "layers.coating_over" { { "spray_foam" }, "R908.3.1 item 4", sense = "one_of",
  seen = TEXTS, read_in = { "IRC 2015" },
  ["2012"] = { cite = "R907.3", memory = "recalled; read in the edition of 2009" },
  ["2018"] = {
    { "coating", "metal_panel", "metal_shingle", "roll_roofing", "built_up", "spray_foam" },
    "R908.3.1 item 4", seen = EDITION },
  ["2021"] = {
    { "coating", "metal_panel", "metal_shingle", "roll_roofing", "built_up", "spray_foam" },
    "R908.3.1 item 4", seen = EDITION },
  ["2024"] = {
    { "coating", "metal_panel", "metal_shingle", "roll_roofing", "built_up", "spray_foam" },
    "R908.4 item 4", seen = EDITION },
}

-- Layers -----------------------------------------------------------------------
figure "layers.overlay_by_listing" { false, "R908.3", sense = "equals", seen = NO_PAGE,
  stricter = false,
  ["2012"] = { cite = "R907.3" },
}

figure "layers.listing_over_classes" { { "A", "B" }, "R908.3", sense = "one_of",
  seen = "a California city's ordinance: class A listed over old A or B",
  ["2012"] = { cite = "R907.3" },
}

figure "layers.flat_differs" { false, "R908.3.1.1", sense = "equals", seen = NO_PAGE,
  stricter = "neither",
  ["2012"] = { cite = "R907.3" },
}

figure "layers.flat_under" { 2, "R908.3.1.1", unit = "rise_in_12", sense = "under",
  practice = "what is usually called flat: too flat for shingles",
  ["2012"] = { cite = "R907.3" },
}

figure "layers.most_flat" { 3, "R908.3.1.1", unit = "layers", sense = "at_most",
  seen = "an Illinois village's ordinance: two old coverings may stay on flat roofs",
  ["2012"] = { cite = "R907.3" },
}
