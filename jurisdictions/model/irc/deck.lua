-- The deck: what it is made of, its nails, and the nailing table of each edition.

-- What was read: code texts of states that took the editions over, not the printed books. In
-- an edition that was not read such a figure counts as parallel.
local TEXTS = "state code texts on the editions of 2015 to 2024"
local NO_LINE = TEXTS .. ": no such line"
local EDITION = "state code text on this edition"
local WOOD_NOTES = "engineers' notes made from the wood design standard"
local NO_PAGE = "local pages, nearly all of which print no such thing"
local BOOKS = { "IRC 2015", "IRC 2018", "IRC 2021", "IRC 2024" }
local IN_7_10 = { "IRC 2015", "IRC 2018" }
local IN_7_22 = { "IRC 2024" }
local HEIGHTS_IN = { "IRC 2015", "IRC 2018", "IRC 2021" }

-- Deck: what it is.
figure "deck.kinds_solid" { { "panel", "board" }, "R905.2.1", sense = "one_of",
  seen = "city roofing page and an older code page, both citing R905.2.1", read_in = BOOKS }

figure "deck.slot_fills" { { "panel", "board" }, "R905.2.1", sense = "one_of",
  seen = "city roofing page and an older code page, both citing R905.2.1", read_in = BOOKS }

-- Seen from below only; what stands in the weather itself is of exterior durability.
figure "deck.exposed_bonds" { { "exterior", "exposure_1" }, "R803.2.1.1", sense = "one_of",
  seen = "adjusters' public page on R803 of three editions",
  read_in = { "IRC 2015", "IRC 2018", "IRC 2021" } }

figure "deck.unsound_left_most" { 0, "R905.2.1, R908.2", unit = "sqft", sense = "at_most",
  seen = "city reroof handout", read_in = BOOKS }

-- Deck panels. Thicknesses are fractions of an inch: 0.46875 is 15/32.
figure "deck.panel_span_supported" { unit = "in", sense = "at_most", by = "decks[].span_rating",
  cite = "Table R503.2.1.1(1)", seen = TEXTS, read_in = BOOKS,
  rows = {
    ["16/0"] = { 16 },
    ["20/0"] = { 20 },
    ["24/0"] = { 24 },
    ["24/16"] = { 24 },
    ["32/16"] = { 32 },
    ["40/20"] = { 40 },
    ["48/24"] = { 48 },
    ["60/32"] = { 60 },
  },
}

figure "deck.panel_span_unsupported" { unit = "in", sense = "at_most", by = "decks[].span_rating",
  cite = "Table R503.2.1.1(1)", seen = TEXTS, read_in = BOOKS,
  rows = {
    ["16/0"] = { 16 },
    ["20/0"] = { 20 },
    ["24/0"] = { 20 },
    ["24/16"] = { 24 },
    ["32/16"] = { 28 },
    ["40/20"] = { 32 },
    ["48/24"] = { 36 },
    ["60/32"] = { 48 },
  },
}

figure "deck.panel_span_thick_ratings" { { "24/0" }, "Table R503.2.1.1(1) footnote",
  sense = "among", seen = TEXTS, read_in = BOOKS }
figure "deck.panel_span_thick_from" { 0.46875, "Table R503.2.1.1(1) footnote", unit = "in",
  sense = "from", seen = TEXTS, read_in = BOOKS }
figure "deck.panel_span_unsupported_thick" { 24, "Table R503.2.1.1(1) footnote", unit = "in",
  sense = "at_most", seen = TEXTS, read_in = BOOKS }

figure "deck.panel_thickness_least" { unit = "in", sense = "at_least", by = "decks[].span_rating",
  cite = "Table R503.2.1.1(1)", seen = TEXTS, read_in = BOOKS,
  rows = {
    ["16/0"] = { 0.375 },
    ["20/0"] = { 0.375 },
    ["24/0"] = { 0.375 },
    ["24/16"] = { 0.4375 },
    ["32/16"] = { 0.46875 },
    ["40/20"] = { 0.59375 },
    ["48/24"] = { 0.71875 },
    ["60/32"] = { 0.875 },
  },
}

