-- Cases of rules/inspection.lua. Quillbank County and the town of Stillbend are
-- invented; the demands are those of real handouts, named beside each.

local QUILLBANK, STILLBEND = "example/quillbank", "example/stillbend"

local function merged(one, more)
  local with = {}
  for place, value in pairs(one) do with[place] = value end
  for place, value in pairs(more or {}) do with[place] = value end
  return with
end

local OVERLAY = { ["scope.method"] = "overlay", ["existing.layers_removed"] = 0,
  ["existing.coverings[1].removed"] = false }
local OWNER = { ["permit.holder"] = "owner", ["inspection.called_by"] = "owner" }

-- A duty that is met or not: met, not met, not told, and not asked for.
local function duty(id, place, good, bad, so)
  so = so or {}
  cases(id) {
    under = QUILLBANK, from = "paperwork",
    { "so it is", with = merged(so, { [place] = good }), expect = "pass" },
    { "so it is not", with = merged(so, { [place] = bad }), expect = "fail" },
    { "not told", with = so, without = { place }, expect = "open" },
    { "not asked for by an invented hamlet", under = "example/hollowferry", with = so,
      without = { place }, expect = "not_applicable" },
    { "a place that was not read", under = "model/irc-2021", with = so,
      without = { place }, expect = "open", says = "was not read: its pages on" },
  }
end

-- The visits -----------------------------------------------------------------------------

-- Handouts: before an overlay, and on any roof of 2:12 or flatter (Washington).
cases "inspection.pre" {
  under = STILLBEND, from = "paperwork",
  { "an overlay, where no first look is asked for", with = OVERLAY, expect = "not_applicable" },
}

cases "inspection.pre" {
  under = QUILLBANK, from = "paperwork",
  { "a tear-off on a pitched roof", expect = "not_applicable" },
  { "an overlay, looked at first", with = OVERLAY, expect = "pass" },
  { "an overlay, shown by photographs",
    with = merged(OVERLAY, { ["inspection.pre.proof"] = "photos" }), expect = "fail" },
  { "a tear-off with a porch of exactly 2:12",
    with = { ["roof.slopes[3].pitch"] = "2:12", ["inspection.pre.proof"] = "none" },
    expect = "fail" },
  { "a porch a little steeper",
    with = { ["roof.slopes[3].pitch"] = "2.1:12", ["inspection.pre.proof"] = "none" },
    expect = "not_applicable" },
  { "not told", with = OVERLAY, without = { "inspection.pre.proof" }, expect = "open" },
  { "the model code leaves it to the place", under = "model/irc-2021", with = OVERLAY,
    expect = "open" },
}

-- Handouts: after the strip; only where deck is replaced (Colorado, Washington).
cases "inspection.deck" {
  under = QUILLBANK, from = "paperwork",
  { "a visit", expect = "pass" },
  { "an affidavit does as well", with = { ["inspection.deck.proof"] = "affidavit" },
    expect = "pass" },
  { "the contractor's own report does not",
    with = { ["inspection.deck.proof"] = "self_certified" }, expect = "fail" },
  { "nobody looks", with = { ["inspection.deck.proof"] = "none" }, expect = "fail" },
  { "an owner may not hand in an affidavit of their own",
    with = merged(OWNER, { ["inspection.deck.proof"] = "affidavit" }), expect = "fail" },
  { "an owner, looked at", with = OWNER, expect = "pass" },
  { "photographs do as well", with = { ["inspection.deck.proof"] = "photos" },
    expect = "pass" },
  { "an owner with someone licensed",
    with = merged(OWNER, { ["inspection.deck.proof"] = "third_party" }), expect = "pass" },
  { "the deck stays as it is",
    with = { ["decks[1].work"] = "kept", ["inspection.deck.proof"] = "none" },
    expect = "not_applicable" },
  { "an overlay", with = merged(OVERLAY, { ["inspection.deck.proof"] = "none" }),
    expect = "not_applicable" },
  { "not told", without = { "inspection.deck.proof" }, expect = "open" },
  { "work on the deck not told", without = { "decks[1].work" }, expect = "open" },
  { "the model code leaves it to the place", under = "model/irc-2021", expect = "open" },
  -- An old handout: no visit at 2,500 or less.
  { "a job of exactly 2,500",
    with = { ["scope.price_usd"] = 2500, ["inspection.deck.proof"] = "none" },
    expect = "not_applicable" },
  { "a job of 2,501",
    with = { ["scope.price_usd"] = 2501, ["inspection.deck.proof"] = "none" },
    expect = "fail" },
}

