-- IRC 2012: reroofing in R907, underlayment inside the shingle section, and a
-- wind map on the older scale.
--
-- Jobs state the ultimate speed. This edition's speeds are nominal ones: 120
-- mph here is 155 on the ultimate scale (x sqrt 0.6). Where a rule can convert,
-- the figure stands as the edition has it; where it cannot, the ultimate speed
-- stands here and the source says so. No copy of this text was found: what it
-- shares with later editions counts as parallel here.

local RECALLED = "recalled"
local SAME_WORDS = "the text of 2006 and the building code of 2012, in the same words"
local OLDER = "page of an older edition in a city file"
local LEFT_OVER = "a paragraph left over from this edition in the text of 2015 (R905.16.4.2)"
local NAILING = "a nailing table of this edition or the one before, which the page does not name"
local NEXT = "state code texts on the 2015 edition"

local function closer(value, unit, sense, source)
  return { value, unit = unit, sense = sense, cite = "Table R602.3(1) footnote",
    status = "memory", source = source or RECALLED }
end

local function band(value)
  return { value, unit = "in", sense = "at_most", cite = "Table R602.3(1)", status = "parallel",
    source = NAILING }
end

jurisdiction "model/irc-2012" {
  title = "International Residential Code, 2012",
  model = true,
  follows = "model/irc",
  edition = "IRC 2012",
  parts = { "irc-2012.topics.lua" },
  figures = {
    -- Reroofing: R907, which moved to R908 in 2015.
    ["flashing.primed_counts"] = { cite = "R907.6", status = "parallel", source = SAME_WORDS },
    ["flashing.rusted_metal_counts"] = { cite = "R907.5", status = "parallel", source = SAME_WORDS },
    ["layers.most"] = { cite = "R907.3 item 3", status = "parallel", source = SAME_WORDS },
    ["layers.peeled_counts"] = { cite = "R907.3 item 3", status = "parallel", source = SAME_WORDS },
    ["layers.overlay_allowed"] = { cite = "R907.3", status = "parallel", source = SAME_WORDS },
    ["layers.overlay_needs_maker"] = { cite = "R907.1, R905.1", status = "memory",
      source = RECALLED },
    ["layers.bases_allowed"] = { cite = "R907.3 item 1", status = "parallel",
      source = SAME_WORDS },
    ["layers.not_over"] = { cite = "R907.3 item 2", status = "parallel", source = SAME_WORDS },
    ["layers.over_wood_shake_allowed"] = { false, cite = "R907.3 item 2", status = "parallel",
      source = SAME_WORDS },
    ["layers.wood_hollow_needs_cover"] = { cite = "R907.4", status = "memory",
      source = RECALLED },
    ["layers.hail_bars_overlay"] = { true, cite = "R907.3 item 4, Figure R903.5",
      status = "parallel", source = SAME_WORDS },
    ["layers.hail_zones_barred"] = { cite = "R907.3 item 4, Figure R903.5" },
    ["layers.tear_off_to_deck"] = { cite = "R202, R907.3", status = "memory",
      source = RECALLED },

    -- Slope and underlayment stand in R905.2.
    ["slope.double_plies_least"] = { cite = "R905.2.2, R905.2.7" },
    ["underlayment.plies_least"] = { cite = "R905.2.7" },
    ["underlayment.kinds_normal"] = { { "D226_I", "D4869_I", "D6757" }, cite = "R905.2.3",
      status = "parallel", source = OLDER },
    ["underlayment.kinds_high_wind"] = { { "D226_II", "D4869_IV", "D6757" }, cite = "R905.2.7.2",
      status = "parallel", source = LEFT_OVER },
    ["underlayment.kinds_self_adhered"] = { cite = "R905.2.7.2 exc.", status = "parallel",
      source = LEFT_OVER },
    ["underlayment.kinds_by_report"] = { cite = "R905.2.3" },
    ["underlayment.any_wind_counts"] = { cite = "R905.2.7.2" },
    ["underlayment.wind_by_map"] = { cite = "R905.2.7.2", status = "memory",
      source = RECALLED },
    ["underlayment.wind_from"] = { 120, cite = "R905.2.7.2", status = "parallel",
      source = LEFT_OVER },
    ["underlayment.wind_on_vasd"] = { true, cite = "R301.2.1", status = "seen",
      source = "engineer's page on this edition's map" },
    ["underlayment.head_lap_least"] = { cite = "R905.2.7" },
    ["underlayment.head_lap_high_wind_least"] = { cite = "R905.2.7.2", status = "parallel",
      source = LEFT_OVER },
    ["underlayment.head_lap_double_least"] = { cite = "R905.2.7" },
    ["underlayment.end_lap_least"] = { cite = "R905.2.7" },
    ["underlayment.end_lap_offset_least"] = { cite = "R905.2.7" },
    ["underlayment.starter_width_least"] = { cite = "R905.2.7" },
    ["underlayment.fasteners_wind"] = { { "cap_nail" }, cite = "R905.2.7.2", status = "parallel",
      source = LEFT_OVER },
    ["underlayment.lap_spacing_wind_most"] = { cite = "R905.2.7.2", status = "parallel",
      source = LEFT_OVER },
    ["underlayment.field_spacing_wind_most"] = { cite = "R905.2.7.2", status = "parallel",
      source = LEFT_OVER },
    ["underlayment.cap_wind_least"] = { cite = "R905.2.7.2", status = "parallel",
      source = LEFT_OVER },
    ["underlayment.sealed_deck_methods"] = { { "full_self_adhered" }, cite = "R905.2.7.2 exc.",
      status = "parallel", source = LEFT_OVER },

    -- Ice barrier: no longer reach on steep slopes yet.
    ["ice_barrier.by_table"] = { cite = "R905.2.7.1, Table R301.2(1)" },
    ["ice_barrier.required"] = { cite = "R905.2.7.1, Table R301.2(1)" },
    ["ice_barrier.on_overlay_required"] = { cite = "R907.1, R905.2.7.1" },
    ["ice_barrier.coverings"] = { cite = "R905.2.7.1", status = "parallel",
      source = "a state code on this edition: each covering's own section" },
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
    ["ventilation.on_overlay_required"] = { cite = "R907.1, R102.7" },
    ["drip_edge.on_overlay_required"] = { cite = "R907.1, R905.2.8.5" },

    -- Shingles: two tables here.
    ["shingle.D7158_vult_most.D"] = { cite = "Table R905.2.4.1(1)", status = "parallel",
      source = "trade association's note of 2016: 90 mph on the older scale" },
    ["shingle.D7158_vult_most.G"] = { cite = "Table R905.2.4.1(1)", status = "parallel",
      source = "trade association's note of 2016: 120 mph on the older scale" },
    ["shingle.D7158_vult_most.H"] = { cite = "Table R905.2.4.1(1)", status = "parallel",
      source = "trade association's note of 2016: 150 mph on the older scale" },
    ["shingle.D3161_vult_most.A"] = { cite = "Table R905.2.4.1(2)" },
    ["shingle.D3161_vult_most.D"] = { cite = "Table R905.2.4.1(2)" },
    ["shingle.D3161_vult_most.F"] = { cite = "Table R905.2.4.1(2)" },
    ["fasteners.steep_over"] = { cite = "R905.2.6", status = "parallel", source = NEXT },

    -- Deck nails: the common nail alone, the ringed one came in 2018. 12 in the
    -- field; closer past 100 mph on the older scale, which is 129 on the ultimate one.
    ["deck.nail_kinds.thin"] = { { "common_8d" }, cite = "Table R602.3(1)", status = "parallel",
      source = NAILING },
    ["deck.nail_kinds.mid"] = { { "common_8d" }, cite = "Table R602.3(1)", status = "parallel",
      source = NAILING },
    ["deck.nail_panel_mid_most"] = { 1, unit = "in", sense = "at_most", cite = "Table R602.3(1)",
      status = "parallel", source = NAILING },
    ["deck.nail_field_most.thin"] = { 12, unit = "in", sense = "at_most", cite = "Table R602.3(1)",
      status = "parallel", source = NAILING },
    ["deck.nail_field_most.mid"] = { 12, unit = "in", sense = "at_most", cite = "Table R602.3(1)",
      status = "parallel", source = NAILING },
    ["deck.nail_band_most.thin"] = band(12),
    ["deck.nail_band_most.mid"] = band(12),
    ["deck.nail_band_most.thick"] = band(12),
    ["deck.nail_band_close_most"] = closer(6, "in", "at_most"),
    ["deck.nail_close_mph.B"] = closer(129, "mph", "over",
      "recalled: 100 mph on the older scale"),
    ["deck.nail_close_mph.C"] = closer(129, "mph", "over",
      "recalled: 100 mph on the older scale"),
    ["deck.nail_close_mph.D"] = closer(129, "mph", "over",
      "recalled: 100 mph on the older scale"),
    ["deck.nail_close_at_named_speed"] = { false, sense = "equals",
      cite = "Table R602.3(1) footnote", status = "memory", source = RECALLED },
    ["deck.nail_wind_under"] = { 142, cite = "R301.2.1.1", status = "seen",
      source = "engineer's page on this edition's map: 110 mph on the older scale; 100 in "
        .. "mapped hurricane regions" },

    ["deck.nail_wind_by_map"] = { cite = "R301.2.1.1" },

    -- Wind pressures: the coefficients are those of the next standard.
    ["wind.asce_year"] = { 2010, unit = "year", sense = "equals", cite = "Table R301.2(2)",
      status = "parallel", source = NEXT },
    ["wind.kz_floor.B"] = { 0.7, unit = "coefficient", sense = "at_least", cite = "Table R301.2(3)",
      status = "parallel", source = NEXT },

    -- Either condition is enough for the smaller vent area in this edition.
    ["ventilation.reduced_needs_both"] = { false, sense = "equals", cite = "R806.2 exception",
      status = "memory", source = "recalled; also read second-hand" },
  },
}