figure "deck.kept_held_to_tables" { false, "R803.2.2", sense = "equals",
  seen = "city page on how it reads the 2018 edition", stricter = true }
figure "deck.panel_gap_least" { 0.125, "R803.2.3 gives no figure", unit = "in",
  sense = "at_least", practice = "panel trade practice, as federal coastal advice repeats it" }

figure "deck.panel_gap_most" { 0.25, "R803.2.3 gives no figure", unit = "in", sense = "at_most",
  practice = "an official's rule of thumb on a forum",
  disputed = "practice runs from 1/8 to 1/2 in by source", rival = 0.125 }

-- Deck boards.
figure "deck.board_spacing_most" { 24, "Table R803.1", unit = "in", sense = "at_most",
  seen = TEXTS, read_in = BOOKS }

figure "deck.board_thickness_least" { 0.625, "Table R803.1", unit = "in", sense = "at_least",
  seen = TEXTS, read_in = BOOKS }
figure "deck.board_thickness_least_wide" { 1.5, "Table R803.1", unit = "in", sense = "at_least",
  seen = TEXTS, read_in = BOOKS }

figure "deck.board_gap_most" { 0.25, "R905.2.1 gives no figure", unit = "in", sense = "at_most",
  practice = "an official's rule of thumb on a forum",
  disputed = "practice runs from 1/8 to 1/2 in by source", rival = 0.125 }

figure "deck.board_wide_over" { 6, "Table R602.3(1)", unit = "in", sense = "over", seen = TEXTS,
  read_in = BOOKS }

figure "deck.board_nails_least" { unit = "nails", sense = "at_least", cite = "Table R602.3(1)",
  seen = TEXTS, read_in = BOOKS,
  rows = {
    narrow = { 2 },
    wide = { 3 },
  },
}

-- Box nails: three in a 1x6 and a 1x8, four in what is wider.
figure "deck.nails_box" { { "box_8d" }, "Table R602.3(1)", sense = "among",
  practice = "a working list: the box nails of that table" }

figure "deck.board_widest_over" { 8, "Table R602.3(1)", unit = "in", sense = "over", seen = TEXTS,
  read_in = BOOKS }

figure "deck.board_nails_least_box" { unit = "nails", sense = "at_least",
  cite = "Table R602.3(1)", seen = TEXTS, read_in = BOOKS,
  rows = {
    narrow = { 3 },
    wide = { 3 },
    widest = { 4 },
  },
}

-- Deck nails. The rows of the nailing table go by the thickness of the panel;
-- where a row ends and what it asks for differ by edition.
figure "deck.nail_panel_least" { 0.375, "Table R602.3(1)", unit = "in", sense = "at_least",
  seen = TEXTS, read_in = BOOKS }

figure "deck.nail_panel_thin_most" { 0.5, "Table R602.3(1)", unit = "in", sense = "at_most",
  seen = TEXTS, read_in = BOOKS }
figure "deck.nail_panel_thick_most" { 1.25, "Table R602.3(1)", unit = "in", sense = "at_most",
  seen = TEXTS, read_in = BOOKS }

figure "deck.nail_kinds" { sense = "one_of", cite = "Table R602.3(1)", seen = TEXTS,
  read_in = BOOKS,
  rows = {
    thin = { { "common_8d", "RSRS_01" },
      -- Deck nails: the common nail alone, the ringed one came in 2018. 12 in the
      -- field; closer past 100 mph on the older scale, which is 129 on the ultimate one.
      ["2012"] = { { "common_8d" }, "Table R602.3(1)",
        parallel = "a nailing table of this edition or the one before, which the page does not "
          .. "name" },
      -- Deck nails: the common nail alone, the ringed one came in 2018. 12 in the
      -- field; past 130 mph 6 in the band by the edges, and 4 into gable framing.
      ["2015"] = { { "common_8d" }, "Table R602.3(1)", seen = EDITION },
    },
    mid = { { "common_8d", "RSRS_01" },
      ["2012"] = { { "common_8d" }, "Table R602.3(1)",
        parallel = "a nailing table of this edition or the one before, which the page does not "
          .. "name" },
      ["2015"] = { { "common_8d" }, "Table R602.3(1)", seen = EDITION },
    },
    thick = { { "common_10d", "deformed_8d" } },
    board = { { "common_8d", "box_8d" } },
  },
}

