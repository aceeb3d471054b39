-- Cases of rules/permit.lua. Quillbank County and the town of Stillbend are
-- invented; the thresholds that they print are those of real handouts, named
-- beside each.

local QUILLBANK, STILLBEND = "example/quillbank", "example/stillbend"

local function merged(one, more)
  local with = {}
  for place, value in pairs(one) do with[place] = value end
  for place, value in pairs(more or {}) do with[place] = value end
  return with
end

-- The same job without a permit, with other facts changed.
local function unpermitted(changes)
  return merged({ ["permit.status"] = "none" }, changes)
end

-- IRC R105.1 and R105.2, recalled: no line exempts a reroof.
cases "permit.every" {
  under = "model/irc-2021",
  { "an issued permit", expect = "pass" },
  { "applied for, before the work", with = { ["permit.status"] = "applied" }, expect = "pass" },
  { "none", with = unpermitted(), expect = "fail" },
  { "applied for is not enough once work has begun", stage = "deck",
    with = { ["permit.status"] = "applied" }, expect = "fail" },
  { "issued, with work begun", stage = "deck", expect = "pass", says = "Larkmoor" },
  { "issued, but its number not given", stage = "deck", without = { "permit.number" },
    expect = "open" },
  { "a small repair, R105.2.2",
    with = unpermitted { ["scope.extent"] = "repair", ["scope.area_sqft"] = 39,
    ["scope.roof_share_percent"] = 3 },
    expect = "not_applicable" },
  { "a repair of the whole roof is none",
    with = unpermitted { ["scope.extent"] = "repair", ["scope.area_sqft"] = 1289,
    ["scope.roof_share_percent"] = 100 },
    expect = "refused", says = "whole roof" },
  { "a repair that alters rafters",
    with = unpermitted { ["scope.extent"] = "repair", ["scope.structure_altered"] = true,
      ["scope.area_sqft"] = 39, ["scope.roof_share_percent"] = 3 }, expect = "fail" },
  { "a repair, framing not told",
    with = unpermitted { ["scope.extent"] = "repair", ["scope.area_sqft"] = 39,
    ["scope.roof_share_percent"] = 3 },
    without = { "scope.structure_altered" }, expect = "open" },
  { "nothing said about a permit", without = { "permit.status" }, expect = "open" },
}

cases "permit.every" {
  under = QUILLBANK, from = "paperwork",
  { "not every job needs one there", with = unpermitted(), expect = "not_applicable" },
}

-- A Utah city: an overlay alone is free; a tear-off is not.
cases "permit.by_method" {
  under = QUILLBANK, from = "paperwork",
  { "a tear-off with a permit", expect = "pass" },
  { "a tear-off without", with = unpermitted(), expect = "fail" },
  { "an overlay is free",
    with = unpermitted { ["scope.method"] = "overlay", ["existing.layers_removed"] = 0,
      ["existing.coverings[1].removed"] = false }, expect = "not_applicable" },
  { "an overlay is not, in the town", under = STILLBEND,
    with = unpermitted { ["scope.method"] = "overlay", ["existing.layers_removed"] = 0,
      ["existing.coverings[1].removed"] = false }, expect = "fail" },
  { "a tear-off is free in the town", under = STILLBEND, with = unpermitted(),
    expect = "not_applicable" },
  { "method not known", without = { "scope.method" }, expect = "open" },
  { "every job needs one by the model code", under = "model/irc-2021", from = "base",
    expect = "not_applicable" },
}

-- One square is 100 sq ft. A Colorado town and a California city: over it; another
-- Colorado city: under it is free, so one square itself is not.
cases "permit.by_area" {
  under = QUILLBANK, from = "paperwork",
  { "more than a square, with a permit", expect = "pass" },
  { "more than a square, without", with = unpermitted { ["scope.roof_share_percent"] = 7.8,
    ["scope.area_sqft"] = 100.1 },
    expect = "fail", says = "100.1" },
  { "exactly a square is free", with = unpermitted { ["scope.roof_share_percent"] = 7.8,
    ["scope.area_sqft"] = 100 },
    expect = "pass", required = 100, found = 100 },
  { "exactly the town's two squares are not", under = STILLBEND,
    with = unpermitted { ["scope.roof_share_percent"] = 15.5, ["scope.area_sqft"] = 200 },
    expect = "fail" },
  { "just under them is free", under = STILLBEND,
    with = unpermitted { ["scope.roof_share_percent"] = 15.5, ["scope.area_sqft"] = 199.8 },
    expect = "pass" },
  { "small enough, whatever its deck", expect = "pass",
    with = unpermitted { ["scope.roof_share_percent"] = 7.8, ["scope.area_sqft"] = 100,
    ["decks[1].replaced_sqft"] = 400 } },
  { "area not known", without = { "scope.area_sqft" }, expect = "open" },
  { "the model code sets no size", under = "model/irc-2021", from = "paperwork",
    expect = "not_applicable" },
}

