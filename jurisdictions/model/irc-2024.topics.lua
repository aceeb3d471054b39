-- IRC 2024: what of the old roof may stay or be coated over.

local TEXT = "state code text on this edition"

figures {
  ["underlayment.old_may_stay"] = { { "ice_barrier", "underlayment" }, cite = "R908.3 exc.",
    status = "seen", source = TEXT },
  ["layers.coating_over"] = { { "coating", "metal_panel", "metal_shingle", "roll_roofing",
    "built_up", "spray_foam" }, cite = "R908.4 item 4", status = "seen", source = TEXT },
  ["valley.self_adhered_width_least"] = { 36, cite = "R905.2.8.2 item 3", status = "seen",
    source = TEXT },
}
