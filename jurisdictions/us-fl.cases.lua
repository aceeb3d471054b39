-- Cases of Florida: what differs from the model code, and between the 7th
-- edition (2020-12-31) and the 8th (2023-12-31). The sources stand with the
-- figures in us-fl.lua. No met figure passes clean: all are weak or disputed.

local EIGHTH, SEVENTH = "2023-12-31", "2023-12-30"

-- The dates.
cases "drip_edge.lap" {
  under = "us-fl",
  { "on the first day of the 7th edition", date = "2020-12-31", expect = "fail", required = 3,
    found = 2 },
  { "the day before, no edition is carried", date = "2020-12-30", expect = "refused",
    says = "from 2020-12-31" },
  { "the 9th is not carried", date = "2026-12-31", expect = "refused",
    says = "to 2026-12-31" },
}

-- In December 2026 the 9th may have begun.
cases "fasteners.kind" {
  under = "us-fl",
  { "nails on the last day of November", date = "2026-11-30", expect = "pass",
    says = "IRC 2021 was read second-hand" },
  { "nails on the first of December", date = "2026-12-01", expect = "pass",
    says = "the 9th is planned for this month" },
}

cases "drip_edge.lap" {
  under = "us-fl", date = EIGHTH,
  { "2 in, which the model code takes", expect = "fail", required = 3, found = 2 },
  { "3 in, exactly", with = { ["drip_edge.lap_in"] = 3 }, expect = "warn", required = 3 },
  { "not known", without = { "drip_edge.lap_in" }, expect = "open" },
}

cases "drip_edge.down" {
  under = "us-fl", date = EIGHTH,
  { "1/4 in, which the model code takes", expect = "fail", required = 0.5, found = 0.25 },
  { "1/2 in, exactly", with = { ["drip_edge.down_in"] = 0.5 }, expect = "warn",
    required = 0.5 },
}

-- 110 mph on the old scale is 142 on the new: 142 x 0.7746 = 110.0.
cases "drip_edge.fastener_spacing" {
  under = "us-fl", date = EIGHTH,
  { "12 in at 115 mph on a low house", expect = "warn", required = 12 },
  { "at 142 mph, exactly", with = { ["site.wind_vult_mph"] = 142 }, expect = "fail",
    required = 4, found = 12 },
  { "at 141 mph", with = { ["site.wind_vult_mph"] = 141 }, expect = "warn", required = 12 },
  { "over 33 ft high", with = { ["house.mean_roof_height_ft"] = 34 }, expect = "fail",
    required = 4 },
  { "33 ft high, exactly", with = { ["house.mean_roof_height_ft"] = 33 }, expect = "warn",
    required = 12 },
  { "4 in at 160 mph", with = { ["site.wind_vult_mph"] = 160,
    ["drip_edge.fastener_spacing_in"] = 4 }, expect = "warn", required = 4 },
  { "height not known", without = { "house.mean_roof_height_ft" }, expect = "open" },
}

cases "drip_edge.order_eave" {
  under = "us-fl", date = EIGHTH,
  { "underlayment over the metal", expect = "warn", where = "front eave" },
  { "metal over it, flange sealed", with = {
    ["roof.edges[1].underlayment_lies"] = "under_metal", ["roof.edges[1].flange_sealed"] = true },
    expect = "warn", where = "front eave" },
  { "metal over it, flange open", with = {
    ["roof.edges[1].underlayment_lies"] = "under_metal" }, expect = "fail",
    where = "front eave" },
  { "the model code does not take the sealed flange", under = "model/irc-2021", with = {
    ["roof.edges[1].underlayment_lies"] = "under_metal", ["roof.edges[1].flange_sealed"] = true },
    expect = "fail", where = "front eave" },
}

cases "drip_edge.order_rake" {
  under = "us-fl", date = EIGHTH,
  { "as the model code has it", expect = "warn", where = "front left rake",
    says = "not read on rakes" },
}

-- The sealed deck, and the tape's width by edition.
local function taped(width, kind)
  return { ["underlayments[1].kind"] = kind or "D226_II",
    ["underlayments[1].deck_joints_taped"] = true, ["underlayments[1].tape_width_in"] = width }
end

cases "underlayment.sealed_deck" {
  under = "us-fl", date = SEVENTH,
  { "3-3/4 in tape on the last day of the 7th", with = taped(3.75), expect = "fail",
    where = "main front", required = 4, found = 3.75 },
  { "4 in tape, exactly", with = taped(4), expect = "warn", where = "main front" },
}