figure "deck.nails_ringed" {
  { "deformed_8d", "RSRS_01", "RSRS_02", "RSRS_03", "RSRS_04", "RSRS_05" }, "ASTM F1667",
  sense = "one_of",
  practice = "a working list, not a line of the code: what is called ringed here" }

figure "deck.fasteners_barred" { { "staple" }, "R803.2.3", sense = "none_of",
  practice = "federal coastal fact sheet advising against staples" }

figure "deck.nail_length" { unit = "in", sense = "at_least", by = "decks[].nails.kind",
  seen = TEXTS, read_in = BOOKS,
  rows = {
    common_6d = { 2, "Table R602.3(1)" },
    common_8d = { 2.5, "Table R602.3(1)" },
    common_10d = { 3, "Table R602.3(1)" },
    box_8d = { 2.5, "Table R602.3(1)" },
    sinker_8d = { 2.375, "ASTM F1667", parallel = WOOD_NOTES },
    deformed_8d = { 2.5, "Table R602.3(1)" },
    RSRS_01 = { 2.375, "ASTM F1667",
      seen = "Table R602.3(1) in state code texts on the editions of 2018 to 2024" },
    RSRS_02 = { 2.5, "ASTM F1667", memory = "recalled" },
    RSRS_03 = { 2.5, "ASTM F1667",
      seen = "Table R602.3(1) of 2024, footnote f, and a state residential code of 2023" },
    RSRS_04 = { 3, "ASTM F1667", parallel = "a state residential code of 2023" },
    RSRS_05 = { 3, "ASTM F1667", memory = "recalled" },
  },
}

figure "deck.nail_shank" { unit = "in", sense = "at_least", by = "decks[].nails.kind",
  seen = TEXTS, read_in = BOOKS,
  rows = {
    common_6d = { 0.113, "Table R602.3(1)" },
    common_8d = { 0.131, "Table R602.3(1)" },
    common_10d = { 0.148, "Table R602.3(1)" },
    box_8d = { 0.113, "Table R602.3(1)" },
    sinker_8d = { 0.113, "ASTM F1667", parallel = WOOD_NOTES },
    deformed_8d = { 0.131, "Table R602.3(1)" },
    RSRS_01 = { 0.113, "ASTM F1667",
      seen = "Table R602.3(1) in state code texts on the editions of 2018 to 2024" },
    RSRS_02 = { 0.12, "ASTM F1667", memory = "recalled" },
    RSRS_03 = { 0.131, "ASTM F1667",
      seen = "Table R602.3(1) of 2024, footnote f, and a state residential code of 2023" },
    RSRS_04 = { 0.12, "ASTM F1667", parallel = "a state residential code of 2023" },
    RSRS_05 = { 0.131, "ASTM F1667", memory = "recalled" },
  },
}

-- What a nail of the name is, where a job does not say: no demand, and what is demanded above
-- does not move it. The sizes are those of the standard, read where Table R602.3(1) writes
-- them out. Ringed 8d nails are sold in two lengths, and nobody read RSRS-02 and -05: asked.
figure "deck.nail_made_length" { unit = "in", sense = "equals", by = "decks[].nails.kind",
  cite = "ASTM F1667", seen = TEXTS, read_in = BOOKS,
  rows = {
    common_6d = { 2 },
    common_8d = { 2.5 },
    common_10d = { 3 },
    box_8d = { 2.5 },
    sinker_8d = { 2.375, parallel = WOOD_NOTES },
    RSRS_01 = { 2.375,
      seen = "Table R602.3(1) in state code texts on the editions of 2018 to 2024" },
    RSRS_03 = { 2.5,
      seen = "Table R602.3(1) of 2024, footnote f, and a state residential code of 2023" },
    RSRS_04 = { 3, parallel = "a state residential code of 2023" },
  },
}

