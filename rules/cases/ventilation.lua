-- Cases of ventilation.lua. The base attic of 1,000 sq ft needs 1,000 x 144 / 150 =
-- 960 sq in, or 480 at 1/300; it has 24 ft of ridge vent at 18 and 60 ft of soffit
-- strip at 9 sq in per ft: 432 + 540 = 972. The ratios and the 40 to 50 % band are
-- R806.2 as a city handout and a trade association page give them.

-- The half-size attic of a trade journal's example: 24 x 30 ft, 30 ft of ridge
-- vent at 12 sq in per ft, 44 eave blocks of 4 sq in.
local function journal_vents(blocks)
  return {
    { name = "ridge", kind = "ridge", place = "high", below_ridge_ft = 0, length_ft = 30,
      nfa_sqin_per_ft = 12 },
    { name = "blocks", kind = "eave_block", place = "low", count = blocks, nfa_each_sqin = 4 },
  }
end

-- Gable louvers that bear no label, and a soffit strip.
local function louvers(count, strip_ft)
  return {
    { name = "louvers", kind = "gable", place = "high", below_ridge_ft = 2, count = count,
      gross_each_sqin = 270, cover = "wood_louver_eighth_inch_mesh" },
    { name = "strip", kind = "soffit_strip", place = "low", length_ft = strip_ft,
      nfa_sqin_per_ft = 9 },
  }
end

-- One opening under each cover that the trade table lists, just large enough for
-- the 960 sq in asked for (144 / 150 of 1,000 sq ft), and a trace smaller.
for cover, times in pairs { quarter_inch_cloth = 1, eighth_inch_mesh = 1.25, sixteen_mesh = 2,
  wood_louver_quarter_inch_cloth = 2, wood_louver_eighth_inch_mesh = 2.25,
  wood_louver_sixteen_mesh = 3 } do
  local function opening(sqin)
    return { ["attics[1].vents"] = { { name = "opening", kind = "gable", place = "high",
      below_ridge_ft = 2, count = 1, gross_each_sqin = sqin, cover = cover } } }
  end
  cases "ventilation.net_free_area" {
    under = "model/irc-2021",
    { cover .. ", just enough", with = opening(960 * times), expect = "warn", required = 960,
      found = 960 },
    { cover .. ", a trace too small", with = opening(960 * times - 0.2 * times), expect = "fail",
      required = 960 },
  }
end

