-- Permits (chapter 1), and the figures that places set beside it: off here, and switched on in
-- one line by a place. Chapter 1 is the part of the code that places replace most often. A
-- limit that does not bind until it is switched on is one that a handout prints; the source
-- says what kind. Each switch's cite is where the model code would have it. Handouts differ
-- on whether a job exactly at a figure counts; each place says.

-- What was read: code texts of states that took the editions over, not the printed books. In
-- an edition that was not read such a figure counts as parallel.
local TEXTS = "state code texts on the editions of 2015 to 2024"
local NO_LINE = TEXTS .. ": no such line"
local NO_LIMIT = "local handouts, nearly all of which print no such limit"
local BOOKS = { "IRC 2015", "IRC 2018", "IRC 2021", "IRC 2024" }

-- Permit --------------------------------------------------------------------------
figure "permit.part_as_new_counts" { false, "R908.1", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, stricter = true }

figure "permit.part_as_new_limit" { 26, "R908.1", unit = "percent", sense = "over",
  seen = "a California city's ordinance: 26 percent or more in 12 months",
  at_figure = "permit.part_as_new_at_counts", behind = "permit.part_as_new_counts" }

figure "permit.part_as_new_at_counts" { true, "R908.1", sense = "equals",
  seen = "the same ordinance: or more", stricter = true, behind = "permit.part_as_new_counts" }
figure "permit.part_as_new_months" { 12, "R908.1", unit = "months", sense = "at_least",
  seen = "the same ordinance", behind = "permit.part_as_new_counts" }
figure "permit.small_counts" { false, "R105.2.2", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, stricter = true }
figure "permit.small_under" { 500, "R105.2.2", unit = "sqft", sense = "under",
  seen = "an old Florida city handout: repairs under 5 squares", behind = "permit.small_counts" }
figure "permit.right_of_way_clear_required" { false, "R105.3", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, stricter = true }
figure "permit.bin_deposit_required" { false, "R105.3", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, stricter = true, behind = "permit.bin_required" }
figure "permit.open_excuses" { {}, "R105.5", sense = "one_of",
  seen = "local pages, which print different ones or none", behind = "permit.open_counts" }
figure "permit.certificate_required" { false, "R110.1", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, stricter = true }

figure "permit.late_fee_counts" { false, "R108.6", sense = "equals",
  seen = "state code texts on the editions of 2015 to 2024: a further fee for work before the "
    .. "permit; its amount is the place's", read_in = BOOKS, stricter = true }

-- Whether a permit is needed -------------------------------------------------
figure "permit.every" { true, "R105.1", sense = "equals", seen = TEXTS, read_in = BOOKS,
  stricter = true }

figure "permit.repair_exempt" { true, "R105.2.2", sense = "equals",
  seen = "two local pages that print R105.2.2", stricter = false }
figure "permit.tear_off_counts" { false, "R105.2", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, stricter = true }
figure "permit.overlay_counts" { false, "R105.2", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, stricter = true }
figure "permit.area_counts" { false, "R105.2", sense = "equals", seen = NO_LINE, read_in = BOOKS,
  stricter = true }

figure "permit.area_limit" { 100, "R105.2", unit = "sqft", sense = "over",
  seen = "four local reroof pages: one square is free", at_figure = "permit.area_at_counts",
  behind = "permit.area_counts" }

figure "permit.area_at_counts" { false, "R105.2", sense = "equals",
  seen = "two local reroof pages: over one square", stricter = true,
  behind = "permit.area_counts" }

figure "permit.share_counts" { false, "R105.2", sense = "equals", seen = NO_LINE, read_in = BOOKS,
  stricter = true }

figure "permit.share_limit" { 25, "R105.2", unit = "percent", sense = "over",
  seen = "a township page: like for like is free up to 25 percent in a year",
  at_figure = "permit.share_at_counts", behind = "permit.share_counts" }

figure "permit.share_at_counts" { false, "R105.2", sense = "equals",
  seen = "the same page: up to 25 percent is free", stricter = true,
  behind = "permit.share_counts" }

figure "permit.share_months" { 12, "R105.2", unit = "months", sense = "at_least",
  seen = "the same page", behind = "permit.share_counts" }
figure "permit.plane_share_counts" { false, "R105.2", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, stricter = true }

figure "permit.plane_share_limit" { 25, "R105.2", unit = "percent", sense = "over",
  seen = "a California city's reroof page: over 25 percent of any one plane in 12 months",
  at_figure = "permit.plane_share_at_counts", behind = "permit.plane_share_counts" }

figure "permit.plane_share_at_counts" { false, "R105.2", sense = "equals",
  seen = "the same page: over 25 percent", stricter = true, behind = "permit.plane_share_counts" }
