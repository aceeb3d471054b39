-- IRC 2021: what may be coated over.

figures {
  ["layers.coating_over"] = { { "coating", "metal_panel", "metal_shingle", "roll_roofing",
    "built_up", "spray_foam" }, cite = "R908.3.1 item 4", status = "seen",
    source = "state code text on this edition" },
}
