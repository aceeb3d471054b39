-- follows.lua - what a job need not say, and what it is asked in one line.
--
-- A fact that follows is written in where job, plan, shop sheet and place are silent, and
-- reports say of it that it is derived. It follows from one of: `value` (a plain one),
-- `same_as` (another fact of the house), `above` (a fact of the item it is in), `by` and
-- `values` or `figure` (a table by the word of a fact beside it), `filled` (a list beside it
-- has items), `only` (a reference to a list of one), `items` (a list of as many), `plan` (the house
-- between its walls). `when = { fact, word }` and `equal = { fact, fact }` bound it.
-- `usual = true` is a value that follows from nothing, for the takeoff only.
-- Nothing here may make right what the roof is not: what is measured never follows.

-- "Torn off" is all of it. Who leaves a layer says how many come off.
follows "existing.layers_removed" { same_as = "existing.layers",
  when = { "scope.method", "tear-off" } }
follows "existing.coverings" { items = "existing.layers" }
follows "existing.coverings[].removed" { value = true,
  equal = { "existing.layers", "existing.layers_removed" } }

follows "roof.slopes[].deck" { only = true }
-- What lies under an old covering that stays is not the new one.
follows "roof.slopes[].underlayment" { only = true, when = { "scope.method", "tear-off" } }
follows "roof.chimneys[].slope" { only = true }

-- The sizes that the names stand for: what is sold, whatever a code demands. A name without
-- a figure, or with one that nobody read, is asked.
follows "decks[].nails.length_in" { by = "kind", figure = "deck.nail_made_length" }
follows "decks[].nails.shank_in" { by = "kind", figure = "deck.nail_made_shank" }

-- An attic that has vents is vented. The one attic of a house has no more floor than the
-- house between its walls, and more floor asks for more vent, never for less.
follows "attics[].vented" { filled = "vents" }
follows "attics[].area_sqft" { plan = "attic_floor" }
follows "attics[].vents[].place" { by = "kind", values = {
  ridge = "high", soffit_strip = "low", soffit_unit = "low", eave_block = "low" } }
follows "attics[].vents[].opens_outdoors" { above = "vents_open_outdoors" }
follows "attics[].vents[].opening_in" { above = "vents_opening_in" }

-- Usual, where no code is concerned: common practice.
follows "takeoff.waste_percent" { value = 10, usual = true }

-- What `eavemark new` asks first, in this order; the rest by how much it decides.
order "interview" { "roof.footprint", "roof.slopes", "roof.edges", "roof.valleys", "scope.method",
  "scope.extent", "existing", "covering", "underlayments", "fasteners", "ice_barrier", "drip_edge",
  "decks", "attics" }

-- Read off one thing, answered in one line. The first leads: they are asked together where
-- that one decides something.
together "What does the shingle wrapper say, and how thick is the shingle where nails go?" {
  "covering.made_to", "covering.D7158_class", "covering.weight_lb_per_square",
  "covering.thickness_at_nail_in" }
together "What does the box of roofing nails say?" {
  "fasteners.kind", "fasteners.metal", "fasteners.shank_in", "fasteners.head_in",
  "fasteners.length_in" }
together "How many plies are laid everywhere, and how thick is one?" {
  "underlayments[].plies", "underlayments[].thickness_in" }
together("What is stamped on the panels, how far apart are the rafters, and what holds the "
  .. "panel edges between them?") {
  "decks[].span_rating", "decks[].thickness_in", "decks[].support_spacing_in",
  "decks[].edge_support" }
together("How much clear air is there over the insulation at the vents, do all vents of this attic "
  .. "open outdoors, and how wide are their openings?") {
  "attics[].airspace_in", "attics[].vents_open_outdoors", "attics[].vents_opening_in" }
together "How long is the vent, and what net free area does its label give a foot?" {
  "attics[].vents[].length_ft", "attics[].vents[].nfa_sqin_per_ft" }
together "How many of the vent are there, and what net free area does the label of one give?" {
  "attics[].vents[].count", "attics[].vents[].nfa_each_sqin" }
together "Is there a permit, and who takes it out?" { "permit.status", "permit.holder" }
