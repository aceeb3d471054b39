-- drawings.lua - what the drawings of reports and cards are made of.
--
-- `of` says of which list of the job there is one each (left out: of the house), `when`
-- which of its items are drawn, `stages` whose card shows them; a report shows all.
-- Of its dimensions, `facts` says what the job plans, `rules` whose demand is held
-- against that, `figures` what the place says, `conditions` what is yes or no,
-- `numbers` gives one outright. A drawing is left out where none of its rules speaks;
-- `unjudged` then says why. The dimensions that each drawing has are in
-- engine/judge/drawing.c.

-- A roof from above, for the plan and for the plane that nailing zones are drawn on.
local planes = {
  of = "roof.slopes",
  facts = {
    name = "roof.slopes[].name",
    pitch = "roof.slopes[].pitch",
    eave = "roof.slopes[].eave_ft",
    ridge = "roof.slopes[].ridge_ft",
    run = "roof.slopes[].run_ft",
    area = "roof.slopes[].plan_sqft",
  },
}

local sides = {
  of = "roof.edges",
  facts = { length = "roof.edges[].length_ft" },
  conditions = {
    hip = is { "roof.edges[].kind", "hip" },
    valley = is { "roof.edges[].kind", "valley" },
    rake = is { "roof.edges[].kind", "rake", "sidewall" }, -- straight up the slope, both
    eave = is { "roof.edges[].kind", "eave", "onto_roof" },
  },
}

drawing "plan" {
  stages = { "permit" },
  facts = { ridge = "roof.ridge_ft" },
  lists = { planes = planes, sides = sides },
}

local has_panels = either {
  is { "decks[].kind", "panel" },
  is { "decks[].work", "paneled_over" },
  otherwise = "boards are nailed at each rafter",
}

drawing "nailing" {
  stages = { "deck" },
  of = "decks",
  when = has_panels,
  unjudged = "this deck is not nailed in this job",
  facts = {
    name = "decks[].name",
    edge = "decks[].nails.edge_spacing_in",
    field = "decks[].nails.field_spacing_in",
    gable = "decks[].nails.gable_spacing_in",
    band = "decks[].nails.band_spacing_in",
    band_width = "decks[].nails.band_width_in",
  },
  rules = {
    edge = "deck.nail_edges",
    field = "deck.nail_field",
    gable = "deck.nail_gable",
    band = "deck.nail_band",
    band_width = "deck.nail_band_width",
  },
  lists = { planes = planes, sides = sides },
}

drawing "panel" {
  stages = { "deck" },
  of = "decks",
  when = has_panels,
  unjudged = "this deck is not nailed in this job",
  facts = {
    name = "decks[].name",
    supports = "decks[].support_spacing_in",
    edge = "decks[].nails.edge_spacing_in",
    field = "decks[].nails.field_spacing_in",
    edge_distance = "decks[].nails.edge_distance_in",
    gap = "decks[].panel_gap_in",
  },
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
  of = "roof.edges",
  when = is { "roof.edges[].kind", "eave" },
  facts = {
    name = "roof.edges[].name",
    pitch = "roof.edges[].slope.pitch",
    overhang = "roof.edges[].overhang_in",
    wall = "roof.edges[].wall_thickness_in",
    reach = "roof.edges[].ice_barrier_reach_in",
    sheet = "roof.edges[].slope.underlayment.roll_width_in",
    starter = "roof.edges[].slope.underlayment.starter_width_in",
    head_lap = "roof.edges[].slope.underlayment.head_lap_in",
    down = "drip_edge.down_in",
    back = "drip_edge.back_in",
    spacing = "drip_edge.fastener_spacing_in",
  },
  conditions = {
    metal = is "roof.edges[].drip_edge",
    over_metal = is { "roof.edges[].underlayment_lies", "over_metal" },
    under_metal = is { "roof.edges[].underlayment_lies", "under_metal" },
  },
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
  facts = {
    strip = "covering.strip_length_in",
    exposure = "covering.exposure_printed_in",
    offset = "covering.offset_printed_in",
    nails = "fasteners.per_shingle",
  },
  rules = {
    exposure = "shingle.exposure",
    offset = "shingle.offset",
    nails = "fasteners.count",
  },
  numbers = { few = 4, many = 6 }, -- the two patterns wrappers print; common practice
}

-- What is not said to be unvented is drawn: its rules are open.
local no_area = "no vent area is judged there"

drawing "attic" {
  stages = { "final" },
  of = "attics",
  when = either { no { said "attics[].vented" }, is "attics[].vented", otherwise = no_area },
  unjudged = no_area,
  facts = { name = "attics[].name", area = "attics[].area_sqft" },
  rules = {
    needed = "ventilation.net_free_area",
    low = "ventilation.intake",
  },
  lists = {
    vents = {
      of = "attics[].vents",
      facts = {
        area_per_foot = "attics[].vents[].nfa_sqin_per_ft",
        length = "attics[].vents[].length_ft",
        area_each = "attics[].vents[].nfa_each_sqin",
        count = "attics[].vents[].count",
      },
      conditions = {
        high = is { "attics[].vents[].place", "high" },
        low = is { "attics[].vents[].place", "low" },
        fan = is { "attics[].vents[].kind", "powered" }, -- has no area that counts
      },
    },
  },
}
