-- The model code on permits (chapter 1), and the figures that places set beside
-- it: off here, and switched on in one line by a place. Chapter 1 is the part of
-- the code that places replace most often.
--
-- A limit that does not bind until it is switched on is one that a handout
-- prints; the source says what kind. Each switch's cite is where the model code
-- would have it.

-- What was read: code texts of states that took the editions of 2015 to 2024 over,
-- not the printed books. In another edition such a figure counts as parallel.
local TEXTS = "state code texts on the editions of 2015 to 2024"
local NO_LINE = TEXTS .. ": no such line"
local BOOKS = { "IRC 2015", "IRC 2018", "IRC 2021", "IRC 2024" }

local function off(cite)
  return { false, sense = "equals", cite = cite, status = "seen", source = NO_LINE,
    read_in = BOOKS }
end

local function figure_of(value, unit, sense, cite, source)
  return { value, unit = unit, sense = sense, cite = cite, status = "seen", source = source }
end

-- Does a job exactly at the figure count? Handouts differ; each place says.
local function not_at(cite, source)
  return { false, sense = "equals", cite = cite, status = "seen", source = source }
end

-- What narrows a duty, off until a place prints it: it must not cast doubt on a
-- duty that a place has switched on.
local function unsaid(cite)
  return { false, sense = "equals", cite = cite, status = "seen",
    source = "local handouts, nearly all of which print no such limit" }
end

-- A limit, and the figure that says whether a job exactly at it counts.
local function at_said_by(at, limit)
  limit.at_figure = at
  return limit
end

