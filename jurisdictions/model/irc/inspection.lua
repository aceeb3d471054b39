-- The model code's inspections (R109): it names no visit for a reroof but the final; the deck
-- and others come from local use of its "other inspections". So those are off until a place
-- switches them on; whether it does, its own pages on visits and on notice tell, and until
-- these were read it is not known. Limits beside a switch are those that pages print.

-- What was read: code texts of states that took the editions over, not the printed books. In
-- an edition that was not read such a figure counts as parallel.
local TEXTS = "state code texts on the editions of 2015 to 2024"
local NO_LINE = TEXTS .. ": no such line"
local EDITION = "state code text on this edition"
local NO_PAGE = "local pages, nearly all of which print no such thing"
local NO_LIMIT = "local handouts, nearly all of which print no such limit"
local BOOKS = { "IRC 2015", "IRC 2018", "IRC 2021", "IRC 2024" }

figure "inspection.required" { sense = "equals", seen = NO_LINE, read_in = BOOKS, stricter = true,
  rows = {
    pre = { false, "R109.1.5", pages = "visits" },
    deck = { false, "R109.1.5", pages = "visits" },
    nailing = { false, "R109.1.5", pages = "visits" },
    dry_in = { false, "R109.1.5", pages = "visits" },
    mid_roof = { false, "R109.1.5", pages = "visits" },
    final = { true, "R109.1.6", seen = TEXTS, read_in = BOOKS },
  },
}

figure "inspection.proofs" { sense = "one_of",
  seen = "local handouts, nearly all of which ask for a visit",
  rows = {
    pre = { { "visit" }, "R109.1.5" },
    deck = { { "visit" }, "R109.1.5" },
    nailing = { { "visit" }, "R109.1.5" },
    dry_in = { { "visit" }, "R109.1.5" },
    mid_roof = { { "visit" }, "R109.1.5" },
    final = { { "visit" }, "R109.1.6" },
  },
}

figure "inspection.owner_differs" { false, "R109.1.5", sense = "equals", seen = NO_LIMIT,
  stricter = true }
figure "inspection.owner_proofs" { { "visit", "third_party" }, "R109.1.5", sense = "one_of",
  seen = "a Florida city's page: owners take visits, or someone licensed signs" }

-- Which jobs a visit is for. An overlay has no bare deck.
figure "inspection.methods" { sense = "one_of",
  seen = "local pages on looks before tear-off and before overlay",
  rows = {
    pre = { { "tear-off", "overlay" }, "R109.1.5" },
    deck = { { "tear-off" }, "R109.1.5", seen = "local pages: after the covering is off" },
    nailing = { { "tear-off" }, "R109.1.5",
      seen = "a Washington tip sheet: where deck is replaced or laid over spaced boards" },
    dry_in = { { "tear-off" }, "R109.1.5",
      seen = "local pages: with underlayment and flashing on" },
    mid_roof = { { "tear-off", "overlay" }, "R109.1.5",
      seen = "local pages on looks part-way, of overlays too" },
    final = { { "tear-off", "overlay" }, "R109.1.6", seen = "local pages on the final" },
  },
}

figure "inspection.deck_only_new" { false, "R109.1.5", sense = "equals", seen = NO_LIMIT,
  stricter = false }

figure "inspection.only_where" { sense = "among",
  seen = "local handouts, nearly all of which name no condition",
  rows = {
    pre = { {}, "R109.1.5" },
    deck = { {}, "R109.1.5" },
    nailing = { {}, "R109.1.5" },
    dry_in = { {}, "R109.1.5" },
    mid_roof = { {}, "R109.1.5" },
    final = { {}, "R109.1.6" },
  },
}

figure "inspection.flat_most" { 2, "R109.1.5", unit = "rise_in_12", sense = "at_most",
  seen = "a Washington tip sheet of several cities: 2:12 or flatter" }
figure "inspection.pre_flat_counts" { false, "R109.1.5", sense = "equals", seen = NO_LIMIT,
  stricter = true }

figure "inspection.pre_flat_most" { 2, "R109.1.5", unit = "rise_in_12", sense = "at_most",
  seen = "a Washington tip sheet of several cities: 2:12 or flatter",
  behind = "inspection.pre_flat_counts" }

figure "inspection.free_price_counts" { false, "R109.1", sense = "equals", seen = NO_LIMIT,
  stricter = false }

figure "inspection.free_price_most" { 2500, "R109.1", unit = "usd", sense = "at_most",
  seen = "an old Florida city handout: no visit at 2,500 or less",
  behind = "inspection.free_price_counts" }