cases "underlayment.sealed_deck" {
  under = "us-fl", date = EIGHTH,
  { "3-3/4 in tape on the first day of the 8th", with = taped(3.75), expect = "warn",
    where = "main front" },
  { "3-1/2 in tape", with = taped(3.5), expect = "fail", where = "main front",
    required = 3.75, found = 3.5 },
  { "the light felt over tape", with = taped(4, "D226_I"), expect = "fail",
    where = "main front", found = "D226_I" },
  { "a synthetic over tape", with = taped(4, "D8257"), expect = "warn", where = "main front" },
  { "one ply and no tape", expect = "fail", where = "main front", says = "not taped" },
  { "self-adhered all over", with = { ["underlayments[1].kind"] = "D1970" }, expect = "warn",
    where = "main front" },
  { "two plies half-lapped", with = { ["underlayments[1].kind"] = "D226_II",
    ["underlayments[1].plies"] = 2, ["underlayments[1].head_lap_in"] = 19 }, expect = "warn",
    where = "main front" },
  { "not known whether taped", without = { "underlayments[1].deck_joints_taped" },
    expect = "open", where = "main front" },
  { "not asked for by the model code", under = "model/irc-2021", expect = "not_applicable",
    where = "main front" },
}

cases "underlayment.kind" {
  under = "us-fl",
  { "the light felt no longer counts", date = EIGHTH, expect = "fail", where = "main front" },
  { "the heavy one", date = EIGHTH, with = { ["underlayments[1].kind"] = "D4869_III" },
    expect = "warn", where = "main front" },
  { "a synthetic by its standard alone, on the last day of the 7th", date = SEVENTH,
    with = { ["underlayments[1].kind"] = "D8257" }, expect = "fail", where = "main front" },
  { "and on the first day of the 8th", date = EIGHTH,
    with = { ["underlayments[1].kind"] = "D8257" }, expect = "warn", where = "main front" },
}

cases "underlayment.end_lap" {
  under = "us-fl", date = EIGHTH,
  { "4 in, which the model code takes", expect = "fail", where = "main front", required = 6,
    found = 4 },
  { "6 in, exactly", with = { ["underlayments[1].end_lap_in"] = 6 }, expect = "warn",
    where = "main front", required = 6 },
}

cases "underlayment.head_lap" {
  under = "us-fl", date = EIGHTH,
  { "2 in, which the model code takes", expect = "fail", where = "main front", required = 4 },
  { "4 in, exactly", with = { ["underlayments[1].head_lap_in"] = 4 }, expect = "warn",
    where = "main front", required = 4 },
}

cases "underlayment.fasteners" {
  under = "us-fl", date = EIGHTH,
  { "cap nails, at any wind speed", expect = "warn", where = "main front" },
  { "cap staples", with = { ["underlayments[1].fastener"] = "cap_staple" }, expect = "fail",
    where = "main front" },
  { "not asked for by the model code in so little wind", under = "model/irc-2021",
    expect = "not_applicable", where = "main front" },
}

cases "underlayment.lap_spacing" {
  under = "us-fl", date = EIGHTH,
  { "6 in, exactly", expect = "pass", where = "main front", required = 6 },
  { "8 in", with = { ["underlayments[1].lap_spacing_in"] = 8 }, expect = "fail",
    where = "main front", required = 6, found = 8 },
}

cases "underlayment.field_spacing" {
  under = "us-fl", date = EIGHTH,
  { "12 in, exactly", expect = "pass", where = "main front", required = 12 },
  { "14 in", with = { ["underlayments[1].field_spacing_in"] = 14 }, expect = "fail",
    where = "main front", required = 12 },
}

-- Nailing a kept deck again: houses from before 1 March 2002. A job says only the
-- year, so all of 2002 counts as before.
local function kept(year, renailed)
  return { ["decks[1].work"] = "kept", ["decks[1].renailed"] = renailed,
    ["house.year_built"] = year }
end

