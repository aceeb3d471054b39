-- The model code's inspections (R109): it names no
-- visit for a reroof but the final; the deck and others come from local use of
-- its "other inspections". So those are off until a place switches them on; whether
-- it does, its own pages on visits and on notice tell, and until these were read it is
-- not known.

-- What was read: code texts of states that took the editions of 2015 to 2024 over,
-- not the printed books. In another edition such a figure counts as parallel.
local TEXTS = "state code texts on the editions of 2015 to 2024"
local NO_LINE = TEXTS .. ": no such line"
local BOOKS = { "IRC 2015", "IRC 2018", "IRC 2021", "IRC 2024" }

local function off(cite, pages)
  return { false, sense = "equals", cite = cite, status = "seen", source = NO_LINE,
    read_in = BOOKS, pages = pages or "visits" }
end

-- The code has such a line, for every building or every permit; whether it is looked at
-- in a reroof is the place's to say.
local function by_choice(cite, what)
  return { false, sense = "equals", cite = cite, status = "seen",
    source = TEXTS .. ": " .. what, read_in = BOOKS, pages = "visits" }
end

local function figure_of(value, unit, sense, cite, source)
  return { value, unit = unit, sense = sense, cite = cite, status = "seen", source = source }
end

local function read(value, sense, cite)
  return { value, sense = sense, cite = cite, status = "seen", source = TEXTS, read_in = BOOKS }
end

-- A visit always does; a place adds photographs, affidavits and the like.
local function only_a_visit(cite)
  return { { "visit" }, sense = "one_of", cite = cite, status = "seen",
    source = "local handouts, nearly all of which ask for a visit" }
end

-- No condition: the visit is due in every job that its method has it for.
local function always(cite)
  return { {}, sense = "among", cite = cite, status = "seen",
    source = "local handouts, nearly all of which name no condition" }
end

local BOTH = { "tear-off", "overlay" }

-- What narrows a duty, off until a place prints it: it must not cast doubt on a
-- duty that a place has switched on.
local function unsaid(cite)
  return { false, sense = "equals", cite = cite, status = "seen",
    source = "local handouts, nearly all of which print no such limit" }
end

