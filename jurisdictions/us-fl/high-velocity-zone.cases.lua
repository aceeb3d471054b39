-- Cases of Florida's high-velocity zone, 8th edition: sections 1512 to 1525 and 2322 of
-- the building book, each figure at its limit.

local DAY = "2026-11-28"
local ZONE = "us-fl/high-velocity-zone"

local function inside(facts)
  local all = { ["site.high_velocity_hurricane_zone"] = true }
  for name, value in pairs(facts or {}) do all[name] = value end
  return all
end

-- A fact that must be at least, or at most, a limit. One of the zone's own is not in
-- the job that cases begin with.
local function at_limit(rule_name, fact, limit, worse, own)
  cases(rule_name) {
    under = ZONE, date = DAY,
    { "at the limit", with = inside { [fact] = limit }, expect = "pass", required = limit,
      found = limit },
    { "a hair past it", with = inside { [fact] = worse }, expect = "fail", required = limit },
    { "not known", with = inside(), without = not own and { fact } or nil, expect = "open" },
  }
end

at_limit("fasteners.rings", "fasteners.rings_per_inch", 20, 19, true)
at_limit("fasteners.count", "fasteners.per_shingle", 6, 5)
at_limit("fasteners.shank", "fasteners.shank_in", 0.105, 0.104)
at_limit("fasteners.head", "fasteners.head_in", 0.375, 0.37)
at_limit("shingle.cement_bed", "covering.cement_bed_in", 8, 7.9, true)
at_limit("shingle.past_drip", "covering.past_drip_in", 0.25, 0.26, true)
at_limit("drip_edge.face", "drip_edge.face_in", 1.5, 1.49, true)
at_limit("drip_edge.kick", "drip_edge.kick_in", 0.5, 0.49, true)
at_limit("drip_edge.lap", "drip_edge.lap_in", 4, 3.9)
at_limit("drip_edge.down", "drip_edge.down_in", 0.5, 0.49)
at_limit("drip_edge.back", "drip_edge.back_in", 2, 1.9)
at_limit("drip_edge.fastener_spacing", "drip_edge.fastener_spacing_in", 4, 4.1)

local function without_metal()
  local all = inside()
  for i = 1, 9 do all["roof.edges[" .. i .. "].drip_edge"] = false end
  return all
end
cases "drip_edge.face" {
  under = ZONE, date = DAY,
  { "no metal anywhere", with = without_metal(), expect = "not_applicable" },
}
cases "drip_edge.joints_cemented" {
  under = ZONE, date = DAY,
  { "cemented", with = inside { ["drip_edge.joints_cemented"] = true }, expect = "pass" },
  { "not", with = inside { ["drip_edge.joints_cemented"] = false }, expect = "fail" },
  { "not known", with = inside(), expect = "open" },
}
for _, edge in ipairs { { "eave", 1, "front eave" }, { "rake", 4, "front left rake" } } do
  local metal = "roof.edges[" .. edge[2] .. "].drip_edge"
  cases("drip_edge." .. edge[1]) {
    under = ZONE, date = DAY,
    { "without metal", with = inside { [metal] = false }, expect = "fail", where = edge[3] },
  }
end

cases "papers.zone_form" {
  under = ZONE, date = DAY,
  { "filled in", with = inside { ["papers.zone_form"] = true }, expect = "pass" },
  { "not", with = inside { ["papers.zone_form"] = false }, expect = "fail" },
  { "not known", with = inside(), expect = "open" },
}
cases "papers.owner_notification" {
  under = ZONE, date = DAY,
  { "handed in", with = inside { ["papers.owner_notification"] = true }, expect = "pass" },
  { "not", with = inside { ["papers.owner_notification"] = false }, expect = "fail" },
  { "not known", with = inside(), expect = "open" },
}
cases "papers.product_approval" {
  under = ZONE, date = DAY,
  { "two sheets", with = inside { ["papers.approval_sheets"] = 2 }, expect = "pass",
    required = 2 },
  { "one", with = inside { ["papers.approval_sheets"] = 1 }, expect = "fail" },
}

cases "shingle.zone_height" {
  under = ZONE, date = DAY,
  { "33 ft", with = inside { ["house.mean_roof_height_ft"] = 33 }, expect = "pass",
    required = 33 },
  { "33.1 ft, which the approval names", with = inside { ["house.mean_roof_height_ft"] = 33.1,
    ["covering.approval_any_height"] = true }, expect = "pass" },
  { "33.1 ft, which it does not", with = inside { ["house.mean_roof_height_ft"] = 33.1,
    ["covering.approval_any_height"] = false }, expect = "fail" },
  { "33.1 ft, approval not known", with = inside { ["house.mean_roof_height_ft"] = 33.1 },
    expect = "open" },
}

