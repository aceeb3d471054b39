-- IRC 2021: what this edition changes, and how well each figure is known in it.

jurisdiction "model/irc-2021" {
  title = "International Residential Code, 2021",
  model = true,
  follows = "model/irc",
  edition = "IRC 2021",
  parts = { "irc-2021.flashing.lua" },
  figures = {
    -- layers, slope, underlayment, ice_barrier, drip_edge, cautions ----------

    -- The reroof rules were read in this edition; the count of layers was not.
    ["layers.most"] = { cite = "R908.3.1.1",
      status = "memory", source = "recalled; the same in every edition that was read" },
    ["layers.overlay_allowed"] = { cite = "R908.3.1",
      status = "seen", source = "code officials' forum on the 2021 recover rules" },
    ["layers.overlay_needs_maker"] = { cite = "R908.3.1 item 1",
      status = "seen", source = "code officials' forum on the 2021 recover rules" },

    -- The tables ask for a map of where wind design is required, not for 140 mph.
    ["underlayment.wind_by_map"] = { true, sense = "equals",
      cite = "Table R905.1.1(1), Figure R301.2.1.1", status = "memory",
      source = "recalled; the split is named in a code officials' forum" },
    ["underlayment.kinds_normal"] = {
      { "D226_I", "D226_II", "D4869_I", "D4869_II", "D4869_III", "D4869_IV", "D6757" },
      sense = "one_of", cite = "Table R905.1.1(1)",
      status = "parallel", source = "2018-based state code; officials' forum on a newer edition" },
    ["underlayment.kinds_high_wind"] = { cite = "Table R905.1.1(1)",
      status = "memory", source = "recalled; as in the 2018 edition" },

    ["ice_barrier.by_table"] = { cite = "R905.1.2, Table R301.2", status = "seen",
      source = "trade journal; a state register on the table's new number" },
    ["ice_barrier.required"] = { cite = "R905.1.2, Table R301.2",
      status = "seen", source = "trade journal; a state register on the table's new number" },

    ["drip_edge.eave_required"] = { cite = "R905.2.8.5",
      status = "memory", source = "recalled; as in the 2018 edition" },
    ["drip_edge.rake_required"] = { cite = "R905.2.8.5",
      status = "memory", source = "recalled; as in the 2018 edition" },

    -- deck, fasteners, shingle, ventilation (below) --

    -- Deck nails. The field came down to 6 for panels up to 3/4 in.
    ["deck.nail_panel_mid_most"] = { 0.75, unit = "in", sense = "at_most",
      cite = "Table R602.3(1) item 32", status = "memory", source = "recalled" },
    ["deck.nail_field_most.thin"] = { 6, unit = "in", sense = "at_most",
      cite = "Table R602.3(1) item 31", status = "memory",
      source = "recalled; a public code repository's note agrees" },
    ["deck.nail_field_most.mid"] = { 6, unit = "in", sense = "at_most",
      cite = "Table R602.3(1) item 32", status = "memory",
      source = "recalled; a public code repository's note agrees" },
    ["deck.nail_band_most.thin"] = { 6, unit = "in", sense = "at_most", cite = "Table R602.3(1)",
      status = "memory", source = "recalled" },
    ["deck.nail_band_most.mid"] = { 6, unit = "in", sense = "at_most", cite = "Table R602.3(1)",
      status = "memory", source = "recalled" },
    ["deck.nail_band_most.thick"] = { 12, unit = "in", sense = "at_most",
      cite = "Table R602.3(1)", status = "memory", source = "recalled" },
    ["deck.nail_band_close_most"] = { 4, unit = "in", sense = "at_most",
      cite = "Table R602.3(1) footnote", status = "memory", source = "recalled" },
    ["deck.nail_close_mph.B"] = { 130, unit = "mph", sense = "over",
      cite = "Table R602.3(1) footnote", status = "memory", source = "recalled" },
    ["deck.nail_close_mph.C"] = { 110, unit = "mph", sense = "over",
      cite = "Table R602.3(1) footnote", status = "memory", source = "recalled" },
    ["deck.nail_close_mph.D"] = { 110, unit = "mph", sense = "over",
      cite = "Table R602.3(1) footnote", status = "memory",
      source = "recalled; exposure D is not named, so taken as C" },
    ["deck.nail_close_at_named_speed"] = { false, sense = "equals",
      cite = "Table R602.3(1) footnote", status = "memory", source = "recalled" },

    -- Ventilation.
    ["ventilation.reduced_needs_both"] = { true, sense = "equals", cite = "R806.2 exception",
      status = "memory", source = "recalled; also read second-hand" },

    -- wind --
    -- Which edition of the wind standard the cladding table was made with.
    ["wind.asce_year"] = { 2016, unit = "year", sense = "equals", cite = "Table R301.2.1(1)",
      status = "memory", source = "recalled" },
    ["wind.kz_floor.B"] = { 0, unit = "coefficient", sense = "at_least",
      cite = "ASCE 7-16 Table 26.10-1", status = "seen",
      source = "a guide to the standard: 0.57 at 12 ft" },

  },
}