figures {
  -- Whether a permit is needed -------------------------------------------------
  ["permit.every"] = { true, sense = "equals", cite = "R105.1", status = "seen", source = TEXTS,
    read_in = BOOKS },
  ["permit.repair_exempt"] = { true, sense = "equals", cite = "R105.2.2", status = "seen",
    source = "two local pages that print R105.2.2" },

  ["permit.tear_off_counts"] = off "R105.2",
  ["permit.overlay_counts"] = off "R105.2",

  ["permit.area_counts"] = off "R105.2",
  ["permit.area_limit"] = at_said_by("permit.area_at_counts",
    figure_of(100, "sqft", "over", "R105.2",
    "four local reroof pages: one square is free")),
  ["permit.area_at_counts"] = not_at("R105.2", "two local reroof pages: over one square"),

  ["permit.share_counts"] = off "R105.2",
  ["permit.share_limit"] = at_said_by("permit.share_at_counts",
    figure_of(25, "percent", "over", "R105.2",
    "a township page: like for like is free up to 25 percent in a year")),
  ["permit.share_at_counts"] = not_at("R105.2", "the same page: up to 25 percent is free"),
  ["permit.share_months"] = figure_of(12, "months", "at_least", "R105.2", "the same page"),

  ["permit.plane_share_counts"] = off "R105.2",
  ["permit.plane_share_limit"] = at_said_by("permit.plane_share_at_counts",
    figure_of(25, "percent", "over", "R105.2",
    "a California city's reroof page: over 25 percent of any one plane in 12 months")),
  ["permit.plane_share_at_counts"] = not_at("R105.2", "the same page: over 25 percent"),

  ["permit.deck_any_counts"] = off "R105.2",
  ["permit.deck_any_free"] = figure_of(0, "sqft", "over", "R105.2",
    "five local reroof pages: any sheet of deck"),
  ["permit.deck_share_counts"] = off "R105.2",
  ["permit.deck_share_limit"] = at_said_by("permit.deck_share_at_counts",
    figure_of(25, "percent", "over", "R105.2",
    "two city reroof pages on a quarter of the deck")),
  ["permit.deck_share_at_counts"] = { false, sense = "equals", cite = "R105.2", status = "seen",
    source = "an Iowa city's page: over 25 percent",
    disputed = "a Texas city counts 25 percent itself as inside" },

  ["permit.price_counts"] = off "R105.2",
  ["permit.price_limit"] = at_said_by("permit.price_at_counts",
    figure_of(5000, "usd", "over", "R105.2",
    "a North Carolina town code: none at 5,000 or less")),
  ["permit.price_at_counts"] = not_at("R105.2", "the same town code"),

  ["permit.pitch_change_counts"] = off "R105.2",
  ["permit.material_change_counts"] = off "R105.2",
  ["permit.structure_counts"] = off "R105.2.2",
  ["permit.historic_counts"] = off "R105.2",
  ["permit.spaced_deck_counts"] = off "R105.2",
  ["permit.skylight_counts"] = off "R105.2",
  ["permit.units_counts"] = off "R105.2",
  ["permit.underlayment_counts"] = off "R105.2",
  ["permit.wildfire_zone_counts"] = off "R105.2",
  ["permit.solar_roof_counts"] = off "R105.2",
  ["permit.house_kinds_counted"] = { {}, sense = "among", cite = "R105.2", status = "seen",
    source = NO_LINE, read_in = BOOKS },
  ["permit.stories_counts"] = off "R105.2",
  ["permit.stories_limit"] = { 2, unit = "count", sense = "over", cite = "R105.2",
    status = "practice", source = "no page read sets it: what counts as a tall house" },
  ["permit.load_share_counts"] = off "R105.2",
  ["permit.load_share_limit"] = figure_of(30, "percent", "over", "R105.2",
    "one state's code: free up to 30 percent of the roof's live load"),
  ["permit.weight_added_counts"] = off "R105.2",
  ["permit.weight_added_limit"] = figure_of(3, "psf", "over", "R105.2",
    "one state's existing building code: a second layer up to 3 psf"),
  ["permit.weight_rise_counts"] = off "R105.2",
  ["permit.weight_rise_limit"] = at_said_by("permit.weight_rise_at_counts",
    figure_of(5, "percent", "over", "R105.2",
    "a Washington city's page on overlays: over 5 percent")),
  ["permit.weight_rise_at_counts"] = not_at("R105.2", "the same page"),
  ["permit.heavy_counts"] = off "R105.2",
  ["permit.heavy_limit"] = at_said_by("permit.heavy_at_counts",
    figure_of(600, "lb_per_square", "over", "R105.2",
    "a California city's bulletin: over 6 psf")),
  ["permit.heavy_at_counts"] = not_at("R105.2", "the same bulletin"),

  -- How much of the roof pulls in the rest ---------------------------------------
  ["permit.rest_counts"] = off "R908.1",
  ["permit.rest_limit"] = at_said_by("permit.rest_at_counts",
    figure_of(25, "percent", "over", "R908.1",
    "a Florida city's page and the rule it restates: over 25 percent in 12 months")),
  ["permit.rest_at_counts"] = not_at("R908.1", "the same rule: no more than 25 percent"),
  ["permit.rest_months"] = figure_of(12, "months", "at_least", "R908.1", "the same rule"),
  ["permit.rest_relief"] = unsaid "R908.1",
  -- 0: no day is named, the job says whether the old roof's code was new enough.
  ["permit.rest_relief_from"] = { 0, unit = "date", sense = "from", cite = "R908.1",
    status = "seen", source = "local handouts, nearly all of which print no such limit" },
  ["permit.whole_planes_required"] = off "R908.1",
  ["permit.whole_planes_least"] = figure_of(100, "percent", "at_least", "R908.1",
    "a Colorado town's page: the whole slope"),
  ["permit.joins_count"] = off "R908.1",
  ["permit.joins_allowed"] = figure_of({ "ridge", "hip", "open_valley" }, nil, "one_of", "R908.1",
    "a Colorado town's page: only at ridge, hip or open valley"),

  ["permit.grade_counts"] = off "R905.1",
  ["permit.grades"] = figure_of({ "laminated" }, nil, "one_of", "R905.1",
    "a Colorado city's and an Illinois village's pages: no three-tab"),
  ["permit.lifetime_required"] = off "R905.1",
  ["permit.warranty_counts"] = off "R905.1",
  ["permit.warranty_years_least"] = { 25, unit = "years", sense = "at_least", cite = "R905.1",
    status = "practice", source = "no page read sets it: a Colorado town's form asks the years" },
  ["permit.local_list_counts"] = off "R905.1",

  -- Who ---------------------------------------------------------------------------
  ["permit.holders"] = { { "owner", "contractor", "agent" }, sense = "one_of", cite = "R105.1",
    status = "seen", source = TEXTS, read_in = BOOKS },
  ["permit.license_required"] = off "R105.3",
  ["permit.licenses"] = figure_of({ "roofing", "general" }, nil, "one_of", "R105.3",
    "local pages: a state roofer's or contractor's license"),
  ["permit.registration_required"] = off "R105.3",
  ["permit.owner_must_live_there"] = off "R105.3",
  ["permit.owner_statement_required"] = off "R105.3",
  ["permit.owner_statements"] = figure_of({ "signed", "signed_in_person" }, nil, "one_of",
    "R105.3", "a Colorado town's and a Florida county's pages"),
  ["permit.overdue_bars"] = off "R105.3",
  ["permit.violations_bar"] = off "R105.3",
  ["permit.right_of_way_required"] = off "R105.3",
  ["permit.bin_required"] = off "R105.3",

  -- While the work goes on ----------------------------------------------------------
  ["permit.posted_required"] = { true, sense = "equals", cite = "R105.7", status = "seen",
    source = TEXTS, read_in = BOOKS },
  ["permit.visible_required"] = off "R105.7",
  ["permit.life_counts"] = { true, sense = "equals", cite = "R105.5", status = "seen",
    source = TEXTS, read_in = BOOKS },
  ["permit.life_days"] = { 180, unit = "days", sense = "at_most", cite = "R105.5", status = "seen",
    source = TEXTS, read_in = BOOKS },
  ["permit.extension_days"] = { 180, unit = "days", sense = "at_most", cite = "R105.5",
    status = "seen", source = TEXTS, read_in = BOOKS },
  ["permit.open_counts"] = off "R105.5",
  ["permit.open_days_most"] = figure_of(60, "days", "at_most", "R105.5",
    "a Kansas city's page: the permit dies 60 days after issue"),
}