-- "Over 50 percent" and "50 percent or more" part at exactly 50. Work of the
-- months before counts with it.
cases "permit.by_share" {
  under = QUILLBANK, from = "paperwork",
  { "the whole roof with a permit", expect = "pass" },
  { "exactly half is not over half", with = unpermitted { ["scope.area_sqft"] = 645,
    ["scope.roof_share_percent"] = 50 },
    expect = "pass", required = 50, found = 50 },
  { "a little over half", with = unpermitted { ["scope.area_sqft"] = 646,
    ["scope.roof_share_percent"] = 50.1 },
    expect = "fail" },
  { "two quarters and more within twelve months",
    with = unpermitted { ["scope.area_sqft"] = 335, ["scope.roof_share_percent"] = 26,
      ["scope.earlier_roofing"] = { { done_on = "2025-06-01", roof_share_percent = 25 } } },
    expect = "fail", says = "51" },
  { "the same, but the first one longer ago",
    with = unpermitted { ["scope.area_sqft"] = 335, ["scope.roof_share_percent"] = 26,
      ["scope.earlier_roofing"] = { { done_on = "2025-03-01", roof_share_percent = 25 } } },
    expect = "pass", found = 26 },
  { "twelve months ago to the day still counts",
    with = unpermitted { ["scope.area_sqft"] = 335, ["scope.roof_share_percent"] = 26,
      ["scope.earlier_roofing"] = { { done_on = "2025-03-02", roof_share_percent = 25 } } },
    expect = "fail" },
  { "earlier work not told", without = { "scope.earlier_roofing" }, expect = "open" },
  { "share not known", without = { "scope.roof_share_percent" }, expect = "open" },
}

-- A Colorado city: 10 percent or two squares, whichever is less. Two triggers, and
-- either one bites.
cases "permit.by_share" {
  under = STILLBEND, from = "paperwork",
  { "exactly 10 percent is inside in the town",
    with = unpermitted { ["scope.roof_share_percent"] = 10, ["scope.area_sqft"] = 128.9 },
    expect = "fail" },
  { "10.1 percent",
    with = unpermitted { ["scope.roof_share_percent"] = 10.1, ["scope.area_sqft"] = 130 },
    expect = "fail" },
  { "9.9 percent is not",
    with = unpermitted { ["scope.roof_share_percent"] = 9.9, ["scope.area_sqft"] = 127 },
    expect = "pass" },
  { "9 percent is not",
    with = unpermitted { ["scope.roof_share_percent"] = 9, ["scope.area_sqft"] = 116 },
    expect = "pass" },
}

cases "permit.by_area" {
  under = STILLBEND, from = "paperwork",
  { "on a large roof the two squares bite first",
    with = unpermitted { ["scope.roof_share_percent"] = 7, ["scope.area_sqft"] = 250,
      ["roof.ridge_ft"] = 115, ["roof.slopes[1].eave_ft"] = 115,
      ["roof.slopes[1].ridge_ft"] = 115, ["roof.slopes[2].eave_ft"] = 115,
      ["roof.slopes[2].ridge_ft"] = 115 }, expect = "fail" },
}

-- A California city: over 25 percent of any one plane in 12 months.
cases "permit.by_plane_share" {
  under = QUILLBANK, from = "paperwork",
  { "a whole plane with a permit", expect = "pass", where = "porch" },
  { "exactly a quarter is free",
    with = unpermitted { ["roof.slopes[3].replaced_percent"] = 25 }, expect = "pass",
    where = "porch", required = 25, found = 25 },
  { "25.1 percent of the porch",
    with = unpermitted { ["roof.slopes[3].replaced_percent"] = 25.1 },
    expect = "fail", where = "porch" },
  { "share not known", without = { "roof.slopes[3].replaced_percent" }, expect = "open",
    where = "porch" },
}

-- 20 sq ft of panels on one deck, so many on the other, which lies under the back.
local function two_decks(other)
  return unpermitted { ["roof.slopes[2].deck"] = "back panels", decks = {
    { name = "panels", kind = "panel", work = "partly_replaced", replaced_sqft = 20 },
    { name = "back panels", kind = "panel", work = "partly_replaced", replaced_sqft = other } } }
end

-- Five handouts: any sheet of deck. The county lets one sheet go.
cases "permit.by_deck" {
  under = QUILLBANK, from = "paperwork",
  { "three sheets with a permit", expect = "pass" },
  { "three sheets without", with = unpermitted(), expect = "fail" },
  { "exactly one sheet is free", with = unpermitted { ["decks[1].replaced_sqft"] = 32 },
    expect = "pass", required = 32, found = 32 },
  { "a deck that stays", with = unpermitted { ["decks[1].work"] = "kept" },
    without = { "decks[1].replaced_sqft" }, expect = "pass", found = 0 },
  { "new panels all over", with = unpermitted { ["decks[1].work"] = "paneled_over" },
    expect = "fail" },
  { "size of the new deck not known", without = { "decks[1].replaced_sqft" }, expect = "open" },
  -- Exempt by its size, and yet not by its deck.
  { "a small job with new deck",
    with = unpermitted { ["scope.area_sqft"] = 90, ["scope.roof_share_percent"] = 7,
      ["decks[1].replaced_sqft"] = 64 }, expect = "fail" },
  -- Sheets are counted over the whole job, on whichever deck they are laid.
  { "20 and 20 sq ft on two decks", with = two_decks(20), expect = "fail" },
  { "20 and 12 sq ft on two decks, exactly a sheet", with = two_decks(12), expect = "pass",
    required = 32, found = 32 },
  { "20 and 12.1 sq ft", with = two_decks(12.1), expect = "fail" },
  { "20 sq ft and a size not known", with = two_decks(nil), expect = "open" },
}