-- Handouts: before any shingle; photographs instead (Minnesota).
cases "inspection.dry_in" {
  under = QUILLBANK, from = "paperwork",
  { "a visit", expect = "pass" },
  { "photographs", with = { ["inspection.dry_in.proof"] = "photos" }, expect = "pass" },
  { "an affidavit", with = { ["inspection.dry_in.proof"] = "affidavit" }, expect = "fail" },
  { "an overlay has none", with = merged(OVERLAY, { ["inspection.dry_in.proof"] = "none" }),
    expect = "not_applicable" },
  { "not told", without = { "inspection.dry_in.proof" }, expect = "open" },
}

-- "Mid-roof" means after tear-off, dried in, 8 to 10 courses up, loaded, or battens
-- on, by the handout. The county means dried in, the town courses.
cases "inspection.mid_roof" {
  under = QUILLBANK, from = "paperwork",
  { "a visit", expect = "pass" },
  { "nobody looks", with = { ["inspection.mid_roof.proof"] = "none" }, expect = "fail" },
  { "an owner has one too",
    with = merged(OWNER, { ["inspection.mid_roof.proof"] = "none" }), expect = "fail" },
  { "an agent has none",
    with = { ["permit.holder"] = "agent", ["inspection.mid_roof.proof"] = "none" },
    expect = "not_applicable" },
  { "slate has one", with = { ["covering.kind"] = "slate",
    ["inspection.mid_roof.proof"] = "none" }, expect = "fail" },
  { "clay tile has one", with = { ["covering.kind"] = "clay_tile",
    ["inspection.mid_roof.proof"] = "none" }, expect = "fail" },
  { "an overlay has one", with = merged(OVERLAY, { ["inspection.mid_roof.proof"] = "none" }),
    expect = "fail" },
  { "a metal roof has none there",
    with = { ["covering.kind"] = "metal_panel", ["inspection.mid_roof.proof"] = "none" },
    expect = "not_applicable" },
  { "not told", without = { "inspection.mid_roof.proof" }, expect = "open" },
}

cases "inspection.mid_roof_moment" {
  under = QUILLBANK, from = "paperwork",
  { "dried in", expect = "pass" },
  { "after tear-off", with = { ["inspection.mid_roof.moment"] = "after_tear_off" },
    expect = "fail" },
  { "some courses laid", with = { ["inspection.mid_roof.moment"] = "courses_laid" },
    expect = "fail" },
  { "loaded", with = { ["inspection.mid_roof.moment"] = "loaded" }, expect = "fail" },
  { "battens on", with = { ["inspection.mid_roof.moment"] = "battens_on" }, expect = "fail" },
  { "not told", without = { "inspection.mid_roof.moment" }, expect = "open" },
  { "some courses laid, in the town", under = STILLBEND,
    with = { ["inspection.mid_roof.moment"] = "courses_laid" }, expect = "pass" },
  { "dried in, in the town", under = STILLBEND, expect = "fail" },
}

-- A Montana city: 8 to 10 courses.
cases "inspection.mid_roof_courses" {
  under = STILLBEND, from = "paperwork",
  { "8", expect = "pass", required = 10, found = 8 },
  { "10", with = { ["inspection.mid_roof.courses_laid"] = 10 }, expect = "pass" },
  { "7", with = { ["inspection.mid_roof.courses_laid"] = 7 }, expect = "fail", required = 8 },
  { "11", with = { ["inspection.mid_roof.courses_laid"] = 11 }, expect = "fail",
    required = 10 },
  { "not told", without = { "inspection.mid_roof.courses_laid" }, expect = "open" },
  { "another moment in the county", under = QUILLBANK, expect = "not_applicable" },
}

cases "inspection.mid_roof_share" {
  under = QUILLBANK, from = "paperwork",
  { "nothing laid yet", expect = "pass", required = 0, found = 0 },
  { "a tenth laid", with = { ["inspection.mid_roof.covering_percent"] = 10 }, expect = "fail" },
  { "not told", without = { "inspection.mid_roof.covering_percent" }, expect = "open" },
  { "the town counts courses", under = STILLBEND, expect = "not_applicable" },
}