cases "ventilation.net_free_area" {
  under = "model/irc-2021",
  with = { as_meant = { { at = "/attics" } } }, -- larger than the base job's roof
  { "the full area", expect = "pass", required = 960, found = 972 },
  { "the full area, exactly", with = { ["attics[1].area_sqft"] = 1012.5 }, expect = "pass",
    required = 972, found = 972 },
  { "two gable louvers without labels: 270 sq in over 2.25 each, by a trade table",
    with = { ["attics[1].vents"] = louvers(2, 80) }, expect = "warn", required = 960, found = 960,
    says = "louvers" },
  { "one louver fewer, and less strip", with = { ["attics[1].vents"] = louvers(1, 38) },
    expect = "fail", required = 960, found = 462 },
  { "a label goes before the opening", with = { ["attics[1].vents"] = { { name = "louvers",
      kind = "gable", place = "high", below_ridge_ft = 2, count = 2, nfa_each_sqin = 480,
      gross_each_sqin = 2000, cover = "quarter_inch_cloth" } } },
    expect = "pass", required = 960, found = 960 },
  { "an opening whose cover is not known", with = { ["attics[1].vents"] = { { name = "louvers",
      kind = "gable", place = "high", below_ridge_ft = 2, count = 2, gross_each_sqin = 2000 } } },
    expect = "open", says = "/attics/0/vents/0/cover" },
  { "the smaller area, split 44 to 56", with = { ["attics[1].area_sqft"] = 1020 },
    expect = "warn", required = 489.6, found = 972 },
  { "the smaller area, exactly", with = { ["attics[1].area_sqft"] = 2025 }, expect = "pass",
    required = 972 },
  { "not even the smaller area", with = { ["attics[1].area_sqft"] = 2026 }, expect = "fail",
    required = 1944.96, found = 972 },
  { "too much of it high: back to the full area", with = { ["attics[1].area_sqft"] = 1500,
    ["attics[1].vents[1].length_ft"] = 40, ["attics[1].vents[2].length_ft"] = 30 },
    expect = "fail", required = 1440, found = 990, says = "split" },
  { "zone 6 with a class III retarder: back to the full area", with = {
    ["attics[1].area_sqft"] = 1500, ["site.climate_zone"] = "6A",
    ["attics[1].vapor_retarder"] = "class_III" }, expect = "fail", required = 1440,
    says = "retarder" },
  { "zone 6 with class II", with = { ["attics[1].area_sqft"] = 1500,
    ["site.climate_zone"] = "6A" }, expect = "warn", required = 720 },
  { "zone 6, retarder not known", with = { ["attics[1].area_sqft"] = 1500,
    ["site.climate_zone"] = "6A" }, without = { "attics[1].vapor_retarder" }, expect = "open" },
  { "zone not known and the smaller area needed", with = { ["attics[1].area_sqft"] = 1500 },
    without = { "site.climate_zone" }, expect = "open" },
  { "zone not known, but the full area is there", without = { "site.climate_zone" },
    expect = "pass" },
  { "not known how high the ridge vent is", with = { ["attics[1].area_sqft"] = 1500 },
    without = { "attics[1].vents[1].below_ridge_ft" }, expect = "open" },
  { "high vents too far down do not count as high", with = { ["attics[1].area_sqft"] = 1500,
    ["attics[1].vents[1].below_ridge_ft"] = 3.5 }, expect = "fail", required = 1440 },
  { "nor are they a hair past 3 ft", with = { ["attics[1].area_sqft"] = 1500,
    ["attics[1].vents[1].below_ridge_ft"] = 3.01 }, expect = "fail", required = 1440 },
  { "a ceiling's area may not be all", with = { ["attics[1].area_basis"] = "ceiling" },
    expect = "warn", says = "Sources disagree" },
  { "basis not said", without = { "attics[1].area_basis" }, expect = "open" },
  { "a label not known", without = { "attics[1].vents[2].nfa_sqin_per_ft" }, expect = "open" },
  { "a length not known", without = { "attics[1].vents[1].length_ft" }, expect = "open" },
  { "no vents", with = { ["attics[1].vents"] = {} }, expect = "fail", found = 0 },
  -- A trade journal's example needs 346 sq in at 1/300; by the later band its
  -- 360 sq in of ridge is too large a share.
  { "journal attic, every block vented", with = { ["attics[1].area_sqft"] = 720,
    ["attics[1].vents"] = journal_vents(44) }, expect = "fail", required = 691.2, found = 536 },
  { "journal attic with as much low as high", with = { ["attics[1].area_sqft"] = 720,
    ["attics[1].vents"] = journal_vents(90) }, expect = "pass", required = 691.2, found = 720 },
  { "a fan has no area", with = { ["attics[1].vents[2].kind"] = "powered" }, expect = "fail",
    found = 432 },
  { "unvented attics must be confirmed", with = { ["attics[1].vented"] = false },
    expect = "open", says = "confirm" },
  { "vented or not is not known", without = { "attics[1].vented", "attics[1].vents" },
    expect = "open" },
  { "with vents it is vented", without = { "attics[1].vented" }, expect = "pass", found = 972 },
}

cases "ventilation.high_share" {
  under = "model/irc-2021",
  with = { as_meant = { { at = "/attics" } } }, -- larger than the base job's roof
  { "44 % of the vents, more of the area needed", with = { ["attics[1].area_sqft"] = 1500 },
    expect = "warn", found = 432 / 972 * 100, says = "reads it" },
  { "40 % of the area needed, exactly", with = { ["attics[1].area_sqft"] = 2000,
    ["attics[1].vents[1].length_ft"] = 21.3334, ["attics[1].vents[2].length_ft"] = 64 },
    expect = "pass" },
  { "50 % of the vents, exactly", with = { ["attics[1].area_sqft"] = 1500,
    ["attics[1].vents[1].length_ft"] = 30 }, expect = "warn", found = 50 },
  { "51 %", with = { ["attics[1].area_sqft"] = 1500, ["attics[1].vents[1].length_ft"] = 31.2 },
    expect = "fail", required = 50 },
  { "39 % either way", with = { ["attics[1].area_sqft"] = 1875,
    ["attics[1].vents[1].length_ft"] = 19.5, ["attics[1].vents[2].length_ft"] = 61 },
    expect = "fail", required = 40, found = 39 },
  -- 60 % of the area needed in upper vents is outside the band since 2012.
  { "60 % of the area needed and of the vents", with = { ["attics[1].area_sqft"] = 1875,
    ["attics[1].vents[1].length_ft"] = 30, ["attics[1].vents[2].length_ft"] = 40 },
    expect = "fail", required = 50, found = 60 },
  { "not known how high", with = { ["attics[1].area_sqft"] = 1500 },
    without = { "attics[1].vents[1].below_ridge_ft" }, expect = "open" },
  { "the full area is there", expect = "not_applicable" },
}

