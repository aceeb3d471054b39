-- IRC 2018: what this edition changes, and how well each figure is known in it.

jurisdiction "model/irc-2018" {
  title = "International Residential Code, 2018",
  model = true,
  follows = "model/irc",
  edition = "IRC 2018",
  parts = { "irc-2018.flashing.lua" },
  figures = {
    -- layers, slope, underlayment, ice_barrier, drip_edge, cautions ----------
    ["layers.most"] = { cite = "R908.3.1.1",
      status = "seen", source = "city reroof page on the 2018 edition" },

    -- deck, fasteners, shingle, ventilation (below) --

    -- Deck nails. The field is 12 in this edition, 6 in the next.
    ["deck.nail_panel_mid_most"] = { 1, unit = "in", sense = "at_most", cite = "Table R602.3(1)",
      status = "memory", source = "recalled" },
    ["deck.nail_field_most.thin"] = { 12, unit = "in", sense = "at_most",
      cite = "Table R602.3(1)", status = "memory",
      source = "recalled; a public code repository's note agrees for 2015" },
    ["deck.nail_field_most.mid"] = { 12, unit = "in", sense = "at_most",
      cite = "Table R602.3(1)", status = "memory",
      source = "recalled; a public code repository's note agrees for 2015" },
    ["deck.nail_band_most.thin"] = { 6, unit = "in", sense = "at_most",
      cite = "Table R602.3(1) footnote", status = "memory", source = "recalled" },
    ["deck.nail_band_most.mid"] = { 6, unit = "in", sense = "at_most",
      cite = "Table R602.3(1) footnote", status = "memory", source = "recalled" },
    ["deck.nail_band_most.thick"] = { 6, unit = "in", sense = "at_most",
      cite = "Table R602.3(1) footnote", status = "memory", source = "recalled" },
    ["deck.nail_band_close_most"] = { 4, unit = "in", sense = "at_most",
      cite = "Table R602.3(1) footnote", status = "memory", source = "recalled",
      disputed = "another recollection keeps 6 in the band and asks for 4 at gable "
        .. "framing only" },
    ["deck.nail_close_mph.B"] = { 130, unit = "mph", sense = "from",
      cite = "Table R602.3(1) footnote", status = "memory", source = "recalled" },
    ["deck.nail_close_mph.C"] = { 130, unit = "mph", sense = "from",
      cite = "Table R602.3(1) footnote", status = "memory", source = "recalled" },
    ["deck.nail_close_mph.D"] = { 130, unit = "mph", sense = "from",
      cite = "Table R602.3(1) footnote", status = "memory", source = "recalled" },
    ["deck.nail_close_at_named_speed"] = { true, sense = "equals",
      cite = "Table R602.3(1) footnote", status = "memory", source = "recalled",
      disputed = "another recollection has it over 130, not from 130" },

    -- Read in this edition.
    ["fasteners.per_shingle_least"] = { cite = "R905.2.6",
      status = "seen", source = "page of this edition" },
    ["fasteners.hurricane_zone_counts"] = { cite = "R905.2.6",
      status = "seen", source = "page of this edition: no such zone is named" },
    ["fasteners.steep_over"] = { cite = "R905.2.6",
      status = "seen", source = "page of this edition" },
    ["ventilation.reduced_needs_both"] = { true, sense = "equals", cite = "R806.2 exception",
      status = "memory", source = "recalled; also read second-hand" },

    -- wind --
    -- Which edition of the wind standard the cladding table was made with.
    ["wind.asce_year"] = { 2010, unit = "year", sense = "equals", cite = "Table R301.2(2)",
      status = "seen", source = "worked back from the table's pressures" },
    ["wind.kz_floor.B"] = { 0.7, unit = "coefficient", sense = "at_least",
      cite = "ASCE 7-10 Table 30.3-1", status = "memory",
      source = "recalled; the 30 ft and 15 ft columns of a county-filed table agree" },

  },
}