cases "permit.by_area" {
  under = QUILLBANK, from = "paperwork",
  { "the same small job is free by its size",
    with = unpermitted { ["scope.area_sqft"] = 90, ["scope.roof_share_percent"] = 7,
      ["decks[1].replaced_sqft"] = 64 }, expect = "pass" },
}

-- A Texas city: 25 percent or more of the deck; an Iowa city: over 25. The roof of
-- these cases has 1,289.3 sq ft: 2 x 40 x 14 ft at 5:12 and 12 x 6 ft at 4:12.
cases "permit.by_deck_share" {
  under = QUILLBANK, from = "paperwork",
  { "a little new deck", with = unpermitted(), expect = "pass", required = 25 },
  { "a quarter itself is inside", with = unpermitted { ["decks[1].replaced_sqft"] = 322.3 },
    expect = "fail", says = "25" },
  { "a quarter itself is not, in the town", under = STILLBEND,
    with = unpermitted { ["decks[1].replaced_sqft"] = 322.3 }, expect = "pass", found = 25 },
  { "all of it, with a permit", with = { ["decks[1].work"] = "replaced" }, expect = "pass" },
  { "all of it, without", under = STILLBEND, with = unpermitted { ["decks[1].work"] = "replaced" },
    expect = "fail", says = "100" },
  { "like for like, but over the deck share",
    with = unpermitted { ["scope.material_change"] = false, ["decks[1].replaced_sqft"] = 400 },
    expect = "fail" },
  { "small enough by its size, but over the deck share", expect = "fail",
    with = unpermitted { ["scope.roof_share_percent"] = 7.8, ["scope.area_sqft"] = 100,
    ["decks[1].replaced_sqft"] = 400 } },
  { "size of the new deck not known", without = { "decks[1].replaced_sqft" }, expect = "open" },
}

-- A North Carolina town: none at 5,000 or less.
cases "permit.by_price" {
  under = QUILLBANK, from = "paperwork",
  { "14,500 with a permit", expect = "pass" },
  { "14,500 without", with = unpermitted(), expect = "fail" },
  { "exactly 5,000 is free", with = unpermitted { ["scope.price_usd"] = 5000 }, expect = "pass",
    required = 5000, found = 5000 },
  { "a cent more is not", with = unpermitted { ["scope.price_usd"] = 5000.01 },
    expect = "fail" },
  { "exactly 5,000 is inside in the town", under = STILLBEND,
    with = unpermitted { ["scope.price_usd"] = 5000 }, expect = "fail" },
  { "price not told", without = { "scope.price_usd" }, expect = "open" },
}

-- A Texas city: a change of pitch or material.
cases "permit.by_pitch" {
  under = QUILLBANK, from = "paperwork",
  { "the pitch stays", with = unpermitted(), expect = "pass" },
  { "it changes, with a permit", with = { ["scope.pitch_change"] = true }, expect = "pass" },
  { "it changes, without", with = unpermitted { ["scope.pitch_change"] = true }, expect = "fail" },
  { "not told", without = { "scope.pitch_change" }, expect = "open" },
}

cases "permit.by_material" {
  under = QUILLBANK, from = "paperwork",
  { "like for like", with = unpermitted(), expect = "pass" },
  { "another material, with a permit", with = { ["scope.material_change"] = true },
    expect = "pass" },
  { "another material, without", with = unpermitted { ["scope.material_change"] = true },
    expect = "fail" },
  { "not told", without = { "scope.material_change" }, expect = "open" },
}

cases "permit.by_structure" {
  under = QUILLBANK, from = "paperwork",
  { "framing left alone", with = unpermitted(), expect = "pass" },
  { "altered, with a permit", with = { ["scope.structure_altered"] = true }, expect = "pass" },
  { "altered, without", with = unpermitted { ["scope.structure_altered"] = true },
    expect = "fail" },
  { "not told", without = { "scope.structure_altered" }, expect = "open" },
}

cases "permit.by_history" {
  under = QUILLBANK, from = "paperwork",
  { "an ordinary house", with = unpermitted(), expect = "pass" },
  { "a landmark, with a permit", with = { ["site.historic"] = true }, expect = "pass" },
  { "a landmark, without", with = unpermitted { ["site.historic"] = true }, expect = "fail" },
  { "not told", without = { "site.historic" }, expect = "open" },
}

-- A California city's bulletin: spaced boards taken off for a new deck.
cases "permit.by_spaced_deck" {
  under = QUILLBANK, from = "paperwork",
  { "panels", with = unpermitted(), expect = "pass" },
  { "spaced boards kept under new panels",
    with = unpermitted { ["decks[1].kind"] = "spaced_board", ["decks[1].work"] = "paneled_over" },
    expect = "pass" },
  { "spaced boards off, with a permit",
    with = { ["decks[1].kind"] = "spaced_board", ["decks[1].work"] = "replaced" },
    expect = "pass" },
  { "spaced boards off, without",
    with = unpermitted { ["decks[1].kind"] = "spaced_board", ["decks[1].work"] = "replaced" },
    expect = "fail" },
  { "kind of deck not known", without = { "decks[1].kind" }, expect = "open" },
}

