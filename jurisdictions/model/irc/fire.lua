-- Fire class (R902), the same in all editions where an edition says nothing else, and the
-- wildfire details, which the model leaves off.

-- What was read: code texts of states that took the editions over, not the printed books. In
-- an edition that was not read such a figure counts as parallel.
local TEXTS = "state code texts on the editions of 2015 to 2024"
local NO_LINE = TEXTS .. ": no such line"
local DETAIL = "wildfire chapter of one state, as its counties and insurers' research print it"
local NO_PAGE = "local pages, nearly all of which print no such thing"
local BOOKS = { "IRC 2015", "IRC 2018", "IRC 2021", "IRC 2024" }
-- Of the edition of 2012: the first page of chapter 9 of a city's code on it.
local BOOK_2012 = "a city's residential code on this edition"

-- A class is asked for where the place's own law calls for one (the model
-- names no place: off), or near a lot line.
figure "fire.class_required" { false, "R902.1", sense = "equals", seen = TEXTS, read_in = BOOKS,
  stricter = true }

figure "fire.classes" { { "A", "B", "C" }, "R902.1", sense = "one_of", seen = TEXTS,
  read_in = BOOKS, behind = "fire.class_required" }
figure "fire.lot_line_under" { 3, "R902.1", unit = "ft", sense = "under", seen = TEXTS,
  read_in = BOOKS,
  ["2012"] = { cite = "R902.1", seen = BOOK_2012 },
}
figure "fire.classes_near_line" { { "A", "B", "C" }, "R902.1", sense = "one_of", seen = TEXTS,
  read_in = BOOKS,
  ["2012"] = { cite = "R902.1", seen = BOOK_2012 },
}

-- Classes by fire zone: a place's own law turns them on.
figure "fire.class_by_zone" { false, "R902.1", sense = "equals", seen = TEXTS, read_in = BOOKS,
  stricter = true }

figure "fire.classes_in" { sense = "one_of", by = "site.fire_zone", cite = "R902.1", seen = TEXTS,
  read_in = BOOKS,
  rows = {
    none = { { "A", "B", "C", "none" } },
    moderate = { { "A", "B", "C", "none" } },
    high = { { "A", "B", "C", "none" } },
    very_high = { { "A", "B", "C", "none" } },
  },
}

figure "fire.state_area_counts" { false, "R902.1", sense = "equals", seen = TEXTS,
  read_in = BOOKS, stricter = true }
figure "fire.state_area_exempt_zones" { { "moderate" }, "R902.1", sense = "among",
  practice = "one state's law lets its moderate zone off", behind = "fire.state_area_counts" }
figure "fire.classes_state_area" { { "A", "B" }, "R902.1", sense = "one_of",
  practice = "one state's law for lands it answers for" }

-- A whole roof brought under the class by the share renewed, and small pieces
-- that may match the old roof: places have them, the model has not.
figure "fire.whole_roof_required" { false, "R902.1", sense = "equals", seen = TEXTS,
  read_in = BOOKS, stricter = true }

figure "fire.whole_roof_over" { 50, "R902.1", unit = "percent", sense = "over",
  practice = "one state's law", at_figure = "fire.whole_roof_at_named_share",
  behind = "fire.whole_roof_required" }

figure "fire.whole_roof_at_named_share" { false, "R902.1", sense = "equals",
  practice = "one state's law: more than, since 1999; before, or more", stricter = true,
  behind = "fire.whole_roof_required" }

figure "fire.whole_roof_months" { 12, "R902.1", unit = "months", sense = "at_most",
  practice = "one state's law", behind = "fire.whole_roof_required" }
figure "fire.match_old_most" { 0, "R902.1", unit = "percent", sense = "at_most", seen = TEXTS,
  read_in = BOOKS }

-- Counted as class A without a test. Slate lies over underlayment.
figure "fire.deemed_A_any_deck" { { "slate" }, "R902.1 exc. 4", sense = "among", seen = TEXTS,
  read_in = BOOKS }

figure "fire.deemed_A_noncombustible_deck" {
  { "metal_panel", "metal_shingle", "clay_tile", "concrete_tile", "slate" }, "R902.1 exc. 2",
  sense = "among", seen = TEXTS, read_in = BOOKS,
  -- Older texts have one flat list of what counts as class A.
  ["2012"] = { { "metal_panel", "metal_shingle", "clay_tile", "concrete_tile", "slate" },
    "R902.1 exc.", memory = "recalled",
    disputed = "older texts list these coverings without asking for a noncombustible deck" },
}