local function beside(feet, class)
  return inside { ["site.neighbor_ft"] = feet, ["covering.fire_class"] = class }
end
cases "fire.neighbor" {
  under = ZONE, date = DAY,
  { "A at 20 ft", with = beside(20, "A"), expect = "pass" },
  { "B at 20 ft", with = beside(20, "B"), expect = "fail" },
  { "B at 20.1 ft", with = beside(20.1, "B"), expect = "pass" },
  { "C at 20.1 ft", with = beside(20.1, "C"), expect = "fail" },
  { "distance not known", with = inside { ["covering.fire_class"] = "A" }, expect = "open" },
}

-- Nails through the deck: 1.25 in less 0.25 in of shingle and 0.03 of felt is 0.97 in.
local function nail(length, deck)
  return inside { ["fasteners.length_in"] = length, ["decks[1].thickness_in"] = deck,
    ["underlayments[1].thickness_in"] = 0.03, ["covering.thickness_at_nail_in"] = 0.25 }
end
cases "fasteners.penetration" {
  under = ZONE, date = DAY, where = "main front",
  { "through 19/32", with = nail(1.25, 0.59375), expect = "pass", where = "main front" },
  { "into boards 1-1/2 in thick, exactly 1 in", with = nail(1.28, 1.5), expect = "pass",
    where = "main front", required = 1 },
  { "0.995 in into them", with = nail(1.275, 1.5), expect = "fail", where = "main front",
    required = 1 },
  { "0.97 in into boards 1 in thick", with = nail(1.25, 1), expect = "fail",
    where = "main front", required = 1 },
}
cases "fasteners.past_thin_deck" {
  under = ZONE, date = DAY, where = "main front",
  { "3/16 in past 19/32", with = nail(1.0625, 0.59375), expect = "pass",
    where = "main front", required = 0.125 },
  { "1/8 in past it, exactly", with = nail(0.99875, 0.59375), expect = "warn",
    where = "main front", required = 0.125, says = "3/16" },
  { "less", with = nail(0.99, 0.59375), expect = "fail", where = "main front" },
  { "a deck 0.995 in thick", with = nail(1.5, 0.995), expect = "pass", where = "main front" },
  { "a deck 1 in thick", with = nail(1.5, 1), expect = "not_applicable", where = "main front" },
}

-- Slopes of Table 1515.2.
for kind, least in pairs { asphalt_shingle = 2, wood_shingle = 3.5, wood_shake = 4,
  roll_roofing = 2 } do
  cases "slope.least" {
    under = ZONE, date = DAY,
    { kind .. " at the limit", with = inside { ["covering.kind"] = kind,
      ["roof.slopes[1].pitch"] = least .. ":12" }, expect = "pass", required = least,
      where = "main front" },
    { kind .. " flatter", with = inside { ["covering.kind"] = kind,
      ["roof.slopes[1].pitch"] = (least - 0.01) .. ":12" }, expect = "fail",
      where = "main front" },
  }
end
for _, seam in ipairs { "lapped", "sealed" } do
  cases "slope.least" {
    under = ZONE, date = DAY, with = inside { ["covering.kind"] = "metal_panel",
      ["covering.metal_seam"] = seam },
    { seam .. " metal at 1.99:12", with = inside { ["covering.kind"] = "metal_panel",
      ["covering.metal_seam"] = seam, ["roof.slopes[1].pitch"] = "1.99:12" }, expect = "fail",
      required = 2, where = "main front" },
    { seam .. " metal at 2:12", with = inside { ["covering.kind"] = "metal_panel",
      ["covering.metal_seam"] = seam, ["roof.slopes[1].pitch"] = "2:12" }, expect = "pass",
      where = "main front" },
  }
end
cases "slope.least" {
  under = ZONE, date = DAY,
  { "standing seams at 1.99:12", with = inside { ["covering.kind"] = "metal_panel",
    ["covering.metal_seam"] = "standing", ["roof.slopes[1].pitch"] = "1.99:12" }, expect = "fail",
    required = 2, where = "main front", says = "E2140" },
}
cases "slope.double_underlayment" {
  under = ZONE, date = DAY,
  { "one ply at 3.9:12", with = inside { ["roof.slopes[1].pitch"] = "3.9:12" },
    expect = "fail", required = 2, where = "main front" },
  { "at 4:12", with = inside { ["roof.slopes[1].pitch"] = "4:12" }, expect = "not_applicable",
    where = "main front" },
}