-- A Washington city: an overlay is free unless the roof's weight rises over 5 percent.
cases "permit.by_weight_rise" {
  under = QUILLBANK, from = "paperwork",
  { "240 for 240", with = unpermitted(), expect = "pass", required = 5, found = 0 },
  { "252 for 240 is exactly 5 percent",
    with = unpermitted { ["covering.weight_lb_per_square"] = 252 }, expect = "pass", found = 5 },
  { "252.24 for 240 is 5.1 percent",
    with = unpermitted { ["covering.weight_lb_per_square"] = 252.24 }, expect = "fail" },
  { "260 for 240, without a permit",
    with = unpermitted { ["covering.weight_lb_per_square"] = 260 }, expect = "fail",
    says = "8.3" },
  { "260 for 240, with one", with = { ["covering.weight_lb_per_square"] = 260 },
    expect = "pass" },
  { "an overlay doubles it",
    with = unpermitted { ["scope.method"] = "overlay", ["existing.layers_removed"] = 0,
      ["existing.coverings[1].removed"] = false }, expect = "fail", says = "100" },
  { "weight of the old layer not known",
    without = { "existing.coverings[1].weight_lb_per_square" }, expect = "open" },
  { "nothing on the roof to compare with",
    with = { ["existing.layers"] = 0, ["existing.layers_removed"] = 0,
      ["existing.coverings"] = {} }, without = { "scope.method" }, expect = "open" },
}

-- The same bulletin: over 6 lb per sq ft, 600 to the square.
cases "permit.by_heavy_covering" {
  under = QUILLBANK, from = "paperwork",
  { "240", with = unpermitted(), expect = "pass", required = 600, found = 240 },
  { "exactly 600 is free", with = unpermitted { ["covering.weight_lb_per_square"] = 600 },
    expect = "pass", found = 600 },
  { "a little over 600",
    with = unpermitted { ["covering.weight_lb_per_square"] = 600.1 }, expect = "fail" },
  { "900 without a permit", with = unpermitted { ["covering.weight_lb_per_square"] = 900 },
    expect = "fail" },
  { "900 with one", with = { ["covering.weight_lb_per_square"] = 900 }, expect = "pass" },
  { "weight not known", without = { "covering.weight_lb_per_square" }, expect = "open" },
}

-- What single handouts add. Fern Hollow County, invented: a reroof is free but for these.
local FERNHOLLOW = "example/fernhollow"

-- A state's residential code: a townhouse needs one. The county counts two families too.
cases "permit.by_house_kind" {
  under = FERNHOLLOW, from = "paperwork",
  { "a townhouse", with = unpermitted { ["house.kind"] = "townhouse" }, expect = "fail" },
  { "two families, with a permit", with = { ["house.kind"] = "two_family" }, expect = "pass" },
  { "one family", with = unpermitted(), expect = "not_applicable" },
  { "kind not known", without = { "house.kind" }, expect = "open" },
  { "no kind counts, and none is asked for", under = QUILLBANK, without = { "house.kind" },
    expect = "not_applicable" },
}

-- Over two stories.
cases "permit.by_stories" {
  under = FERNHOLLOW, from = "paperwork",
  { "three", with = unpermitted { ["house.stories"] = 3 }, expect = "fail",
    says = "3 stories" },
  { "exactly two", with = unpermitted { ["house.stories"] = 2 }, expect = "pass",
    required = 2, found = 2 },
  { "three, with a permit", with = { ["house.stories"] = 3 }, expect = "pass" },
  { "stories not known", without = { "house.stories" }, expect = "open" },
  { "they do not count elsewhere", under = QUILLBANK, with = { ["house.stories"] = 3 },
    expect = "not_applicable" },
}

for _, one in ipairs { { "permit.by_skylight", "scope.skylights_changed" },
  { "permit.by_units", "scope.units_moved" },
  { "permit.by_underlayment", "scope.new_underlayment" } } do
  local id, fact = one[1], one[2]
  cases(id) {
    under = FERNHOLLOW, from = "paperwork",
    { "so, without a permit", with = unpermitted { [fact] = true }, expect = "fail" },
    { "so, with one", with = { [fact] = true }, expect = "pass" },
    { "not so", with = unpermitted { [fact] = false }, expect = "pass" },
    { "not told", expect = "open" },
    { "it does not count elsewhere", under = QUILLBANK, with = { [fact] = true },
      expect = "not_applicable" },
    { "every job needs one by the model code", under = "model/irc-2021", from = "base",
      with = { [fact] = true }, without = { "roof.penetrations" }, expect = "not_applicable" },
  }
end

-- A state's existing building code lets a second layer of up to 3 lb to the sq ft lie.
local LAID_OVER = { ["scope.method"] = "overlay", ["existing.layers_removed"] = 0,
  ["existing.coverings[1].removed"] = false, ["permit.status"] = "none" }
