-- Florida's high-velocity hurricane zone: Miami-Dade and Broward counties, 8th edition.
--
-- Roofs there go by sections 1512 to 1525 of the building book, decks by 2322. Both were
-- read, but not the application standards (RAS) that they send to for valleys,
-- flashings and edges, nor any product approval, which may ask for more. What of them a
-- job can tell is carried; all else stays open. Rings on nails, cement, the shape of the
-- drip edge: what only the zone asks has its facts and rules beside this file.

local TEXT = "state code text on this edition"

local function read(value, cite, more)
  local figure = more or {}
  figure[1], figure.book, figure.cite = value, "FBC-B 2023", cite
  figure.status, figure.source = "seen", TEXT
  return figure
end

local function new(value, unit, sense, cite)
  return read(value, cite, { unit = unit, sense = sense })
end

-- A duty of the zone's own.
local function duty(cite)
  return read(true, cite, { sense = "equals", stricter = true })
end

local ROOF = { "deck", "drip_edge", "fasteners", "fire", "flashing", "layers", "shingle", "slope",
  "underlayment", "valley" }
local ORDERS = { "underlayment_rolls", "drip_edge_eave", "drip_edge_rake", "valley_lining",
  "deck_nails", "starter" }

-- What is carried of those topics, by the figures below or by the zone's own rules.
local CARRIED = {
  "drip_edge.back", "drip_edge.down", "drip_edge.eave", "drip_edge.edges_listed",
  "drip_edge.face", "drip_edge.fastener_spacing", "drip_edge.joints_cemented",
  "drip_edge.kick", "drip_edge.lap", "drip_edge.rake",
  "deck.sound", "deck.zone_board_thickness", "deck.zone_nail_kind", "deck.zone_spacing",
  "deck.zone_gable", "deck.zone_thickness", "deck.zone_wood",
  "fasteners.count", "fasteners.head", "fasteners.past_thin_deck", "fasteners.penetration",
  "fasteners.rings", "fasteners.shank",
  "fire.neighbor",
  "layers.base_condition", "layers.base_kind", "layers.dead_load", "layers.level",
  "layers.tear_off", "layers.total", "layers.zone_base",
  "shingle.cement_bed", "shingle.past_drip", "shingle.zone_height",
  "slope.double_underlayment", "slope.least",
  "underlayment.cap", "underlayment.end_lap", "underlayment.end_lap_offset",
  "underlayment.fasteners", "underlayment.field_spacing", "underlayment.head_lap",
  "underlayment.kind", "underlayment.lap_spacing", "underlayment.plies",
  "underlayment.sealed_deck", "underlayment.starter", "underlayment.tape",
  "underlayment.third_course",
}

-- General rules in whose stead the zone's own are judged.
local INSTEAD = { ["fire.class"] = "the zone has classes of its own: fire.neighbor" }
for _, name in ipairs { "renailed", "nail_kind", "nail_edges", "nail_field", "nail_gable",
  "nail_band", "nail_band_width", "nail_closest" } do
  INSTEAD["deck." .. name] = "the zone nails decks by sections of its own: deck.zone_nail_kind, "
    .. "deck.zone_spacing, deck.zone_gable"
end
for _, name in ipairs { "panel_thickness", "panel_wind", "board_thickness" } do
  INSTEAD["deck." .. name] = "the zone asks thicknesses of its own: deck.zone_thickness, "
    .. "deck.zone_board_thickness"
end

local function block(from, to, unsure, figures)
  jurisdiction "us-fl/high-velocity-zone" {
    title = "Florida, high-velocity hurricane zone",
    follows = "us-fl",
    unsure = unsure,
    from = from,
    to = to,
    code = "FBC-B 2023",
    as_seen = "2026-11-29",
    rules = "high-velocity-zone.rules.lua",
    facts = {
      ["site.high_velocity_hurricane_zone"] = { true, cite = "202", status = "seen",
        source = "an engineers' page that prints the definition: Broward and Dade counties" },
    },
    figures = figures,
    drop = INSTEAD,
    not_carried = { ["site.high_velocity_hurricane_zone"] = {
      rules = ROOF, but = CARRIED, orders = ORDERS,
      why = "in the zone FBC-B 1512 to 1525 send to standards and product approvals that were "
        .. "not read" } },
  }
