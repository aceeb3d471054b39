-- IRC 2021: what this edition changes.

local TEXT = "state code text on this edition"

local function read(value, unit, sense, cite)
  return { value, unit = unit, sense = sense, cite = cite, status = "seen", source = TEXT }
end

local function row(value, item)
  return read(value, "in", "at_most", "Table R602.3(1)" .. (item and " item " .. item or ""))
end

local function footnote(value, unit, sense)
  return read(value, unit, sense, "Table R602.3(1) footnote f")
end

jurisdiction "model/irc-2021" {
  title = "International Residential Code, 2021",
  model = true,
  follows = "model/irc",
  edition = "IRC 2021",
  parts = { "irc-2021.flashing.lua" },
  figures = {
    -- The tables ask for a map of where wind design is required, not for 140 mph.
    ["underlayment.wind_by_map"] = read(true, nil, "equals",
      "Table R905.1.1(1), Figure R301.2.1.1"),
    ["underlayment.kinds_normal"] = read(
      { "D226_I", "D226_II", "D4869_I", "D4869_II", "D4869_III", "D4869_IV", "D6757" }, nil,
      "one_of", "Table R905.1.1(1)"),
    ["underlayment.kinds_high_wind"] = read({ "D226_II", "D4869_III", "D4869_IV" }, nil,
      "one_of", "Table R905.1.1(1)"),

    ["underlayment.plies_high_wind_least"] = read(2, "plies", "at_least", "Table R905.1.1(2)"),
    ["underlayment.sealed_deck_methods"] = read({ "full_self_adhered", "taped_joints" }, nil,
      "one_of", "R905.1.1 exc. 1 and 2"),
    ["underlayment.fasteners_wind"] = read({ "cap_nail" }, nil, "one_of", "Table R905.1.1(3)"),
    ["underlayment.shanks"] = read({ "ringed" }, nil, "one_of", "Table R905.1.1(3)"),

    ["ice_barrier.by_table"] = { cite = "R905.1.2, Table R301.2" },
    ["ice_barrier.required"] = { cite = "R905.1.2, Table R301.2" },

    -- Deck nails. The field came down to 6 for panels up to 3/4 in.
    ["deck.nail_panel_mid_most"] = row(0.75, 32),
    ["deck.nail_field_most.thin"] = row(6, 31),
    ["deck.nail_field_most.mid"] = row(6, 32),
    ["deck.nail_band_most.thin"] = row(6),
    ["deck.nail_band_most.mid"] = row(6),
    ["deck.nail_band_most.thick"] = row(12),
    ["deck.nail_band_close_most"] = footnote(4, "in", "at_most"),
    ["deck.nail_close_mph.B"] = footnote(130, "mph", "over"),
    ["deck.nail_close_mph.C"] = footnote(110, "mph", "over"),
    ["deck.nail_close_mph.D"] = { 110, unit = "mph", sense = "over",
      cite = "Table R602.3(1) footnote f names no exposure D", status = "practice",
      source = "taken as exposure C, the windiest that the footnote names" },
    ["deck.staple_mph_most"] = read(110, "mph", "at_most", "Table R602.3(2)"),
    ["deck.nail_close_at_named_speed"] = footnote(false, nil, "equals"),

    ["ventilation.reduced_needs_both"] = read(true, nil, "equals", "R806.2 exception"),

    -- Which edition of the wind standard the cladding table was made with.
    ["wind.asce_year"] = read(2016, "year", "equals", "Table R301.2.1(1)"),
    ["wind.kz_floor.B"] = { 0, unit = "coefficient", sense = "at_least",
      cite = "ASCE 7-16 Table 26.10-1", status = "seen",
      source = "a guide to the standard: 0.57 at 12 ft" },
  },
}