figure "deck.nail_made_shank" { unit = "in", sense = "equals", by = "decks[].nails.kind",
  cite = "ASTM F1667", seen = TEXTS, read_in = BOOKS,
  rows = {
    common_6d = { 0.113 },
    common_8d = { 0.131 },
    common_10d = { 0.148 },
    box_8d = { 0.113 },
    sinker_8d = { 0.113, parallel = WOOD_NOTES },
    RSRS_01 = { 0.113,
      seen = "Table R602.3(1) in state code texts on the editions of 2018 to 2024" },
    RSRS_03 = { 0.131,
      seen = "Table R602.3(1) of 2024, footnote f, and a state residential code of 2023" },
    RSRS_04 = { 0.12, parallel = "a state residential code of 2023" },
  },
}

figure "deck.nail_edge_most" { 6, "Table R602.3(1)", unit = "in", sense = "at_most", seen = TEXTS,
  read_in = BOOKS }

figure "deck.nail_field_most" { unit = "in", sense = "at_most", cite = "Table R602.3(1)",
  seen = TEXTS, read_in = BOOKS,
  rows = {
    thick = { 12 },
    thin = {
      ["2012"] = { 12, "Table R602.3(1)",
        parallel = "a nailing table of this edition or the one before, which the page does not "
          .. "name" },
      ["2015"] = { 12, "Table R602.3(1)", seen = EDITION },
      ["2018"] = { 12, "Table R602.3(1)", seen = EDITION },
      ["2021"] = { 6, "Table R602.3(1) item 31", seen = EDITION },
      ["2024"] = { 6, "Table R602.3(1)", seen = EDITION },
    },
    mid = {
      ["2012"] = { 12, "Table R602.3(1)",
        parallel = "a nailing table of this edition or the one before, which the page does not "
          .. "name" },
      ["2015"] = { 12, "Table R602.3(1)", seen = EDITION },
      ["2018"] = { 12, "Table R602.3(1)", seen = EDITION },
      ["2021"] = { 6, "Table R602.3(1) item 32", seen = EDITION },
      ["2024"] = { 6, "Table R602.3(1)", seen = EDITION },
    },
  },
}

-- Since 2018 panels may pass the gable wall by so much without framing of their own.
figure "deck.past_gable_counts" { false, "R803.2.3", sense = "equals", seen = NO_LINE,
  read_in = IN_7_10, stricter = true,
  ["2018"] = { true, "R803.2.3", seen = EDITION },
  ["2021"] = { true, "R803.2.3", seen = EDITION },
  ["2024"] = { true, "R803.2.3", seen = EDITION },
}
figure "deck.past_gable_most" { 9, "R803.2.3", unit = "in", sense = "at_most", seen = TEXTS,
  read_in = { "IRC 2018", "IRC 2021", "IRC 2024" }, behind = "deck.past_gable_counts" }

figure "deck.nail_gable_most" { 6, "Table R602.3(1) footnote f", unit = "in", sense = "at_most",
  seen = TEXTS, read_in = BOOKS }
figure "deck.nail_gable_close_most" { 4, "Table R602.3(1) footnote f", unit = "in",
  sense = "at_most", seen = TEXTS, read_in = BOOKS }
figure "deck.nail_band_width_least" { 48, "Table R602.3(1) footnote f", unit = "in",
  sense = "at_least", seen = TEXTS, read_in = BOOKS }

figure "deck.nail_wind_by_map" { true, "R301.2.1.1", sense = "equals", seen = TEXTS,
  read_in = BOOKS, stricter = true }

-- Light framing: the spacings hold for a gravity of 0.42 and more, says 2024.
figure "deck.nail_gravity_counts" { false, "Table R602.3(1) footnote f", sense = "equals",
  seen = TEXTS, read_in = HEIGHTS_IN, stricter = true,
  ["2024"] = { true, "Table R602.3(1) footnote f", seen = EDITION },
}

figure "deck.nail_gravity_least" { 0.42, "Table R602.3(1) footnote f", unit = "coefficient",
  sense = "at_least", seen = "state code text on the 2024 edition", read_in = IN_7_22,
  behind = "deck.nail_gravity_counts" }

figure "deck.nail_kinds_light" { { "RSRS_03" }, "Table R602.3(1) footnote f", sense = "one_of",
  seen = "state code text on the 2024 edition", read_in = IN_7_22 }