cases "permit.by_weight_added" {
  under = FERNHOLLOW, from = "paperwork",
  { "240 over 240 adds 2.4", with = LAID_OVER, expect = "pass", required = 3, found = 2.4 },
  { "exactly 3", with = merged(LAID_OVER, { ["covering.weight_lb_per_square"] = 300 }),
    expect = "pass", found = 3 },
  { "3.1", with = merged(LAID_OVER, { ["covering.weight_lb_per_square"] = 310 }),
    expect = "fail", says = "3.1" },
  { "3.01 is just past it", with = merged(LAID_OVER,
    { ["covering.weight_lb_per_square"] = 301 }), expect = "fail" },
  { "pounds do not count elsewhere", under = QUILLBANK, with = LAID_OVER,
    expect = "not_applicable" },
  { "3.1, with a permit", with = merged(LAID_OVER, { ["covering.weight_lb_per_square"] = 310,
    ["permit.status"] = "issued" }), expect = "pass" },
  { "heavier shingles in place of light ones",
    with = unpermitted { ["covering.weight_lb_per_square"] = 550 }, expect = "fail" },
  { "weight not known", with = LAID_OVER, without = { "covering.weight_lb_per_square" },
    expect = "open" },
}

-- Visits go with a permit that is needed, whichever of these calls for it.
cases "inspection.final" {
  under = FERNHOLLOW, from = "paperwork",
  with = merged(LAID_OVER, { ["scope.skylights_changed"] = false, ["scope.units_moved"] = false,
    ["scope.new_underlayment"] = false, ["inspection.final.proof"] = "none" }),
  { "nothing calls for one", expect = "not_applicable" },
  { "a skylight does", with = { ["scope.skylights_changed"] = true }, expect = "fail" },
  { "a moved unit does", with = { ["scope.units_moved"] = true }, expect = "fail" },
  { "new underlayment does", with = { ["scope.new_underlayment"] = true }, expect = "fail" },
  { "a townhouse does", with = { ["house.kind"] = "townhouse" }, expect = "fail" },
  { "a third story does", with = { ["house.stories"] = 3 }, expect = "fail" },
  { "pounds do", with = { ["covering.weight_lb_per_square"] = 310 }, expect = "fail" },
  { "a skylight not told of", without = { "scope.skylights_changed" }, expect = "open" },
}

-- How much pulls in the rest ------------------------------------------------------------
-- A Florida city and the rule it restates: more than 25 percent in 12 months. A
-- California ordinance says 26 percent, another 50.

cases "permit.share_trigger" {
  under = QUILLBANK, from = "paperwork",
  { "exactly 25 percent stands alone",
    with = { ["scope.area_sqft"] = 322, ["scope.roof_share_percent"] = 25,
    ["scope.rest_to_code"] = false },
    expect = "pass", required = 25, found = 25 },
  { "25.1 percent does not",
    with = { ["scope.area_sqft"] = 324, ["scope.roof_share_percent"] = 25.1,
    ["scope.rest_to_code"] = false },
    expect = "fail" },
  { "26 percent with the rest brought along", with = { ["scope.area_sqft"] = 335,
    ["scope.roof_share_percent"] = 26 },
    expect = "pass" },
  { "15 percent after 12 in the same year",
    with = { ["scope.area_sqft"] = 193, ["scope.roof_share_percent"] = 15,
    ["scope.rest_to_code"] = false,
      ["scope.earlier_roofing"] = { { done_on = "2025-09-09", roof_share_percent = 12 } } },
    expect = "fail", says = "27" },
  { "15 percent after 12 in the year before",
    with = { ["scope.area_sqft"] = 193, ["scope.roof_share_percent"] = 15,
    ["scope.rest_to_code"] = false,
      ["scope.earlier_roofing"] = { { done_on = "2025-03-01", roof_share_percent = 12 } } },
    expect = "pass" },
  { "15 percent after 12, twelve months ago to the day",
    with = { ["scope.area_sqft"] = 193, ["scope.roof_share_percent"] = 15,
    ["scope.rest_to_code"] = false,
      ["scope.earlier_roofing"] = { { done_on = "2025-03-02", roof_share_percent = 12 } } },
    expect = "fail" },
  { "the whole roof leaves no rest", without = { "scope.rest_to_code" }, expect = "pass" },
  { "the old roof is new enough to stay",
    with = { ["scope.area_sqft"] = 774, ["scope.roof_share_percent"] = 60,
    ["scope.rest_to_code"] = false,
      ["scope.rest_under_relief"] = true }, expect = "not_applicable" },
  { "what becomes of the rest not told", with = { ["scope.area_sqft"] = 516,
    ["scope.roof_share_percent"] = 40 },
    without = { "scope.rest_to_code" }, expect = "open" },
  { "age of the old roof not told", without = { "scope.rest_under_relief" }, expect = "open" },
  { "the model code has no such line", under = "model/irc-2021", expect = "not_applicable" },
}

cases "permit.share_trigger" {
  under = STILLBEND, from = "paperwork",
  { "50 percent itself is inside in the town",
    with = { ["scope.area_sqft"] = 645, ["scope.roof_share_percent"] = 50,
    ["scope.rest_to_code"] = false },
    expect = "fail" },
  { "49.9 is not", with = { ["scope.area_sqft"] = 643, ["scope.roof_share_percent"] = 49.9,
    ["scope.rest_to_code"] = false },
    expect = "pass" },
  { "an application the day before the town's own figures begin", date = "2025-06-30",
    expect = "refused", says = "from 2025-07-01" },
  { "on the day they begin", date = "2025-07-01",
    with = { ["scope.area_sqft"] = 645, ["scope.roof_share_percent"] = 50,
    ["scope.rest_to_code"] = false },
    expect = "fail" },
}