-- Mid-roof. The word alone says nothing: these five are what handouts mean by it.
figure "inspection.mid_roof_moments" {
  { "after_tear_off", "dried_in", "courses_laid", "loaded", "battens_on" }, "R109.1.5",
  sense = "one_of", seen = "handouts from five states, each with a moment of its own" }

figure "inspection.mid_roof_coverings" {
  { "asphalt_shingle", "roll_roofing", "wood_shingle", "wood_shake", "slate", "clay_tile",
    "concrete_tile", "metal_panel", "metal_shingle", "built_up", "coal_tar_built_up",
    "modified_bitumen", "thermoset_membrane", "thermoplastic_membrane", "spray_foam" },
  "R109.1.5", sense = "among",
  seen = "handouts that name no covering; one names tile, slate and battens only" }

figure "inspection.mid_roof_holders" { { "owner", "contractor", "agent", "other" }, "R109.1.5",
  sense = "among", seen = "handouts that name nobody; one asks it of owners only" }
figure "inspection.mid_roof_courses_count" { false, "R109.1.5", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, pages = "visits", stricter = true }
figure "inspection.mid_roof_courses_least" { 8, "R109.1.5", unit = "count", sense = "at_least",
  seen = "a Montana city's notice: 8 to 10 courses" }
figure "inspection.mid_roof_courses_most" { 10, "R109.1.5", unit = "count", sense = "at_most",
  seen = "a Montana city's notice: 8 to 10 courses" }
figure "inspection.mid_roof_share_counts" { false, "R109.1.5", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, pages = "visits", stricter = true }
figure "inspection.mid_roof_share_most" { 50, "R109.1.5", unit = "percent", sense = "at_most",
  practice = "common practice: half the roof", behind = "inspection.mid_roof_share_counts" }
figure "inspection.mid_roof_share_least" { 0, "R109.1.5", unit = "percent", sense = "at_least",
  practice = "common practice: none need be laid", behind = "inspection.mid_roof_share_counts" }

-- Order, notice, callers.
figure "inspection.no_cover" { true, "R109.4", sense = "equals", seen = TEXTS, read_in = BOOKS,
  stricter = true }

figure "inspection.in_order" { true, "R109.4", sense = "equals", seen = TEXTS, read_in = BOOKS,
  stricter = true }
figure "inspection.results_that_do" { { "passed" }, "R109.4", sense = "one_of", seen = TEXTS,
  read_in = BOOKS }
figure "inspection.notice_required" { false, "R109.3", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, pages = "notice", stricter = true }
figure "inspection.notice_hours_least" { 24, "R109.3", unit = "hours", sense = "at_least",
  seen = "three handouts: call 24 hours ahead", behind = "inspection.notice_required" }
figure "inspection.callers" { { "owner", "contractor", "agent" }, "R109.3", sense = "one_of",
  seen = TEXTS, read_in = BOOKS }
figure "inspection.only_holder_calls" { false, "R109.3", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, pages = "notice", stricter = true }
figure "inspection.someone_required" { false, "R109.3", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, pages = "notice", stricter = true }

-- Getting up.
figure "inspection.access_required" { true, "R109.3", sense = "equals", seen = TEXTS,
  read_in = BOOKS, stricter = true }

figure "inspection.accesses" { { "ladder", "scaffold", "lift" }, "R109.3 names no way",
  sense = "one_of", practice = "common practice: the section asks for access, not how",
  behind = "inspection.access_required" }

figure "inspection.tall_counts" { false, "R109.3", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, pages = "visits", stricter = true }

figure "inspection.tall_over" { 2, "R109.3", unit = "count", sense = "over",
  practice = "no page read sets it: what counts as a tall house",
  behind = "inspection.tall_counts" }

figure "inspection.accesses_tall" { { "scaffold", "lift", "drone" }, "R109.3 names no way",
  sense = "one_of", practice = "common practice: a way that needs no long ladder",
  behind = "inspection.tall_counts" }

figure "inspection.ladder_tied_required" { false, "R109.3", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, pages = "visits", stricter = true }
figure "inspection.ladder_past_counts" { false, "R109.3", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, pages = "visits", stricter = true }

figure "inspection.ladder_past_least" { 36, "R109.3", unit = "in", sense = "at_least",
  seen = "a California city's page, read in a copy",
  disputed = "another California city asks for two rungs",
  behind = "inspection.ladder_past_counts" }

figure "inspection.ladder_rating_counts" { false, "R109.3", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, pages = "visits", stricter = true }
figure "inspection.ladder_rating_least" { 300, "R109.3", unit = "lb", sense = "at_least",
  seen = "a California city's page, read in a copy", behind = "inspection.ladder_rating_counts" }

-- What must be so on the day.
figure "inspection.snow_free_required" { false, "R109.3", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, pages = "visits", stricter = true }

