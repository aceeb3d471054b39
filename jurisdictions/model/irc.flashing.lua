-- Flashing and crickets (R903.2, R905.2.8, R1003.20, R908.5 and R908.6).

local HANDOUT = "city handout on shingle flashing"
local PAGES = "pages of the 2015 and 2018 editions in permit files"

figures {
  ["flashing.required"] = { true, sense = "equals", cite = "R903.2.1", status = "seen",
    source = HANDOUT },
  -- "by_instructions" is what the maker prints; the code gives no dimension.
  ["flashing.sidewall_methods"] = { { "step", "continuous" }, sense = "one_of",
    cite = "R905.2.8.3", status = "seen", source = PAGES },
  ["flashing.headwall_methods"] = { { "step", "continuous", "by_instructions" },
    sense = "one_of", cite = "R905.2.8.4", status = "seen", source = PAGES },
  ["flashing.slope_change_methods"] = { { "step", "continuous", "by_instructions" },
    sense = "one_of", cite = "R903.2.1", status = "seen", source = HANDOUT },
  ["flashing.sidewall_up_least"] = { 4, unit = "in", sense = "at_least", cite = "R905.2.8.3",
    status = "seen", source = PAGES },
  ["flashing.sidewall_out_least"] = { 4, unit = "in", sense = "at_least", cite = "R905.2.8.3",
    status = "seen", source = PAGES },
  ["flashing.wall_covers"] = { { "siding", "counterflashing" }, sense = "one_of",
    cite = "R905.2.8.3", status = "seen", source = PAGES },
  ["flashing.kickout_required"] = { true, sense = "equals", cite = "R903.2.1",
    status = "memory",
    source = "recalled; the duty to turn water away was read in R905.2.8.3" },

  ["flashing.masonry_counterflashed"] = { true, sense = "equals", cite = "R1003.20",
    status = "memory", source = "recalled" },
  ["flashing.cricket_required"] = { true, sense = "equals", cite = "R903.2.2",
    status = "seen", source = "state residential code and city handout" },
  ["flashing.cricket_over"] = { 30, unit = "in", sense = "over", cite = "R903.2.2",
    status = "seen", source = "state residential code and city handout" },
  ["flashing.cricket_covers"] = { { "sheet_metal", "roof_covering" }, sense = "one_of",
    cite = "R903.2.2", status = "seen", source = "state residential code and city handout" },
  ["flashing.cricket_skylight_exempt"] = { true, sense = "equals", cite = "R903.2.2 exc.",
    status = "seen", source = "a state residential code on the 2018 edition" },
  ["flashing.cricket_by_table"] = { true, sense = "equals",
    cite = "R1003.20, Table R1003.20", status = "memory", source = "recalled" },

  ["flashing.metal_least"] = { 0.019, unit = "in", sense = "at_least",
    cite = "R903.2.1, R905.2.8.1", status = "seen",
    source = HANDOUT .. "; page of the 2018 edition" },
  ["flashing.base_kinds"] = { { "metal", "mineral_roll" }, sense = "one_of",
    cite = "R905.2.8.1", status = "parallel", source = "page of the 2018 edition" },
  ["flashing.base_roll_least"] = { 77, unit = "lb_per_square", sense = "at_least",
    cite = "R905.2.8.1", status = "parallel", source = "page of the 2018 edition" },
  ["flashing.cap_least"] = { 0.019, unit = "in", sense = "at_least", cite = "R905.2.8.1",
    status = "parallel", source = "page of the 2018 edition" },

  ["flashing.reuse_allowed"] = { true, sense = "equals", cite = "R908.5", status = "memory",
    source = "recalled; a city page says that sound flashing may be used again" },
  ["flashing.reuse_barred"] = { { "rusted", "damaged", "decayed" }, sense = "none_of",
    cite = "R908.5", status = "memory",
    source = "recalled; a state's reroof handout says the same of R907.5" },
}