cases "ventilation.retarder" {
  under = "model/irc-2021",
  with = { as_meant = { { at = "/attics" } } }, -- larger than the base job's roof
  { "class II in zone 6", with = { ["attics[1].area_sqft"] = 1500, ["site.climate_zone"] = "6A" },
    expect = "pass" },
  { "class III in zone 7", with = { ["attics[1].area_sqft"] = 1500, ["site.climate_zone"] = "7",
    ["attics[1].vapor_retarder"] = "class_III" }, expect = "fail" },
  { "zone 5 is not asked", with = { ["attics[1].area_sqft"] = 1500,
    ["site.climate_zone"] = "5A", ["attics[1].vapor_retarder"] = "none" },
    expect = "not_applicable" },
  { "not known", with = { ["attics[1].area_sqft"] = 1500, ["site.climate_zone"] = "8" },
    without = { "attics[1].vapor_retarder" }, expect = "open" },
  { "the full area is there", with = { ["site.climate_zone"] = "8" }, expect = "not_applicable" },
}

cases "ventilation.upper_band" {
  under = "model/irc-2021",
  with = { as_meant = { { at = "/attics" } } }, -- larger than the base job's roof
  { "at the ridge", with = { ["attics[1].area_sqft"] = 1500 }, where = "attic, ridge vent",
    expect = "pass", required = 3, found = 0 },
  { "3 ft down, exactly", with = { ["attics[1].area_sqft"] = 1500,
    ["attics[1].vents[1].below_ridge_ft"] = 3 }, where = "attic, ridge vent", expect = "pass" },
  { "3.1 ft down", with = { ["attics[1].area_sqft"] = 1500,
    ["attics[1].vents[1].below_ridge_ft"] = 3.1 }, where = "attic, ridge vent", expect = "fail",
    found = 3.1 },
  { "not known", with = { ["attics[1].area_sqft"] = 1500 },
    without = { "attics[1].vents[1].below_ridge_ft" },
    where = "attic, ridge vent", expect = "open" },
  { "low vents need not be", with = { ["attics[1].area_sqft"] = 1500 },
    where = "attic, soffit strip",
    expect = "not_applicable" },
  { "the full area is there", where = "attic, ridge vent", expect = "not_applicable" },
}

cases "ventilation.opening" {
  under = "model/irc-2021",
  { "an eighth", where = "attic, ridge vent", expect = "pass", found = 0.125 },
  { "a sixteenth, exactly", with = { ["attics[1].vents[1].opening_in"] = 0.0625 },
    where = "attic, ridge vent", expect = "pass" },
  { "finer", with = { ["attics[1].vents[1].opening_in"] = 0.05 }, where = "attic, ridge vent",
    expect = "fail", found = 0.05 },
  { "not known", without = { "attics[1].vents[1].opening_in" }, where = "attic, ridge vent",
    expect = "open" },
  { "unvented attics are not judged", with = { ["attics[1].vented"] = false },
    where = "attic, ridge vent", expect = "not_applicable" },
}