figure "inspection.labels_required" { false, "R904.4", sense = "equals",
  seen = "state code texts on the editions of 2015 to 2024: marked packages on delivery; off "
    .. "until a place looks at them", read_in = BOOKS, pages = "visits", stricter = true }

figure "inspection.ties_count" { false, "R802.11", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, pages = "visits", stricter = true }
figure "inspection.clean_required" { false, "R109.1.6", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, pages = "visits", stricter = true }
figure "inspection.bin_gone_required" { false, "R109.1.6", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, pages = "visits", stricter = true }
figure "inspection.downspouts_count" { false, "R109.1.6", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, pages = "visits", stricter = true }
figure "inspection.solar_counts" { false, "R109.1.5", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, pages = "visits", stricter = true }

figure "inspection.solar_proofs" { { "visit", "with_final" }, "R109.1.5", sense = "one_of",
  seen = "a Utah city's page: a third visit, or with the final",
  behind = "inspection.solar_counts" }

figure "inspection.solar_electrician_required" { false, "R105.3", sense = "equals",
  seen = NO_LINE, read_in = BOOKS, pages = "visits", stricter = true,
  behind = "inspection.solar_counts" }

-- The section is for every building; few departments look at it at a reroof.
figure "inspection.address_counts" { false, "R319.1", sense = "equals",
  seen = "state code texts on the editions of 2015 to 2024: numbers on every building; off "
    .. "until a place looks at them in a reroof", read_in = BOOKS, pages = "visits",
  stricter = true,
  ["2024"] = { cite = "R308.1", seen = EDITION },
}

figure "inspection.address_height_least" { 4, "R319.1", unit = "in", sense = "at_least",
  seen = "a California city's reroof page", behind = "inspection.address_counts" }
figure "inspection.address_stroke_least" { 0.5, "R319.1", unit = "in", sense = "at_least",
  seen = "a California city's reroof page", behind = "inspection.address_counts" }
figure "inspection.spark_arrester_required" { false, "R1003.9.2", sense = "equals",
  seen = NO_LINE, read_in = BOOKS, pages = "visits", stricter = true }

figure "inspection.spark_arrester_openings_count" { false, "R1003.9.2", sense = "equals",
  seen = NO_LINE, read_in = BOOKS, pages = "visits", stricter = true,
  behind = "inspection.spark_arrester_required" }

figure "inspection.spark_arrester_opening_most" { 0.5, "R1003.9.2", unit = "in",
  sense = "at_most", seen = TEXTS, read_in = BOOKS,
  behind = "inspection.spark_arrester_required" }

figure "inspection.spark_arrester_opening_least" { 0.375, "R1003.9.2", unit = "in",
  sense = "at_least", seen = TEXTS, read_in = BOOKS,
  behind = "inspection.spark_arrester_required" }

-- Inspection -------------------------------------------------------------------------
figure "inspection.ready_counts" { false, "R109.3", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, pages = "visits", stricter = true }

figure "inspection.as_permitted_counts" { false, "R106.4", sense = "equals",
  seen = "state code texts on the editions of 2015 to 2024: work as the permit shows it; off "
    .. "until a place looks at it", read_in = BOOKS, pages = "visits", stricter = true }

-- No reroof handout asks for it either way: a place that does says which.
figure "inspection.deck_loaded_counts" { false, "R109.1.5", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, pages = "visits", stricter = true }

figure "inspection.deck_loaded_wanted" { true, "R109.1.5 says nothing of it", sense = "equals",
  practice = "a city's list for new houses: loaded by the frame inspection", stricter = "neither",
  behind = "inspection.deck_loaded_counts" }

-- Days of the year as month and day; the season runs over the new year.
figure "inspection.winter_from" { { "10-15" }, "R109.1.5", sense = "one_of",
  seen = "a California city's page: from 15 October" }

figure "inspection.winter_to" { { "04-15" }, "R109.1.5", sense = "one_of",
  seen = "the same page: to 15 April" }
figure "inspection.winter_covering_most" { 50, "R109.1.5", unit = "sqft", sense = "at_most",
  seen = "the same page: half a square of the covering" }
figure "inspection.winter_felt_peeled_least" { 3, "R109.1.5", unit = "count", sense = "at_least",
  seen = "the same page: felt peeled in 3 or 4 places" }
figure "inspection.mid_roof_battens_count" { false, "R109.1.5", sense = "equals", seen = NO_PAGE,
  stricter = true }
figure "inspection.deputy_required" { false, "R109.1.5", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, pages = "visits", stricter = true }

figure "inspection.deputy_under" { 0.25, "R109.1.5", unit = "rise_in_12", sense = "under",
  seen = "an older page of a California city: under 1/4 in to the foot",
  behind = "inspection.deputy_required" }