figures {
  ["inspection.required.pre"] = off "R109.1.5",
  ["inspection.required.deck"] = off "R109.1.5",
  ["inspection.required.nailing"] = off "R109.1.5",
  ["inspection.required.dry_in"] = off "R109.1.5",
  ["inspection.required.mid_roof"] = off "R109.1.5",
  ["inspection.required.final"] = read(true, "equals", "R109.1.6"),

  ["inspection.proofs.pre"] = only_a_visit "R109.1.5",
  ["inspection.proofs.deck"] = only_a_visit "R109.1.5",
  ["inspection.proofs.nailing"] = only_a_visit "R109.1.5",
  ["inspection.proofs.dry_in"] = only_a_visit "R109.1.5",
  ["inspection.proofs.mid_roof"] = only_a_visit "R109.1.5",
  ["inspection.proofs.final"] = only_a_visit "R109.1.6",
  ["inspection.owner_differs"] = unsaid "R109.1.5",
  ["inspection.owner_proofs"] = figure_of({ "visit", "third_party" }, nil, "one_of", "R109.1.5",
    "a Florida city's page: owners take visits, or someone licensed signs"),

  -- Which jobs a visit is for. An overlay has no bare deck.
  ["inspection.methods.pre"] = figure_of(BOTH, nil, "one_of", "R109.1.5",
    "local pages on looks before tear-off and before overlay"),
  ["inspection.methods.deck"] = figure_of({ "tear-off" }, nil, "one_of", "R109.1.5",
    "local pages: after the covering is off"),
  ["inspection.methods.nailing"] = figure_of({ "tear-off" }, nil, "one_of", "R109.1.5",
    "a Washington tip sheet: where deck is replaced or laid over spaced boards"),
  ["inspection.methods.dry_in"] = figure_of({ "tear-off" }, nil, "one_of", "R109.1.5",
    "local pages: with underlayment and flashing on"),
  ["inspection.methods.mid_roof"] = figure_of(BOTH, nil, "one_of", "R109.1.5",
    "local pages on looks part-way, of overlays too"),
  ["inspection.methods.final"] = figure_of(BOTH, nil, "one_of", "R109.1.6",
    "local pages on the final"),
  ["inspection.deck_only_new"] = unsaid "R109.1.5",
  ["inspection.only_where.pre"] = always "R109.1.5",
  ["inspection.only_where.deck"] = always "R109.1.5",
  ["inspection.only_where.nailing"] = always "R109.1.5",
  ["inspection.only_where.dry_in"] = always "R109.1.5",
  ["inspection.only_where.mid_roof"] = always "R109.1.5",
  ["inspection.only_where.final"] = always "R109.1.6",
  ["inspection.flat_most"] = figure_of(2, "rise_in_12", "at_most", "R109.1.5",
    "a Washington tip sheet of several cities: 2:12 or flatter"),
  ["inspection.pre_flat_counts"] = unsaid "R109.1.5",
  ["inspection.pre_flat_most"] = figure_of(2, "rise_in_12", "at_most", "R109.1.5",
    "a Washington tip sheet of several cities: 2:12 or flatter"),
  ["inspection.free_price_counts"] = unsaid "R109.1",
  ["inspection.free_price_most"] = figure_of(2500, "usd", "at_most", "R109.1",
    "an old Florida city handout: no visit at 2,500 or less"),

  -- Mid-roof. The word alone says nothing: these five are what handouts mean by it.
  ["inspection.mid_roof_moments"] = figure_of(
    { "after_tear_off", "dried_in", "courses_laid", "loaded", "battens_on" }, nil, "one_of",
    "R109.1.5", "handouts from five states, each with a moment of its own"),
  ["inspection.mid_roof_coverings"] = figure_of(
    { "asphalt_shingle", "roll_roofing", "wood_shingle", "wood_shake", "slate", "clay_tile",
      "concrete_tile", "metal_panel", "metal_shingle", "built_up", "coal_tar_built_up",
      "modified_bitumen", "thermoset_membrane", "thermoplastic_membrane", "spray_foam" }, nil, "among", "R109.1.5",
    "handouts that name no covering; one names tile, slate and battens only"),
  ["inspection.mid_roof_holders"] = figure_of({ "owner", "contractor", "agent", "other" }, nil,
    "among", "R109.1.5", "handouts that name nobody; one asks it of owners only"),
  ["inspection.mid_roof_courses_count"] = off "R109.1.5",
  ["inspection.mid_roof_courses_least"] = figure_of(8, "count", "at_least", "R109.1.5",
    "a Montana city's notice: 8 to 10 courses"),
  ["inspection.mid_roof_courses_most"] = figure_of(10, "count", "at_most", "R109.1.5",
    "a Montana city's notice: 8 to 10 courses"),
  ["inspection.mid_roof_share_counts"] = off "R109.1.5",
  ["inspection.mid_roof_share_most"] = { 50, unit = "percent", sense = "at_most",
    cite = "R109.1.5", status = "practice", source = "common practice: half the roof" },
  ["inspection.mid_roof_share_least"] = { 0, unit = "percent", sense = "at_least",
    cite = "R109.1.5", status = "practice", source = "common practice: none need be laid" },

  -- Order, notice, callers.
  ["inspection.no_cover"] = read(true, "equals", "R109.4"),
  ["inspection.in_order"] = read(true, "equals", "R109.4"),
  ["inspection.results_that_do"] = read({ "passed" }, "one_of", "R109.4"),
  ["inspection.notice_required"] = off("R109.3", "notice"),
  ["inspection.notice_hours_least"] = figure_of(24, "hours", "at_least", "R109.3",
    "three handouts: call 24 hours ahead"),
  ["inspection.callers"] = read({ "owner", "contractor", "agent" }, "one_of", "R109.3"),
  ["inspection.only_holder_calls"] = off("R109.3", "notice"),
  ["inspection.someone_required"] = off("R109.3", "notice"),

  -- Getting up.
  ["inspection.access_required"] = read(true, "equals", "R109.3"),
  ["inspection.accesses"] = { { "ladder", "scaffold", "lift" }, sense = "one_of",
    cite = "R109.3 names no way", status = "practice",
    source = "common practice: the section asks for access, not how" },
  ["inspection.tall_counts"] = off "R109.3",
  ["inspection.tall_over"] = { 2, unit = "count", sense = "over", cite = "R109.3",
    status = "practice", source = "no page read sets it: what counts as a tall house" },
  ["inspection.accesses_tall"] = { { "scaffold", "lift", "drone" }, sense = "one_of",
    cite = "R109.3 names no way", status = "practice",
    source = "common practice: a way that needs no long ladder" },
  ["inspection.ladder_tied_required"] = off "R109.3",
  ["inspection.ladder_past_counts"] = off "R109.3",
  ["inspection.ladder_past_least"] = { 36, unit = "in", sense = "at_least", cite = "R109.3",
    status = "seen", source = "a California city's page, read in a copy",
    disputed = "another California city asks for two rungs" },
  ["inspection.ladder_rating_counts"] = off "R109.3",
  ["inspection.ladder_rating_least"] = figure_of(300, "lb", "at_least", "R109.3",
    "a California city's page, read in a copy"),

  -- What must be so on the day.
  ["inspection.snow_free_required"] = off "R109.3",
  ["inspection.labels_required"] = by_choice("R904.4",
    "marked packages on delivery; off until a place looks at them"),
  ["inspection.ties_count"] = off "R802.11",
  ["inspection.clean_required"] = off "R109.1.6",
  ["inspection.bin_gone_required"] = off "R109.1.6",
  ["inspection.downspouts_count"] = off "R109.1.6",
  ["inspection.solar_counts"] = off "R109.1.5",
  ["inspection.solar_proofs"] = figure_of({ "visit", "with_final" }, nil, "one_of", "R109.1.5",
    "a Utah city's page: a third visit, or with the final"),
  ["inspection.solar_electrician_required"] = off "R105.3",

  -- The section is for every building; few departments look at it at a reroof.
  ["inspection.address_counts"] = by_choice("R319.1",
    "numbers on every building; off until a place looks at them in a reroof"),
  ["inspection.address_height_least"] = figure_of(4, "in", "at_least", "R319.1",
    "a California city's reroof page"),
  ["inspection.address_stroke_least"] = figure_of(0.5, "in", "at_least", "R319.1",
    "a California city's reroof page"),
  ["inspection.spark_arrester_required"] = off "R1003.9.2",
  ["inspection.spark_arrester_openings_count"] = off "R1003.9.2",
  ["inspection.spark_arrester_opening_most"] = { 0.5, unit = "in", sense = "at_most",
    cite = "R1003.9.2", status = "seen", source = TEXTS, read_in = BOOKS },
  ["inspection.spark_arrester_opening_least"] = { 0.375, unit = "in", sense = "at_least",
    cite = "R1003.9.2", status = "seen", source = TEXTS, read_in = BOOKS },
}
