-- Figures that the walk through the editions needed beside the topics'.

-- What was read: code texts of states that took the editions of 2015 to 2024 over,
-- not the printed books. In another edition such a figure counts as parallel.
local TEXTS = "state code texts on the editions of 2015 to 2024"
local BOOKS = { "IRC 2015", "IRC 2018", "IRC 2021", "IRC 2024" }

local function in_table(value, unit)
  return { value, unit = unit, sense = "at_least", cite = "Table R905.1.1(3)", status = "seen",
    source = TEXTS, read_in = BOOKS }
end

figures {
  -- Fasteners in moderate wind: in 2012 only.
  ["underlayment.mid_wind_applies"] = { false, sense = "equals", cite = "Table R905.1.1(3)",
    status = "seen", source = TEXTS, read_in = BOOKS },
  ["underlayment.mid_wind_over"] = { 110, unit = "mph", sense = "over", cite = "R905.2.7.2 of 2012",
    status = "parallel", source = "a paragraph left over from that edition in the text of 2015" },
  ["underlayment.lap_spacing_mid_most"] = { 36, unit = "in", sense = "at_most",
    cite = "R905.2.7.2 of 2012", status = "parallel",
    source = "a paragraph left over from that edition in the text of 2015" },

  -- The fasteners of the underlayment in wind.
  ["underlayment.cap_mils_least.metal"] = in_table(13.4, "mil"),
  ["underlayment.cap_mils_least.power_driven_metal"] = in_table(10, "mil"),
  ["underlayment.cap_mils_least.plastic"] = in_table(35, "mil"),
  ["underlayment.shank_least.ringed"] = in_table(0.083, "in"),
  ["underlayment.shank_least.smooth"] = in_table(0.091, "in"),
  ["underlayment.shank_least.staple"] = in_table(0.032, "in"),
  ["underlayment.bite_least"] = in_table(0.75, "in"),

  -- What old adhered sheet may stay on a stripped deck, covered again.
  ["underlayment.old_may_stay"] = { { "ice_barrier" }, sense = "one_of", cite = "R908.3 exc.",
    status = "seen", source = TEXTS, read_in = BOOKS },
  ["shingle.standards"] = { { "D3462" }, sense = "one_of", cite = "R905.2.4", status = "seen",
    source = TEXTS, read_in = BOOKS },
  -- Of what the list of 2021 names, modified and single-ply count as built-up here.
  ["layers.coating_over"] = { { "spray_foam" }, sense = "one_of", cite = "R908.3.1 item 4",
    status = "seen", source = TEXTS, read_in = { "IRC 2015" } },
}
