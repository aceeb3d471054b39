-- IRC 2021: flashing, which was not read in this edition; coatings and the
-- shingles' standard, which were.

figures {
  ["layers.hail_bars_overlay"] = { cite = "R908.3.1.1", status = "memory",
    source = "recalled: gone since 2015" },
  ["underlayment.wind_on_vasd"] = { cite = "R301.2.1", status = "memory",
    source = "recalled; as in the 2018 edition" },
  ["shingle.standards"] = { cite = "R905.2.4", status = "seen",
    source = "roofing contractors' magazine on the I-Codes" },
  ["layers.coating_over"] = { { "coating", "metal_panel", "roll_roofing", "built_up",
    "spray_foam" }, cite = "R908.3.1 item 4", status = "seen",
    source = "code officials' forum on the 2021 recover rules" },
  ["flashing.sidewall_methods"] = { cite = "R905.2.8.3",
    status = "memory", source = "recalled; read in the 2018 edition" },
  ["flashing.cricket_skylight_exempt"] = { cite = "R903.2.2 exc.", status = "memory",
    source = "recalled; read in the 2018 edition" },
}