-- Staples have a table of their own, which is not held here: only where it ends.
figure "deck.staple_mph_most" { 129, "Table R602.3(2)", unit = "mph", sense = "at_most",
  seen = "state code texts on the editions of 2015 to 2024: under 130", read_in = IN_7_10,
  ["2021"] = { 110, "Table R602.3(2)", seen = EDITION },
  ["2024"] = { 110, "Table R602.3(2)", seen = EDITION },
}

figure "deck.nail_wind_under" { 140, "R301.2.1.1", unit = "mph", sense = "under",
  seen = "state code texts on the editions of 2015 to 2024: by the map; 140 is named for "
    .. "special wind regions, since 2021", read_in = BOOKS,
  ["2012"] = { 142, "R301.2.1.1",
    seen = "engineer's page on this edition's map: 110 mph on the older scale; 100 in mapped "
      .. "hurricane regions" },
}

-- The code gives measured spacings no allowance. A county may.
figure "deck.over_spacing_share_most" { 0, "Table R602.3(1)", unit = "percent", sense = "at_most",
  seen = TEXTS, read_in = BOOKS }

figure "deck.over_spacing_most" { 0, "Table R602.3(1)", unit = "in", sense = "at_most",
  seen = TEXTS, read_in = BOOKS }
figure "deck.nail_spacing_least" { 3, "R602.3", unit = "in", sense = "at_least",
  practice = "federal coastal fact sheet" }
figure "deck.nail_edge_distance_least" { 0.375, "R602.3", unit = "in", sense = "at_least",
  practice = "trade practice, read on a weak copy" }
figure "deck.overdriven_allowed" { false, "R803.2.3", sense = "equals",
  seen = "federal coastal construction manual, volume II", stricter = false }

-- Nailing a kept deck again: some states ask for it, the model code does not.
figure "deck.renail_required" { false, "R908.1", sense = "equals", seen = TEXTS, read_in = BOOKS,
  stricter = true }

figure "deck.renail_built_before" { 2003, "R908.1", unit = "year", sense = "under",
  seen = "a Florida county's page: built in 2002 or before",
  disputed = "the state's cut-off is 1 March 2002, so a house of that year may be on either "
    .. "side of it", behind = "deck.renail_required" }

figure "deck.renail_house_kinds" { { "one_family", "two_family", "townhouse" }, "R908.1",
  sense = "among", practice = "a working list: the kinds of house that this code is for",
  behind = "deck.renail_required" }

-- Deck, ice barrier, drip edge, wind ------------------------------------------------
figure "deck.solid_counts_for_all" { false, "R905", sense = "equals", seen = NO_PAGE,
  stricter = true }

figure "deck.thickness_counts" { false, "R803.2", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, stricter = true }
figure "deck.thickness_least" { 0.5, "R803.2", unit = "in", sense = "at_least",
  seen = "an Illinois village's page: 1/2 in", behind = "deck.thickness_counts" }
figure "deck.thickness_kinds" { { "panel", "board", "spaced_board" }, "R803.2", sense = "among",
  seen = "the same page names no kind", behind = "deck.thickness_counts" }
figure "deck.thickness_new_only" { false, "R803.2", sense = "equals", seen = NO_PAGE,
  stricter = false, behind = "deck.thickness_counts" }
figure "deck.thickness_over_only" { false, "R803.2", sense = "equals", seen = NO_PAGE,
  stricter = false, behind = "deck.thickness_counts" }
figure "deck.shear_listing_allowed" { false, "R803.2", sense = "equals", seen = NO_PAGE,
  stricter = false }
figure "deck.panel_edges_hidden_required" { false, "R803.2", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, stricter = true }
figure "deck.panel_joints_count" { false, "R803.2.3", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, stricter = true }

-- Decks: nailed again by how they were nailed before; nails and panels by wind.
figure "deck.renail_by_old_nails" { false, "R908.1", sense = "equals", seen = TEXTS,
  read_in = BOOKS, stricter = true }

figure "deck.nails_by_wind" { false, "Table R602.3(1)", sense = "equals", seen = TEXTS,
  read_in = BOOKS, stricter = true }