end

local WAYS = "1517.5.1 lets nothing stick to a deck that takes nails unless the product approval "
  .. "says so"
local CAPS = "for two layers the section itself prints 1 in (1518.2.1 item 3)"
local LONGER = "1517.5.1 prints 3/16 in"

local figures = {
  ["slope.least.asphalt_shingle"] = read(nil, "Table 1515.2"),
  ["slope.least.wood_shingle"] = read(3.5, "Table 1515.2"),
  ["slope.least.wood_shake"] = read(4, "Table 1515.2"),
  -- Below 2:12 the zone tests whole systems (1519), which are not carried.
  ["slope.least.roll_roofing"] = read(2, "1518.2"),
  ["slope.least.metal_panel_lapped"] = read(2, "Table 1515.2"),
  ["slope.least.metal_panel_sealed"] = read(2, "Table 1515.2"),
  ["slope.least.metal_panel_standing"] = read(2, "Table 1515.2", {
    disputed = "1:12 where the panels passed the water test of ASTM E2140 (Table 1515.2)" }),
  ["slope.double_below"] = read(nil, "Table 1518.2.1"),
  ["slope.double_plies_least"] = read(nil, "Table 1518.2.1"),

  ["layers.most"] = read(nil, "1521.9, 1521.17"),
  ["layers.bases_allowed"] = read(nil, "1521.5"),
  ["layers.not_over"] = read({ "wood_shingle", "wood_shake", "slate", "clay_tile",
    "concrete_tile", "asbestos_cement", "metal_shingle" }, "1521.16"),
  ["layers.zone_bases"] = read({ "asphalt_shingle" }, "1521.17", { sense = "one_of" }),
  ["layers.tear_off_to_deck"] = read(true, "1521.17"),
  ["layers.level_counts"] = duty "1521.17",
  ["layers.level_most"] = read(0.125, "1521.17", { unit = "in", sense = "at_most",
    behind = "layers.level_counts" }),

  -- 12 gage, ring shanks; through the deck, or an inch into lumber as thick as that.
  ["fasteners.shank_least"] = read(nil, "1517.5.1"),
  ["fasteners.head_least"] = read(nil, "1517.5.1"),
  ["fasteners.per_shingle_least"] = read(6, "1518.7.3.2"),
  ["fasteners.penetration_least"] = read(1, "1518.7.3.2"),
  ["fasteners.thin_deck_under"] = read(1, "1518.7.3.2"),
  ["fasteners.past_thin_deck_least"] = read(0.125, "1518.7.3.2",
    { disputed = LONGER, rival = 0.1875 }),
  ["fasteners.rings_least"] = new(20, "count", "at_least", "1517.5.1"),

  ["shingle.zone_height_most"] = new(33, "ft", "at_most", "1518.7.2"),
  ["shingle.cement_bed_least"] = new(8, "in", "at_least", "1518.7.3.3"),
  ["shingle.past_drip_most"] = new(0.25, "in", "at_most", "1518.7.3.3"),

  ["drip_edge.eave_required"] = read(nil, "1518.7.3.4"),
  ["drip_edge.rake_required"] = read(nil, "1518.7.3.4"),
  ["drip_edge.lap_least"] = read(4, "1517.6.2.5"),
  ["drip_edge.down_least"] = read(nil, "1517.6.2.1"),
  ["drip_edge.back_least"] = read(nil, "1517.6.2.1"),
  ["drip_edge.close_fastening"] = read(false, "1517.6.2.6: 4 in at any wind"),
  ["drip_edge.fastener_spacing_most"] = read(4, "1517.6.2.6"),
  ["drip_edge.face_least"] = new(1.5, "in", "at_least", "1517.6.2.1"),
  ["drip_edge.kick_least"] = new(0.5, "in", "at_least", "1517.6.2.2"),
  ["drip_edge.joints_cemented_required"] = duty "1517.6.2.5",

  ["underlayment.sealed_deck_required"] = read(nil, "1518.2.1"),
  ["underlayment.sealed_deck_methods"] = read({ "full_self_adhered", "taped_joints",
    "two_plies" }, "1518.2.1 items 1 to 3",
    { disputed = WAYS, rival = { "taped_joints", "two_plies" } }),
  ["underlayment.plies_least"] = read(nil, "1518.2.1"),
  ["underlayment.kinds_self_adhered"] = read(nil, "1518.2.1 item 1"),
  ["underlayment.kinds_normal"] = read(nil,
    "Table 1518.2.1, 1518.2.1 item 3"),
  ["underlayment.tape_kinds"] = read({ "D226_II", "D4869_III", "D4869_IV", "D6757" },
    "Table 1518.2.1"),
  ["underlayment.two_ply_kinds"] = read(nil,
    "1518.2.1 item 3"),
  ["underlayment.tape_width_least"] = read(nil, "1518.2.1 item 2"),
  ["underlayment.tapes"] = read(nil, "1518.2.1 item 2"),
  ["underlayment.head_lap_least"] = read(nil, "Table 1518.2.1"),
  ["underlayment.end_lap_least"] = read(nil, "Table 1518.2.1"),
  ["underlayment.end_lap_offset_least"] = read(nil, "Table 1518.2.1"),
  ["underlayment.fasteners_wind"] = read(nil, "1518.2.3, 1518.2.4"),
  ["underlayment.lap_spacing_wind_most"] = read(nil, "Table 1518.2.1"),
  ["underlayment.field_spacing_wind_most"] = read(nil, "Table 1518.2.1"),
  ["underlayment.cap_wind_least"] = read(1.625, "1517.5.2, 1518.2.3, Table 1518.2.1",
    { disputed = CAPS, rival = 1 }),

  ["fire.neighbor_within"] = new(20, "ft", "at_most", "1516.2.1"),
  ["fire.classes_near"] = read({ "A" }, "1516.2.1", { sense = "one_of" }),
  ["fire.classes_far"] = read({ "A", "B" }, "1516.2.2", { sense = "one_of" }),

  ["deck.unsound_left_most"] = read(nil, "1521.5"),
  -- New decks are boards or plywood; old ones are nailed again, whatever their age.
  ["deck.zone_woods"] = read({ "plywood", "plywood_structural_1" }, "2322.2.1",
    { sense = "one_of" }),
  ["deck.zone_panel_least"] = new(0.59375, "in", "at_least", "2322.2.3"),
  ["deck.zone_board_least.near"] = new(0.625, "in", "at_least", "2322.2.2"),
  ["deck.zone_board_least.far"] = new(0.75, "in", "at_least", "2322.2.2"),
  ["deck.zone_board_near_most"] = new(24, "in", "at_most", "2322.2.2"),
  ["deck.zone_board_span_most"] = new(28, "in", "at_most", "2322.2.2"),
  ["deck.zone_old_kinds"] = read({ "common_8d" }, "2322.2.8", { sense = "one_of" }),
  ["deck.zone_new_kinds"] = read({ "RSRS_01", "RSRS_03" }, "2322.2.4, 2322.2.5",
    { sense = "one_of" }),
  ["deck.zone_spacing_most"] = new(6, "in", "at_most", "2322.2.5, 2322.2.8"),
  ["deck.zone_gable_most"] = new(4, "in", "at_most", "2322.2.7, 2322.2.8"),

  ["papers.approval_sheets_least"] = read(2, "1512.3.4"),
  ["papers.zone_form_required"] = duty "1512.3.1, 1525",
  ["papers.owner_notification_required"] = duty "1512.3.4, 1524",
  -- Looks at the underlayment, during the shingles, and at the end.
  ["inspection.required.dry_in"] = read(nil, "1512.4.2.1"),
  ["inspection.required.mid_roof"] = read(true, "1512.4.2.3"),
  ["inspection.mid_roof_moments"] = read({ "courses_laid" }, "1512.4.2.3"),
  ["inspection.required.final"] = read(true, "1512.4.3.3"),
}

block("2023-12-31", "2026-12-01", nil, figures)
block("2026-12-01", "2026-12-31", "the 9th edition is planned for this month: ask whether it has "
  .. "begun", figures)
