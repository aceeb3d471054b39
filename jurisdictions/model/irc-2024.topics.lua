-- IRC 2024: fire, flashing, valleys and wood where their standing differs.

figures {
  ["underlayment.old_may_stay"] = { { "ice_barrier", "underlayment" }, cite = "R908.3 exc.",
    status = "parallel", source = "summary of the existing-building code of 2024" },
  ["underlayment.wind_on_vasd"] = { cite = "R301.2.1", status = "memory",
    source = "recalled; the map is a newer one" },
  ["layers.coating_over"] = { { "coating", "metal_panel", "roll_roofing", "built_up",
    "spray_foam" }, cite = "R908.3.1 item 4", status = "seen",
    source = "code officials' forum: the rules of 2021 are kept", disputed = "this edition adds "
      .. "a section on laying over (proposal RB281-22) that was not read: ask what it says" },
  ["fire.pv_class_required"] = { cite = "R902.3, R902.4", status = "memory",
    source = "recalled; read in the 2018 edition" },
  ["flashing.sidewall_methods"] = { cite = "R905.2.8.3",
    status = "memory", source = "recalled; read in the 2018 edition" },
  ["flashing.cricket_skylight_exempt"] = { cite = "R903.2.2 exc.", status = "memory",
    source = "recalled; read in the 2018 edition" },
}