cases "ventilation.screen" {
  under = "model/irc-2021",
  { "a quarter, exactly, needs none", with = { ["attics[1].vents[1].opening_in"] = 0.25,
    ["attics[1].vents[1].screened"] = false },
    where = "attic, ridge vent", expect = "not_applicable" },
  { "2 in behind 1/8 in mesh", with = { ["attics[1].vents[2].opening_in"] = 2 },
    where = "attic, soffit strip", expect = "pass", found = 0.125 },
  { "mesh of 1/4 in, exactly", with = { ["attics[1].vents[2].opening_in"] = 2,
    ["attics[1].vents[2].screen_opening_in"] = 0.25 },
    where = "attic, soffit strip", expect = "pass" },
  { "mesh of 1/2 in", with = { ["attics[1].vents[2].opening_in"] = 2,
    ["attics[1].vents[2].screen_opening_in"] = 0.5 },
    where = "attic, soffit strip", expect = "fail",
    required = 0.25, found = 0.5 },
  { "mesh too fine", with = { ["attics[1].vents[2].opening_in"] = 2,
    ["attics[1].vents[2].screen_opening_in"] = 0.03 },
    where = "attic, soffit strip", expect = "fail",
    required = 0.0625 },
  { "no screen", with = { ["attics[1].vents[2].opening_in"] = 2,
    ["attics[1].vents[2].screened"] = false }, where = "attic, soffit strip", expect = "fail",
    found = 2, says = "no screen" },
  { "screened or not is not known", with = { ["attics[1].vents[2].opening_in"] = 2 },
    without = { "attics[1].vents[2].screened" }, where = "attic, soffit strip", expect = "open" },
  { "mesh not known", with = { ["attics[1].vents[2].opening_in"] = 2 },
    without = { "attics[1].vents[2].screen_opening_in" }, where = "attic, soffit strip",
    expect = "open" },
}

cases "ventilation.opens_outdoors" {
  under = "model/irc-2021",
  { "outdoors", where = "attic, ridge vent", expect = "pass" },
  { "into another space", with = { ["attics[1].vents[2].opens_outdoors"] = false },
    where = "attic, soffit strip", expect = "fail" },
  { "not known", without = { "attics[1].vents[2].opens_outdoors" }, where = "attic, soffit strip",
    expect = "open" },
}

cases "ventilation.airspace" {
  under = "model/irc-2021",
  { "1 in, exactly", expect = "pass", required = 1, found = 1 },
  { "3/4 in", with = { ["attics[1].airspace_in"] = 0.75 }, expect = "fail", found = 0.75 },
  { "not known", without = { "attics[1].airspace_in" }, expect = "open" },
}

cases "ventilation.fans_outdoors" {
  under = "model/irc-2021",
  { "outdoors", expect = "pass" },
  { "into the soffit", with = { ["attics[1].fans_end_outdoors"] = false }, expect = "fail" },
  { "an unvented attic too", with = { ["attics[1].vented"] = false,
    ["attics[1].fans_end_outdoors"] = false }, expect = "fail" },
  { "not known", without = { "attics[1].fans_end_outdoors" }, expect = "open" },
}

cases "ventilation.exhaust_kinds" {
  under = "model/irc-2021",
  { "one kind", expect = "pass", required = 1, found = 1 },
  { "ridge and gable vents short-circuit", with = { ["attics[1].vents[2].kind"] = "gable",
    ["attics[1].vents[2].place"] = "high" }, expect = "warn", required = 1, found = 2 },
  { "place not known", with = { ["attics[1].vents[2].kind"] = "gable" },
    without = { "attics[1].vents[2].place" }, expect = "open" },
  { "a soffit strip is low", without = { "attics[1].vents[2].place" }, expect = "pass", found = 1 },
}

cases "ventilation.intake" {
  under = "model/irc-2021",
  { "more low than high", expect = "pass", required = 432, found = 540 },
  { "as much, exactly", with = { ["attics[1].vents[2].length_ft"] = 48 }, expect = "pass",
    found = 432 },
  { "less", with = { ["attics[1].vents[2].length_ft"] = 40 }, expect = "warn", required = 432,
    found = 360 },
  { "place not known", with = { ["attics[1].vents[1].kind"] = "gable" },
    without = { "attics[1].vents[1].place" }, expect = "open" },
  { "a ridge vent is high", without = { "attics[1].vents[1].place" }, expect = "pass",
    found = 540 },
}


-- As the 2012 edition is read: either condition allows the smaller area.
cases "ventilation.net_free_area" {
  under = "example/gullhaven",
  with = { ["attics[1].area_sqft"] = 1500,
    as_meant = { { at = "/attics" } } }, -- larger than the base job's roof
  { "zone 6, no retarder, 44 % high", with = { ["site.climate_zone"] = "6A",
    ["attics[1].vapor_retarder"] = "none" }, expect = "warn", required = 720 },
  { "zone 6, class I, all of it low", with = { ["site.climate_zone"] = "6A",
    ["attics[1].vapor_retarder"] = "class_I", ["attics[1].vents[1].place"] = "low" },
    expect = "pass", required = 720 },
  { "zone 4, class I, all of it low: no help", with = {
    ["attics[1].vapor_retarder"] = "class_I", ["attics[1].vents[1].place"] = "low" },
    expect = "fail", required = 1440 },
}