-- A Colorado town: the whole slope; coverings meet only at ridge, hip or open valley.
cases "permit.whole_planes" {
  under = QUILLBANK, from = "paperwork",
  { "whole", expect = "pass", where = "main back", required = 100, found = 100 },
  { "all but a strip", with = { ["roof.slopes[2].replaced_percent"] = 99.9 },
    expect = "fail", where = "main back" },
  { "the lower half of it", with = { ["roof.slopes[2].replaced_percent"] = 50 },
    expect = "fail", where = "main back" },
  { "left alone", with = { ["roof.slopes[2].replaced_percent"] = 0 },
    expect = "not_applicable", where = "main back" },
  { "not told", without = { "roof.slopes[2].replaced_percent" }, expect = "open",
    where = "main back" },
}

cases "permit.joins" {
  under = QUILLBANK, from = "paperwork",
  { "nowhere", expect = "pass" },
  { "at the ridge, a hip and an open valley",
    with = { ["scope.joins"] = { "ridge", "hip", "open_valley" } },
    expect = "pass" },
  { "in a closed valley", with = { ["scope.joins"] = { "ridge", "closed_valley" } },
    expect = "fail" },
  { "in the middle of a plane", with = { ["scope.joins"] = { "mid_slope" } }, expect = "fail" },
  { "an empty list says nothing", with = { ["scope.joins"] = {} }, expect = "open" },
  { "not told", without = { "scope.joins" }, expect = "open" },
}

-- What may go on ---------------------------------------------------------------------
-- A Colorado city: no three-tab; an Illinois village: laminated, with a lifetime
-- warranty; a Kansas city: only what its list names.

cases "permit.grade" {
  under = QUILLBANK, from = "paperwork",
  { "laminated", expect = "pass" },
  { "three-tab", with = { ["covering.grade"] = "three_tab" }, expect = "fail" },
  { "not told", without = { "covering.grade" }, expect = "open" },
  { "slate", with = { ["covering.kind"] = "slate" }, expect = "not_applicable" },
}
cases "permit.warranty" {
  under = QUILLBANK, from = "paperwork",
  { "for life", expect = "pass" },
  { "shorter", with = { ["covering.lifetime_warranty"] = false }, expect = "fail" },
  { "not told", without = { "covering.lifetime_warranty" }, expect = "open" },
}
cases "permit.local_list" {
  under = QUILLBANK, from = "paperwork",
  { "on it", expect = "pass" },
  { "not on it", with = { ["covering.on_local_list"] = false }, expect = "fail" },
  { "not told", without = { "covering.on_local_list" }, expect = "open" },
}

-- Who ----------------------------------------------------------------------------------

cases "permit.holder" {
  under = "model/irc-2021",
  { "the contractor", expect = "pass" },
  { "the owner", with = { ["permit.holder"] = "owner" }, expect = "pass" },
  { "the owner's agent", with = { ["permit.holder"] = "agent" }, expect = "pass" },
  { "someone else", with = { ["permit.holder"] = "other" }, expect = "fail" },
  { "not told", without = { "permit.holder" }, expect = "open" },
  { "an agent in the county", under = QUILLBANK, with = { ["permit.holder"] = "agent" },
    expect = "fail" },
  { "the contractor in the county", under = QUILLBANK, expect = "pass" },
  { "the owner in the county", under = QUILLBANK, with = { ["permit.holder"] = "owner" },
    expect = "pass" },
}

-- A California county: the owner, or one with the roofer's license.
cases "permit.license" {
  under = QUILLBANK, from = "paperwork",
  { "a roofer", expect = "pass" },
  { "a general builder", with = { ["contractor.license"] = "general" }, expect = "fail" },
  { "none", with = { ["contractor.license"] = "none" }, expect = "fail" },
  { "the owner needs none", with = { ["permit.holder"] = "owner", ["contractor.license"] = "none" },
    expect = "not_applicable" },
  { "not told", without = { "contractor.license" }, expect = "open" },
  { "the model code does not ask", under = "model/irc-2021", from = "base",
    expect = "not_applicable" },
}

cases "permit.registration" {
  under = QUILLBANK, from = "paperwork",
  { "registered", expect = "pass" },
  { "not", with = { ["contractor.registered"] = false }, expect = "fail" },
  { "not told", without = { "contractor.registered" }, expect = "open" },
}

cases "permit.owner_lives_there" {
  under = QUILLBANK, from = "paperwork",
  { "lives there", with = { ["permit.holder"] = "owner" }, expect = "pass" },
  { "lets it", with = { ["permit.holder"] = "owner", ["permit.owner_lives_there"] = false },
    expect = "fail" },
  { "not told", with = { ["permit.holder"] = "owner" }, without = { "permit.owner_lives_there" },
    expect = "open" },
  { "a contractor's permit", expect = "not_applicable" },
}