cases "deck.renailed" {
  under = "us-fl", date = EIGHTH,
  { "a house of 1994, planned", with = kept(1994, true), expect = "pass" },
  { "a house of 1994, not planned", with = kept(1994, false), expect = "fail" },
  { "a house of 2002, not planned", with = kept(2002, false), expect = "fail",
    says = "1 March 2002" },
  { "a house of 2003", with = kept(2003, false), expect = "not_applicable" },
  { "year not known", with = { ["decks[1].work"] = "kept" }, without = { "house.year_built" },
    expect = "open" },
  { "a two-family house", with = { ["house.kind"] = "two_family", ["decks[1].work"] = "kept",
    ["decks[1].renailed"] = false }, expect = "not_applicable" },
  { "an overlay strips nothing", with = { ["scope.method"] = "overlay",
    ["existing.layers_removed"] = 0, ["existing.coverings[1].removed"] = false,
    ["decks[1].work"] = "kept", ["decks[1].renailed"] = false }, expect = "not_applicable" },
  { "not asked for by the model code", under = "model/irc-2021", with = kept(1994, false),
    expect = "not_applicable" },
}

cases "deck.nail_field" {
  under = "us-fl", date = SEVENTH,
  { "6 in everywhere, exactly", expect = "warn", required = 6, says = "R803.2.3.1" },
  { "12 in, which the model code of that day takes",
    with = { ["decks[1].nails.field_spacing_in"] = 12 }, expect = "fail", required = 6,
    found = 12 },
}

cases "deck.nail_gable" {
  under = "us-fl", date = EIGHTH,
  { "4 in, exactly", expect = "warn", required = 4 },
  { "6 in, which the model code takes", with = { ["decks[1].nails.gable_spacing_in"] = 6 },
    expect = "fail", required = 4 },
}

cases "deck.nail_kind" {
  under = "us-fl", date = EIGHTH,
  { "ring shank, thin panel", with = { ["decks[1].nails.kind"] = "RSRS_01" }, expect = "warn" },
  { "smooth shank", expect = "fail", found = "common_8d" },
  { "thicker than 15/32 wants a bigger nail", with = { ["decks[1].nails.kind"] = "RSRS_01",
    ["decks[1].thickness_in"] = 0.59375 }, expect = "fail" },
  { "the bigger nail", with = { ["decks[1].nails.kind"] = "RSRS_03",
    ["decks[1].thickness_in"] = 0.59375 }, expect = "warn" },
}

-- Six nails in the high-velocity zone.
cases "fasteners.count" {
  under = "us-fl", date = EIGHTH,
  { "four outside the zone", expect = "warn", required = 4 },
  { "four inside it", with = { ["site.high_velocity_hurricane_zone"] = true },
    expect = "fail", required = 6, found = 4 },
  { "six inside it", with = { ["site.high_velocity_hurricane_zone"] = true,
    ["fasteners.per_shingle"] = 6 }, expect = "warn", required = 6 },
  { "not known whether inside", without = { "site.high_velocity_hurricane_zone" },
    expect = "open" },
  { "the model code knows no such zone", under = "model/irc-2018",
    with = { ["site.high_velocity_hurricane_zone"] = true }, expect = "pass", required = 4 },
}

-- The 25 percent rule (its rule of 2017 as quoted), and the relief of 2022 for
-- roofs built to the code of 2007 or later (SB 4-D).
local QUARTER = { ["scope.roof_share_percent"] = 26, ["scope.earlier_roofing"] = {},
  ["scope.rest_to_code"] = false, ["scope.rest_under_relief"] = false }
local function relieved(day)
  return { ["scope.rest_under_relief"] = true, ["scope.old_roof_permitted_on"] = day }
end
cases "permit.share_trigger" {
  under = "us-fl", date = EIGHTH, with = QUARTER,
  { "26 percent of an older roof", expect = "fail" },
  { "25, exactly", with = { ["scope.roof_share_percent"] = 25 }, expect = "warn",
    required = 25 },
  { "26 with the rest brought along", with = { ["scope.rest_to_code"] = true },
    expect = "warn" },
  { "12 after 14 in the same year", with = { ["scope.roof_share_percent"] = 12,
    ["scope.earlier_roofing"] = { { done_on = "2023-06-01", roof_share_percent = 14 } } },
    expect = "fail" },
  { "the rest built to the code of 2007", with = relieved "2009-03-01",
    expect = "not_applicable" },
  { "permitted the day before that code", with = relieved "2009-02-28", expect = "fail" },
  { "said to be, but not when", with = { ["scope.rest_under_relief"] = true },
    expect = "open", says = "/scope/old_roof_permitted_on" },
  { "the same before the relief", date = "2022-05-31", with = relieved "2009-03-01",
    expect = "fail" },
  { "on its first day carried", date = "2022-06-01", with = relieved "2009-03-01",
    expect = "not_applicable" },
  { "and permitted too early", date = "2022-06-01", with = relieved "2009-02-28",
    expect = "fail" },
  { "not known under which code", without = { "scope.rest_under_relief" }, expect = "open" },
}

