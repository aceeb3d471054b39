-- Fire class (R902), the same in all editions where an edition says nothing
-- else, and the wildfire details, which the model leaves off.

-- What was read: code texts of states that took the editions of 2015 to 2024 over,
-- not the printed books. In another edition such a figure counts as parallel.
local TEXTS = "state code texts on the editions of 2015 to 2024"
local BOOKS = { "IRC 2015", "IRC 2018", "IRC 2021", "IRC 2024" }
local DETAIL = "wildfire chapter of one state, as its counties and insurers' research print it"

figures {
  -- A class is asked for where the place's own law calls for one (the model
  -- names no place: off), or near a lot line.
  ["fire.class_required"] = { false, sense = "equals", cite = "R902.1", status = "seen",
    source = TEXTS, read_in = BOOKS },
  ["fire.classes"] = { { "A", "B", "C" }, sense = "one_of", cite = "R902.1", status = "seen",
    source = TEXTS, read_in = BOOKS },
  ["fire.lot_line_under"] = { 3, unit = "ft", sense = "under", cite = "R902.1", status = "seen",
    source = TEXTS, read_in = BOOKS },
  ["fire.classes_near_line"] = { { "A", "B", "C" }, sense = "one_of", cite = "R902.1",
    status = "seen", source = TEXTS, read_in = BOOKS },

  -- Classes by fire zone: a place's own law turns them on.
  ["fire.class_by_zone"] = { false, sense = "equals", cite = "R902.1", status = "seen",
    source = TEXTS, read_in = BOOKS },
  ["fire.classes_in.none"] = { { "A", "B", "C", "none" }, sense = "one_of", cite = "R902.1",
    status = "seen", source = TEXTS, read_in = BOOKS },
  ["fire.classes_in.moderate"] = { { "A", "B", "C", "none" }, sense = "one_of", cite = "R902.1",
    status = "seen", source = TEXTS, read_in = BOOKS },
  ["fire.classes_in.high"] = { { "A", "B", "C", "none" }, sense = "one_of", cite = "R902.1",
    status = "seen", source = TEXTS, read_in = BOOKS },
  ["fire.classes_in.very_high"] = { { "A", "B", "C", "none" }, sense = "one_of", cite = "R902.1",
    status = "seen", source = TEXTS, read_in = BOOKS },
  ["fire.state_area_counts"] = { false, sense = "equals", cite = "R902.1", status = "seen",
    source = TEXTS, read_in = BOOKS },
  ["fire.state_area_exempt_zones"] = { { "moderate" }, sense = "among", cite = "R902.1",
    status = "practice", source = "one state's law lets its moderate zone off" },
  ["fire.classes_state_area"] = { { "A", "B" }, sense = "one_of", cite = "R902.1",
    status = "practice", source = "one state's law for lands it answers for" },

  -- A whole roof brought under the class by the share renewed, and small pieces
  -- that may match the old roof: places have them, the model has not.
  ["fire.whole_roof_required"] = { false, sense = "equals", cite = "R902.1", status = "seen",
    source = TEXTS, read_in = BOOKS },
  ["fire.whole_roof_over"] = { 50, unit = "percent", sense = "over", cite = "R902.1",
    status = "practice", source = "one state's law", at_figure = "fire.whole_roof_at_named_share" },
  ["fire.whole_roof_at_named_share"] = { false, sense = "equals", cite = "R902.1",
    status = "practice", source = "one state's law: more than, since 1999; before, or more" },
  ["fire.whole_roof_months"] = { 12, unit = "months", sense = "at_most", cite = "R902.1",
    status = "practice", source = "one state's law" },
  ["fire.match_old_most"] = { 0, unit = "percent", sense = "at_most", cite = "R902.1",
    status = "seen", source = TEXTS, read_in = BOOKS },

  -- Counted as class A without a test. Slate lies over underlayment.
  ["fire.deemed_A_any_deck"] = { { "slate" }, sense = "among", cite = "R902.1 exc. 4",
    status = "seen", source = TEXTS, read_in = BOOKS },
  ["fire.deemed_A_noncombustible_deck"] = {
    { "metal_panel", "metal_shingle", "clay_tile", "concrete_tile", "slate" }, sense = "among",
    cite = "R902.1 exc. 2", status = "seen", source = TEXTS, read_in = BOOKS },
  ["fire.deemed_A_copper_least"] = { 16, unit = "oz", sense = "at_least", cite = "R902.1 exc. 3",
    status = "seen", source = TEXTS, read_in = BOOKS },

  -- Proof. The section names two tests.
  ["fire.proof_required"] = { true, sense = "equals", cite = "R902.1", status = "seen",
    source = TEXTS, read_in = BOOKS },
  ["fire.proofs"] = { { "listing", "wrapper", "evaluation_report" }, sense = "one_of",
    cite = "R902.1, R904.4", status = "seen", source = TEXTS, read_in = BOOKS },
  ["fire.tests"] = { { "E108", "UL_790" }, sense = "one_of", cite = "R902.1", status = "seen",
    source = TEXTS, read_in = BOOKS },
  -- A standard of the covering itself that carries the class with it.
  ["fire.tests_by_standard"] = { { "D3462_glass_felt" }, sense = "one_of", cite = "R902.1",
    status = "parallel", source = "roofing magazine on D3462 carrying class A" },

  ["fire.wood_treated_required"] = { true, sense = "equals", cite = "R902.2", status = "seen",
    source = TEXTS, read_in = BOOKS },
  ["fire.wood_labels_required"] = { true, sense = "equals", cite = "R902.2", status = "seen",
    source = TEXTS, read_in = BOOKS },
  ["fire.wood_weathering_required"] = { false, sense = "equals", cite = "R902.2", status = "seen",
    source = TEXTS, read_in = BOOKS },
  ["fire.wood_weathering_years_least"] = { 5, unit = "years", sense = "at_least",
    cite = "R902.2", status = "practice", source = "one state's law" },

  ["fire.pv_class_required"] = { true, sense = "equals", cite = "R902.3, R902.4", status = "seen",
    source = TEXTS, read_in = BOOKS },

  -- Bans by place, and by place and zone. None in the model.
  ["fire.banned"] = { {}, sense = "none_of", cite = "R902.1", status = "seen", source = TEXTS,
    read_in = BOOKS },
  ["fire.banned_in_zones"] = { {}, sense = "none_of", cite = "R902.1", status = "seen",
    source = TEXTS, read_in = BOOKS },
  ["fire.ban_zones"] = { { "moderate", "high", "very_high" }, sense = "one_of",
    cite = "R902.1", status = "practice", source = "one county's ordinance" },

  -- Wildfire details: off. A place turns them on with this one figure, and by
  -- its status says how: practice warns, anything else fails what is not met.
  ["fire.wildfire_details"] = { false, sense = "equals", cite = "R902.1", status = "practice",
    source = DETAIL, disputed = "a guideline says that the wildfire chapter binds new houses "
      .. "only, not a reroof" },
  ["fire.wildfire_zones"] = { { "moderate", "high", "very_high" }, sense = "among",
    cite = "R902.1", status = "practice", source = DETAIL },
  ["fire.gap_ways"] = { { "firestopped", "cap_sheet" }, sense = "one_of", cite = "R902.1",
    status = "practice", source = DETAIL },
  ["fire.cap_sheet_least"] = { 72, unit = "lb", sense = "at_least", cite = "ASTM D3909",
    status = "practice", source = DETAIL },
  ["fire.ends_stopped_required"] = { true, sense = "equals", cite = "R902.1",
    status = "practice", source = DETAIL },
  ["fire.valley_strip_least"] = { 36, unit = "in", sense = "at_least", cite = "R902.1",
    status = "practice", source = DETAIL },
  ["fire.valley_metal_least"] = { 0.019, unit = "in", sense = "at_least", cite = "R902.1",
    status = "practice", source = "recalled from one state's wildfire chapter: 26 gage" },
  ["fire.gutter_guard_required"] = { true, sense = "equals", cite = "R902.1",
    status = "practice", source = DETAIL },
  ["fire.vent_listing_accepted"] = { true, sense = "equals", cite = "ASTM E2886",
    status = "practice", source = "recalled from one state's wildfire chapter" },
  ["fire.mesh_least"] = { 0.0625, unit = "in", sense = "at_least", cite = "R902.1",
    status = "practice", source = DETAIL },
  ["fire.mesh_most"] = { 0.125, unit = "in", sense = "at_most", cite = "R902.1",
    status = "practice", source = DETAIL },
}
