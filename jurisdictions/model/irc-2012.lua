-- IRC 2012: reroofing in R907, underlayment inside the shingle section, and a
-- wind map on the older scale.
--
-- Jobs state the ultimate speed. This edition's speeds are nominal ones: 120
-- mph here is 155 on the ultimate scale (x sqrt 0.6). Where a rule can convert,
-- the figure stands as the edition has it; where it cannot, the ultimate speed
-- stands here and the source says so. Hardly any of this text was read.

local RECALLED = "recalled"
local OLD_SCALE = "recalled, on this edition's older scale"

local function closer(value, unit, sense, source)
  return { value, unit = unit, sense = sense, cite = "Table R602.3(1) footnote",
    status = "memory", source = source or RECALLED }
end

jurisdiction "model/irc-2012" {
  title = "International Residential Code, 2012",
  model = true,
  follows = "model/irc",
  edition = "IRC 2012",
  parts = { "irc-2012.topics.lua" },
  figures = {
    -- Reroofing: R907, which moved to R908 in 2015.
    ["layers.most"] = { cite = "R907.3 item 3", status = "memory", source = RECALLED },
    ["layers.peeled_counts"] = { cite = "R907.3 item 3", status = "memory", source = RECALLED },
    ["layers.overlay_allowed"] = { cite = "R907.3", status = "memory", source = RECALLED },
    ["layers.overlay_needs_maker"] = { cite = "R907.1, R905.1", status = "memory",
      source = RECALLED },
    ["layers.bases_allowed"] = { cite = "R907.3 item 1", status = "memory",
      source = "recalled; read in a forum's copy that does not name the edition" },
    ["layers.not_over"] = { cite = "R907.3 item 2", status = "memory",
      source = "recalled; read in a forum's copy that does not name the edition" },
    ["layers.over_wood_shake_allowed"] = { false, cite = "R907.3 item 2", status = "memory",
      source = "recalled; metal or tile may go over shakes covered as R907.4 says: ask" },
    ["layers.wood_hollow_needs_cover"] = { cite = "R907.4", status = "memory",
      source = RECALLED },
    ["layers.hail_bars_overlay"] = { true, cite = "R907.3 item 4, Figure R903.5",
      status = "memory", source = "recalled: believed the last edition with this item" },
    ["layers.hail_zones_barred"] = { cite = "R907.3 item 4, Figure R903.5" },
    ["layers.tear_off_to_deck"] = { cite = "R202, R907.3", status = "memory",
      source = RECALLED },

    -- Slope and underlayment stand in R905.2.
    ["slope.double_plies_least"] = { cite = "R905.2.2, R905.2.7" },
    ["underlayment.plies_least"] = { cite = "R905.2.7" },
    ["underlayment.kinds_normal"] = { { "D226_I", "D4869_I", "D6757" }, cite = "R905.2.3",
      status = "parallel", source = "page of an older edition in a city file" },
    ["underlayment.kinds_high_wind"] = { { "D226_II", "D4869_IV", "D6757" },
      cite = "R905.2.7.2", status = "memory", source = RECALLED },
    ["underlayment.kinds_self_adhered"] = { cite = "R905.2.7.2 exc.",
      status = "memory", source = RECALLED },
    ["underlayment.kinds_by_report"] = { cite = "R905.2.3" },
    ["underlayment.any_wind_counts"] = { cite = "R905.2.7.2" },
    ["underlayment.wind_by_map"] = { cite = "R905.2.7.2", status = "memory",
      source = RECALLED },
    ["underlayment.wind_from"] = { 120, cite = "R905.2.7.2", status = "memory",
      source = OLD_SCALE },
    ["underlayment.wind_on_vasd"] = { true, cite = "R301.2.1", status = "memory",
      source = "recalled: the map is still on the older scale",
      disputed = "one article puts this edition's map on the ultimate scale" },
    ["underlayment.head_lap_least"] = { cite = "R905.2.7" },
    ["underlayment.head_lap_high_wind_least"] = { cite = "R905.2.7.2", status = "memory",
      source = RECALLED },
    ["underlayment.head_lap_double_least"] = { cite = "R905.2.7" },
    ["underlayment.end_lap_least"] = { cite = "R905.2.7" },
    ["underlayment.end_lap_offset_least"] = { cite = "R905.2.7" },
    ["underlayment.starter_width_least"] = { cite = "R905.2.7" },
    ["underlayment.fasteners_wind"] = { { "cap_nail" }, cite = "R905.2.7.2",
      status = "memory", source = "recalled: cap staples came with the 2018 edition" },
    ["underlayment.lap_spacing_wind_most"] = { cite = "R905.2.7.2", status = "memory",
      source = RECALLED },
    ["underlayment.field_spacing_wind_most"] = { cite = "R905.2.7.2", status = "memory",
      source = RECALLED },
    ["underlayment.cap_wind_least"] = { cite = "R905.2.7.2", status = "memory",
      source = RECALLED },
    ["underlayment.sealed_deck_methods"] = { { "full_self_adhered" }, cite = "R905.2.7.2 exc.",
      status = "memory", source = RECALLED },

    -- Ice barrier: no longer reach on steep slopes yet.
    ["ice_barrier.by_table"] = { cite = "R905.2.7.1, Table R301.2(1)" },
    ["ice_barrier.required"] = { cite = "R905.2.7.1, Table R301.2(1)" },
    ["ice_barrier.on_overlay_required"] = { cite = "R907.1, R905.2.7.1" },
    ["ice_barrier.coverings"] = { cite = "R905.2.7.1", status = "memory",
      source = "recalled: each covering's own section" },
    ["ice_barrier.kinds"] = { cite = "R905.2.7.1" },
    ["ice_barrier.inside_wall_least"] = { cite = "R905.2.7.1" },
    ["ice_barrier.wall_counts"] = { cite = "R905.2.7.1" },
    ["ice_barrier.steep_applies"] = { false, cite = "R905.2.7.1", status = "memory",
      source = "recalled; code officials' forum: the longer reach came in 2015" },
    ["ice_barrier.unheated_exempt"] = { cite = "R905.2.7.1" },

    -- Drip edge: this edition brought it, at eaves and gables.
    ["drip_edge.eave_required"] = { cite = "R905.2.8.5", status = "seen",
      source = "city page and insurance commentary: from this edition on" },
    ["drip_edge.rake_required"] = { cite = "R905.2.8.5", status = "seen",
      source = "city page and insurance commentary: from this edition on, at gables" },
    ["drip_edge.on_overlay_required"] = { cite = "R907.1, R905.2.8.5" },

    -- Shingles: two tables here.
    ["shingle.D7158_vult_most.D"] = { cite = "Table R905.2.4.1(1)", status = "memory",
      source = "recalled: 90 mph on the older scale" },
    ["shingle.D7158_vult_most.G"] = { cite = "Table R905.2.4.1(1)", status = "memory",
      source = "recalled: 120 mph on the older scale" },
    ["shingle.D7158_vult_most.H"] = { cite = "Table R905.2.4.1(1)", status = "memory",
      source = "recalled: 150 mph on the older scale" },
    ["shingle.D3161_vult_most.A"] = { cite = "Table R905.2.4.1(2)" },
    ["shingle.D3161_vult_most.D"] = { cite = "Table R905.2.4.1(2)" },
    ["shingle.D3161_vult_most.F"] = { cite = "Table R905.2.4.1(2)" },
    ["fasteners.steep_over"] = { cite = "R905.2.6", status = "memory",
      source = "recalled; older editions began above 20:12" },

    -- Deck nails: the common nail alone, the ringed one came in 2018. 12 in the
    -- field; closer past 100 mph on the older scale, which is 129 on the ultimate one.
    ["deck.nail_kinds.thin"] = { { "common_8d" }, cite = "Table R602.3(1)", status = "memory",
      source = RECALLED },
    ["deck.nail_kinds.mid"] = { { "common_8d" }, cite = "Table R602.3(1)", status = "memory",
      source = RECALLED },
    ["deck.nail_panel_mid_most"] = { 1, unit = "in", sense = "at_most", cite = "Table R602.3(1)",
      status = "memory", source = RECALLED },
    ["deck.nail_field_most.thin"] = { 12, unit = "in", sense = "at_most",
      cite = "Table R602.3(1)", status = "memory", source = RECALLED },
    ["deck.nail_field_most.mid"] = { 12, unit = "in", sense = "at_most",
      cite = "Table R602.3(1)", status = "memory", source = RECALLED },
    ["deck.nail_band_most.thin"] = closer(12, "in", "at_most"),
    ["deck.nail_band_most.mid"] = closer(12, "in", "at_most"),
    ["deck.nail_band_most.thick"] = closer(12, "in", "at_most"),
    ["deck.nail_band_close_most"] = closer(6, "in", "at_most"),
    ["deck.nail_close_mph.B"] = closer(129, "mph", "over",
      "recalled: 100 mph on the older scale"),
    ["deck.nail_close_mph.C"] = closer(129, "mph", "over",
      "recalled: 100 mph on the older scale"),
    ["deck.nail_close_mph.D"] = closer(129, "mph", "over",
      "recalled: 100 mph on the older scale"),
    ["deck.nail_close_at_named_speed"] = { false, sense = "equals",
      cite = "Table R602.3(1) footnote", status = "memory", source = RECALLED },
    ["deck.nail_wind_under"] = { 142, cite = "R301.2.1.1", status = "memory",
      source = "recalled: 110 mph on the older scale; 100 in mapped hurricane regions" },

    -- Wind pressures: the coefficients are those of the next standard.
    ["wind.asce_year"] = { 2010, unit = "year", sense = "equals", cite = "Table R301.2(2)",
      status = "memory", source = "recalled: the older standard has the same coefficients" },
    ["wind.kz_floor.B"] = { 0.7, unit = "coefficient", sense = "at_least",
      cite = "Table R301.2(3)", status = "memory", source = RECALLED },

    -- Either condition is enough for the smaller vent area in this edition.
    ["ventilation.reduced_needs_both"] = { false, sense = "equals", cite = "R806.2 exception",
      status = "memory", source = "recalled; also read second-hand" },
  },
}