figure "fire.deemed_A_copper_least" { 16, "R902.1 exc. 3", unit = "oz", sense = "at_least",
  seen = TEXTS, read_in = BOOKS }

-- Proof. The section names two tests.
figure "fire.proof_required" { true, "R902.1", sense = "equals", seen = TEXTS, read_in = BOOKS,
  stricter = true }

figure "fire.proofs" { { "listing", "wrapper", "evaluation_report" }, "R902.1, R904.4",
  sense = "one_of", seen = TEXTS, read_in = BOOKS }
figure "fire.tests" { { "E108", "UL_790" }, "R902.1", sense = "one_of", seen = TEXTS,
  read_in = BOOKS,
  ["2012"] = { cite = "R902.1", seen = BOOK_2012 },
}

-- A standard of the covering itself that carries the class with it.
figure "fire.tests_by_standard" { { "D3462_glass_felt" }, "R902.1", sense = "one_of",
  parallel = "roofing magazine on D3462 carrying class A" }

figure "fire.wood_treated_required" { true, "R902.2", sense = "equals", seen = TEXTS,
  read_in = BOOKS, stricter = true }
figure "fire.wood_labels_required" { true, "R902.2", sense = "equals", seen = TEXTS,
  read_in = BOOKS, stricter = true }
figure "fire.wood_weathering_required" { false, "R902.2", sense = "equals", seen = TEXTS,
  read_in = BOOKS, stricter = true }
figure "fire.wood_weathering_years_least" { 5, "R902.2", unit = "years", sense = "at_least",
  practice = "one state's law", behind = "fire.wood_weathering_required" }

figure "fire.pv_class_required" { true, "R902.3, R902.4", sense = "equals", seen = TEXTS,
  read_in = BOOKS, stricter = true,
  ["2012"] = { false, "R902", memory = "recalled: the section on solar came in 2015" },
}

-- Bans by place, and by place and zone. None in the model.
figure "fire.banned" { {}, "R902.1", sense = "none_of", seen = TEXTS, read_in = BOOKS,
  words = "covering.kind" }
figure "fire.banned_in_zones" { {}, "R902.1", sense = "none_of", seen = TEXTS, read_in = BOOKS,
  words = "covering.kind" }
figure "fire.ban_zones" { { "moderate", "high", "very_high" }, "R902.1", sense = "one_of",
  practice = "one county's ordinance" }

-- Wildfire details: off. A place turns them on with this one figure, and by
-- its status says how: practice warns, anything else fails what is not met.
figure "fire.wildfire_details" { false, "R902.1", sense = "equals", practice = DETAIL,
  disputed = "a guideline says that the wildfire chapter binds new houses only, not a reroof",
  stricter = true }

figure "fire.wildfire_zones" { { "moderate", "high", "very_high" }, "R902.1", sense = "among",
  practice = DETAIL }
figure "fire.gap_ways" { { "firestopped", "cap_sheet" }, "R902.1", sense = "one_of",
  practice = DETAIL }
figure "fire.cap_sheet_least" { 72, "ASTM D3909", unit = "lb", sense = "at_least",
  practice = DETAIL }
figure "fire.ends_stopped_required" { true, "R902.1", sense = "equals", practice = DETAIL,
  stricter = true }
figure "fire.valley_strip_least" { 36, "R902.1", unit = "in", sense = "at_least",
  practice = DETAIL }
figure "fire.valley_metal_least" { 0.019, "R902.1", unit = "in", sense = "at_least",
  practice = "recalled from one state's wildfire chapter: 26 gage" }
figure "fire.gutter_guard_required" { true, "R902.1", sense = "equals", practice = DETAIL,
  stricter = true }
figure "fire.vent_listing_accepted" { true, "ASTM E2886", sense = "equals",
  practice = "recalled from one state's wildfire chapter", stricter = false }
figure "fire.mesh_least" { 0.0625, "R902.1", unit = "in", sense = "at_least", practice = DETAIL }
figure "fire.mesh_most" { 0.125, "R902.1", unit = "in", sense = "at_most", practice = DETAIL }