-- IRC R109.1.6, recalled; seventeen handouts name a final.
cases "inspection.final" {
  under = "model/irc-2021",
  { "a visit", expect = "pass" },
  { "a drone, where the place does not say it will do",
    with = { ["inspection.final.proof"] = "drone" }, expect = "fail" },
  { "nobody looks", with = { ["inspection.final.proof"] = "none" }, expect = "fail" },
  { "not told", without = { "inspection.final.proof" }, expect = "open" },
}
cases "inspection.final" {
  under = QUILLBANK, from = "paperwork",
  { "a visit", expect = "pass" },
  { "photographs", with = { ["inspection.final.proof"] = "photos" }, expect = "pass" },
  { "an affidavit", with = { ["inspection.final.proof"] = "affidavit" }, expect = "fail" },
  { "an overlay has one too",
    with = merged(OVERLAY, { ["inspection.final.proof"] = "none" }), expect = "fail" },
  { "a drone, where it will do", with = { ["inspection.final.proof"] = "drone" },
    expect = "pass" },
}

-- A final that was held is not yet one that went well.
cases "inspection.final_passed" {
  under = QUILLBANK, from = "paperwork",
  { "passed", with = { ["inspection.final.result"] = "passed" }, expect = "pass" },
  { "corrections", with = { ["inspection.final.result"] = "corrections" }, expect = "fail" },
  { "in part, where that will do", with = { ["inspection.final.result"] = "partial" },
    expect = "pass" },
  { "not held yet", with = { ["inspection.final.result"] = "not_held" }, expect = "open",
    says = "not been held" },
  { "not told", expect = "open" },
}
cases "inspection.final_passed" {
  under = "model/irc-2021", stage = "final",
  { "in part, under the model code", with = { ["inspection.final.result"] = "partial" },
    expect = "fail" },
  { "told at the end only", with = { ["inspection.final.result"] = "corrections" },
    stage = "dry-in", expect = "not_applicable" },
  { "no final in the place", under = "us-sc/goose-creek",
    with = { ["inspection.final.result"] = "corrections" }, expect = "not_applicable" },
}

-- Hidden too soon, and in order ------------------------------------------------------------
-- IRC R109.4, recalled; ten handouts: nothing hidden before it is looked at.

local function visit_cases(visit, so)
  local hidden = "inspection." .. visit .. "_hidden"
  local passed = "inspection." .. visit .. "_passed"
  local at = "inspection." .. visit .. "."
  cases(hidden) {
    under = QUILLBANK, from = "paperwork",
    { "left open", with = so, expect = "pass" },
    { "hidden", with = merged(so, { [at .. "hidden_first"] = true }), expect = "fail" },
    { "not told", with = so, without = { at .. "hidden_first" }, expect = "open" },
    { "no visit, nothing to leave open", under = "example/hollowferry", with = so,
      expect = "not_applicable" },
    { "visits not known", under = "model/irc-2021", with = so, expect = "open",
      says = "was not read: its pages on visits" },
  }
  cases(passed) {
    under = QUILLBANK, from = "paperwork",
    { "passed", with = so, expect = "pass" },
    { "passed in part", with = merged(so, { [at .. "result"] = "partial" }), expect = "pass" },
    { "corrections", with = merged(so, { [at .. "result"] = "corrections" }), expect = "fail" },
    { "never held", with = merged(so, { [at .. "result"] = "not_held" }), expect = "fail" },
    { "not told", with = so, without = { at .. "result" }, expect = "open" },
    { "no visit, none to pass", under = "example/hollowferry", with = so,
      expect = "not_applicable" },
    { "visits not known", under = "model/irc-2021", with = so, expect = "open",
      says = "was not read: its pages on visits" },
  }
end

visit_cases("pre", OVERLAY)
visit_cases("deck", {})
visit_cases("dry_in", {})
visit_cases("mid_roof", {})

cases "inspection.deck_hidden" {
  under = QUILLBANK, from = "paperwork",
  { "photographs were taken instead",
    with = { ["inspection.deck.proof"] = "photos", ["inspection.deck.hidden_first"] = true },
    expect = "not_applicable" },
  { "how it is shown not told", without = { "inspection.deck.proof" }, expect = "open" },
  { "the town lets work go on", under = STILLBEND,
    with = { ["inspection.deck.hidden_first"] = true }, expect = "not_applicable" },
}

