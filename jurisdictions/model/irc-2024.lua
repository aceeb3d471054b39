-- IRC 2024: as 2021 but for underlayment where the wind is strong, a standard for
-- synthetic underlayment, the wind standard of 2022, and new numbers: laying over
-- is R908.4, smoke alarms R310, carbon monoxide R311, addresses R308.1.

local TEXT = "state code text on this edition"
local HEIGHTS = "worked back from the height factors of Table R301.2.1(2)"
local AS_BEFORE = "gives the height factors of 2015 to 2021, from which that table was found to "
  .. "differ in exposure B alone"

local function read(value, unit, sense, cite)
  return { value, unit = unit, sense = sense, cite = cite, status = "seen", source = TEXT }
end

local function row(value)
  return read(value, "in", "at_most", "Table R602.3(1)")
end

local function footnote(value, unit, sense)
  return read(value, unit, sense, "Table R602.3(1) footnote f")
end

jurisdiction "model/irc-2024" {
  title = "International Residential Code, 2024",
  model = true,
  follows = "model/irc",
  edition = "IRC 2024",
  parts = { "irc-2024.topics.lua", "irc-2024.numbers.lua" },
  figures = {
    ["underlayment.wind_by_map"] = read(true, nil, "equals",
      "Table R905.1.1(1), Figure R301.2.1.1"),
    ["underlayment.kinds_normal"] = read({ "D226_I", "D226_II", "D1970", "D4869_I", "D4869_II",
      "D4869_III", "D4869_IV", "D6757", "D8257" }, nil, "one_of", "Table R905.1.1(1)"),
    ["underlayment.kinds_high_wind"] = read(
      { "D226_II", "D1970", "D4869_III", "D4869_IV", "D8257" }, nil, "one_of",
      "Table R905.1.1(1)"),
    ["underlayment.sealed_deck_methods"] = read(
      { "full_self_adhered", "taped_joints", "two_plies" }, nil, "one_of", "Table R905.1.1(2)"),

    ["underlayment.plies_high_wind_least"] = read(2, "plies", "at_least", "Table R905.1.1(2)"),
    -- Half the sheet and 2 in: 20 in of common felt; the starter is half a sheet.
    ["underlayment.double_lap_by_roll"] = read(true, nil, "equals", "Table R905.1.1(2)"),
    ["underlayment.head_lap_double_least"] = read(20, "in", "at_least", "Table R905.1.1(2)"),
    ["underlayment.starter_width_least"] = read(18, "in", "at_least", "Table R905.1.1(2)"),
    ["underlayment.tape_frees_kind"] = read(false, nil, "equals", "Table R905.1.1(1)"),
    ["underlayment.fasteners_wind"] = read({ "cap_nail" }, nil, "one_of", "Table R905.1.1(3)"),
    ["underlayment.shanks"] = read({ "ringed" }, nil, "one_of", "Table R905.1.1(3)"),

    ["ice_barrier.by_table"] = { cite = "R905.1.2, Table R301.2" },
    ["ice_barrier.required"] = { cite = "R905.1.2, Table R301.2" },
    ["ice_barrier.steep_applies"] = { true, cite = "R905.1.2", status = "seen", source = TEXT,
      disputed = "a code officials' forum says that this edition let it go; four copies of the "
        .. "text still print it", rival = false },

    ["deck.nail_panel_mid_most"] = row(0.75),
    ["deck.nail_field_most.thin"] = row(6),
    ["deck.nail_field_most.mid"] = row(6),
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
    ["deck.nail_gravity_counts"] = read(true, nil, "equals", "Table R602.3(1) footnote f"),
    ["deck.nail_close_at_named_speed"] = footnote(false, nil, "equals"),

    -- The standard of 2022, its zones and its height factors. In exposure B these give the
    -- table's factors at 15 to 25 and 40 to 50 ft; at 30 ft 0.69 where it has 0.70.
    ["wind.asce_year"] = read(2022, "year", "equals", "Table R301.2.1(1)"),
    ["wind.kz_factor"] = { 2.41, cite = "ASCE 7-22 26.10", status = "seen", source = HEIGHTS },
    ["wind.alpha.B"] = { 7.5, cite = "ASCE 7-22 26.10", status = "seen", source = HEIGHTS },
    ["wind.gradient_height.B"] = { 3280, cite = "ASCE 7-22 26.10", status = "seen",
      source = HEIGHTS },
    ["wind.alpha.C"] = { 9.8, cite = "ASCE 7-22 26.10", status = "parallel", source = AS_BEFORE },
    ["wind.gradient_height.C"] = { 2460, cite = "ASCE 7-22 26.10", status = "parallel",
      source = AS_BEFORE },
    ["wind.gradient_height.D"] = { 1935, cite = "ASCE 7-22 26.10", status = "parallel",
      source = AS_BEFORE },
    ["wind.kz_floor.B"] = read(0, "coefficient", "at_least", "Table R301.2.1(2)"),

    ["ventilation.reduced_needs_both"] = read(true, nil, "equals", "R806.2 exception"),
  },
}
