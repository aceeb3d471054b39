-- IRC 2015: reroofing moves to R908, underlayment to R905.1.1 with three
-- tables, and wind to the ultimate scale. The hail item is gone, and the ice
-- barrier reaches further on steep slopes.

local TEXT = "state code text on this edition"

local function read(value, unit, sense, cite)
  return { value, unit = unit, sense = sense, cite = cite, status = "seen", source = TEXT }
end

local function row(value)
  return read(value, "in", "at_most", "Table R602.3(1)")
end

local function footnote(value, unit, sense)
  return read(value, unit, sense, "Table R602.3(1) footnote f")
end

jurisdiction "model/irc-2015" {
  title = "International Residential Code, 2015",
  model = true,
  follows = "model/irc",
  edition = "IRC 2015",
  figures = {
    ["underlayment.kinds_high_wind"] = { { "D226_II", "D4869_IV", "D6757" },
      cite = "Table R905.1.1(1)", status = "seen", source = TEXT },

    ["underlayment.sealed_deck_methods"] = { { "full_self_adhered", "taped_joints" },
      cite = "R905.1.1 exc. 1 and 2", status = "seen", source = TEXT },
    ["underlayment.end_lap_double_least"] = { 4, cite = "Table R905.1.1(2), by its row of one ply",
      status = "practice", source = "the row of one ply; the rows under 4:12 name no end lap" },

    -- Deck nails: the common nail alone, the ringed one came in 2018. 12 in the
    -- field; past 130 mph 6 in the band by the edges, and 4 into gable framing.
    ["deck.nail_kinds.thin"] = { { "common_8d" }, cite = "Table R602.3(1)", status = "seen",
      source = TEXT },
    ["deck.nail_kinds.mid"] = { { "common_8d" }, cite = "Table R602.3(1)", status = "seen",
      source = TEXT },
    ["deck.nail_panel_mid_most"] = row(1),
    ["deck.nail_field_most.thin"] = row(12),
    ["deck.nail_field_most.mid"] = row(12),
    ["deck.nail_band_most.thin"] = footnote(12, "in", "at_most"),
    ["deck.nail_band_most.mid"] = footnote(12, "in", "at_most"),
    ["deck.nail_band_most.thick"] = footnote(12, "in", "at_most"),
    ["deck.nail_band_close_most"] = footnote(6, "in", "at_most"),
    ["deck.nail_close_mph.B"] = footnote(130, "mph", "over"),
    ["deck.nail_close_mph.C"] = footnote(130, "mph", "over"),
    ["deck.nail_close_mph.D"] = footnote(130, "mph", "over"),
    ["deck.nail_close_at_named_speed"] = footnote(false, nil, "equals"),

    ["wind.asce_year"] = read(2010, "year", "equals", "Table R301.2(2)"),
    ["wind.kz_floor.B"] = read(0.7, "coefficient", "at_least", "ASCE 7-10 Table 30.3-1"),

    -- One of the two conditions is enough for the smaller vent area.
    ["ventilation.reduced_needs_both"] = read(false, nil, "equals", "R806.2 exception"),
  },
}
