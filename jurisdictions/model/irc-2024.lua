-- IRC 2024: as 2021 but for the ice barrier on steep slopes, a standard for
-- synthetic underlayment, and a new section on laying over (proposal
-- RB281-22) of which only the existence was read.

local AS_2021 = "recalled; as in the 2021 edition"
local NEW_SECTION = "this edition adds a section on laying over (proposal RB281-22) that was "
  .. "not read: ask what it says"
local REMOVED = "officials argue about the text as first posted: look in the adopted printing"

jurisdiction "model/irc-2024" {
  title = "International Residential Code, 2024",
  model = true,
  follows = "model/irc",
  edition = "IRC 2024",
  parts = { "irc-2024.topics.lua" },
  figures = {
    ["layers.most"] = { cite = "R908.3.1.1", status = "parallel",
      source = "summary of the existing-building code of 2024" },
    ["layers.peeled_counts"] = { cite = "R908.3.1.1 item 3", disputed = NEW_SECTION },
    ["layers.overlay_allowed"] = { true, cite = "R908.3.1", status = "seen",
      source = "code officials' forum: the rules of 2021 are kept", disputed = NEW_SECTION },
    ["layers.overlay_needs_maker"] = { true, cite = "R908.3.1 item 1", status = "seen",
      source = "code officials' forum: the rules of 2021 are kept", disputed = NEW_SECTION },
    ["layers.hail_bars_overlay"] = { false, cite = "R908.3.1", status = "memory",
      source = "recalled: the item left in 2015", disputed = NEW_SECTION },
    ["layers.bases_allowed"] = { cite = "R908.3.1.1 item 1", disputed = NEW_SECTION },
    ["layers.not_over"] = { cite = "R908.3.1.1 item 2", disputed = NEW_SECTION },

    ["underlayment.wind_by_map"] = { true, cite = "Table R905.1.1(1), Figure R301.2.1.1",
      status = "memory", source = AS_2021 },
    ["underlayment.kinds_normal"] = {
      { "D226_I", "D226_II", "D4869_I", "D4869_II", "D4869_III", "D4869_IV", "D6757", "D8257" },
      cite = "Table R905.1.1(1)", status = "memory",
      source = "recalled; the standard for synthetics was read of, its adoption not" },
    ["underlayment.kinds_high_wind"] = {
      { "D226_II", "D4869_III", "D4869_IV", "D6757", "D8257" },
      cite = "Table R905.1.1(1)", status = "memory",
      source = "recalled; the standard for synthetics was read of, its adoption not" },

    ["ice_barrier.by_table"] = { cite = "R905.1.2, Table R301.2" },
    ["ice_barrier.required"] = { cite = "R905.1.2, Table R301.2" },
    ["ice_barrier.steep_applies"] = { false, cite = "R905.1.2", status = "seen",
      source = "code officials' forum: the longer reach was removed", disputed = REMOVED,
      rival = true },

    ["drip_edge.eave_required"] = { cite = "R905.2.8.5", status = "memory",
      source = AS_2021 },
    ["drip_edge.rake_required"] = { cite = "R905.2.8.5", status = "memory",
      source = AS_2021 },

    ["deck.nail_panel_mid_most"] = { 0.75, unit = "in", sense = "at_most",
      cite = "Table R602.3(1)", status = "memory", source = AS_2021 },
    ["deck.nail_field_most.thin"] = { 6, unit = "in", sense = "at_most",
      cite = "Table R602.3(1)", status = "memory", source = AS_2021 },
    ["deck.nail_field_most.mid"] = { 6, unit = "in", sense = "at_most",
      cite = "Table R602.3(1)", status = "memory", source = AS_2021 },
    ["deck.nail_band_most.thin"] = { 6, unit = "in", sense = "at_most",
      cite = "Table R602.3(1)", status = "memory", source = AS_2021 },
    ["deck.nail_band_most.mid"] = { 6, unit = "in", sense = "at_most",
      cite = "Table R602.3(1)", status = "memory", source = AS_2021 },
    ["deck.nail_band_most.thick"] = { 12, unit = "in", sense = "at_most",
      cite = "Table R602.3(1)", status = "memory", source = AS_2021 },
    ["deck.nail_band_close_most"] = { 4, unit = "in", sense = "at_most",
      cite = "Table R602.3(1) footnote", status = "memory", source = AS_2021 },
    ["deck.nail_close_mph.B"] = { 130, unit = "mph", sense = "over",
      cite = "Table R602.3(1) footnote", status = "memory", source = AS_2021 },
    ["deck.nail_close_mph.C"] = { 110, unit = "mph", sense = "over",
      cite = "Table R602.3(1) footnote", status = "memory", source = AS_2021 },
    ["deck.nail_close_mph.D"] = { 110, unit = "mph", sense = "over",
      cite = "Table R602.3(1) footnote", status = "memory", source = AS_2021 },
    ["deck.nail_close_at_named_speed"] = { false, sense = "equals",
      cite = "Table R602.3(1) footnote", status = "memory", source = AS_2021 },

    ["wind.asce_year"] = { 2016, unit = "year", sense = "equals", cite = "Table R301.2.1(1)",
      status = "memory", source = AS_2021,
      disputed = "this edition is said to rest on the standard of 2022, which is not carried" },
    ["wind.kz_floor.B"] = { 0, unit = "coefficient", sense = "at_least",
      cite = "Table R301.2.1(2)", status = "memory", source = AS_2021 },

    ["ventilation.reduced_needs_both"] = { true, sense = "equals", cite = "R806.2 exception",
      status = "memory", source = "recalled" },
  },
}
