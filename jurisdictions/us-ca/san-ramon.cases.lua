-- Cases of San Ramon, beside the state.

local function plane(share)
  return { ["permit.status"] = "none", ["roof.slopes[3].replaced_percent"] = share }
end

cases "permit.by_plane_share" {
  under = "us-ca/san-ramon", from = "paperwork",
  { "exactly a quarter of the porch", with = plane(25), expect = "pass", where = "porch",
    required = 25 },
  { "more than a quarter of it", with = plane(26), expect = "fail", where = "porch" },
  { "every reroof needs one by the state's book", under = "us-ca", with = plane(20),
    expect = "not_applicable", where = "porch" },
}

-- Without a permit, visits go with what calls for one.
cases "inspection.final" {
  under = "us-ca/san-ramon", from = "paperwork",
  { "more than a quarter of one plane", with = plane(26), expect = "pass" },
  { "a quarter of each plane", with = { ["permit.status"] = "none",
    ["roof.slopes[1].replaced_percent"] = 25, ["roof.slopes[2].replaced_percent"] = 25,
    ["roof.slopes[3].replaced_percent"] = 25 }, expect = "not_applicable" },
}

cases "inspection.deputy" {
  under = "us-ca/san-ramon",
  { "not known whether there is one", with = { ["roof.slopes[3].pitch"] = "0.2:12" },
    expect = "open", where = "porch" },
}

cases "inspection.deputy" {
  under = "us-ca/san-ramon", with = { ["inspection.deputy"] = false },
  { "under 1/4 in to the foot", with = { ["roof.slopes[3].pitch"] = "0.2:12" },
    expect = "fail", where = "porch" },
  { "with a deputy", with = { ["roof.slopes[3].pitch"] = "0.2:12",
    ["inspection.deputy"] = true }, expect = "pass", where = "porch" },
  { "exactly 1/4 in", with = { ["roof.slopes[3].pitch"] = "0.25:12" },
    expect = "not_applicable", where = "porch" },
  { "the state leaves it to its places", under = "us-ca", with = { ["roof.slopes[3].pitch"] = "0.2:12" },
    expect = "open", where = "porch" },
}

cases "inspection.mid_roof_moment" {
  under = "us-ca/san-ramon", from = "paperwork",
  { "some courses laid", with = { ["inspection.mid_roof.moment"] = "courses_laid" },
    expect = "pass" },
  { "dried in is another moment", expect = "fail" },
}

-- The wet-season page: 15 October to 15 April, half a square, 3 or 4 places.
local function winter(day, sqft, places, letter)
  return { ["inspection.deck.proof"] = "winter_rule", ["inspection.winter"] = { felted_on = day,
    letter = letter ~= false, covering_sqft = sqft or 50, felt_peeled = places or 3 } }
end

cases "inspection.winter_rule" {
  under = "us-ca/san-ramon", from = "paperwork",
  { "on its first day", with = winter "2026-10-15", expect = "pass" },
  { "the day before", with = winter "2026-10-14", expect = "fail", says = "10-15" },
  { "on its last day", with = winter "2026-04-15", expect = "pass" },
  { "the day after", with = winter "2026-04-16", expect = "fail" },
  { "over the new year", with = winter "2026-01-01", expect = "pass" },
  { "more than half a square laid", with = winter("2026-12-01", 50.1), expect = "fail",
    required = 50 },
  { "felt peeled in two places", with = winter("2026-12-01", 50, 2), expect = "fail",
    required = 3 },
  { "no letter", with = winter("2026-12-01", 50, 3, false), expect = "fail", says = "letter" },
  { "day not known", with = winter "2026-12-01", without = { "inspection.winter.felted_on" },
    expect = "open" },
  { "a visit as in summer", expect = "not_applicable" },
  { "the state leaves it to its places", under = "us-ca", with = winter "2026-12-01",
    expect = "open" },
}

cases "inspection.deck" {
  under = "us-ca/san-ramon", from = "paperwork",
  { "under the winter rule", with = { ["inspection.deck.proof"] = "winter_rule" },
    expect = "pass" },
  { "a visit", expect = "pass" },
  { "an affidavit", with = { ["inspection.deck.proof"] = "affidavit" }, expect = "fail" },
  { "photographs", with = { ["inspection.deck.proof"] = "photos" }, expect = "fail" },
  { "under another city's", under = "us-ca/healdsburg",
    with = { ["inspection.deck.proof"] = "winter_rule" }, expect = "fail" },
}

-- The tear-off page on panels over spaced boards.
local function joints(staggered, on_supports, filled)
  return { ["decks[1].kind"] = "spaced_board", ["decks[1].work"] = "paneled_over",
    ["decks[1].joints_staggered"] = staggered, ["decks[1].joints_on_supports"] = on_supports,
    ["decks[1].joints_filled"] = filled }
end

cases "deck.panel_joints" {
  under = "us-ca/san-ramon",
  { "all three", with = joints(true, true, true), expect = "pass" },
  { "not staggered", with = joints(false, true, true), expect = "fail" },
  { "ends between rafters", with = joints(true, false, true), expect = "fail" },
  { "no fill", with = joints(true, true, false), expect = "fail", says = "solid wood" },
  { "fill not known", with = joints(true, true), expect = "open" },
  { "new panels alone", expect = "not_applicable" },
  { "not asked by the state", under = "us-ca", with = joints(false, false, false),
    expect = "not_applicable" },
}

cases "inspection.deputy" {
  under = "us-ca/san-ramon", with = { ["inspection.deputy"] = false },
  { "0.24:12", with = { ["roof.slopes[3].pitch"] = "0.24:12" }, expect = "fail",
    where = "porch" },
}
