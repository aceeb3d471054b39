-- Valleys of shingle roofs (R905.2.8.2).

-- What was read: code texts of states that took the editions of 2015 to 2024 over,
-- not the printed books. In another edition such a figure counts as parallel.
local TEXTS = "state code texts on the editions of 2015 to 2024"
local BOOKS = { "IRC 2015", "IRC 2018", "IRC 2021", "IRC 2024" }
local CITE = "R905.2.8.2"

local function width(value, item)
  return { value, unit = "in", sense = "at_least", cite = CITE .. " " .. item, status = "seen",
    source = TEXTS, read_in = BOOKS }
end

local function mils(value)
  return { value, unit = "mil", sense = "at_least", cite = "Table R905.2.8.2",
    status = "seen", source = TEXTS, read_in = BOOKS }
end

figures {
  ["valley.lining_required"] = { true, sense = "equals", cite = CITE, status = "seen",
    source = TEXTS, read_in = BOOKS },
  ["valley.on_overlay_required"] = { true, sense = "equals", cite = "R908.1, " .. CITE,
    status = "seen", source = TEXTS, read_in = BOOKS },
  ["valley.lined_first"] = { true, sense = "equals", cite = CITE, status = "seen", source = TEXTS,
    read_in = BOOKS },
  ["valley.linings_open"] = { { "metal", "two_ply_roll" }, sense = "one_of",
    cite = CITE .. " items 1 and 2", status = "seen", source = TEXTS, read_in = BOOKS },
  ["valley.linings_closed"] = { { "smooth_roll", "self_adhered", "metal", "two_ply_roll" },
    sense = "one_of", cite = CITE .. " item 3", status = "seen", source = TEXTS, read_in = BOOKS },
  ["valley.metal_width_least"] = width(24, "item 1"),
  ["valley.roll_bottom_width_least"] = width(18, "item 2"),
  ["valley.roll_top_width_least"] = width(36, "item 2"),
  ["valley.smooth_width_least"] = width(36, "item 3"),
  ["valley.self_adhered_width_least"] = { 36, unit = "in", sense = "at_least",
    cite = CITE .. " item 3", status = "practice",
    source = "the width of the lining it stands in for: no width of its own was read" },

  -- Table R905.2.8.2.
  ["valley.metals"] = { { "copper", "high_yield_copper", "lead_coated_copper",
      "lead_coated_high_yield_copper", "aluminum", "stainless", "galvanized", "zinc", "lead",
      "painted_terne" }, sense = "one_of", cite = "Table R905.2.8.2", status = "seen",
    source = TEXTS, read_in = BOOKS },
  ["valley.metals_by_gage"] = { { "stainless" }, sense = "among", cite = "Table R905.2.8.2",
    status = "seen", source = TEXTS, read_in = BOOKS },
  ["valley.metals_by_weight"] = { { "lead", "painted_terne" }, sense = "among",
    cite = "Table R905.2.8.2", status = "seen", source = TEXTS, read_in = BOOKS },
  -- Thicknesses in thousandths of an inch.
  ["valley.metal_mils_least.copper"] = mils(21.6),
  ["valley.metal_mils_least.high_yield_copper"] = mils(16.2),
  ["valley.metal_mils_least.lead_coated_copper"] = mils(21.6),
  ["valley.metal_mils_least.lead_coated_high_yield_copper"] = mils(16.2),
  ["valley.metal_mils_least.aluminum"] = mils(24),
  ["valley.metal_mils_least.galvanized"] = { 17.9, unit = "mil", sense = "at_least",
    cite = "Table R905.2.8.2", status = "seen", source = TEXTS, read_in = BOOKS },
  ["valley.metal_mils_least.zinc"] = mils(27),
  ["valley.metal_gage_most.stainless"] = { 28, unit = "gage", sense = "at_most",
    cite = "Table R905.2.8.2", status = "seen", source = TEXTS, read_in = BOOKS },
  ["valley.metal_weight_least.lead"] = { 2.5, unit = "lb", sense = "at_least",
    cite = "Table R905.2.8.2", status = "seen", source = TEXTS, read_in = BOOKS },
  ["valley.metal_weight_least.painted_terne"] = { 20, unit = "lb", sense = "at_least",
    cite = "Table R905.2.8.2", status = "seen", source = TEXTS, read_in = BOOKS },

  ["valley.nails_from_center_least"] = { 6, unit = "in", sense = "at_least",
    cite = CITE .. " gives no figure", status = "practice", source = "recalled trade practice" },
}