-- Laying over: one layer of level shingles (1521.16, 1521.17).
local function overlay(facts)
  local all = inside { ["scope.method"] = "overlay", ["existing.layers_removed"] = 0,
    ["existing.coverings[1].removed"] = false }
  for name, value in pairs(facts or {}) do all[name] = value end
  return all
end
cases "layers.level" {
  under = ZONE, date = DAY,
  { "1/8 in, exactly", with = overlay { ["existing.level_difference_in"] = 0.125 },
    expect = "pass", required = 0.125 },
  { "more", with = overlay { ["existing.level_difference_in"] = 0.13 }, expect = "fail" },
  { "not known", with = overlay(), expect = "open" },
  { "torn off", with = inside(), expect = "not_applicable" },
}
cases "layers.total" {
  under = ZONE, date = DAY,
  { "one over one", with = overlay(), expect = "pass", required = 2, found = 2 },
  { "one over two", with = overlay { ["existing.layers"] = 2, ["existing.coverings"] = {
    { kind = "asphalt_shingle", thickness_in = 0.25, removed = false },
    { kind = "asphalt_shingle", thickness_in = 0.25, removed = false } } }, expect = "fail",
    required = 2, found = 3 },
}
for _, kind in ipairs { "wood_shingle", "wood_shake", "slate", "clay_tile", "concrete_tile",
  "asbestos_cement", "metal_shingle" } do
  cases "layers.base_kind" {
    under = ZONE, date = DAY,
    { "over " .. kind, with = overlay { ["existing.coverings[1].kind"] = kind },
      expect = "fail" },
  }
end
cases "layers.base_kind" {
  under = ZONE, date = DAY,
  { "over asphalt shingles", with = overlay(), expect = "pass" },
}

cases "layers.zone_base" {
  under = ZONE, date = DAY,
  { "shingles over shingles", with = overlay(), expect = "pass" },
  { "shingles over roll roofing", with = overlay {
    ["existing.coverings[1].kind"] = "roll_roofing" }, expect = "fail" },
  { "kind not known", with = overlay(), without = { "existing.coverings[1].kind" },
    expect = "open" },
  { "metal over roll roofing", with = overlay { ["covering.kind"] = "metal_panel",
    ["existing.coverings[1].kind"] = "roll_roofing" }, expect = "not_applicable" },
  { "torn off", with = inside(), expect = "not_applicable" },
}

-- Underlayment in the three ways of 1518.2.1.
local function felt(facts, more)
  local all = inside(more)
  for name, value in pairs(facts) do all["underlayments[1]." .. name] = value end
  return all
end
local TAPED = { kind = "D226_II", plies = 1, head_lap_in = 4, end_lap_in = 6,
  deck_joints_taped = true, tape_width_in = 3.75, tape_is = "D1970", cap_in = 1.625 }
local function taped(facts)
  local all = {}
  for name, value in pairs(TAPED) do all[name] = value end
  for name, value in pairs(facts or {}) do all[name] = value end
  return felt(all)
end
cases "underlayment.sealed_deck" {
  under = ZONE, date = DAY,
  { "tape of 3-3/4 in", with = taped(), expect = "pass", where = "main front" },
  { "tape of 3.7 in", with = taped { tape_width_in = 3.7 }, expect = "fail",
    where = "main front", required = 3.75 },
  { "D8257 over tape, which the table has under other coverings", with = taped {
    kind = "D8257" }, expect = "fail", where = "main front" },
  { "D6757 over tape", with = taped { kind = "D6757" }, expect = "pass",
    where = "main front" },
  { "open joints", with = taped { deck_joints_taped = false }, expect = "fail",
    where = "main front" },
  { "two plies", with = taped { deck_joints_taped = false, plies = 2, head_lap_in = 19,
    roll_width_in = 36 }, expect = "pass", where = "main front" },
  { "two plies of D6757", with = taped { deck_joints_taped = false, plies = 2,
    head_lap_in = 19, roll_width_in = 36, kind = "D6757" }, expect = "fail",
    where = "main front" },
  { "a sheet that sticks all over", with = taped { kind = "D1970" }, expect = "warn",
    where = "main front", says = "1517.5.1" },
}
cases "underlayment.tape" {
  under = ZONE, date = DAY,
  { "AAMA 711 level 3", with = taped { tape_is = "AAMA_711_3" }, expect = "pass",
    where = "main front" },
  { "another", with = taped { tape_is = "other" }, expect = "fail", where = "main front" },
}
cases "underlayment.kind" {
  under = ZONE, date = DAY,
  { "D8257", with = taped { kind = "D8257" }, expect = "pass", where = "main front" },
  { "D226 I", with = taped { kind = "D226_I" }, expect = "fail", where = "main front" },
}
local LAID = { { "head_lap", "head_lap_in", 4, 3.9 }, { "end_lap", "end_lap_in", 6, 5.9 },
  { "end_lap_offset", "end_lap_offset_ft", 6, 5.9 },
  { "lap_spacing", "lap_spacing_in", 6, 6.1 }, { "field_spacing", "field_spacing_in", 12, 12.1 } }