-- One step past a figure, the smallest that prints: what a slip of it would let by.
cases "ventilation.airspace" {
  under = "model/irc-2021",
  { "0.999 in", with = { ["attics[1].airspace_in"] = 0.999 }, expect = "fail", required = 1 },
}
cases "ventilation.opening" {
  under = "model/irc-2021",
  { "0.061 in", with = { ["attics[1].vents[1].opening_in"] = 0.061 },
    where = "attic, ridge vent", expect = "fail", required = 0.0625 },
}
cases "ventilation.screen" {
  under = "model/irc-2021",
  { "0.251 in needs one", with = { ["attics[1].vents[1].opening_in"] = 0.251,
    ["attics[1].vents[1].screened"] = false }, where = "attic, ridge vent", expect = "fail",
    required = 0.25 },
}
cases "ventilation.upper_band" {
  under = "model/irc-2021",
  with = { as_meant = { { at = "/attics" } } }, -- larger than the base job's roof
  { "3.01 ft down", with = { ["attics[1].area_sqft"] = 1500,
    ["attics[1].vents[1].below_ridge_ft"] = 3.01 }, where = "attic, ridge vent",
    expect = "fail", required = 3 },
}
-- 1,014 sq ft at 1/150 ask for 973.4 sq in, where 972 are given; at 1/200 1,351 ask
-- for 972.7. A poor retarder in zone 6 keeps the smaller area away.
local COLD = { ["site.climate_zone"] = "6B", ["attics[1].vapor_retarder"] = "class_III" }
local function cold(area)
  return { ["attics[1].area_sqft"] = area, ["site.climate_zone"] = COLD["site.climate_zone"],
    ["attics[1].vapor_retarder"] = COLD["attics[1].vapor_retarder"] }
end
cases "ventilation.net_free_area" {
  under = "model/irc-2021",
  { "a little short of 1/150", with = cold(1014), expect = "fail", required = 973.4,
    says = "retarder" },
  { "a little short of 1/200, in Kettlebend", under = "example/kettlebend", with = cold(1351),
    expect = "fail", required = 972.7, says = "retarder" },
}
-- Low vents of 540 sq in in an attic of 1,500 sq ft, which needs 720 in all at 1/300.
-- 30.12 ft x 18 = 542.2: 50.1 percent; 29.88 ft: 537.8, 49.9 percent.
local function ridge(feet, area, strip)
  return { ["attics[1].area_sqft"] = area or 1500, ["attics[1].vents[1].length_ft"] = feet,
    ["attics[1].vents[2].length_ft"] = strip or 60 }
end
cases "ventilation.high_share" {
  under = "model/irc-2021",
  with = { as_meant = { { at = "/attics" } } }, -- larger than the base job's roof
  { "50.1 percent", with = ridge(30.12), expect = "fail", required = 50, found = 50.1 },
  -- 19.95 x 18 = 359.1 of 900 given, and of 900 needed.
  { "39.9 percent either way", with = ridge(19.95, 1875, 60.1), expect = "fail",
    required = 40, found = 39.9 },
}
cases "ventilation.high_share" {
  under = "us-mn/rosemount",
  with = { as_meant = { { at = "/attics" } } }, -- larger than the base job's roof
  { "half, exactly", with = ridge(30), expect = "warn", found = 50 },
  { "49.9 percent", with = ridge(29.88), expect = "fail", required = 50, found = 49.9 },
}
-- 432 sq in high: 47.95 ft of strip give 431.6, which is 99.9 percent.
cases "ventilation.intake" {
  under = "model/irc-2021",
  { "99.9 percent", with = { ["attics[1].vents[2].length_ft"] = 47.95 }, expect = "warn",
    required = 432, found = 431.55 },
}

-- What cannot be.
cases "ventilation.net_free_area" {
  under = "model/irc-2021",
  { "a ridge vent without a ridge", with = { ["roof.ridge_ft"] = 0 }, expect = "refused",
    says = "a ridge vent on a roof that has no ridge" },
  { "more ridge vent than ridge", with = { ["attics[1].vents[1].length_ft"] = 41 },
    expect = "refused", says = "41 ft of ridge vent on 40 ft of ridge" },
  { "a list that names no attic", with = { attics = {} }, expect = "refused",
    says = "has 0 items" },
}