-- A Florida county: signed in person.
cases "permit.owner_statement" {
  under = QUILLBANK, from = "paperwork",
  { "signed at the counter", with = { ["permit.holder"] = "owner" }, expect = "pass" },
  { "sent in", with = { ["permit.holder"] = "owner", ["permit.owner_statement"] = "signed" },
    expect = "fail" },
  { "not told", with = { ["permit.holder"] = "owner" }, without = { "permit.owner_statement" },
    expect = "open" },
}

-- A New York city: a permit open too long can block new ones.
cases "permit.overdue" {
  under = QUILLBANK, from = "paperwork",
  { "none", expect = "pass" },
  { "one", with = { ["contractor.overdue_permits"] = true }, expect = "fail" },
  { "not told", without = { "contractor.overdue_permits" }, expect = "open" },
}

-- A California county: no open violations.
cases "permit.violations" {
  under = QUILLBANK, from = "paperwork",
  { "none", expect = "pass" },
  { "one", with = { ["site.open_violations"] = true }, expect = "fail" },
  { "not told", without = { "site.open_violations" }, expect = "open" },
}

-- An Illinois village ordinance.
cases "permit.right_of_way" {
  under = QUILLBANK, from = "paperwork",
  { "used, with leave", expect = "pass" },
  { "used, without", with = { ["site.right_of_way_permit"] = false }, expect = "fail" },
  { "all on the lot",
    with = { ["site.right_of_way_used"] = false, ["site.right_of_way_permit"] = false },
    expect = "not_applicable" },
  { "not told", without = { "site.right_of_way_used" }, expect = "open" },
}

cases "permit.bin" {
  under = QUILLBANK, from = "paperwork",
  { "with leave", expect = "pass" },
  { "without", with = { ["site.bin_permit"] = false }, expect = "fail" },
  { "no bin", with = { ["site.bin_used"] = false }, expect = "not_applicable" },
  { "leave not told", without = { "site.bin_permit" }, expect = "open" },
}

-- While the work goes on -----------------------------------------------------------------

-- IRC R105.7, recalled: the permit or a copy stays on the site.
cases "permit.posted" {
  under = "model/irc-2021",
  { "posted", expect = "pass" },
  { "not", with = { ["permit.posted"] = false }, expect = "fail" },
  { "not told", without = { "permit.posted" }, expect = "open" },
  { "no permit, no card", with = unpermitted(), expect = "not_applicable" },
  { "posted, in the county", under = QUILLBANK, from = "paperwork", expect = "pass" },
}

-- A village and a city: seen from the street.
cases "permit.visible" {
  under = QUILLBANK, from = "paperwork",
  { "seen", expect = "pass" },
  { "not", with = { ["permit.seen_from_street"] = false }, expect = "fail" },
  { "not told", without = { "permit.seen_from_street" }, expect = "open" },
}

-- IRC R105.5, recalled: 180 days without work.
cases "permit.life" {
  under = "model/irc-2021", stage = "deck",
  { "begun after 20 days", expect = "pass", required = 180, found = 20 },
  { "begun on the last day", with = { ["permit.longest_idle_days"] = 180 }, expect = "pass",
    found = 180 },
  { "begun the day after", with = { ["permit.longest_idle_days"] = 181 }, expect = "fail" },
  { "extended", with = { ["permit.longest_idle_days"] = 300, ["permit.extended"] = true },
    expect = "pass", required = 360 },
  { "extended, and on its last day",
    with = { ["permit.longest_idle_days"] = 360, ["permit.extended"] = true }, expect = "pass" },
  { "extended, and a day too long",
    with = { ["permit.longest_idle_days"] = 361, ["permit.extended"] = true }, expect = "fail" },
  { "not told whether extended", with = { ["permit.longest_idle_days"] = 300 },
    without = { "permit.extended" }, expect = "open" },
  { "waiting time not told", without = { "permit.longest_idle_days" }, expect = "open" },
  { "before the work", stage = "permit", expect = "not_applicable" },
}

cases "permit.life" {
  under = QUILLBANK, from = "paperwork",
  { "on the last day of the county's extension",
    with = { ["permit.longest_idle_days"] = 270, ["permit.extended"] = true }, expect = "pass" },
  { "the county's extension is shorter",
    with = { ["permit.longest_idle_days"] = 271, ["permit.extended"] = true }, expect = "fail",
    required = 270 },
}

-- A Kansas city: 60 days.
cases "permit.open" {
  under = QUILLBANK, from = "paperwork",
  { "40 days", expect = "pass", required = 60, found = 40 },
  { "60 days", with = { ["permit.open_days"] = 60 }, expect = "pass" },
  { "61 days", with = { ["permit.open_days"] = 61 }, expect = "fail" },
  { "not told", without = { "permit.open_days" }, expect = "open" },
}

-- What is left off ----------------------------------------------------------------------
-- A place that asks for no permit as such, and prints no trigger: none bites.

for _, trigger in ipairs { "method", "area", "share", "deck_share", "price", "pitch", "material",
  "structure", "history", "spaced_deck", "weight_rise", "heavy_covering" } do
  cases("permit.by_" .. trigger) {
    under = "example/hollowferry", from = "paperwork",
    { "no such trigger there", with = unpermitted { ["decks[1].work"] = "replaced",
      ["decks[1].kind"] = "spaced_board", ["scope.pitch_change"] = true,
      ["scope.material_change"] = true, ["scope.structure_altered"] = true,
      ["site.historic"] = true, ["covering.weight_lb_per_square"] = 900 },
      expect = "not_applicable" },
  }