for _, row in ipairs(LAID) do
  cases("underlayment." .. row[1]) {
    under = ZONE, date = DAY,
    { "at the limit", with = taped { [row[2]] = row[3] }, expect = "pass", required = row[3],
      where = "main front" },
    { "past it", with = taped { [row[2]] = row[4] }, expect = "fail", where = "main front" },
  }
end
cases "underlayment.cap" {
  under = ZONE, date = DAY,
  { "1-5/8 in, exactly", with = taped(), expect = "pass", required = 1.625,
    where = "main front" },
  { "1 in", with = taped { cap_in = 1 }, expect = "fail", where = "main front",
    says = "1518.2.1" },
}
cases "underlayment.fasteners" {
  under = ZONE, date = DAY,
  { "cap staples", with = taped { fastener = "cap_staple" }, expect = "fail",
    where = "main front" },
}

-- Decks (2322).
local function deck(facts, more)
  local all = inside(more)
  for name, value in pairs(facts) do all["decks[1]." .. name] = value end
  return all
end
cases "deck.zone_wood" {
  under = ZONE, date = DAY,
  { "plywood", with = deck { work = "replaced", panel_wood = "plywood" }, expect = "pass" },
  { "stamped plywood", with = deck { work = "replaced", panel_wood = "plywood_structural_1" },
    expect = "pass" },
  { "strand board", with = deck { work = "replaced", panel_wood = "osb" }, expect = "fail" },
  { "not known", with = deck { work = "replaced" }, without = { "decks[1].panel_wood" },
    expect = "open" },
  { "an old deck", with = deck { work = "kept", renailed = true, replaced_sqft = 0,
    unsound_sqft = 0 }, expect = "not_applicable" },
}
cases "deck.zone_thickness" {
  under = ZONE, date = DAY,
  { "19/32", with = deck { work = "replaced", thickness_in = 0.59375 }, expect = "pass",
    required = 0.59375 },
  { "15/32", with = deck { work = "replaced", thickness_in = 0.46875 }, expect = "fail" },
  { "over old boards", with = deck { kind = "spaced_board", work = "paneled_over",
    over_panel_thickness_in = 0.46875, board_gap_in = 4, board_width_in = 3.5 },
    expect = "fail" },
  { "not known", with = deck { work = "replaced" }, without = { "decks[1].thickness_in" },
    expect = "open" },
}
local function boards(thickness, spacing)
  return deck { kind = "board", work = "replaced", thickness_in = thickness,
    support_spacing_in = spacing, board_gap_in = 0.1, board_width_in = 5.5 }
end
cases "deck.zone_board_thickness" {
  under = ZONE, date = DAY,
  { "5/8 in over 24 in", with = boards(0.625, 24), expect = "pass", required = 0.625 },
  { "0.6 in over 24 in", with = boards(0.6, 24), expect = "fail" },
  { "5/8 in over 24.1 in", with = boards(0.625, 24.1), expect = "fail", required = 0.75 },
  { "3/4 in over 28 in", with = boards(0.75, 28), expect = "pass" },
  { "3/4 in over 28.1 in", with = boards(0.75, 28.1), expect = "fail" },
  { "0.74 in over 28 in", with = boards(0.74, 28), expect = "fail", required = 0.75 },
  { "rafters not known", with = boards(0.75, 28), without = { "decks[1].support_spacing_in" },
    expect = "open" },
}
local function old(facts)
  local all = { work = "kept", renailed = true, replaced_sqft = 0, unsound_sqft = 0,
    ["nails.kind"] = "common_8d" }
  for name, value in pairs(facts or {}) do all[name] = value end
  return deck(all)