cases "inspection.deck_passed" {
  under = QUILLBANK, from = "base", stage = "permit",
  { "not yet, before the work", with = { ["scope.price_usd"] = 9000 },
    expect = "not_applicable" },
}

-- Calling ------------------------------------------------------------------------------

-- Three handouts: 24 hours.
cases "inspection.notice" {
  under = QUILLBANK, from = "paperwork",
  { "24 hours", expect = "pass", required = 24, found = 24 },
  { "23 hours", with = { ["inspection.notice_hours"] = 23 }, expect = "fail" },
  { "not told", without = { "inspection.notice_hours" }, expect = "open" },
  { "the model code leaves it to the place", under = "model/irc-2021", expect = "open" },
}

-- IRC R109.3, recalled: the holder or an agent.
cases "inspection.caller" {
  under = "model/irc-2021",
  { "the contractor", expect = "pass" },
  { "the owner", with = { ["inspection.called_by"] = "owner" }, expect = "pass" },
  { "an agent", with = { ["inspection.called_by"] = "agent" }, expect = "pass" },
  { "a neighbor", with = { ["inspection.called_by"] = "other" }, expect = "fail" },
  { "not told", without = { "inspection.called_by" }, expect = "open" },
}
cases "inspection.caller" {
  under = QUILLBANK, from = "paperwork",
  { "the contractor", expect = "pass" },
  { "the crew", with = { ["inspection.called_by"] = "crew" }, expect = "fail" },
}

-- A Colorado department: only the holder.
cases "inspection.holder_calls" {
  under = QUILLBANK, from = "paperwork",
  { "the holder", expect = "pass" },
  { "the owner for the contractor", with = { ["inspection.called_by"] = "owner" },
    expect = "fail" },
  { "not told", without = { "inspection.called_by" }, expect = "open" },
  { "holder not told", without = { "permit.holder" }, expect = "open" },
}

-- A California city: a grown person, or a note.
duty("inspection.someone_there", "inspection.someone_home", true, false)

-- Getting up -----------------------------------------------------------------------------

-- IRC R109.3, recalled; five handouts.
cases "inspection.access" {
  under = "model/irc-2021",
  { "a ladder", expect = "pass" },
  { "a scaffold", with = { ["inspection.access"] = "scaffold" }, expect = "pass" },
  { "a lift", with = { ["inspection.access"] = "lift" }, expect = "pass" },
  { "none", with = { ["inspection.access"] = "none" }, expect = "fail" },
  { "a drone, where the place does not fly one", with = { ["inspection.access"] = "drone" },
    expect = "fail" },
  { "not told", without = { "inspection.access" }, expect = "open" },
}
cases "inspection.access" {
  under = QUILLBANK, from = "paperwork",
  { "a ladder", expect = "pass" },
  { "a drone, where it will do", with = { ["inspection.access"] = "drone" }, expect = "pass" },
}

duty("inspection.ladder_tied", "inspection.ladder_tied", true, false)
cases "inspection.ladder_tied" {
  under = QUILLBANK, from = "paperwork",
  { "up a scaffold",
    with = { ["inspection.access"] = "scaffold", ["inspection.ladder_tied"] = false },
    expect = "not_applicable" },
}

-- A California city: 3 ft past, rated for 300 lb.
cases "inspection.ladder_past" {
  under = QUILLBANK, from = "paperwork",
  { "3 ft", expect = "pass", required = 36, found = 36 },
  { "2 ft", with = { ["inspection.ladder_past_eave_in"] = 24 }, expect = "fail" },
  { "not told", without = { "inspection.ladder_past_eave_in" }, expect = "open" },
}
cases "inspection.ladder_rating" {
  under = QUILLBANK, from = "paperwork",
  { "300", expect = "pass", required = 300, found = 300 },
  { "250", with = { ["inspection.ladder_rating_lb"] = 250 }, expect = "fail" },
  { "not told", without = { "inspection.ladder_rating_lb" }, expect = "open" },
}

-- On the day -----------------------------------------------------------------------------

duty("inspection.snow", "site.snow_on_roof", false, true)
duty("inspection.ties", "roof.ties_at_each_rafter", true, false)
duty("inspection.labels", "inspection.labels_kept", true, false)
duty("inspection.site_clean", "site.clean", true, false)
duty("inspection.bin_gone", "site.bin_gone", true, false)
duty("inspection.downspouts", "site.downspouts_to_storm_sewer", false, true)