-- Fire class ---------------------------------------------------------------------
figure "fire.historic_exceptions" { false, "R902.1", sense = "equals", seen = NO_PAGE,
  stricter = false }

figure "fire.class_by_share" { false, "R902.1", sense = "equals", seen = NO_PAGE,
  stricter = true }

figure "fire.class_share_over" { 50, "R902.1", unit = "percent", sense = "over",
  seen = "a California county's bulletin: more than half",
  at_figure = "fire.class_at_named_share", behind = "fire.class_by_share" }

figure "fire.class_at_named_share" { false, "R902.1", sense = "equals", seen = NO_PAGE,
  stricter = true, behind = "fire.class_by_share" }
figure "fire.class_by_addition" { false, "R902.1", sense = "equals", seen = NO_PAGE,
  stricter = true }

figure "fire.class_addition_over" { 640, "R902.1", unit = "sqft", sense = "over",
  seen = "the same bulletin: more new floor than that on any one story",
  behind = "fire.class_by_addition" }

figure "fire.classes_large" { { "A" }, "R902.1", sense = "one_of", seen = "the same bulletin" }
-- A place in the hills may draw the line by height.
figure "fire.class_by_elevation" { false, "R902.1", sense = "equals", seen = NO_PAGE,
  stricter = true }
figure "fire.class_elevation_from" { 7000, "R902.1", unit = "ft", sense = "from",
  practice = "common practice: mountain counties draw such a line, each its own",
  behind = "fire.class_by_elevation" }
figure "fire.classes_high" { { "A" }, "R902.1", sense = "one_of",
  practice = "common practice: where a class is asked for by height, it is the best",
  behind = "fire.class_by_elevation" }
figure "fire.match_old_by_zone" { false, "R902.1", sense = "equals", seen = NO_PAGE,
  stricter = true }
figure "fire.match_old_barred_zones" { { "very_high" }, "R902.1", sense = "among",
  seen = "a California city's ordinance: outside the very high zone" }
figure "fire.match_old_adds_up" { false, "R902.1", sense = "equals", seen = NO_PAGE,
  stricter = true }
figure "fire.match_old_classes" { { "A", "B", "C", "none" }, "R902.1", sense = "one_of",
  seen = "a California city's draft: like the old roof" }
figure "fire.ban_one_family_only" { false, "R902.1", sense = "equals", seen = NO_PAGE,
  stricter = false }
figure "fire.ban_by_local_zone" { false, "R902.1", sense = "equals", seen = NO_PAGE,
  stricter = true }
figure "fire.ban_local_zones" { { "red" }, "R902.1", sense = "none_of",
  seen = "a Colorado county's page" }
figure "fire.class_by_material" { false, "R902.1", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, stricter = true }

figure "fire.classes_of" { sense = "one_of", by = "covering.kind", cite = "R902.1",
  seen = "those pages: not named",
  rows = {
    asphalt_shingle = { { "A" }, seen = "a Kansas city's list" },
    metal_panel = { { "A", "B" }, seen = "a Kansas city's list" },
    metal_shingle = { { "A", "B" }, seen = "a Kansas city's list" },
    wood_shingle = { { "A", "B", "C" }, seen = "a Colorado county's page" },
    wood_shake = { { "A", "B", "C" }, seen = "a Colorado county's page" },
    slate = { { "A", "B", "C", "none" } },
    clay_tile = { { "A", "B", "C", "none" } },
    concrete_tile = { { "A", "B", "C", "none" } },
    roll_roofing = { { "A", "B", "C", "none" } },
    coating = { { "A", "B", "C", "none" } },
    built_up = { { "A", "B", "C", "none" } },
    coal_tar_built_up = { { "A", "B", "C", "none" } },
    modified_bitumen = { { "A", "B", "C", "none" } },
    thermoset_membrane = { { "A", "B", "C", "none" } },
    thermoplastic_membrane = { { "A", "B", "C", "none" } },
    spray_foam = { { "A", "B", "C", "none" } },
  },
}

-- Fire zones whose classes stand in a code that was not read, and alarms by the stove.
figure "fire.zones_not_read" { {}, "R902.1", sense = "among", seen = TEXTS, read_in = BOOKS }
