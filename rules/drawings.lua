-- drawings.lua - where the drawings of reports and cards get their numbers.
--
-- What is planned comes from the job. `rules` says whose demand is which
-- dimension, `figures` which figure is, `numbers` gives one outright; `stages`
-- says whose card shows the drawing, a report shows all of them. A drawing is
-- left out where none of its rules applies. The dimensions each drawing has are
-- in engine/draw/drawings.h.

drawing "plan" {
  stages = { "permit" },
}

drawing "nailing" {
  stages = { "deck" },
  rules = {
    edge = "deck.nail_edges",
    field = "deck.nail_field",
    gable = "deck.nail_gable",
    band = "deck.nail_band",
    band_width = "deck.nail_band_width",
  },
}

drawing "panel" {
  stages = { "deck" },
  rules = {
    edge = "deck.nail_edges",
    field = "deck.nail_field",
    edge_distance = "deck.nail_edge_distance",
    gap = "deck.panel_gap",
  },
  figures = { length = "takeoff.panel_length", width = "takeoff.panel_width" },
}

drawing "eave" {
  stages = { "dry-in" },
  rules = {
    reach = "ice_barrier.reach",
    head_lap = "underlayment.head_lap",
    metal = "drip_edge.eave",
    down = "drip_edge.down",
    back = "drip_edge.back",
    spacing = "drip_edge.fastener_spacing",
  },
  figures = {
    inside = "ice_barrier.inside_wall_least",
    wall_counts = "ice_barrier.wall_counts",
    strip_alone = "ice_barrier.strip_allowed", -- then nothing inside the wall is asked for
  },
}

drawing "courses" {
  stages = { "final" },
  rules = {
    exposure = "shingle.exposure",
    offset = "shingle.offset",
    nails = "fasteners.count",
  },
  numbers = { few = 4, many = 6 }, -- the two patterns wrappers print; common practice
}

drawing "attic" {
  stages = { "final" },
  rules = {
    needed = "ventilation.net_free_area",
    low = "ventilation.intake",
  },
}