cases "inspection.site_clean" {
  under = QUILLBANK, from = "base", stage = "permit",
  { "not before the final", expect = "not_applicable", says = "on the day" },
}

-- A Utah city: a look of its own, or with the final; the electrician named.
cases "inspection.solar" {
  under = QUILLBANK, from = "paperwork",
  { "with the final", expect = "pass" },
  { "a visit of its own", with = { ["inspection.solar_proof"] = "visit" }, expect = "pass" },
  { "nobody looks", with = { ["inspection.solar_proof"] = "none" }, expect = "fail" },
  { "not told", without = { "inspection.solar_proof" }, expect = "open" },
  { "no panels", with = { ["scope.solar_reset"] = false }, expect = "not_applicable" },
  { "nobody knows whether there are any", without = { "scope.solar_reset" }, expect = "open" },
}
duty("inspection.solar_electrician", "inspection.solar_electrician", true, false)

-- A California city: 4 in high, strokes 1/2 in wide.
duty("inspection.address", "site.address_posted", true, false)
cases "inspection.address_size" {
  under = QUILLBANK, from = "paperwork",
  { "4 in and 1/2 in", expect = "pass" },
  { "3 in high", with = { ["site.address_height_in"] = 3 }, expect = "fail", required = 4,
    found = 3 },
  { "thin strokes", with = { ["site.address_stroke_in"] = 0.25 }, expect = "fail",
    required = 0.5, found = 0.25 },
  { "height not told", without = { "site.address_height_in" }, expect = "open" },
  { "strokes not told", without = { "site.address_stroke_in" }, expect = "open" },
}

duty("inspection.spark_arrester", "house.spark_arrester", true, false)
cases "inspection.spark_arrester" {
  under = QUILLBANK, from = "paperwork",
  { "no wood fire",
    with = { ["house.solid_fuel_chimney"] = false, ["house.spark_arrester"] = false },
    expect = "not_applicable" },
  { "nobody knows whether there is one", without = { "house.solid_fuel_chimney" },
    expect = "open" },
}

-- R1003.9.2, recalled: 3/8 to 1/2 in.
cases "inspection.spark_arrester_openings" {
  under = QUILLBANK, from = "paperwork",
  { "1/2 in", expect = "pass", found = 0.5 },
  { "3/8 in", with = { ["house.spark_arrester_opening_in"] = 0.375 }, expect = "pass" },
  { "5/8 in", with = { ["house.spark_arrester_opening_in"] = 0.625 }, expect = "fail",
    required = 0.5 },
  { "1/4 in", with = { ["house.spark_arrester_opening_in"] = 0.25 }, expect = "fail",
    required = 0.375 },
  { "not told", without = { "house.spark_arrester_opening_in" }, expect = "open" },
}

-- What the model code does not ask, it does not find fault with.
for id, bad in pairs {
  ["inspection.holder_calls"] = { ["inspection.called_by"] = "owner" },
  ["inspection.ladder_past"] = { ["inspection.ladder_past_eave_in"] = 0 },
  ["inspection.ladder_rating"] = { ["inspection.ladder_rating_lb"] = 100 },
  ["inspection.solar"] = { ["inspection.solar_proof"] = "none" },
  ["inspection.address_size"] = { ["site.address_height_in"] = 1 },
  ["inspection.spark_arrester_openings"] = { ["house.spark_arrester_opening_in"] = 2 },
} do
  cases(id) {
    under = "example/hollowferry", from = "paperwork",
    { "not asked for by an invented hamlet, bad as it is", with = bad, expect = "not_applicable" },
    { "a place that was not read", under = "model/irc-2021", with = bad, expect = "open",
      says = "was not read: its pages on" },
  }
end

-- Lists of what inspectors find: called too early (a Virginia county, a Michigan
-- city), not built to the plan (the same county, one of North Carolina).
cases "inspection.ready" {
  under = QUILLBANK, from = "paperwork",
  { "all done", with = { ["inspection.ready_at_call"] = true }, expect = "pass" },
  { "called too early", with = { ["inspection.ready_at_call"] = false }, expect = "fail" },
  { "not told", expect = "open" },
  { "nothing said of it", under = "model/irc-2021",
    with = { ["inspection.ready_at_call"] = false }, expect = "open" },
}