-- The notice of commencement: over 2,500 on counties' forms, 5,000 as recalled.
cases "papers.commencement" {
  under = "us-fl", date = EIGHTH, with = { ["papers.commencement_recorded"] = false },
  { "2,500, exactly", with = { ["scope.price_usd"] = 2500 }, expect = "not_applicable" },
  { "a dollar more", with = { ["scope.price_usd"] = 2501 }, expect = "fail", says = "5,000" },
  { "recorded", with = { ["scope.price_usd"] = 18000, ["papers.commencement_recorded"] = true },
    expect = "pass" },
  { "price not known", expect = "open" },
}
cases "papers.commencement_posted" {
  under = "us-fl", date = EIGHTH, with = { ["scope.price_usd"] = 18000 },
  { "posted", with = { ["papers.commencement_posted"] = true }, expect = "pass" },
  { "not posted", with = { ["papers.commencement_posted"] = false }, expect = "fail" },
}

cases "papers.product_approval" {
  under = "us-fl", date = EIGHTH,
  { "one sheet, exactly", with = { ["papers.approval_sheets"] = 1 }, expect = "warn",
    says = "wants 2" },
  { "none", with = { ["papers.approval_sheets"] = 0 }, expect = "fail" },
  { "not known", expect = "open" },
}
cases "papers.approval_numbers" {
  under = "us-fl", date = EIGHTH,
  { "not given", with = { ["papers.approval_numbers"] = false }, expect = "fail" },
  { "given", with = { ["papers.approval_numbers"] = true }, expect = "pass" },
}

cases "papers.affidavit" {
  under = "us-fl", date = EIGHTH,
  { "a house of 1994, signed for the nailing", with = {
    ["papers.affidavit.covers"] = { "deck_nailing" } }, expect = "warn", says = "notary" },
  { "none", with = { ["papers.affidavit.covers"] = { "none" } }, expect = "fail" },
  { "a house of 2002", with = { ["house.year_built"] = 2002,
    ["papers.affidavit.covers"] = { "none" } }, expect = "fail", says = "1 March 2002" },
  { "a house of 2003", with = { ["house.year_built"] = 2003 }, expect = "not_applicable" },
}

cases "inspection.dry_in" {
  under = "us-fl", date = EIGHTH,
  { "a visit", with = { ["inspection.dry_in.proof"] = "visit" }, expect = "warn" },
  { "photographs", with = { ["inspection.dry_in.proof"] = "photos" }, expect = "warn",
    says = "not every county" },
  { "nothing", with = { ["inspection.dry_in.proof"] = "none" }, expect = "fail" },
}

-- Roof-to-wall ties, 706.8 as quoted.
local TIES = { ["site.wind_borne_debris"] = true, ["house.insured_value_usd"] = 300000,
  ["papers.wall_ties"] = "improved" }
cases "papers.wall_ties" {
  under = "us-fl", date = EIGHTH, with = TIES,
  { "300,000, exactly, and improved", expect = "warn" },
  { "nothing done", with = { ["papers.wall_ties"] = "none" }, expect = "fail" },
  { "a dollar less", with = { ["house.insured_value_usd"] = 299999,
    ["papers.wall_ties"] = "none" }, expect = "not_applicable" },
  { "outside the debris region", with = { ["site.wind_borne_debris"] = false,
    ["papers.wall_ties"] = "none" }, expect = "not_applicable" },
  { "built in 2002", with = { ["house.year_built"] = 2002, ["papers.wall_ties"] = "none" },
    expect = "fail", says = "1 March 2002" },
  { "built in 2003", with = { ["house.year_built"] = 2003, ["papers.wall_ties"] = "none" },
    expect = "not_applicable" },
  { "two families", with = { ["house.kind"] = "two_family", ["papers.wall_ties"] = "none" },
    expect = "not_applicable" },
  { "the first step takes 16 percent", with = { ["papers.wall_ties"] = "beyond_share",
    ["papers.wall_ties_first_step_percent"] = 16 }, expect = "warn" },
  { "15 percent, exactly: it fits", with = { ["papers.wall_ties"] = "beyond_share",
    ["papers.wall_ties_first_step_percent"] = 15 }, expect = "fail", says = "15" },
  { "value not known", without = { "house.insured_value_usd" }, expect = "open" },
}

