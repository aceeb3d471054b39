-- IRC 2018: what this edition changes.

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

jurisdiction "model/irc-2018" {
  title = "International Residential Code, 2018",
  model = true,
  follows = "model/irc",
  edition = "IRC 2018",
  parts = { "irc-2018.flashing.lua" },
  figures = {
    -- Deck nails. The field is 12 in this edition, 6 in the next; 6 in the band
    -- under 130 mph, 4 from there.
    ["deck.nail_panel_mid_most"] = row(1),
    ["deck.nail_field_most.thin"] = row(12),
    ["deck.nail_field_most.mid"] = row(12),
    ["deck.nail_band_most.thin"] = footnote(6, "in", "at_most"),
    ["deck.nail_band_most.mid"] = footnote(6, "in", "at_most"),
    ["deck.nail_band_most.thick"] = footnote(6, "in", "at_most"),
    ["deck.nail_band_close_most"] = footnote(4, "in", "at_most"),
    ["deck.nail_close_mph.B"] = footnote(130, "mph", "from"),
    ["deck.nail_close_mph.C"] = footnote(130, "mph", "from"),
    ["deck.nail_close_mph.D"] = footnote(130, "mph", "from"),
    ["deck.nail_close_at_named_speed"] = footnote(true, nil, "equals"),

    ["ventilation.reduced_needs_both"] = read(true, nil, "equals", "R806.2 exception"),

    -- Which edition of the wind standard the cladding table was made with.
    ["wind.asce_year"] = read(2010, "year", "equals", "Table R301.2(2)"),
    ["wind.kz_floor.B"] = read(0.7, "coefficient", "at_least", "ASCE 7-10 Table 30.3-1"),
  },
}