cases "inspection.as_permitted" {
  under = QUILLBANK, from = "paperwork",
  { "as permitted", with = { ["inspection.built_as_permitted"] = true }, expect = "pass" },
  { "otherwise", with = { ["inspection.built_as_permitted"] = false }, expect = "fail" },
  { "not told", expect = "open" },
  { "nothing said of it", under = "model/irc-2021",
    with = { ["inspection.built_as_permitted"] = false }, expect = "open" },
}

-- No handout on reroofs asks for it; the invented county does.
cases "inspection.deck_loaded" {
  under = QUILLBANK, from = "paperwork",
  { "loaded", with = { ["inspection.deck.roof_loaded"] = true }, expect = "pass" },
  { "not loaded", with = { ["inspection.deck.roof_loaded"] = false }, expect = "fail" },
  { "not told", expect = "open" },
  { "nothing said of it where the deck is looked at", under = "us-ca/healdsburg",
    with = { ["inspection.deck.roof_loaded"] = false }, expect = "not_applicable" },
}

-- One step past a figure, the smallest that prints: what a slip of it would let by.
cases "inspection.ladder_past" {
  under = QUILLBANK, from = "paperwork",
  { "35.999 in", with = { ["inspection.ladder_past_eave_in"] = 35.999 }, expect = "fail" },
}
cases "inspection.ladder_rating" {
  under = QUILLBANK, from = "paperwork",
  { "299.9 lb", with = { ["inspection.ladder_rating_lb"] = 299.9 }, expect = "fail" },
}
cases "inspection.address_size" {
  under = QUILLBANK, from = "paperwork",
  { "3.999 in high", with = { ["site.address_height_in"] = 3.999 }, expect = "fail",
    required = 4 },
  { "strokes of 0.499 in", with = { ["site.address_stroke_in"] = 0.499 }, expect = "fail",
    required = 0.5 },
}
cases "inspection.spark_arrester_openings" {
  under = QUILLBANK, from = "paperwork",
  { "0.501 in", with = { ["house.spark_arrester_opening_in"] = 0.501 }, expect = "fail",
    required = 0.5 },
  { "0.374 in", with = { ["house.spark_arrester_opening_in"] = 0.374 }, expect = "fail",
    required = 0.375 },
}
cases "inspection.mid_roof_share" {
  under = QUILLBANK, from = "paperwork",
  { "a tenth of a percent laid", with = { ["inspection.mid_roof.covering_percent"] = 0.1 },
    expect = "fail", required = 0 },
}
cases "inspection.pre" {
  under = STILLBEND, from = "paperwork",
  { "an overlay, where no first look is asked for", with = OVERLAY, expect = "not_applicable" },
}

cases "inspection.pre" {
  under = QUILLBANK, from = "paperwork",
  { "a tear-off with a porch of 2.01:12",
    with = { ["roof.slopes[3].pitch"] = "2.01:12", ["inspection.pre.proof"] = "none" },
    expect = "not_applicable" },
}

-- The rest of what a list names, and one that it does not.
cases "inspection.access" {
  under = QUILLBANK, from = "paperwork",
  { "a scaffold", with = { ["inspection.access"] = "scaffold" }, expect = "pass" },
  { "a lift, which the county does not name", with = { ["inspection.access"] = "lift" },
    expect = "fail" },
}
cases "inspection.caller" {
  under = QUILLBANK, from = "paperwork",
  { "the owner", with = { ["inspection.called_by"] = "owner" }, expect = "pass" },
}

-- No permit needed, nobody comes -----------------------------------------------------------
-- IRC R109.1: visits are for work that needs a permit. A small repair that leaves deck,
-- framing, pitch and kind of covering as they are, cheap and light, on a house that is
-- not historic: where not every job needs a permit, this one needs none.

local SMALL = { ["permit.status"] = "none", ["inspection.final.proof"] = "none",
  ["decks[1].work"] = "kept", ["scope.extent"] = "repair", ["scope.area_sqft"] = 90,
  ["scope.roof_share_percent"] = 5, ["scope.earlier_roofing"] = {}, ["scope.price_usd"] = 900,
  ["scope.pitch_change"] = false, ["scope.material_change"] = false,
  ["scope.structure_altered"] = false, ["site.historic"] = false,
  ["covering.weight_lb_per_square"] = 240, ["existing.coverings[1].weight_lb_per_square"] = 240 }