figure "permit.deck_any_counts" { false, "R105.2", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, stricter = true }
figure "permit.deck_any_free" { 0, "R105.2", unit = "sqft", sense = "over",
  seen = "five local reroof pages: any sheet of deck", behind = "permit.deck_any_counts" }
figure "permit.deck_share_counts" { false, "R105.2", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, stricter = true }

figure "permit.deck_share_limit" { 25, "R105.2", unit = "percent", sense = "over",
  seen = "two city reroof pages on a quarter of the deck",
  at_figure = "permit.deck_share_at_counts", behind = "permit.deck_share_counts" }

figure "permit.deck_share_at_counts" { false, "R105.2", sense = "equals",
  seen = "an Iowa city's page: over 25 percent",
  disputed = "a Texas city counts 25 percent itself as inside", stricter = true,
  behind = "permit.deck_share_counts" }

figure "permit.price_counts" { false, "R105.2", sense = "equals", seen = NO_LINE, read_in = BOOKS,
  stricter = true }

figure "permit.price_limit" { 5000, "R105.2", unit = "usd", sense = "over",
  seen = "a North Carolina town code: none at 5,000 or less",
  at_figure = "permit.price_at_counts", behind = "permit.price_counts" }

figure "permit.price_at_counts" { false, "R105.2", sense = "equals", seen = "the same town code",
  stricter = true, behind = "permit.price_counts" }
figure "permit.pitch_change_counts" { false, "R105.2", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, stricter = true }
figure "permit.material_change_counts" { false, "R105.2", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, stricter = true }
figure "permit.structure_counts" { false, "R105.2.2", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, stricter = true }
figure "permit.historic_counts" { false, "R105.2", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, stricter = true }
figure "permit.spaced_deck_counts" { false, "R105.2", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, stricter = true }
figure "permit.skylight_counts" { false, "R105.2", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, stricter = true }
figure "permit.units_counts" { false, "R105.2", sense = "equals", seen = NO_LINE, read_in = BOOKS,
  stricter = true }
figure "permit.underlayment_counts" { false, "R105.2", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, stricter = true }
figure "permit.wildfire_zone_counts" { false, "R105.2", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, stricter = true }
figure "permit.solar_roof_counts" { false, "R105.2", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, stricter = true }
figure "permit.house_kinds_counted" { {}, "R105.2", sense = "among", seen = NO_LINE,
  read_in = BOOKS }
figure "permit.stories_counts" { false, "R105.2", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, stricter = true }

figure "permit.stories_limit" { 2, "R105.2", unit = "count", sense = "over",
  practice = "no page read sets it: what counts as a tall house",
  behind = "permit.stories_counts" }

figure "permit.load_share_counts" { false, "R105.2", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, stricter = true }

figure "permit.load_share_limit" { 30, "R105.2", unit = "percent", sense = "over",
  seen = "one state's code: free up to 30 percent of the roof's live load",
  behind = "permit.load_share_counts" }

figure "permit.weight_added_counts" { false, "R105.2", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, stricter = true }

figure "permit.weight_added_limit" { 3, "R105.2", unit = "psf", sense = "over",
  seen = "one state's existing building code: a second layer up to 3 psf",
  behind = "permit.weight_added_counts" }

figure "permit.weight_rise_counts" { false, "R105.2", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, stricter = true }

figure "permit.weight_rise_limit" { 5, "R105.2", unit = "percent", sense = "over",
  seen = "a Washington city's page on overlays: over 5 percent",
  at_figure = "permit.weight_rise_at_counts", behind = "permit.weight_rise_counts" }

figure "permit.weight_rise_at_counts" { false, "R105.2", sense = "equals", seen = "the same page",
  stricter = true, behind = "permit.weight_rise_counts" }
figure "permit.heavy_counts" { false, "R105.2", sense = "equals", seen = NO_LINE, read_in = BOOKS,
  stricter = true }

figure "permit.heavy_limit" { 600, "R105.2", unit = "lb_per_square", sense = "over",
  seen = "a California city's bulletin: over 6 psf", at_figure = "permit.heavy_at_counts",
  behind = "permit.heavy_counts" }

figure "permit.heavy_at_counts" { false, "R105.2", sense = "equals", seen = "the same bulletin",
  stricter = true, behind = "permit.heavy_counts" }

-- How much of the roof pulls in the rest ---------------------------------------
figure "permit.rest_counts" { false, "R908.1", sense = "equals", seen = NO_LINE, read_in = BOOKS,
  stricter = true }

figure "permit.rest_limit" { 25, "R908.1", unit = "percent", sense = "over",
  seen = "a Florida city's page and the rule it restates: over 25 percent in 12 months",
  at_figure = "permit.rest_at_counts", behind = "permit.rest_counts" }

figure "permit.rest_at_counts" { false, "R908.1", sense = "equals",
  seen = "the same rule: no more than 25 percent", stricter = true,
  behind = "permit.rest_counts" }

