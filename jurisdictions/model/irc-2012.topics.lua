-- IRC 2012: fire, flashing, valleys and wood where section or standing differ.

figures {
  ["underlayment.mid_wind_applies"] = { true, cite = "R905.2.7.2", status = "memory",
    source = "recalled" },
  ["underlayment.mid_wind_over"] = { cite = "R905.2.7.2" },
  ["underlayment.lap_spacing_mid_most"] = { cite = "R905.2.7.2" },
  ["layers.flat_differs"] = { cite = "R907.3" },
  ["layers.flat_under"] = { cite = "R907.3" },
  ["layers.most_flat"] = { cite = "R907.3" },
  ["layers.overlay_by_listing"] = { cite = "R907.3" },
  ["layers.listing_over_classes"] = { cite = "R907.3" },
  ["underlayment.old_may_stay"] = { {}, cite = "R907.3", status = "memory",
    source = "recalled: the exception came in 2015" },
  ["shingle.standards"] = { { "D225", "D3462" }, cite = "R905.2.4", status = "memory",
    source = "recalled; the pair was read on a page of an older edition" },
  ["layers.coating_over"] = { cite = "R907.3", status = "memory",
    source = "recalled; read in the edition of 2009" },

  -- Older texts have one flat list of what counts as class A.
  ["fire.deemed_A_noncombustible_deck"] = {
    { "metal_panel", "metal_shingle", "clay_tile", "concrete_tile", "slate" },
    cite = "R902.1 exc.", status = "memory", source = "recalled",
    disputed = "older texts list these coverings without asking for a noncombustible deck" },
  ["fire.pv_class_required"] = { false, cite = "R902", status = "memory",
    source = "recalled: the section on solar came in 2015" },

  ["flashing.sidewall_methods"] = { cite = "R905.2.8.3",
    status = "memory",
    source = "recalled: believed the first edition to take a continuous piece" },
  ["flashing.wall_covers"] = { cite = "R905.2.8.3", status = "memory",
    source = "recalled; as in the 2015 edition" },
  ["flashing.headwall_methods"] = { cite = "R905.2.8.4", status = "memory",
    source = "recalled; as in the 2015 edition" },
  ["flashing.cricket_skylight_exempt"] = { cite = "R903.2.2 exc.", status = "memory",
    source = "recalled" },
  ["flashing.base_kinds"] = { cite = "R905.2.8.1", status = "memory", source = "recalled" },
  ["flashing.base_roll_least"] = { cite = "R905.2.8.1", status = "memory",
    source = "recalled" },
  ["flashing.cap_least"] = { cite = "R905.2.8.1", status = "memory", source = "recalled" },
  ["flashing.reuse_allowed"] = { cite = "R907.5" },
  ["flashing.reuse_barred"] = { cite = "R907.5", status = "parallel",
    source = "a state's reroof handout on R907.5" },

  ["valley.on_overlay_required"] = { cite = "R907.1, R905.2.8.2" },

  ["wood.rot_replaced_required"] = { cite = "R905.2.1, R907.2" },
  ["wood.repairs_allowed"] = { cite = "R905.2.1, R907.2" },
  ["wood.structure_required"] = { cite = "R907.2" },
}