-- Laid over, a roof keeps the vents it has: IRC R908.1 holds the work to chapter 9,
-- and attic vents stand in chapter 8; what is lawfully there may stay (R102.7). Kettlebend
-- asks for them all the same.
local function laid_over(left, changes)
  local with = { ["scope.method"] = "overlay", ["existing.layers_removed"] = 0,
    ["existing.coverings[1].removed"] = false, ["attics[1].vents[1].left_as_is"] = left[1],
    ["attics[1].vents[2].left_as_is"] = left[2] }
  for place, value in pairs(changes or {}) do with[place] = value end
  return with
end
local BAD = { ["attics[1].area_sqft"] = 1400, ["attics[1].vents[1].length_ft"] = 5,
  ["attics[1].airspace_in"] = 0.5, ["attics[1].fans_end_outdoors"] = false,
  ["attics[1].vents[2].opening_in"] = 2, ["attics[1].vents[2].screened"] = false,
  ["attics[1].vents[2].opens_outdoors"] = false }
for _, rule in ipairs { "net_free_area", "airspace", "fans_outdoors", "intake", "exhaust_kinds" } do
  cases("ventilation." .. rule) {
    under = "model/irc-2021",
    { "an overlay that leaves the vents", with = laid_over({ true, true }, BAD),
      expect = "not_applicable", where = "attic" },
    { "an overlay, vents left or not is not known", with = laid_over({ true }, BAD),
      expect = "open", where = "attic", says = "left_as_is" },
  }
end
for _, rule in ipairs { "net_free_area", "airspace", "fans_outdoors" } do
  cases("ventilation." .. rule) {
    under = "model/irc-2021",
    { "an overlay with one new vent", with = laid_over({ true, false }, BAD), expect = "fail",
      where = "attic" },
    { "an overlay where the county asks for the vents too", under = "example/kettlebend",
      with = laid_over({ true, true }, BAD), expect = "fail", where = "attic" },
    { "a tear-off", with = BAD, expect = "fail", where = "attic" },
  }
end
for _, rule in ipairs { "screen", "opens_outdoors" } do
  cases("ventilation." .. rule) {
    under = "model/irc-2021",
    { "an old vent beside a new one", with = laid_over({ false, true }, BAD),
      expect = "not_applicable", where = "attic, soffit strip" },
    { "a new vent beside an old one", with = laid_over({ true, false }, BAD), expect = "fail",
      where = "attic, soffit strip" },
  }
end

-- The zone is missing, and the place has none of its own: the mend asks for no such zone.
cases "ventilation.net_free_area" {
  under = "model/irc-2021",
  { "short, and the zone not known", with = { ["attics[1].vents[1].length_ft"] = 1,
    ["attics[1].vents[2].length_ft"] = 1 }, without = { "site.climate_zone" }, expect = "fail",
    where = "attic" },
}

-- 1,500 sq ft / 300 is 720 sq in; of the base job's vents 432 sq in are high and 540 low.
cases "ventilation.high_share" {
  under = "model/irc-2021", with = { as_meant = { { at = "/attics" } },
    ["attics[1].area_sqft"] = 1500 },
  { "none near enough to the ridge", with = { ["attics[1].vents[1].below_ridge_ft"] = 6 },
    expect = "fail", found = 540, required = 720, says = "do not count" },
}
-- Where either condition will do.
cases "ventilation.retarder" {
  under = "model/irc-2012", with = { as_meant = { { at = "/attics" } },
    ["attics[1].area_sqft"] = 1500, ["site.climate_zone"] = "6A" },
  { "the split does", with = { ["attics[1].vapor_retarder"] = "none",
    ["attics[1].vents[1].length_ft"] = 20 }, expect = "not_applicable" },
}
cases "ventilation.net_free_area" {
  under = "model/irc-2012", with = { as_meant = { { at = "/attics" } },
    ["attics[1].area_sqft"] = 1500, ["site.climate_zone"] = "6A" },
  { "short of the smaller area, which the retarder alone allows",
    with = { ["attics[1].vents[1].length_ft"] = 10, ["attics[1].vents[2].length_ft"] = 40 },
    expect = "fail", found = 540, required = 1440 },
}