-- What is inherited does not pass clean: the base was recalled or read second-hand.
cases "flashing.penetrations" {
  under = "us-fl",
  { "in the 7th edition", date = SEVENTH, expect = "pass", where = "soil pipe",
    says = "recalled, not read" },
  { "in the 8th", date = EIGHTH, expect = "pass", where = "soil pipe", says = "second-hand" },
}

-- Valleys, as a page quotes R905.2.8.2 in its Florida form.
local function valley(kind, lining, width, bottom)
  return { ["roof.valleys"] = { { name = "valley", kind = kind, lining = lining,
    metal = "galvanized", thickness_in = 0.0179, width_in = width, bottom_width_in = bottom } } }
end
for _, day in ipairs { SEVENTH, EIGHTH } do
  cases "valley.width" {
    under = "us-fl", date = day,
    { "metal 16 in, exactly", with = valley("open", "metal", 16), expect = "warn",
      required = 16 },
    { "metal a hair less", with = valley("open", "metal", 15.999), expect = "fail",
      required = 16 },
  }
end
cases "valley.width" {
  under = "us-fl", date = EIGHTH,
  { "16 in under the model code", under = "model/irc-2021", with = valley("open", "metal", 16),
    expect = "fail", required = 24 },
  { "roll 18 and 36 in, exactly", with = valley("open", "two_ply_roll", 36, 18),
    expect = "warn", required = 18 },
  { "bottom ply 17.5 in", with = valley("open", "two_ply_roll", 36, 17.5), expect = "fail",
    required = 18 },
  { "top ply 35.5 in", with = valley("open", "two_ply_roll", 35.5, 18), expect = "fail",
    required = 36 },
  { "smooth roll 36 in, exactly", with = valley("closed", "smooth_roll", 36), expect = "warn",
    required = 36 },
  { "smooth roll 35.5 in", with = valley("closed", "smooth_roll", 35.5), expect = "fail",
    required = 36 },
}

cases "papers.wall_ties" {
  under = "us-fl", date = EIGHTH, with = TIES,
  { "found strong already", with = { ["papers.wall_ties"] = "sound_already" },
    expect = "warn" },
  { "done up to the share", with = { ["papers.wall_ties"] = "done_to_share" },
    expect = "warn" },
  { "the first step takes 15.1 percent", with = { ["papers.wall_ties"] = "beyond_share",
    ["papers.wall_ties_first_step_percent"] = 15.1 }, expect = "warn" },
}

-- The wind does not matter: not even when nobody knows it.
cases "underlayment.kind" {
  under = "us-fl", date = EIGHTH, with = { ["underlayments[1].kind"] = "D226_II" },
  { "wind not known", without = { "site.wind_vult_mph", "site.wind_design_required" },
    expect = "warn", where = "main front" },
}
cases "underlayment.lap_spacing" {
  under = "us-fl", date = EIGHTH, with = { ["underlayments[1].lap_spacing_in"] = 8 },
  { "wind not known", without = { "site.wind_vult_mph", "site.wind_design_required" },
    expect = "fail", where = "main front" },
}
cases "underlayment.head_lap" {
  under = "us-fl", date = SEVENTH,
  { "wind not known, 2 in", without = { "site.wind_vult_mph" }, expect = "fail",
    where = "main front", required = 4, found = 2 },
}

-- Every kind that an edition's lists name, and the light felt on none of them.
local function each_kind(date, list)
  for _, row in ipairs(list) do
    local kind, one, layer = row[1], row[2], row[3]
    local with = { ["underlayments[1].kind"] = kind,
      ["underlayments[1].evaluation_report"] = false }
    local two = { ["underlayments[1].kind"] = kind, ["underlayments[1].plies"] = 2,
      ["underlayments[1].head_lap_in"] = 19 }
    cases "underlayment.kind" {
      under = "us-fl", date = date,
      { kind .. ", " .. date, with = with, expect = one, where = "main front" },
    }
    cases "underlayment.sealed_deck" {
      under = "us-fl", date = date,
      { kind .. " over taped joints, " .. date, with = taped(4, kind), expect = layer,
        where = "main front" },
      { "two plies of " .. kind .. ", " .. date, with = two, expect = layer,
        where = "main front" },
    }
  end