for _, place in ipairs { "us-ny", "us-ny/milo", "us-co/denver", "us-nj/kenilworth",
  "us-nj/montville", "us-mo/festus", "us-il/countryside", "us-tx/azle", "us-tx/garland",
  "us-tx/north-richland-hills", "us-nc/maiden", "us-pa/brookville", "us-ca/san-diego" } do
  cases "inspection.final" {
    under = place, date = "2026-06-01",
    { "no permit needed in " .. place, with = SMALL, expect = "not_applicable",
      says = "no permit" },
    { "a permit that was taken out all the same, in " .. place,
      with = merged(SMALL, { ["permit.status"] = "issued" }), expect = "fail" },
    { "whether there is a permit is not known, in " .. place, with = SMALL,
      without = { "permit.status" }, expect = "open" },
  }
end

-- What calls for a permit calls for the visit, permit or no permit.
for place, why in pairs { ["us-ny"] = { ["decks[1].work"] = "replaced" },
  ["us-nc/maiden"] = { ["scope.price_usd"] = 90000 },
  ["us-co/denver"] = { ["scope.area_sqft"] = 900, ["scope.roof_share_percent"] = 60 },
  ["us-tx/garland"] = { ["scope.pitch_change"] = true } } do
  cases "inspection.final" {
    under = place, date = "2026-06-01",
    { "a permit needed and not taken out, in " .. place, with = merged(SMALL, why),
      expect = "fail" },
  }
end
cases "inspection.final" {
  under = "model/irc-2021",
  { "every reroof needs one", with = merged(SMALL, { ["scope.extent"] = "reroof" }),
    expect = "fail" },
  { "but a small repair", with = SMALL, expect = "not_applicable" },
  { "what calls for one is not known", under = "us-nc/maiden", date = "2026-06-01",
    with = SMALL, without = { "scope.price_usd" }, expect = "open" },
}

-- Nor does anybody call, leave a ladder, or keep labels for them.
for rule, so in pairs { ["inspection.caller"] = { ["inspection.called_by"] = "crew" },
  ["inspection.access"] = { ["inspection.access"] = "none" },
  ["permit.life"] = { ["permit.longest_idle_days"] = 900 } } do
  cases(rule) {
    under = "us-tx/azle", date = "2026-06-01",
    { "no permit needed", with = merged(SMALL, so), stage = "deck", expect = "not_applicable",
      says = "no permit" },
    { "a permit", with = merged(SMALL, merged(so, { ["permit.status"] = "issued" })),
      stage = "deck", expect = "fail" },
  }
end

-- Visits that are due only where something is so. Fern Hollow County is invented; its
-- conditions are those of a Washington tip sheet of several cities, and of its own.
local FERNHOLLOW, MOSSLANE = "example/fernhollow", "example/mosslane"
local NOBODY = { ["inspection.pre.proof"] = "none", ["inspection.deck.proof"] = "none",
  ["inspection.dry_in.proof"] = "none", ["inspection.nailing.proof"] = "none",
  ["scope.skylights_changed"] = false, ["scope.units_moved"] = false,
  ["scope.new_underlayment"] = true, ["scope.material_change"] = false }
local function nobody(more) return merged(NOBODY, more) end

cases "inspection.pre" {
  under = FERNHOLLOW, from = "paperwork",
  { "a low, steep house without skylights", with = NOBODY, expect = "not_applicable" },
  { "a porch of exactly 2:12", with = nobody { ["roof.slopes[3].pitch"] = "2:12" },
    expect = "fail" },
  { "a porch a little steeper", with = nobody { ["roof.slopes[3].pitch"] = "2.02:12" },
    expect = "not_applicable" },
  { "exactly two stories", with = nobody { ["house.stories"] = 2 },
    expect = "not_applicable" },
  { "three", with = nobody { ["house.stories"] = 3 }, expect = "fail" },
  { "three, looked at", with = nobody { ["house.stories"] = 3,
    ["inspection.pre.proof"] = "visit" }, expect = "pass" },
  { "a new skylight", with = nobody { ["scope.skylights_changed"] = true }, expect = "fail" },
  { "skylights not told of", with = NOBODY, without = { "scope.skylights_changed" },
    expect = "open" },
}

