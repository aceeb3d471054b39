-- IRC 2015: reroofing moves to R908, underlayment to R905.1.1 with three
-- tables, and wind to the ultimate scale. The hail item is gone, and the ice
-- barrier reaches further on steep slopes.

local RECALLED = "recalled"

local function row(value, unit, sense)
  return { value, unit = unit, sense = sense, cite = "Table R602.3(1) footnote f",
    status = "memory", source = RECALLED }
end

jurisdiction "model/irc-2015" {
  title = "International Residential Code, 2015",
  model = true,
  follows = "model/irc",
  edition = "IRC 2015",
  parts = { "irc-2015.topics.lua" },
  figures = {
    ["layers.most"] = { cite = "R908.3.1.1", status = "parallel",
      source = "a city code of the building code's wording of 2015" },

    ["underlayment.kinds_normal"] = {
      cite = "Table R905.1.1(1)", status = "memory", source = "recalled; as in 2018" },
    ["underlayment.kinds_high_wind"] = { { "D226_II", "D4869_IV", "D6757" },
      cite = "Table R905.1.1(1)", status = "memory",
      source = "recalled: type III came with the 2018 edition" },
    ["underlayment.wind_by_map"] = { cite = "Table R905.1.1(1)", status = "memory",
      source = RECALLED },
    ["underlayment.wind_from"] = { cite = "Table R905.1.1(1)", status = "memory",
      source = RECALLED },
    ["underlayment.wind_on_vasd"] = { cite = "R301.2.1", status = "memory",
      source = "recalled; a roofing association saw the scale change in a state's code" },
    ["underlayment.fasteners_wind"] = { { "cap_nail" }, cite = "Table R905.1.1(3)",
      status = "memory", source = "recalled: cap staples came with the 2018 edition" },
    ["underlayment.sealed_deck_methods"] = { { "full_self_adhered" }, cite = "R905.1.1 exc. 1",
      status = "memory", source = "recalled: the other ways came with the 2018 edition" },

    ["drip_edge.eave_required"] = { cite = "R905.2.8.5", status = "seen",
      source = "commentary on this edition" },
    ["drip_edge.rake_required"] = { cite = "R905.2.8.5", status = "seen",
      source = "commentary on this edition" },

    -- Deck nails: the common nail alone, the ringed one came in 2018. 12 in the
    -- field; past 130 mph 6 in the band by the edges, and 4 into gable framing.
    ["deck.nail_kinds.thin"] = { { "common_8d" }, cite = "Table R602.3(1)", status = "memory",
      source = RECALLED },
    ["deck.nail_kinds.mid"] = { { "common_8d" }, cite = "Table R602.3(1)", status = "memory",
      source = RECALLED },
    ["deck.nail_panel_mid_most"] = { 1, unit = "in", sense = "at_most", cite = "Table R602.3(1)",
      status = "memory", source = RECALLED },
    ["deck.nail_field_most.thin"] = { 12, unit = "in", sense = "at_most",
      cite = "Table R602.3(1)", status = "memory",
      source = "recalled; a public code repository's note agrees" },
    ["deck.nail_field_most.mid"] = { 12, unit = "in", sense = "at_most",
      cite = "Table R602.3(1)", status = "memory",
      source = "recalled; a public code repository's note agrees" },
    ["deck.nail_band_most.thin"] = row(12, "in", "at_most"),
    ["deck.nail_band_most.mid"] = row(12, "in", "at_most"),
    ["deck.nail_band_most.thick"] = row(12, "in", "at_most"),
    ["deck.nail_band_close_most"] = row(6, "in", "at_most"),
    ["deck.nail_close_mph.B"] = row(130, "mph", "over"),
    ["deck.nail_close_mph.C"] = row(130, "mph", "over"),
    ["deck.nail_close_mph.D"] = row(130, "mph", "over"),
    ["deck.nail_close_at_named_speed"] = { false, sense = "equals",
      cite = "Table R602.3(1) footnote f", status = "memory",
      source = "recalled; over 130 was also read on a weak copy" },

    ["wind.asce_year"] = { 2010, unit = "year", sense = "equals", cite = "Table R301.2(2)",
      status = "memory", source = RECALLED },
    ["wind.kz_floor.B"] = { 0.7, unit = "coefficient", sense = "at_least",
      cite = "ASCE 7-10 Table 30.3-1", status = "memory", source = RECALLED },

    ["ventilation.reduced_needs_both"] = { true, sense = "equals", cite = "R806.2 exception",
      status = "memory", source = RECALLED },
  },
}