end
cases "permit.by_plane_share" {
  under = "example/hollowferry", from = "paperwork",
  { "no such trigger there", with = unpermitted(), expect = "not_applicable", where = "porch" },
}
cases "permit.by_deck" {
  under = "example/hollowferry", from = "paperwork",
  { "no such trigger there", with = unpermitted(), expect = "not_applicable" },
}

-- What the model code does not ask, it does not find fault with.
for id, bad in pairs {
  ["permit.joins"] = { ["scope.joins"] = { "mid_slope" } },
  ["permit.grade"] = { ["covering.grade"] = "three_tab" },
  ["permit.warranty"] = { ["covering.lifetime_warranty"] = false },
  ["permit.local_list"] = { ["covering.on_local_list"] = false },
  ["permit.registration"] = { ["contractor.registered"] = false },
  ["permit.owner_lives_there"] = { ["permit.holder"] = "owner",
    ["permit.owner_lives_there"] = false },
  ["permit.owner_statement"] = { ["permit.holder"] = "owner",
    ["permit.owner_statement"] = "none" },
  ["permit.overdue"] = { ["contractor.overdue_permits"] = true },
  ["permit.violations"] = { ["site.open_violations"] = true },
  ["permit.right_of_way"] = { ["site.right_of_way_permit"] = false },
  ["permit.bin"] = { ["site.bin_permit"] = false },
  ["permit.visible"] = { ["permit.seen_from_street"] = false },
  ["permit.open"] = { ["permit.open_days"] = 900 },
} do
  cases(id) {
    under = "model/irc-2021", from = "paperwork",
    { "not asked for by the model code", with = bad, expect = "not_applicable" },
  }
end
cases "permit.whole_planes" {
  under = "model/irc-2021", from = "paperwork",
  { "not asked for by the model code", with = { ["roof.slopes[2].replaced_percent"] = 50 },
    expect = "not_applicable", where = "main back" },
}

-- One step past a figure, the smallest that prints: what a slip of it would let by.
cases "permit.by_deck" {
  under = QUILLBANK, from = "paperwork",
  { "a tenth of a square foot more than a sheet",
    with = unpermitted { ["decks[1].replaced_sqft"] = 32.1 }, expect = "fail" },
}

-- Years of warranty: a Colorado town's form asks for them. The county's figure is
-- common practice until a page gives one.
cases "permit.warranty_years" {
  under = "example/fernhollow", from = "paperwork", without = { "covering.lifetime_warranty" },
  { "exactly 25", with = { ["covering.warranty_years"] = 25 }, expect = "pass", required = 25,
    found = 25 },
  { "24.99", with = { ["covering.warranty_years"] = 24.99 }, expect = "fail" },
  { "30", with = { ["covering.warranty_years"] = 30 }, expect = "pass" },
  { "for life", with = { ["covering.lifetime_warranty"] = true }, expect = "pass" },
  { "not for life, 20", with = { ["covering.lifetime_warranty"] = false,
    ["covering.warranty_years"] = 20 }, expect = "fail" },
  { "not told", expect = "open" },
  { "wood shakes have none", with = { ["covering.kind"] = "wood_shake",
    ["covering.warranty_years"] = 5 }, expect = "not_applicable" },
  { "it does not count elsewhere", under = QUILLBANK, with = { ["covering.warranty_years"] = 5 },
    expect = "not_applicable" },
}

-- One old layer on the main roof, two on the porch, which is stripped: pounds are added on
-- the main roof, where the new covering lies over the old.
cases "permit.by_weight_added" {
  under = FERNHOLLOW, from = "paperwork",
  with = merged(LAID_OVER, { ["existing.layers"] = 2, ["existing.layers_removed"] = 1,
    ["existing.coverings[1].removed"] = true,
    ["existing.coverings[2]"] = { kind = "asphalt_shingle", thickness_in = 0.25,
      weight_lb_per_square = 240, removed = false },
    ["roof.slopes[1].old_layers"] = 1, ["roof.slopes[2].old_layers"] = 1,
    ["roof.slopes[3].old_layers"] = 2, ["roof.slopes[3].old_layers_removed"] = 2 }),
  { "240 over the 240 of the main roof", expect = "pass", found = 2.4 },
  { "310 over it", with = { ["covering.weight_lb_per_square"] = 310 }, expect = "fail",
    says = "3.1" },
}

-- Boards along 40 ft of eave, 18 in of them: 60 sq ft that are of no other deck.
cases "permit.by_deck" {
  under = QUILLBANK, from = "paperwork",
  { "new boards along an eave", with = unpermitted {
      ["roof.edges"] = { { name = "eave", kind = "eave", slope = "main front", length_ft = 40,
        deck = "eave boards", deck_in = 18 } }, ["decks[1].work"] = "kept",
      ["decks[2]"] = { name = "eave boards", kind = "board", work = "replaced" } },
    without = { "decks[1].replaced_sqft" }, expect = "fail", says = "60" },
}
