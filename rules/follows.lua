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
together("What is stamped on the panels, how far apart are the rafters, what holds the panel edges "
  .. "between them, and does this deck stay?") {
  "decks[].span_rating", "decks[].thickness_in", "decks[].support_spacing_in",
  "decks[].edge_support", "decks[].work" }
together("How much clear air is there over the insulation at the vents, do all vents of this attic "
  .. "open outdoors, and how wide are their openings?") {
  "attics[].airspace_in", "attics[].vents_open_outdoors", "attics[].vents_opening_in" }
together "How long is the vent, and what net free area does its label give a foot?" {
  "attics[].vents[].length_ft", "attics[].vents[].nfa_sqin_per_ft" }
together "How many of the vent are there, and what net free area does the label of one give?" {
  "attics[].vents[].count", "attics[].vents[].nfa_each_sqin" }
together "Is there a permit, and who takes it out?" { "permit.status", "permit.holder" }

-- Facts that do not lead to one another, each in its own words: those of them that wait are
-- asked in one line, by where the answer is found.
together "How does the house stand?" { those_waiting = true,
  "house.kind", "house.stories", "house.mean_roof_height_ft", "house.year_built",
  "house.owner_lives_there" }
together "What is around it?" { those_waiting = true, "site.lot_line_ft", "site.exposure",
  "site.historic", "site.association", "site.right_of_way_used", "site.bin_used",
  "site.open_violations", "site.elevation_ft" }
together "What do the department's maps say of the site?" { those_waiting = true,
  "site.wind_vult_mph", "site.wind_design_required", "site.ice_barrier_in_table",
  "site.fire_zone", "site.state_fire_area", "site.hail_exposure", "site.climate_zone",
  "site.seismic_category", "site.high_velocity_hurricane_zone" }
together "What is done with the old covering, and how much of it?" { those_waiting = true,
  "scope.method", "scope.extent" }
together "What does the work come to?" { those_waiting = true, "scope.area_sqft",
  "scope.price_usd", "scope.roof_share_percent" }
together "What else is done with the roof?" { those_waiting = true, "scope.structure_altered",
  "scope.pitch_change", "scope.material_change", "scope.looks_change",
  "scope.skylights_changed", "scope.units_moved", "scope.new_underlayment",
  "scope.rest_under_relief", "scope.solar_reset" }
together "How is the covering listed, and warranted?" { those_waiting = true,
  "covering.fire_class", "covering.fire_proof", "covering.fire_test", "covering.UL_2218_class",
  "covering.aged_reflectance", "covering.aged_emittance", "covering.aged_SRI",
  "covering.lifetime_warranty", "covering.warranty_years", "covering.grade",
  "covering.on_local_list" }
together "What is shown of the contractor?" { those_waiting = true, "contractor.license",
  "contractor.registered", "contractor.overdue_permits", "contractor.workers_comp",
  "contractor.has_employees", "contractor.liability_usd", "contractor.lead_safe_firm" }
together "Which papers are there?" { those_waiting = true, "papers.contract",
  "papers.sketch_copies", "papers.approval_sheets", "papers.approval_numbers",
  "papers.maker_specification", "papers.plans", "papers.commencement_recorded",
  "papers.planning_consent", "papers.asbestos_notice", "papers.asbestos_test",
  "papers.waste_plan", "papers.waste_deposit_usd", "papers.site_measures",
  "papers.historic_certificate", "papers.engineer_report" }
together "How is the inspector called?" { those_waiting = true, "inspection.called_by",
  "inspection.notice_hours", "inspection.someone_home" }
together "What lies on the roof now, and what does a square of it weigh?" {
  "existing.coverings[].kind", "existing.coverings[].weight_lb_per_square" }