end
cases "deck.zone_nail_kind" {
  under = ZONE, date = DAY,
  { "common 8d in an old deck", with = old(), expect = "pass" },
  { "RSRS-01 in it", with = old { ["nails.kind"] = "RSRS_01" }, expect = "fail" },
  { "an old deck not nailed again", with = old { renailed = false }, expect = "open" },
  { "RSRS-01 in a new one", with = deck { work = "replaced", ["nails.kind"] = "RSRS_01" },
    expect = "pass" },
  { "RSRS-03", with = deck { work = "replaced", ["nails.kind"] = "RSRS_03" }, expect = "pass" },
  { "common 8d", with = deck { work = "replaced", ["nails.kind"] = "common_8d" },
    expect = "fail" },
  { "in part new", with = deck { work = "partly_replaced" }, expect = "open" },
  { "laid over", with = overlay(), expect = "not_applicable" },
}
cases "deck.zone_spacing" {
  under = ZONE, date = DAY,
  { "6 and 6", with = old { ["nails.edge_spacing_in"] = 6, ["nails.field_spacing_in"] = 6 },
    expect = "pass", required = 6 },
  { "edges at 6.1", with = old { ["nails.edge_spacing_in"] = 6.1,
    ["nails.field_spacing_in"] = 6 }, expect = "fail" },
  { "field at 6.1", with = old { ["nails.edge_spacing_in"] = 6,
    ["nails.field_spacing_in"] = 6.1 }, expect = "fail" },
  { "a new deck", with = deck({ work = "replaced", ["nails.edge_spacing_in"] = 6,
    ["nails.field_spacing_in"] = 6 }, { ["site.wind_design_done"] = true }), expect = "pass" },
  { "a new deck without a design", with = deck({ work = "replaced",
    ["nails.edge_spacing_in"] = 6, ["nails.field_spacing_in"] = 6 },
    { ["site.wind_design_done"] = false }), expect = "fail", says = "design" },
  { "not known", with = old(), without = { "decks[1].nails.field_spacing_in" },
    expect = "open" },
}
cases "deck.zone_gable" {
  under = ZONE, date = DAY,
  { "4 in", with = old { ["nails.gable_spacing_in"] = 4 }, expect = "pass", required = 4 },
  { "4.1 in", with = old { ["nails.gable_spacing_in"] = 4.1 }, expect = "fail" },
  { "not known", with = old(), without = { "decks[1].nails.gable_spacing_in" },
    expect = "open" },
}
-- On the roof what was measured counts.
cases "deck.zone_spacing" {
  under = ZONE, date = DAY,
  { "boards", with = old { kind = "board" }, expect = "not_applicable" },
}
cases "deck.zone_spacing" {
  under = ZONE, date = DAY, stage = "deck",
  { "measured at 6", with = old { ["nails.measured_edge_spacing_in"] = { 6, 5.5 },
    ["nails.measured_field_spacing_in"] = { 6, 6 } }, expect = "pass", required = 6 },
  { "the field measured wider", with = old { ["nails.measured_edge_spacing_in"] = { 6, 6 },
    ["nails.measured_field_spacing_in"] = { 8, 8 } }, expect = "fail" },
}
cases "deck.zone_gable" {
  under = ZONE, date = DAY, stage = "deck",
  { "measured at 4", with = old { ["nails.measured_gable_spacing_in"] = { 4, 3.5 } },
    expect = "pass", required = 4 },
}

-- Looks, and what stays open or is another's to say.
cases "inspection.mid_roof" {
  under = ZONE, date = DAY,
  { "no look planned while shingles go on", with = inside {
    ["inspection.mid_roof.proof"] = "none" }, expect = "fail" },
  { "a visit", with = inside { ["inspection.mid_roof.proof"] = "visit" }, expect = "pass" },
}
cases "inspection.mid_roof_moment" {
  under = ZONE, date = DAY, from = "paperwork",
  { "while courses go on", with = inside { ["inspection.mid_roof.proof"] = "visit",
    ["inspection.mid_roof.moment"] = "courses_laid" }, expect = "pass" },
  { "dried in", with = inside { ["inspection.mid_roof.proof"] = "visit",
    ["inspection.mid_roof.moment"] = "dried_in" }, expect = "fail" },
}
for _, rule_name in ipairs { "flashing.penetrations", "shingle.wind_class", "deck.panel_span", "underlayment.bite", "underlayment.shank" } do
  cases(rule_name) {
    under = ZONE, date = DAY,
    { "goes by what was not read", with = inside(), expect = "open", says = "Not carried here" },
  }
end
cases "slope.least" {
  under = ZONE, date = DAY,
  { "said to lie outside the zone", expect = "refused", says = "high-velocity hurricane zone" },
  { "before the 8th edition", date = "2023-12-30", with = inside(), expect = "refused",
    says = "from 2023-12-31" },
  { "after it", date = "2026-12-31", with = inside(), expect = "refused" },
  { "in the month of the next", date = "2026-12-01", with = inside(), expect = "pass",
    where = "main front", says = "planned for this month" },
}