figure "permit.rest_months" { 12, "R908.1", unit = "months", sense = "at_least",
  seen = "the same rule", behind = "permit.rest_counts" }
figure "permit.rest_relief" { false, "R908.1", sense = "equals", seen = NO_LIMIT,
  stricter = false, behind = "permit.rest_counts" }

-- 0: no day is named, the job says whether the old roof's code was new enough.
figure "permit.rest_relief_from" { 0, "R908.1", unit = "date", sense = "from", seen = NO_LIMIT,
  behind = "permit.rest_counts" }

figure "permit.whole_planes_required" { false, "R908.1", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, stricter = true }
figure "permit.whole_planes_least" { 100, "R908.1", unit = "percent", sense = "at_least",
  seen = "a Colorado town's page: the whole slope", behind = "permit.whole_planes_required" }
figure "permit.joins_count" { false, "R908.1", sense = "equals", seen = NO_LINE, read_in = BOOKS,
  stricter = true }
figure "permit.joins_allowed" { { "ridge", "hip", "open_valley" }, "R908.1", sense = "one_of",
  seen = "a Colorado town's page: only at ridge, hip or open valley" }
figure "permit.grade_counts" { false, "R905.1", sense = "equals", seen = NO_LINE, read_in = BOOKS,
  stricter = true }

figure "permit.grades" { { "laminated" }, "R905.1", sense = "one_of",
  seen = "a Colorado city's and an Illinois village's pages: no three-tab",
  behind = "permit.grade_counts" }

figure "permit.lifetime_required" { false, "R905.1", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, stricter = true }
figure "permit.warranty_counts" { false, "R905.1", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, stricter = true }

figure "permit.warranty_years_least" { 25, "R905.1", unit = "years", sense = "at_least",
  practice = "no page read sets it: a Colorado town's form asks the years",
  behind = "permit.warranty_counts" }

figure "permit.local_list_counts" { false, "R905.1", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, stricter = true }

-- Who ---------------------------------------------------------------------------
figure "permit.holders" { { "owner", "contractor", "agent" }, "R105.1", sense = "one_of",
  seen = TEXTS, read_in = BOOKS }

figure "permit.license_required" { false, "R105.3", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, stricter = true }

figure "permit.licenses" { { "roofing", "general" }, "R105.3", sense = "one_of",
  seen = "local pages: a state roofer's or contractor's license",
  behind = "permit.license_required" }

figure "permit.registration_required" { false, "R105.3", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, stricter = true }
figure "permit.owner_must_live_there" { false, "R105.3", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, stricter = true }
figure "permit.owner_statement_required" { false, "R105.3", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, stricter = true }

figure "permit.owner_statements" { { "signed", "signed_in_person" }, "R105.3", sense = "one_of",
  seen = "a Colorado town's and a Florida county's pages",
  behind = "permit.owner_statement_required" }

figure "permit.overdue_bars" { false, "R105.3", sense = "equals", seen = NO_LINE, read_in = BOOKS,
  stricter = true }
figure "permit.violations_bar" { false, "R105.3", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, stricter = true }
figure "permit.right_of_way_required" { false, "R105.3", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, stricter = true }
figure "permit.bin_required" { false, "R105.3", sense = "equals", seen = NO_LINE, read_in = BOOKS,
  stricter = true }

-- While the work goes on ----------------------------------------------------------
figure "permit.posted_required" { true, "R105.7", sense = "equals", seen = TEXTS, read_in = BOOKS,
  stricter = true }

figure "permit.visible_required" { false, "R105.7", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, stricter = true }
figure "permit.life_counts" { true, "R105.5", sense = "equals", seen = TEXTS, read_in = BOOKS,
  stricter = true }
figure "permit.life_days" { 180, "R105.5", unit = "days", sense = "at_most", seen = TEXTS,
  read_in = BOOKS, behind = "permit.life_counts" }
figure "permit.extension_days" { 180, "R105.5", unit = "days", sense = "at_most", seen = TEXTS,
  read_in = BOOKS }
figure "permit.open_counts" { false, "R105.5", sense = "equals", seen = NO_LINE, read_in = BOOKS,
  stricter = true }

figure "permit.open_days_most" { 60, "R105.5", unit = "days", sense = "at_most",
  seen = "a Kansas city's page: the permit dies 60 days after issue",
  behind = "permit.open_counts" }

-- What a state leaves to its cities, or to a code that was not read.
figure "permit.life_is_local" { false, "R105.5", sense = "equals", seen = TEXTS, read_in = BOOKS,
  stricter = true, behind = "permit.life_counts" }

-- A section of the roof by itself, beside the whole of it.
figure "permit.rest_by_section" { false, "R908.1", sense = "equals", seen = TEXTS,
  read_in = BOOKS, stricter = true, behind = "permit.rest_counts" }