figure "deck.panels_by_wind" { false, "R803.2.2", sense = "equals", seen = TEXTS, read_in = BOOKS,
  stricter = true }

figure "deck.nail_panel_mid_most" { unit = "in", sense = "at_most",
  ["2012"] = { 1, "Table R602.3(1)",
    parallel = "a nailing table of this edition or the one before, which the page does not "
      .. "name" },
  ["2015"] = { 1, "Table R602.3(1)", seen = EDITION },
  -- Deck nails. The field is 12 in this edition, 6 in the next; 6 in the band
  -- under 130 mph, 4 from there.
  ["2018"] = { 1, "Table R602.3(1)", seen = EDITION },
  -- Deck nails. The field came down to 6 for panels up to 3/4 in.
  ["2021"] = { 0.75, "Table R602.3(1) item 32", seen = EDITION },
  ["2024"] = { 0.75, "Table R602.3(1)", seen = EDITION },
}

figure "deck.nail_band_most" { unit = "in", sense = "at_most",
  ["2012"] = { 12, "Table R602.3(1)",
    parallel = "a nailing table of this edition or the one before, which the page does not "
      .. "name" },
  ["2015"] = { 12, "Table R602.3(1) footnote f", seen = EDITION },
  ["2018"] = { 6, "Table R602.3(1) footnote f", seen = EDITION },
  rows = {
    thin = {
      ["2021"] = { 6, "Table R602.3(1)", seen = EDITION },
      ["2024"] = { 6, "Table R602.3(1)", seen = EDITION },
    },
    mid = {
      ["2021"] = { 6, "Table R602.3(1)", seen = EDITION },
      ["2024"] = { 6, "Table R602.3(1)", seen = EDITION },
    },
    thick = {
      ["2021"] = { 12, "Table R602.3(1)", seen = EDITION },
      ["2024"] = { 12, "Table R602.3(1)", seen = EDITION },
    },
  },
}

figure "deck.nail_band_close_most" { unit = "in", sense = "at_most",
  ["2012"] = { 6, "Table R602.3(1) footnote", memory = "recalled" },
  ["2015"] = { 6, "Table R602.3(1) footnote f", seen = EDITION },
  ["2018"] = { 4, "Table R602.3(1) footnote f", seen = EDITION },
  ["2021"] = { 4, "Table R602.3(1) footnote f", seen = EDITION },
  ["2024"] = { 4, "Table R602.3(1) footnote f", seen = EDITION },
}

figure "deck.nail_close_mph" { unit = "mph", sense = "over", by = "site.exposure",
  ["2012"] = { 129, "Table R602.3(1) footnote", memory = "recalled: 100 mph on the older scale" },
  ["2015"] = { 130, "Table R602.3(1) footnote f", seen = EDITION },
  ["2018"] = { 130, "Table R602.3(1) footnote f", sense = "from", seen = EDITION },
  rows = {
    B = {
      ["2021"] = { 130, "Table R602.3(1) footnote f", seen = EDITION },
      ["2024"] = { 130, "Table R602.3(1) footnote f", seen = EDITION },
    },
    C = {
      ["2021"] = { 110, "Table R602.3(1) footnote f", seen = EDITION },
      ["2024"] = { 110, "Table R602.3(1) footnote f", seen = EDITION },
    },
    D = {
      ["2021"] = { 110, "Table R602.3(1) footnote f names no exposure D",
        practice = "taken as exposure C, the windiest that the footnote names" },
      ["2024"] = { 110, "Table R602.3(1) footnote f names no exposure D",
        practice = "taken as exposure C, the windiest that the footnote names" },
    },
  },
}

figure "deck.nail_close_at_named_speed" { sense = "equals", stricter = true,
  ["2012"] = { false, "Table R602.3(1) footnote", memory = "recalled" },
  ["2015"] = { false, "Table R602.3(1) footnote f", seen = EDITION },
  ["2018"] = { true, "Table R602.3(1) footnote f", seen = EDITION },
  ["2021"] = { false, "Table R602.3(1) footnote f", seen = EDITION },
  ["2024"] = { false, "Table R602.3(1) footnote f", seen = EDITION },
}