end
each_kind(SEVENTH, {
  { "D226_I", "fail", "fail" }, { "D226_II", "warn", "warn" }, { "D4869_III", "warn", "warn" },
  { "D4869_IV", "warn", "warn" }, { "D8257", "fail", "warn" },
  { "other_synthetic", "fail", "warn" },
})
each_kind(EIGHTH, {
  { "D226_I", "fail", "fail" }, { "D226_II", "warn", "warn" }, { "D4869_III", "warn", "warn" },
  { "D4869_IV", "warn", "warn" }, { "D8257", "warn", "warn" },
  { "other_synthetic", "fail", "warn" },
})

-- A thousandth short.
cases "underlayment.sealed_deck" {
  under = "us-fl",
  { "3.999 in tape in the 7th", date = SEVENTH, with = taped(3.999), expect = "fail",
    where = "main front", required = 4 },
  { "3.749 in tape in the 8th", date = EIGHTH, with = taped(3.749), expect = "fail",
    where = "main front", required = 3.75 },
}
cases "underlayment.end_lap" {
  under = "us-fl", date = EIGHTH,
  { "5.999 in", with = { ["underlayments[1].end_lap_in"] = 5.999 }, expect = "fail",
    where = "main front", required = 6 },
}

-- The high-velocity zone: what was read second-hand of it is told, not judged.
cases "underlayment.plies" {
  under = "us-fl", date = EIGHTH,
  { "one ply in the 8th edition", expect = "warn", where = "main front",
    says = "high-velocity zone FBC-B 1518.2.1 asks for two" },
  { "none", with = { ["underlayments[1].plies"] = 0 }, expect = "fail", where = "main front" },
}
cases "fasteners.past_thin_deck" {
  under = "us-fl",
  { "1/8 in past in the 7th", date = SEVENTH, with = { ["fasteners.length_in"] = 0.8425 },
    expect = "warn", says = "3/16 in through" },
  { "and in the 8th", date = EIGHTH, with = { ["fasteners.length_in"] = 0.8425 },
    expect = "pass" },
}

-- Old boards nailed again: the sheet wants two nails in boards of 1 x 12 as well.
local function boards(nails)
  return { decks = { { name = "panels", kind = "board", work = "replaced", thickness_in = 0.75,
    support_spacing_in = 24, board_gap_in = 0.125, board_width_in = 11.25, nails = {
      kind = "common_8d", length_in = 2.5, shank_in = 0.131, per_bearing = nails } } } }
end
for _, day in ipairs { SEVENTH, EIGHTH } do
  cases "deck.board_nails" {
    under = "us-fl", date = day,
    { "two in a wide board", with = boards(2), expect = "warn", required = 2, says = "three" },
    { "one", with = boards(1), expect = "fail", required = 2 },
    { "two under the model code", under = "model/irc-2021", with = boards(2), expect = "fail",
      required = 3 },
  }
end

-- Panels that the model code takes, and the state's own table may not.
local function panel(rating, spacing, edges)
  return { ["decks[1].span_rating"] = rating, ["decks[1].support_spacing_in"] = spacing,
    ["decks[1].edge_support"] = edges, ["decks[1].work"] = "replaced" }
end
for _, day in ipairs { SEVENTH, EIGHTH } do
  cases "deck.panel_span" {
    under = "us-fl", date = day,
    { "24/16, edges held", with = panel("24/16", 24, "clips"), expect = "warn", required = 24,
      says = "40/20" },
    { "24/16 over more", with = panel("24/16", 24.001, "clips"), expect = "fail" },
    { "24/16, edges free", with = panel("24/16", 24, "none"), expect = "warn", required = 24 },
    { "24/16, free, over more", with = panel("24/16", 24.001, "none"), expect = "fail" },
    { "32/16, edges held", with = panel("32/16", 32, "clips"), expect = "warn", required = 32,
      says = "40/20" },
    { "32/16 over more", with = panel("32/16", 32.001, "clips"), expect = "fail" },
    { "32/16, edges free", with = panel("32/16", 28, "none"), expect = "warn", required = 28 },
    { "32/16, free, over more", with = panel("32/16", 28.001, "none"), expect = "fail" },
  }
end