cases "inspection.deck" {
  under = FERNHOLLOW, from = "paperwork",
  { "panels, a contractor, one family", with = NOBODY, expect = "not_applicable" },
  { "spaced boards", with = nobody { ["decks[1].kind"] = "spaced_board" }, expect = "fail" },
  { "framing altered", with = nobody { ["scope.structure_altered"] = true }, expect = "fail" },
  { "a unit moved", with = nobody { ["scope.units_moved"] = true }, expect = "fail" },
  { "an owner", with = nobody(OWNER), expect = "fail" },
  { "two families", with = nobody { ["house.kind"] = "two_family" }, expect = "fail" },
  { "a townhouse", with = nobody { ["house.kind"] = "townhouse" }, expect = "fail" },
  { "a townhouse, looked at", with = nobody { ["house.kind"] = "townhouse",
    ["inspection.deck.proof"] = "visit" }, expect = "pass" },
}

cases "inspection.dry_in" {
  under = FERNHOLLOW, from = "paperwork",
  { "new deck", with = NOBODY, expect = "fail" },
  { "no new deck, like for like", with = nobody { ["decks[1].work"] = "kept" },
    without = { "decks[1].replaced_sqft" }, expect = "not_applicable" },
  { "no new deck, another covering", with = nobody { ["decks[1].work"] = "kept",
    ["scope.material_change"] = true }, without = { "decks[1].replaced_sqft" },
    expect = "fail" },
}

-- Beside the look at the bare deck, one at the nails of what is new.
local NAILED = merged(NOBODY, { ["inspection.nailing.proof"] = "visit",
  ["inspection.nailing.hidden_first"] = false, ["inspection.nailing.result"] = "passed" })
cases "inspection.nailing" {
  under = FERNHOLLOW, from = "paperwork",
  { "a visit", with = NAILED, expect = "pass" },
  { "nobody looks", with = NOBODY, expect = "fail" },
  { "the deck stays", with = nobody { ["decks[1].work"] = "kept" },
    without = { "decks[1].replaced_sqft" }, expect = "not_applicable" },
  { "an overlay", with = merged(NOBODY, OVERLAY), expect = "not_applicable" },
  { "not told", with = NOBODY, without = { "inspection.nailing.proof" }, expect = "open" },
  { "a county that has none", under = QUILLBANK, with = NOBODY, expect = "not_applicable" },
  { "a place that was not read", under = "model/irc-2021", with = NOBODY, expect = "open",
    says = "was not read: its pages on" },
}

cases "inspection.nailing_hidden" {
  under = FERNHOLLOW, from = "paperwork", stage = "final",
  { "left bare", with = NAILED, expect = "pass" },
  { "covered first", with = merged(NAILED, { ["inspection.nailing.hidden_first"] = true }),
    expect = "fail" },
  { "not told", with = NAILED, without = { "inspection.nailing.hidden_first" },
    expect = "open" },
}

cases "inspection.nailing_passed" {
  under = FERNHOLLOW, from = "paperwork", stage = "final",
  { "it went well", with = NAILED, expect = "pass" },
  { "corrections", with = merged(NAILED, { ["inspection.nailing.result"] = "corrections" }),
    expect = "fail" },
  { "not told", with = NAILED, without = { "inspection.nailing.result" }, expect = "open" },
}

-- No ladder on a house of more than two stories.
cases "inspection.access_tall" {
  under = FERNHOLLOW, from = "paperwork",
  { "three stories, a scaffold", with = nobody { ["house.stories"] = 3,
    ["inspection.access"] = "scaffold" }, expect = "pass" },
  { "three stories, a lift", with = nobody { ["house.stories"] = 3,
    ["inspection.access"] = "lift" }, expect = "pass" },
  { "three stories, a drone", with = nobody { ["house.stories"] = 3,
    ["inspection.access"] = "drone" }, expect = "pass" },
  { "three stories, a ladder", with = nobody { ["house.stories"] = 3,
    ["inspection.access"] = "ladder" }, expect = "fail" },
  { "exactly two, a ladder", with = nobody { ["house.stories"] = 2,
    ["inspection.access"] = "ladder" }, expect = "not_applicable" },
  { "not told how", with = nobody { ["house.stories"] = 3 }, without = { "inspection.access" },
    expect = "open" },
  { "a county that asks for none", under = QUILLBANK, with = nobody { ["house.stories"] = 3 },
    expect = "not_applicable" },
  { "a place that was not read", under = "model/irc-2021",
    with = nobody { ["house.stories"] = 3 }, expect = "open" },
}
