-- fields.lua - everything a job may say.
--
-- One declaration per fact: its place in the job, type, unit, range or
-- choices, the stage at which it is known, and the question a person would be
-- asked. Validation, `eavemark fields` and the JSON Schema all come from here.
--
-- `answer` says where one would look it up: the desk, the wrapper (or box, or label),
-- a paper, the department, the roof or the attic. What a group or list says goes for
-- all in it that says nothing else; what no one says is found at the desk.
--
-- Types: group, list, text, number, integer, yes_no, choice, slope, date,
-- numbers, choices, reference. A number's name ends in its unit. A field with
-- measured = true was seen on the roof at that stage; the same fact without
-- "measured_" is what is planned. With habit a shop sheet may say it (rules/README.md):
-- "product" is a fact of what is bought, and one that differs makes another product of
-- it; true is how the shop goes about it. Never what is measured, dated, or of one house.
-- stays = true: where it is yes, the thing was there before, and no sheet speaks of it.
-- of_place = true: a place may state it for all houses there (jurisdictions/README.md).

-- The job itself ------------------------------------------------------------

field "eavemark_job" { type = "integer", range = { 1, 1 }, required = true, stage = "permit",
  ask = "Which version of the job format is this? (1)" }
field "job" { type = "text", range = { 1, 200 }, required = true, stage = "permit",
  ask = "What do you call this job?" }
field "jurisdiction" { type = "text", range = { 1, 200 }, required = true, stage = "permit",
  ask = "Which building department issues the permit?" }
field "date" { type = "date", required = true, stage = "permit",
  ask = "On which day is the permit applied for?" }
field "stage" { type = "choice", choices = { "permit", "deck", "dry-in", "final" }, required = true, stage = "permit",
  ask = "How far has the work come?" }
field "notes" { type = "text", range = { 0, 5000 }, stage = "permit",
  ask = "Anything to remember? (no rule reads this)" }

field "shop" { type = "text", range = { 1, 200 }, stage = "permit",
  ask = "Which shop sheet goes with this job? (a file beside it: shop.json)" }

field "as_meant" { type = "list", range = { 0, 60 }, stage = "permit",
  ask = "Each value that was asked back and is meant as it stands" }
field "as_meant[].at" { type = "text", range = { 1, 200 }, stage = "permit",
  ask = "Where does it stand? (copied from the question: /roof/slopes/0/pitch)" }
field "as_meant[].why" { type = "text", range = { 1, 500 }, stage = "permit",
  ask = "Why is it so? (no rule reads this)" }

-- House and site ------------------------------------------------------------

field "house" { type = "group", stage = "permit", ask = "The house" }
field "house.kind" { type = "choice", choices = { "one_family", "two_family", "townhouse" }, stage = "permit",
  ask = "Is it a one-family house, a two-family house or a townhouse?" }
field "house.year_built" { type = "integer", unit = "year", range = { 1600, 2100 }, stage = "permit",
  ask = "In which year was the house built?" }
field "house.owner_lives_there" { type = "yes_no", stage = "permit",
  ask = "Does the owner live in the house?" }
field "house.stories" { type = "integer", range = { 1, 4 }, stage = "permit",
  ask = "How many stories?" }
field "house.mean_roof_height_ft" { type = "number", unit = "ft", range = { 6, 60 }, answer = "roof", stage = "permit",
  ask = "How high is the middle of the roof above the ground (halfway between eave and ridge)?" }
field "house.least_width_ft" { type = "number", unit = "ft", range = { 6, 400 }, answer = "roof", stage = "permit",
  ask = "How wide is the roof's plan at its narrower side, eaves included?" }

field "site" { type = "group", answer = "department", stage = "permit", ask = "The site" }
field "site.address" { type = "text", range = { 1, 200 }, answer = "desk", stage = "permit",
  ask = "Where does the house stand (street and number)?" }
field "site.wind_vult_mph" { type = "number", unit = "mph", range = { 85, 220 }, of_place = true, stage = "permit",
  ask = "What is the ultimate design wind speed (Vult) here?" }
field "site.wind_design_required" { type = "yes_no", of_place = true, stage = "permit",
  ask = "Does the code's map put this place where wind design is required?" }
field "site.ice_barrier_in_table" { type = "yes_no", of_place = true, stage = "permit",
  ask = "Does the place's climate table say that eaves need an ice barrier?" }
field "site.exposure" { type = "choice", choices = { "B", "C", "D" }, answer = "desk", of_place = true, stage = "permit",
  ask = "Wind exposure: B built-up or wooded, C open country, D open water?" }
field "site.wind_topographic_coefficient" { type = "number", unit = "coefficient",
  range = { 1, 3 }, answer = "desk", stage = "permit",
  ask = "What is the wind's topographic factor Kzt? (1 unless on a hill, ridge or bluff)" }
field "site.wind_design_done" { type = "yes_no", answer = "paper", stage = "permit",
  ask = "Has the roof been designed for this wind, by an engineer or by a high-wind standard?" }
field "site.climate_zone" { type = "choice",
  choices = { "1A", "2A", "2B", "3A", "3B", "3C", "4A", "4B", "4C", "5A", "5B", "5C", "6A", "6B", "7", "8" },
  of_place = true, stage = "permit", ask = "Which energy-code climate zone is the house in?" }
field "site.hail_exposure" { type = "choice", choices = { "low", "moderate", "severe" }, of_place = true, stage = "permit",
  ask = "How does the code's hail map rate this place?" }
field "site.high_velocity_hurricane_zone" { type = "yes_no", of_place = true, stage = "permit",
  ask = "Is the house in a high-velocity hurricane zone?" }

field "scope" { type = "group", stage = "permit", ask = "The work" }
field "scope.method" { type = "choice", choices = { "tear-off", "overlay" }, stage = "permit",
  ask = "Will the old covering be torn off, or shingled over?" }

-- What is on the roof now ---------------------------------------------------

field "existing" { type = "group", answer = "roof", stage = "permit", ask = "What is on the roof now" }
field "existing.layers" { type = "integer", unit = "layers", range = { 0, 6 }, stage = "permit",
  ask = "How many layers of covering are on the roof now, where there are most?" }
field "existing.layers_removed" { type = "integer", unit = "layers", range = { 0, 6 }, answer = "desk", stage = "permit",
  ask = "How many of those layers will be taken off?" }
field "existing.condition" { type = "choice", choices = { "sound", "water_soaked", "rotted" }, stage = "permit",
  ask = "Is the old covering and the deck under it sound, water-soaked, or rotted?" }
field "existing.coverings" { type = "list", range = { 0, 6 }, stage = "permit",
  ask = "What is each layer now on the roof, top layer first?" }
field "existing.coverings[].kind" { type = "choice",
  choices = { "asphalt_shingle", "roll_roofing", "wood_shingle", "wood_shake", "slate", "clay_tile",
    "concrete_tile", "asbestos_cement", "metal_panel", "metal_shingle", "built_up", "spray_foam",
    "coating", "coal_tar_built_up", "modified_bitumen", "thermoset_membrane",
    "thermoplastic_membrane" }, stage = "permit",
  ask = "What kind of covering is this layer?" }
field "existing.coverings[].thickness_in" { type = "number", unit = "in", range = { 0.02, 4 }, stage = "permit",
  ask = "How thick is this layer where a nail would go through it?" }
field "existing.coverings[].weight_lb_per_square" { type = "number", unit = "lb_per_square", range = { 30, 3000 },
  stage = "permit",
  ask = "How much does a square (100 sq ft) of this layer weigh? (common strip shingles 200 "
    .. "to 250 lb)" }
field "existing.coverings[].removed" { type = "yes_no", answer = "desk", stage = "permit",
  ask = "Will this layer be taken off?" }
field "existing.hidden_space_over_wood" { type = "yes_no", stage = "permit",
  ask = "Would the new covering leave a hollow space over old wood shingles or shakes?" }
field "existing.wood_covered_with_noncombustible" { type = "yes_no", stage = "permit",
  ask = "Is the whole old wood surface first covered with gypsum board, mineral or glass fiber or the like?" }

field "existing.hail_damaged" { type = "yes_no", stage = "permit",
  ask = "Does the job make good hail damage?" }
field "existing.hail_on" { type = "date", answer = "desk", stage = "permit",
  ask = "On which day did that hail fall?" }
field "existing.hail_documented" { type = "yes_no", answer = "paper", stage = "permit",
  ask = "Is there a paper, such as an insurer's, that shows the day of the hail?" }

-- The roof ------------------------------------------------------------------

field "roof" { type = "group", answer = "roof", stage = "permit", ask = "The roof" }
field "roof.ridge_ft" { type = "number", unit = "ft", range = { 0, 1000 }, stage = "permit",
  ask = "How many feet of ridge does the roof have in all? (0 for none)" }
field "roof.ridge_slot" { type = "choice", choices = { "none", "open", "closed" }, stage = "deck",
  ask = "Is there a slot in the deck along the ridge: none, one that stays open under a ridge vent, or an old one that is closed? (only where there is or was one)" }
field "roof.ridge_slot_ft" { type = "number", unit = "ft", range = { 0.1, 1000 }, stage = "deck",
  ask = "How many feet of slot are closed?" }
field "roof.ridge_slot_in" { type = "number", unit = "in", range = { 0.25, 24 }, stage = "deck",
  ask = "How wide is the slot that is closed, both sides of the ridge together?" }
field "roof.ridge_slot_filled" { type = "choice",
  choices = { "panel", "board", "sheet_metal", "underlayment_only", "nothing" }, stage = "deck",
  ask = "What fills the slot that is closed: panel or board nailed to the framing, sheet metal, only underlayment, or nothing?" }
field "roof.hip_ft" { type = "number", unit = "ft", range = { 0, 2000 }, stage = "permit",
  ask = "How many feet of hip does the roof have in all, along the slope? (0 for none)" }
field "roof.valley_ft" { type = "number", unit = "ft", range = { 0, 2000 }, stage = "permit",
  ask = "How many feet of valley does the roof have in all, along the slope? (0 for none)" }
field "roof.form" { type = "choice", choices = { "gable", "hip", "other" }, stage = "permit",
  ask = "Is it a gable roof (also with some hips), a hip roof all round, or other, such as a shed?" }

field "roof.slopes" { type = "list", range = { 1, 60 }, stage = "permit",
  ask = "Each plane of the roof" }
field "roof.slopes[].name" { type = "text", range = { 1, 60 }, stage = "permit",
  ask = "What do you call this plane?" }
field "roof.slopes[].pitch" { type = "slope", range = { 0, 60 }, stage = "permit",
  ask = "What is its slope? (rise in 12, such as 5:12)" }
field "roof.slopes[].eave_ft" { type = "number", unit = "ft", range = { 0, 1000 }, stage = "permit",
  ask = "How long is its lower edge?" }
field "roof.slopes[].ridge_ft" { type = "number", unit = "ft", range = { 0, 1000 }, stage = "permit",
  ask = "How long is its upper edge? (same as the eave for a rectangle, 0 for a triangle)" }
field "roof.slopes[].run_ft" { type = "number", unit = "ft", range = { 0.5, 200 }, stage = "permit",
  ask = "How far does it reach from lower to upper edge, measured level?" }
field "roof.slopes[].plan_sqft" { type = "number", unit = "sqft", range = { 0.1, 100000 }, stage = "permit",
  ask = "How much does it cover, seen from above? (only where a wing or a dormer cuts into it: its edges alone do not tell)" }
field "roof.slopes[].ends_at_wall" { type = "yes_no", stage = "permit",
  ask = "Does its upper edge end at a wall of the house?" }
field "roof.slopes[].deck" { type = "reference", refers = "decks", answer = "desk", stage = "permit",
  ask = "Which of the decks is under it?" }
field "roof.slopes[].gets" { type = "choice",
  choices = { "new_covering", "old_stays", "asphalt_shingle", "roll_roofing", "wood_shingle",
    "wood_shake", "slate", "clay_tile", "concrete_tile", "metal_panel", "metal_shingle", "coating",
    "built_up", "coal_tar_built_up", "modified_bitumen", "thermoset_membrane",
    "thermoplastic_membrane", "spray_foam" }, answer = "desk", stage = "permit",
  ask = "Does this plane get the job's new covering, does its old one stay, or which other kind goes on it? (only where planes differ)" }
field "roof.slopes[].old_layers" { type = "integer", unit = "layers", range = { 0, 6 }, answer = "roof",
  stage = "permit",
  ask = "How many layers of covering are on this plane now? (only where planes differ)" }
field "roof.slopes[].old_layers_removed" { type = "integer", unit = "layers", range = { 0, 6 },
  answer = "desk", stage = "permit",
  ask = "How many of them will be taken off this plane? (only where planes differ)" }
field "roof.slopes[].other_checked" { type = "yes_no", answer = "desk", stage = "permit",
  ask = "Is this plane, of another covering or stripped beside an overlay, checked as a job of "
    .. "its own?" }
field "roof.slopes[].underlayment" { type = "reference", refers = "underlayments", answer = "desk", stage = "permit",
  ask = "Which of the underlayments goes on it?" }

field "roof.edges" { type = "list", range = { 1, 200 }, stage = "permit",
  ask = "Each eave of the roof, and both sides of each plane (rake, sidewall, hip or valley)" }
field "roof.edges[].name" { type = "text", range = { 1, 60 }, stage = "permit",
  ask = "What do you call this edge?" }
field "roof.edges[].kind" { type = "choice",
  choices = { "eave", "onto_roof", "rake", "sidewall", "hip", "valley" }, stage = "permit",
  ask = "Is it an eave, a lower edge onto another roof, a rake, a side against a wall, a hip or a valley?" }
field "roof.edges[].slope" { type = "reference", refers = "roof.slopes", stage = "permit",
  ask = "Which plane does it bound?" }
field "roof.edges[].length_ft" { type = "number", unit = "ft", range = { 0.1, 1000 }, stage = "permit",
  ask = "How long is it?" }
field "roof.edges[].deck" { type = "reference", refers = "decks", stage = "permit",
  ask = "Which of the decks lies along this edge, where that is another than its plane's, such as boards seen from below? (only where it is another)" }
field "roof.edges[].deck_in" { type = "number", unit = "in", range = { 1, 240 }, stage = "permit",
  ask = "How far in from this edge, along the deck, does that other deck reach?" }
field "roof.edges[].drip_edge" { type = "yes_no", answer = "desk", stage = "permit",
  ask = "Does it get metal drip edge?" }
field "roof.edges[].underlayment_lies" { type = "choice", choices = { "over_metal", "under_metal" }, answer = "desk", stage = "permit",
  ask = "Does the underlayment lie over the metal here, or under it?" }
field "roof.edges[].flange_sealed" { type = "yes_no", answer = "desk", stage = "permit",
  ask = "Where the metal lies over the underlayment, is its flange sealed down?" }
field "roof.edges[].flange_cement_in" { type = "number", unit = "in", range = { 0, 24 }, stage = "permit",
  ask = "How wide a band of roof cement goes over the flange here? (0 for none)" }
field "roof.edges[].flange_primed" { type = "yes_no", stage = "permit",
  ask = "Is the flange primed where a self-adhered sheet lies over it?" }
field "roof.edges[].overhang_in" { type = "number", unit = "in", range = { 0, 96 }, stage = "permit",
  ask = "How far does the roof overhang the wall here, measured level?" }
field "roof.edges[].framed_past_wall" { type = "yes_no", answer = "roof", stage = "deck",
  ask = "Does framing of its own (lookouts, a ladder) carry the deck past the gable wall here?" }
field "roof.edges[].wall_thickness_in" { type = "number", unit = "in", range = { 3, 24 }, stage = "permit",
  ask = "How thick is the wall under this eave?" }
field "roof.edges[].over_heated_space" { type = "yes_no", stage = "permit",
  ask = "Is there heated space behind this eave?" }
field "roof.edges[].ice_barrier_reach_in" { type = "number", unit = "in", range = { 0, 600 }, answer = "desk", stage = "permit",
  ask = "How far up the slope does the ice barrier reach from this eave? (0 for none)" }
field "roof.edges[].measured_ice_barrier_reach_in" { type = "numbers", unit = "in", range = { 0, 600 }, measured = true, stage = "dry-in",
  ask = "How far up the slope was the ice barrier measured from this eave?" }

-- Or the plan of the house, from which the engine lays out planes, edges and
-- valleys (engine/job/lay_out.h). rules/README.md says how they are named.
field "roof.footprint" { type = "group", stage = "permit",
  ask = "The plan of the house, in place of planes and edges one by one" }
field "roof.footprint.form" { type = "choice",
  choices = { "gable", "hip", "gable_porch", "shed", "cross_gable" }, stage = "permit",
  ask = "Which form has the roof: gable, hip all round, gable with a lower porch roof in front, shed, or gable with a wing in front and its valleys?" }
field "roof.footprint.length_ft" { type = "number", unit = "ft", range = { 6, 300 }, stage = "permit",
  ask = "How long is the house along its front, wall to wall? (the ridge runs that way; of a shed, the lower edge)" }
field "roof.footprint.width_ft" { type = "number", unit = "ft", range = { 6, 180 }, stage = "permit",
  ask = "How wide is the house from front to back, wall to wall? (without porch or wing)" }
field "roof.footprint.pitch" { type = "slope", range = { 0, 60 }, stage = "permit",
  ask = "What is the roof's slope? (rise in 12, such as 5:12; but for a porch, all planes have it)" }
field "roof.footprint.eave_overhang_in" { type = "number", unit = "in", range = { 0, 96 }, stage = "permit",
  ask = "How far do the eaves overhang the walls, measured level?" }
field "roof.footprint.rake_overhang_in" { type = "number", unit = "in", range = { 0, 96 }, stage = "permit",
  ask = "How far do the rakes overhang the end walls? (a hip roof has none)" }
field "roof.footprint.porch" { type = "group", stage = "permit", ask = "The porch, of a gable_porch" }
field "roof.footprint.porch.length_ft" { type = "number", unit = "ft", range = { 2, 300 }, stage = "permit",
  ask = "How long is the porch along the house?" }
field "roof.footprint.porch.depth_ft" { type = "number", unit = "ft", range = { 2, 60 }, stage = "permit",
  ask = "How far does the porch stand out from the house?" }
field "roof.footprint.porch.pitch" { type = "slope", range = { 0, 60 }, stage = "permit",
  ask = "What is the slope of the porch's roof?" }
field "roof.footprint.wing" { type = "group", stage = "permit", ask = "The wing, of a cross_gable" }
field "roof.footprint.wing.width_ft" { type = "number", unit = "ft", range = { 4, 180 }, stage = "permit",
  ask = "How wide is the wing, wall to wall?" }
field "roof.footprint.wing.out_ft" { type = "number", unit = "ft", range = { 0.5, 180 }, stage = "permit",
  ask = "How far does the wing stand out from the front of the house?" }
field "roof.footprint.wing.left_ft" { type = "number", unit = "ft", range = { 0, 300 }, stage = "permit",
  ask = "How far is the wing's left wall from the left end wall of the house, seen from the front?" }

-- What is said here holds for all of them; one that differs says so by its name
-- in roof.slopes or roof.edges.
field "roof.footprint.planes" { type = "group", answer = "desk", stage = "permit", ask = "What all planes have alike" }
field "roof.footprint.planes.deck" { type = "reference", refers = "decks", stage = "permit",
  ask = "Which of the decks is under all planes? (one that differs: by its name in /roof/slopes)" }
field "roof.footprint.planes.underlayment" { type = "reference", refers = "underlayments", stage = "permit",
  ask = "Which of the underlayments goes on all planes? (one that differs: by its name in /roof/slopes)" }
field "roof.footprint.planes.replaced_percent" { type = "number", unit = "percent", range = { 0, 100 }, stage = "permit",
  ask = "How much of each plane's covering is replaced, in this job and in the months before together?" }
field "roof.footprint.planes.under_integrated_solar" { type = "yes_no", stage = "permit",
  ask = "Are all planes wholly under building-integrated solar panels?" }
for _, edges in ipairs { "eaves", "rakes" } do
  local group = "roof.footprint." .. edges
  field(group) { type = "group", stage = "permit", ask = "What all " .. edges .. " have alike" }
  field(group .. ".deck") { type = "reference", refers = "decks", answer = "roof", stage = "permit",
    ask = "Which of the decks lies along the " .. edges .. ", where that is another than the planes', such as boards seen from below? (only where it is another)" }
  field(group .. ".deck_in") { type = "number", unit = "in", range = { 1, 240 }, answer = "roof", stage = "permit",
    ask = "How far in from the " .. edges .. ", along the deck, does that other deck reach?" }
  field(group .. ".drip_edge") { type = "yes_no", habit = true, stage = "permit",
    ask = "Do the " .. edges .. " get metal drip edge? (one that differs: by its name in /roof/edges)" }
  field(group .. ".underlayment_lies") { type = "choice", choices = { "over_metal", "under_metal" }, habit = true, stage = "permit",
    ask = "Does the underlayment lie over the metal at the " .. edges .. ", or under it?" }
  field(group .. ".flange_sealed") { type = "yes_no", habit = true, stage = "permit",
    ask = "Where the metal lies over the underlayment at the " .. edges .. ", is its flange sealed down?" }
  field(group .. ".flange_cement_in") { type = "number", unit = "in", range = { 0, 24 }, habit = true, stage = "permit",
    ask = "How wide a band of roof cement goes over the flange at the " .. edges .. "? (0 for none)" }
  field(group .. ".flange_primed") { type = "yes_no", habit = true, stage = "permit",
    ask = "Is the flange at the " .. edges .. " primed where a self-adhered sheet lies over it?" }
end
field "roof.footprint.eaves.wall_thickness_in" { type = "number", unit = "in", range = { 3, 24 }, stage = "permit",
  ask = "How thick are the walls under the eaves?" }
field "roof.footprint.eaves.over_heated_space" { type = "yes_no", stage = "permit",
  ask = "Is there heated space behind all eaves? (one that differs, such as a porch's: by its name in /roof/edges)" }
field "roof.footprint.rakes.wall_thickness_in" { type = "number", unit = "in", range = { 3, 24 }, stage = "permit",
  ask = "How thick are the walls under the rakes?" }
field "roof.footprint.rakes.ice_barrier_reach_in" { type = "number", unit = "in", range = { 0, 600 }, stage = "permit",
  ask = "How far in from the rakes does the ice barrier reach? (0 for none)" }
field "roof.footprint.eaves.ice_barrier_reach_in" { type = "number", unit = "in", range = { 0, 600 }, stage = "permit",
  ask = "How far up the slope does the ice barrier reach from the eaves? (0 for none)" }

-- Decks ---------------------------------------------------------------------

field "decks" { type = "list", range = { 1, 20 }, answer = "attic", stage = "permit",
  ask = "Each kind of deck on the roof" }
field "decks[].name" { type = "text", range = { 1, 60 }, answer = "desk", stage = "permit",
  ask = "What do you call this deck?" }
field "decks[].kind" { type = "choice", choices = { "panel", "board", "spaced_board" }, stage = "permit",
  ask = "Is it panels, tight boards, or spaced boards?" }
field "decks[].thickness_in" { type = "number", unit = "in", range = { 0.1, 4 }, stage = "permit",
  ask = "How thick is it?" }
field "decks[].span_rating" { type = "choice",
  choices = { "16/0", "20/0", "24/0", "24/16", "32/16", "40/20", "48/24", "60/32" }, stage = "permit",
  ask = "Which span rating is stamped on the panels?" }
field "decks[].edge_support" { type = "choice", choices = { "none", "clips", "blocking", "tongue_and_groove" }, answer = "desk", stage = "permit",
  ask = "How are panel edges between rafters held: not at all, clips, blocking, tongue and groove?" }
field "decks[].support_spacing_in" { type = "number", unit = "in", range = { 8, 72 }, stage = "permit",
  ask = "How far apart are the rafters or trusses, on center?" }
field "decks[].panel_wood" { type = "choice",
  choices = { "osb", "plywood", "plywood_structural_1" }, stage = "permit",
  ask = "Are the panels OSB, plywood, or plywood stamped Structural I?" }
field "decks[].seen_from_below" { type = "yes_no", answer = "roof", stage = "deck",
  ask = "Is any of this deck seen from below, at open eaves, rakes or a porch?" }
field "decks[].bond" { type = "choice",
  choices = { "exterior", "exposure_1", "exposure_2", "interior", "not_stamped" }, answer = "wrapper", stage = "deck",
  ask = "Which exposure grade is stamped on the new panels that are seen from below: Exterior, Exposure 1, Exposure 2, Interior, or none?" }
field "decks[].framing_wood" { type = "choice",
  choices = { "southern_pine", "douglas_fir_larch", "hem_fir", "spruce_pine_fir", "spruce_pine_fir_south",
    "western_woods" },
  stage = "permit",
  ask = "Which wood are the rafters or trusses? (the grade stamp says: SP, DF-L, HF, SPF, SPFS, WW)" }
field "decks[].framing_wet" { type = "yes_no", stage = "permit",
  ask = "Is the framing wet when it is nailed, or will it get wet in use?" }
field "decks[].panel_gap_in" { type = "number", unit = "in", range = { 0, 2 }, answer = "desk", habit = true, stage = "deck",
  ask = "What gap is left between panels?" }
field "decks[].board_gap_in" { type = "number", unit = "in", range = { 0, 12 }, stage = "permit",
  ask = "What is the widest gap between boards?" }
field "decks[].board_width_in" { type = "number", unit = "in", range = { 1, 16 }, stage = "permit",
  ask = "How wide are the boards?" }
field "decks[].work" { type = "choice", choices = { "kept", "partly_replaced", "replaced", "paneled_over" }, answer = "desk", stage = "permit",
  ask = "Is this deck kept as it is, partly replaced, all replaced, or covered with new panels?" }
field "decks[].over_panel_thickness_in" { type = "number", unit = "in", range = { 0.1, 2 }, stage = "permit",
  ask = "If new panels go over it, how thick are they?" }
field "decks[].renailed" { type = "yes_no", answer = "desk", stage = "permit",
  ask = "Will the kept deck be nailed again?" }
field "decks[].old_nails" { type = "group", stage = "permit", ask = "How this deck was nailed before the job" }
field "decks[].old_nails.kind" { type = "choice", choices = { "nail_8d", "nail_6d", "staple", "other" }, stage = "permit",
  ask = "What held the old deck until now: 8d nails, 6d nails, staples, or something else? (pull one and measure it)" }
field "decks[].old_nails.length_in" { type = "number", unit = "in", range = { 0.5, 6 }, stage = "permit",
  ask = "How long are the old deck nails?" }
field "decks[].old_nails.shank_in" { type = "number", unit = "in", range = { 0.05, 0.3 }, stage = "permit",
  ask = "How thick is the shank of the old deck nails?" }
field "decks[].old_nails.edge_spacing_in" { type = "number", unit = "in", range = { 0.5, 48 }, stage = "permit",
  ask = "How far apart at most are the old nails along panel edges?" }
field "decks[].old_nails.field_spacing_in" { type = "number", unit = "in", range = { 0.5, 48 }, stage = "permit",
  ask = "How far apart at most are the old nails along the rafters inside panels?" }
field "decks[].old_nails.per_bearing" { type = "integer", unit = "nails", range = { 0, 12 }, stage = "permit",
  ask = "How many old nails at least hold each board at each rafter?" }
field "decks[].unsound_sqft" { type = "number", unit = "sqft", range = { 0, 50000 }, stage = "deck",
  ask = "How much of it was found rotted, soft, split or delaminated?" }
field "decks[].replaced_sqft" { type = "number", unit = "sqft", range = { 0, 50000 }, answer = "desk", stage = "deck",
  ask = "How much of it was (or will be) replaced?" }
field "decks[].nails" { type = "group", answer = "desk", stage = "permit", ask = "How this deck is nailed" }
field "decks[].nails.name" { type = "text", range = { 1, 60 }, answer = "desk", habit = true, stage = "permit",
  ask = "Which deck nailing of the shop sheet's? (by its name there)" }
field "decks[].nails.kind" { type = "choice",
  choices = { "common_8d", "common_10d", "deformed_8d", "box_8d", "common_6d", "sinker_8d",
    "RSRS_01", "RSRS_02", "RSRS_03", "RSRS_04", "RSRS_05", "staple" }, habit = "product", stage = "permit",
  ask = "Which nail holds the deck?" }
field "decks[].nails.length_in" { type = "number", unit = "in", range = { 0.5, 6 }, answer = "wrapper", habit = "product", stage = "permit",
  ask = "How long is the deck nail?" }
field "decks[].nails.shank_in" { type = "number", unit = "in", range = { 0.05, 0.3 }, answer = "wrapper", habit = "product", stage = "permit",
  ask = "How thick is the deck nail's shank?" }
field "decks[].nails.nails_to_the_pound" { type = "number", unit = "nails", range = { 10, 2000 }, answer = "wrapper", habit = "product", stage = "permit",
  ask = "How many of these deck nails go to the pound, by the box?" }
field "decks[].nails.edge_spacing_in" { type = "number", unit = "in", range = { 0.5, 48 }, habit = true, stage = "permit",
  ask = "How far apart are nails along panel edges?" }
field "decks[].nails.field_spacing_in" { type = "number", unit = "in", range = { 0.5, 48 }, habit = true, stage = "permit",
  ask = "How far apart are nails along the rafters inside a panel?" }
field "decks[].nails.gable_spacing_in" { type = "number", unit = "in", range = { 0.5, 48 }, habit = true, stage = "permit",
  ask = "How far apart are nails into gable-end framing?" }
field "decks[].nails.band_spacing_in" { type = "number", unit = "in", range = { 0.5, 48 }, habit = true, stage = "permit",
  ask = "How far apart are nails on rafters in the closer-nailed band by eaves, ridges and gables?" }
field "decks[].nails.band_width_in" { type = "number", unit = "in", range = { 0, 240 }, habit = true, stage = "permit",
  ask = "How wide is that closer-nailed band?" }
field "decks[].nails.edge_distance_in" { type = "number", unit = "in", range = { 0, 3 }, habit = true, stage = "permit",
  ask = "How far are nails kept from the panel edge?" }
field "decks[].nails.per_bearing" { type = "integer", unit = "nails", range = { 0, 12 }, habit = true, stage = "permit",
  ask = "How many nails hold each board at each rafter?" }
field "decks[].nails.measured_edge_spacing_in" { type = "numbers", unit = "in", range = { 0.1, 60 }, measured = true, answer = "roof", stage = "deck",
  ask = "What spacings were measured along panel edges?" }
field "decks[].nails.measured_field_spacing_in" { type = "numbers", unit = "in", range = { 0.1, 60 }, measured = true, answer = "roof", stage = "deck",
  ask = "What spacings were measured along the rafters inside panels?" }
field "decks[].nails.measured_gable_spacing_in" { type = "numbers", unit = "in", range = { 0.1, 60 }, measured = true, answer = "roof", stage = "deck",
  ask = "What spacings were measured into gable-end framing?" }
field "decks[].nails.measured_band_spacing_in" { type = "numbers", unit = "in", range = { 0.1, 60 }, measured = true, answer = "roof", stage = "deck",
  ask = "What spacings were measured in the closer-nailed band?" }
field "decks[].nails.measured_band_width_in" { type = "numbers", unit = "in", range = { 0, 240 }, measured = true, answer = "roof", stage = "deck",
  ask = "How far in from eaves, ridges and gable ends was the closer nailing measured to reach?" }
field "decks[].nails.measured_edge_distance_in" { type = "numbers", unit = "in", range = { 0, 3 }, measured = true, answer = "roof", stage = "deck",
  ask = "How far from the panel edge were nails measured?" }
field "decks[].nails.measured_per_bearing" { type = "numbers", unit = "nails", range = { 0, 12 }, measured = true, answer = "roof", stage = "deck",
  ask = "How many nails were counted at each board and rafter crossing looked at?" }
field "decks[].nails.overdriven_or_missed" { type = "yes_no", measured = true, answer = "roof", stage = "deck",
  ask = "Were deck nails seen sunk through the face or missing the rafter?" }
field "decks[].nails.measured_label_matches" { type = "yes_no", measured = true, answer = "roof", stage = "deck",
  ask = "Was the label on the nail box read on the roof, and does it show this nail?" }
field "decks[].measured_unsound_left_sqft" { type = "number", unit = "sqft", range = { 0, 50000 }, measured = true, answer = "roof", stage = "deck",
  ask = "How much rotted, soft, split or delaminated deck is still there?" }

-- Underlayments -------------------------------------------------------------

field "underlayments" { type = "list", range = { 0, 20 }, answer = "wrapper", stage = "permit",
  ask = "Each underlayment used" }
field "underlayments[].name" { type = "text", range = { 1, 60 }, answer = "desk", habit = true, stage = "permit",
  ask = "What do you call this underlayment?" }
field "underlayments[].kind" { type = "choice",
  choices = { "D226_I", "D226_II", "D4869_I", "D4869_II", "D4869_III", "D4869_IV", "D6757", "D1970", "D8257",
    "other_synthetic", "unlabeled_felt" }, habit = "product", stage = "permit",
  ask = "Which ASTM standard and type is printed on the roll? (D226_I is No. 15 felt, D226_II No. 30, D1970 peel-and-stick)" }
field "underlayments[].evaluation_report" { type = "yes_no", answer = "paper", habit = "product", stage = "permit",
  ask = "Is there an evaluation report that accepts it in place of a listed felt?" }
field "underlayments[].plies" { type = "integer", unit = "plies", range = { 0, 4 }, answer = "desk", habit = true, stage = "permit",
  ask = "How many plies everywhere?" }
field "underlayments[].head_lap_in" { type = "number", unit = "in", range = { 0, 36 }, answer = "desk", habit = true, stage = "permit",
  ask = "How far does each sheet lap the one below?" }
field "underlayments[].end_lap_in" { type = "number", unit = "in", range = { 0, 36 }, answer = "desk", habit = true, stage = "permit",
  ask = "How far do sheets lap at their ends?" }
field "underlayments[].end_lap_offset_ft" { type = "number", unit = "ft", range = { 0, 50 }, answer = "desk", habit = true, stage = "permit",
  ask = "How far apart are the end laps of neighboring courses?" }
field "underlayments[].starter_width_in" { type = "number", unit = "in", range = { 0, 72 }, answer = "desk", habit = true, stage = "permit",
  ask = "How wide is the starter strip at the eave?" }
field "underlayments[].thickness_in" { type = "number", unit = "in", range = { 0, 0.5 }, habit = "product", stage = "permit",
  ask = "How thick is one ply?" }
field "underlayments[].weight_lb_per_square" { type = "number", unit = "lb_per_square", range = { 1, 80 },
  habit = "product", stage = "permit",
  ask = "How much does a square (100 sq ft) of one ply weigh?" }
field "underlayments[].roll_width_in" { type = "number", unit = "in", range = { 6, 144 },
  habit = "product", stage = "permit",
  ask = "How wide is the roll?" }
field "underlayments[].roll_length_ft" { type = "number", unit = "ft", range = { 10, 2000 },
  habit = "product", stage = "permit",
  ask = "How long is the roll?" }
field "underlayments[].deck_joints_taped" { type = "yes_no", answer = "desk", habit = true, stage = "permit",
  ask = "Are all deck joints taped with self-adhered strip first?" }
field "underlayments[].tape_width_in" { type = "number", unit = "in", range = { 0, 12 }, habit = true, stage = "permit",
  ask = "How wide is that tape?" }
field "underlayments[].tape_is" { type = "choice", choices = { "D1970", "AAMA_711_3", "other" }, habit = "product", stage = "permit",
  ask = "What is the tape over the deck's joints, by its wrapper: ASTM D1970, AAMA 711 level 3, or other?" }
field "underlayments[].third_course_lap_in" { type = "number", unit = "in", range = { 0, 72 }, habit = true, stage = "permit",
  ask = "Of two plies: how far does the third course, the second full sheet, lap the one below?" }
field "underlayments[].fastener" { type = "choice", choices = { "cap_nail", "cap_staple", "nail", "staple", "adhered" }, habit = "product", stage = "permit",
  ask = "What holds it down?" }
field "underlayments[].lap_spacing_in" { type = "number", unit = "in", range = { 0.5, 60 }, answer = "desk", habit = true, stage = "permit",
  ask = "How far apart are its fasteners along the laps?" }
field "underlayments[].field_spacing_in" { type = "number", unit = "in", range = { 0.5, 60 }, answer = "desk", habit = true, stage = "permit",
  ask = "How far apart are its fasteners between the laps?" }
field "underlayments[].cap_in" { type = "number", unit = "in", range = { 0, 3 }, habit = "product", stage = "permit",
  ask = "How wide are the caps?" }
field "underlayments[].caps_to_the_box" { type = "number", unit = "nails", range = { 50, 20000 }, habit = "product", stage = "permit",
  ask = "How many cap nails or cap staples are in a box?" }
field "underlayments[].measured_head_lap_in" { type = "numbers", unit = "in", range = { 0, 36 }, measured = true, answer = "roof", stage = "dry-in",
  ask = "What head laps were measured?" }
field "underlayments[].measured_end_lap_in" { type = "numbers", unit = "in", range = { 0, 36 }, measured = true, answer = "roof", stage = "dry-in",
  ask = "What end laps were measured?" }

field "ice_barrier" { type = "group", answer = "wrapper", stage = "permit", ask = "The ice barrier" }
field "ice_barrier.name" { type = "text", range = { 1, 60 }, answer = "desk", habit = true, stage = "permit",
  ask = "Which ice barrier of the shop sheet's? (by its name there)" }
field "ice_barrier.kind" { type = "choice", choices = { "self_adhered", "two_cemented_plies", "none" }, habit = "product", stage = "permit",
  ask = "What is the ice barrier: self-adhered sheet, two plies cemented together, or none?" }
field "ice_barrier.roll_width_in" { type = "number", unit = "in", range = { 6, 144 },
  habit = "product", stage = "permit",
  ask = "How wide is the roll of ice barrier?" }
field "ice_barrier.roll_length_ft" { type = "number", unit = "ft", range = { 10, 500 },
  habit = "product", stage = "permit",
  ask = "How long is the roll of ice barrier?" }
field "ice_barrier.lap_in" { type = "number", unit = "in", range = { 0, 24 }, answer = "desk", habit = true, stage = "permit",
  ask = "How far does each course of ice barrier lap the one below?" }

-- Drip edge -----------------------------------------------------------------

field "drip_edge" { type = "group", stage = "permit", ask = "The drip edge" }
field "drip_edge.lap_in" { type = "number", unit = "in", range = { 0, 24 }, habit = true, stage = "permit",
  ask = "How far do its pieces lap?" }
field "drip_edge.down_in" { type = "number", unit = "in", range = { 0, 12 }, habit = true, stage = "permit",
  ask = "How far does it run down below the deck?" }
field "drip_edge.back_in" { type = "number", unit = "in", range = { 0, 24 }, habit = true, stage = "permit",
  ask = "How far does it run back onto the deck?" }
field "drip_edge.fastener_spacing_in" { type = "number", unit = "in", range = { 0.5, 60 }, habit = true, stage = "permit",
  ask = "How far apart are its fasteners?" }
field "drip_edge.measured_lap_in" { type = "numbers", unit = "in", range = { 0, 24 }, measured = true, answer = "roof", stage = "dry-in",
  ask = "What laps were measured on the drip edge?" }
field "drip_edge.measured_fastener_spacing_in" { type = "numbers", unit = "in", range = { 0.1, 60 }, measured = true, answer = "roof", stage = "dry-in",
  ask = "What fastener spacings were measured on the drip edge?" }

-- The new covering ----------------------------------------------------------

field "covering" { type = "group", answer = "wrapper", stage = "permit", ask = "The new covering" }
field "covering.name" { type = "text", range = { 1, 60 }, answer = "desk", habit = true, stage = "permit",
  ask = "Which covering of the shop sheet's? (by its name there)" }
field "covering.kind" { type = "choice",
  choices = { "asphalt_shingle", "roll_roofing", "wood_shingle", "wood_shake", "slate", "clay_tile",
    "concrete_tile", "metal_panel", "metal_shingle", "coating", "built_up", "coal_tar_built_up",
    "modified_bitumen", "thermoset_membrane", "thermoplastic_membrane", "spray_foam" },
  answer = "desk", habit = "product", stage = "permit",
  ask = "What kind of covering goes on?" }
field "covering.metal_seam" { type = "choice", choices = { "lapped", "sealed", "standing" }, habit = "product", stage = "permit",
  ask = "How are the metal panels joined: lapped, lapped with sealant in the laps, or standing seams?" }
field "covering.UL_2218_class" { type = "choice", choices = { "1", "2", "3", "4", "none" }, habit = "product", stage = "permit",
  ask = "Which UL 2218 hail class does the shingle wrapper show?" }
field "covering.hail_proof" { type = "choice", choices = { "wrapper", "papers", "none" }, stage = "final",
  ask = "What shows the hail class to the inspector: a wrapper, the maker's papers, or nothing?" }
field "covering.listed_over_old" { type = "yes_no", answer = "paper", stage = "permit",
  ask = "Is the new covering listed as a class A assembly over the old one?" }
field "covering.on_battens" { type = "yes_no", answer = "desk", habit = true, stage = "permit",
  ask = "Does it lie on battens?" }
field "covering.made_to" { type = "choice", choices = { "D3462", "D225", "none" }, habit = "product", stage = "permit",
  ask = "Which ASTM product standard does the shingle wrapper name?" }
field "covering.maker_allows_overlay" { type = "yes_no", stage = "permit",
  ask = "Do the shingle maker's printed instructions allow laying over an old covering like this one?" }
field "covering.instructions_on_site" { type = "yes_no", answer = "desk", stage = "final",
  ask = "Are the maker's printed instructions on the site?" }
field "covering.thickness_at_nail_in" { type = "number", unit = "in", range = { 0.05, 2 }, habit = "product", stage = "permit",
  ask = "How thick is the new covering where the nail goes through it, all its plies together?" }
field "covering.D7158_class" { type = "choice", choices = { "D", "G", "H", "none" }, habit = "product", stage = "permit",
  ask = "Which ASTM D7158 wind class does the shingle wrapper show?" }
field "covering.D3161_class" { type = "choice", choices = { "A", "D", "F", "none" }, habit = "product", stage = "permit",
  ask = "Which ASTM D3161 wind class does the shingle wrapper show?" }
field "covering.nails_printed" { type = "integer", unit = "nails", range = { 2, 12 }, stage = "permit",
  ask = "How many nails per shingle do the maker's instructions ask for at this wind speed?" }
field "covering.exposure_printed_in" { type = "number", unit = "in", range = { 2, 12 }, habit = "product", stage = "permit",
  ask = "What exposure do the maker's instructions give?" }
field "covering.offset_printed_in" { type = "number", unit = "in", range = { 1, 20 }, habit = "product", stage = "permit",
  ask = "What least offset between the joints of neighboring courses do the maker's instructions give?" }
field "covering.weight_lb_per_square" { type = "number", unit = "lb_per_square", range = { 30, 3000 },
  habit = "product", stage = "permit",
  ask = "How much does a square (100 sq ft) of the new covering weigh? (bundle weight x "
    .. "bundles to the square)" }
field "covering.strip_length_in" { type = "number", unit = "in", range = { 6, 60 },
  habit = "product", stage = "permit",
  ask = "How long is one shingle? (36, or 39.375 for metric ones)" }
field "covering.bundles_per_square" { type = "number", range = { 1, 8 }, habit = "product", stage = "permit",
  ask = "How many bundles make a square, by the wrapper?" }
field "covering.starter_bundle_ft" { type = "number", unit = "ft", range = { 10, 500 }, habit = "product", stage = "permit",
  ask = "How many feet does a bundle of its starter strip make, by the wrapper?" }
field "covering.cap_bundle_ft" { type = "number", unit = "ft", range = { 5, 200 }, habit = "product", stage = "permit",
  ask = "How many feet of ridge does a bundle of its caps cover, by the wrapper?" }
field "covering.measured_exposure_in" { type = "numbers", unit = "in", range = { 1, 20 }, measured = true, answer = "roof", stage = "final",
  ask = "What exposures were measured, course to course?" }
field "covering.measured_offset_in" { type = "numbers", unit = "in", range = { 0, 40 }, measured = true, answer = "roof", stage = "final",
  ask = "What offsets were measured between joints of neighboring courses?" }

field "fasteners" { type = "group", answer = "wrapper", stage = "permit", ask = "The covering's fasteners" }
field "fasteners.name" { type = "text", range = { 1, 60 }, answer = "desk", habit = true, stage = "permit",
  ask = "Which nails or staples of the shop sheet's? (by its name there)" }
field "fasteners.kind" { type = "choice", choices = { "nail", "staple" }, habit = "product", stage = "permit",
  ask = "Is the covering nailed or stapled?" }
field "fasteners.metal" { type = "choice",
  choices = { "galvanized", "stainless", "aluminum", "copper", "plain_steel", "electroplated" }, habit = "product", stage = "permit",
  ask = "What metal are the roofing nails?" }
field "fasteners.shank_in" { type = "number", unit = "in", range = { 0.03, 0.3 }, habit = "product", stage = "permit",
  ask = "How thick is the nail's shank? (12 gauge is 0.105 in, 11 gauge 0.120 in)" }
field "fasteners.head_in" { type = "number", unit = "in", range = { 0.1, 1.5 }, habit = "product", stage = "permit",
  ask = "How wide is the nail's head?" }
field "fasteners.length_in" { type = "number", unit = "in", range = { 0.25, 6 }, habit = "product", stage = "permit",
  ask = "How long is the nail?" }
field "fasteners.eave_length_in" { type = "number", unit = "in", range = { 0.25, 6 }, stage = "permit",
  ask = "How long are the nails over open eaves, where others are driven there? (only where they are others)" }
field "fasteners.per_shingle" { type = "integer", unit = "nails", range = { 0, 12 }, answer = "desk", habit = true, stage = "permit",
  ask = "How many nails will go into each shingle?" }
field "fasteners.steep_method" { type = "yes_no", answer = "desk", stage = "permit",
  ask = "Is the maker's steep-slope fastening used?" }
field "fasteners.nails_to_the_pound" { type = "number", unit = "nails", range = { 10, 2000 },
  habit = "product", stage = "permit",
  ask = "How many of these roofing nails go to the pound, by the box?" }
field "fasteners.measured_per_shingle" { type = "numbers", unit = "nails", range = { 0, 12 }, measured = true, answer = "roof", stage = "final",
  ask = "How many nails were counted in each shingle looked at?" }
field "fasteners.seen_below" { type = "yes_no", measured = true, answer = "roof", stage = "final",
  ask = "Do points of the new nails show below open eaves? (only where the eaves are open)" }
field "fasteners.overdriven_or_high" { type = "yes_no", measured = true, answer = "roof", stage = "final",
  ask = "Were nails seen over-driven, crooked, or above the nail line?" }

-- Attics --------------------------------------------------------------------

field "attics" { type = "list", range = { 1, 20 }, answer = "attic", stage = "permit",
  ask = "Each separate attic or rafter space under the roof" }
field "attics[].name" { type = "text", range = { 1, 60 }, stage = "permit",
  ask = "What do you call this attic?" }
field "attics[].vented" { type = "yes_no", stage = "permit",
  ask = "Is it a vented attic?" }
field "attics[].area_sqft" { type = "number", unit = "sqft", range = { 1, 50000 }, stage = "permit",
  ask = "What area is vented?" }
field "attics[].area_basis" { type = "choice", choices = { "ceiling", "attic_floor", "roof" }, stage = "permit",
  ask = "Is that the area of the ceiling below, the attic floor, or the whole roof? (sources disagree; say which)" }
field "attics[].vapor_retarder" { type = "choice", choices = { "class_I", "class_II", "class_III", "none" }, stage = "permit",
  ask = "Which class of vapor retarder is on the warm side of the ceiling?" }
field "attics[].airspace_in" { type = "number", unit = "in", range = { 0, 48 }, stage = "permit",
  ask = "How much clear air is there between insulation and deck at the vents?" }
field "attics[].fans_end_outdoors" { type = "yes_no", stage = "permit",
  ask = "Do bath and kitchen fans end outdoors, not in this attic or its soffit?" }
field "attics[].vents_open_outdoors" { type = "yes_no", stage = "permit",
  ask = "Do all the vents of this attic open straight to outside air? (n: each is asked)" }
field "attics[].vents_opening_in" { type = "number", unit = "in", range = { 0.01, 60 }, stage = "permit",
  ask = "What is the least width of the openings of its vents (of the screens', where they have them), if it is one for all?" }
field "attics[].vents" { type = "list", range = { 0, 60 }, stage = "permit",
  ask = "Each kind of vent serving this attic" }
field "attics[].vents[].name" { type = "text", range = { 1, 60 }, habit = true, stage = "permit",
  ask = "What do you call this vent?" }
field "attics[].vents[].kind" { type = "choice",
  choices = { "ridge", "soffit_strip", "soffit_unit", "eave_block", "box", "turbine", "gable", "powered" }, habit = "product", stage = "permit",
  ask = "What kind of vent is it?" }
field "attics[].vents[].place" { type = "choice", choices = { "high", "low" }, stage = "permit",
  ask = "Is it high (near the ridge) or low (at the eave)?" }
field "attics[].vents[].below_ridge_ft" { type = "number", unit = "ft", range = { 0, 60 }, stage = "permit",
  ask = "How far below the ridge or highest point is it, straight down?" }
field "attics[].vents[].left_as_is" { type = "yes_no", stays = true, stage = "permit",
  ask = "Was it there before, and does the work leave it as it is?" }
field "attics[].vents[].count" { type = "integer", range = { 0, 2000 }, stage = "permit",
  ask = "How many are there?" }
field "attics[].vents[].nfa_each_sqin" { type = "number", unit = "sqin", range = { 0, 5000 }, answer = "wrapper", habit = "product", stage = "permit",
  ask = "What net free area is on each one's label?" }
field "attics[].vents[].gross_each_sqin" { type = "number", unit = "sqin", range = { 0.1, 10000 }, stage = "permit",
  ask = "How large is the opening of each that has no label, before its screen or louver? (width x height)" }
field "attics[].vents[].cover" { type = "choice",
  choices = { "quarter_inch_cloth", "eighth_inch_mesh", "sixteen_mesh",
    "wood_louver_quarter_inch_cloth", "wood_louver_eighth_inch_mesh",
    "wood_louver_sixteen_mesh" }, stage = "permit",
  ask = "What covers that opening? (mesh, with or without wood louvers)" }
field "attics[].vents[].length_ft" { type = "number", unit = "ft", range = { 0, 2000 }, answer = "roof", stage = "permit",
  ask = "How many feet of it are there?" }
field "attics[].vents[].nfa_sqin_per_ft" { type = "number", unit = "sqin_per_ft", range = { 0, 200 }, answer = "wrapper", habit = "product", stage = "permit",
  ask = "What net free area per foot is on its label?" }
field "attics[].vents[].opening_in" { type = "number", unit = "in", range = { 0.01, 60 }, habit = "product", stage = "permit",
  ask = "What is the least width of its openings (of the screen's, if it has one)?" }
field "attics[].vents[].screened" { type = "yes_no", habit = "product", stage = "permit",
  ask = "Does it have a corrosion-resistant screen?" }
field "attics[].vents[].screen_opening_in" { type = "number", unit = "in", range = { 0.005, 3 }, habit = "product", stage = "permit",
  ask = "How wide are the screen's own openings?" }
field "attics[].vents[].opens_outdoors" { type = "yes_no", stage = "permit",
  ask = "Does it open straight to outside air?" }

-- Takeoff: what only the quantities read --------------------------------------

field "takeoff" { type = "group", stage = "permit", ask = "What goes into the takeoff" }
field "takeoff.waste_percent" { type = "number", unit = "percent", range = { 0, 60 },
  habit = true, stage = "permit",
  ask = "What share do you add for waste? (of shingles; of all else too, unless said below)" }
field "takeoff.sheet_waste_percent" { type = "number", unit = "percent", range = { 0, 60 },
  habit = true, stage = "permit",
  ask = "What share do you add for waste of underlayment, ice barrier and panels?" }
field "takeoff.rake_starter" { type = "yes_no", habit = true, stage = "permit",
  ask = "Does starter strip go up the rakes too?" }
field "takeoff.metal_waste_percent" { type = "number", unit = "percent", range = { 0, 60 },
  habit = true, stage = "permit",
  ask = "What share do you add for waste of drip edge and valley lining?" }
field "takeoff.cap_ft" { type = "number", unit = "ft", range = { 0, 3000 }, stage = "permit",
  answer = "roof",
  ask = "How many feet of ridges and hips get new caps? (only where planes get different coverings)" }
field "takeoff.bundles_per_stack" { type = "integer", range = { 1, 60 }, habit = true, stage = "permit",
  ask = "How many bundles will lie in one stack on the roof?" }
field "takeoff.stack_sqft" { type = "number", unit = "sqft", range = { 1, 500 }, habit = true, stage = "permit",
  ask = "Over how much deck is one stack spread?" }
field "takeoff.vent_cover" { type = "choice",
  choices = { "quarter_inch_cloth", "eighth_inch_mesh", "sixteen_mesh",
    "wood_louver_quarter_inch_cloth",
    "wood_louver_eighth_inch_mesh", "wood_louver_sixteen_mesh" }, stage = "permit",
  ask = "What will cover an opening cut for more vent area, such as a gable's? (mesh, with "
    .. "or without wood louvers)" }
field "takeoff.trailer_cuyd" { type = "number", unit = "cuyd", range = { 0.5, 60 },
  habit = true, stage = "permit",
  ask = "How many cubic yards does the trailer or bin hold, level with its sides?" }
field "takeoff.payload_lb" { type = "number", unit = "lb", range = { 300, 60000 }, habit = true, stage = "permit",
  ask = "How many pounds may the trailer or bin carry, by its plate or its hirer?" }

-- Fire, energy, flashing, valleys, rotted wood -------------------------------

field "site.lot_line_ft" { type = "number", unit = "ft", range = { 0, 10000 }, answer = "desk", stage = "permit",
  ask = "How far is the nearest edge of the roof from a lot line?" }
field "site.fire_zone" { type = "choice", choices = { "none", "moderate", "high", "very_high" }, of_place = true, stage = "permit",
  ask = "Which fire hazard severity zone is the house in, by the state's or the local map?" }
field "site.state_fire_area" { type = "yes_no", of_place = true, stage = "permit",
  ask = "Is it on land where the state, not the city or county, answers for wildfires?" }
field "site.january_mean_F" { type = "number", unit = "F", range = { -60, 90 }, of_place = true, stage = "permit",
  ask = "What is the mean temperature in January here?" }
field "site.ice_history" { type = "yes_no", of_place = true, stage = "permit",
  ask = "Has ice been known to form along eaves here and back water up?" }
field "site.elevation_ft" { type = "number", unit = "ft", range = { -300, 15000 }, of_place = true, answer = "desk", stage = "permit",
  ask = "How high above the sea does the house stand?" }
field "site.hurricane_prone_region" { type = "yes_no", of_place = true, stage = "permit",
  ask = "Is the house in a hurricane-prone region (on the Atlantic, design speed over 115 mph)?" }
field "site.seismic_category" { type = "choice", choices = { "A", "B", "C", "D0", "D1", "D2", "E" }, of_place = true, stage = "permit",
  ask = "Which seismic design category is the house in?" }

field "scope.roof_share_percent" { type = "number", unit = "percent", range = { 0, 100 }, stage = "permit",
  ask = "What share of the whole roof does this job renew?" }
field "scope.section_share_percent" { type = "number", unit = "percent", range = { 0, 100 }, stage = "permit",
  ask = "Of the section of roof that the work takes most of, between joints, parapets, walls or other levels: how much, with what was done there in the months before?" }
field "scope.earlier_roofing" { type = "list", range = { 0, 20 }, stage = "permit",
  ask = "Each earlier renewal of part of this roof (an empty list if there was none)" }
field "scope.earlier_roofing[].done_on" { type = "date", answer = "paper", stage = "permit",
  ask = "On which day was it done?" }
field "scope.earlier_roofing[].roof_share_percent" { type = "number", unit = "percent", range = { 0, 100 }, stage = "permit",
  ask = "What share of the whole roof did it renew?" }
field "existing.adhered_left" { type = "choice", choices = { "none", "ice_barrier", "underlayment" }, stage = "dry-in",
  ask = "Does an old adhered sheet stay on the deck: none, the ice barrier, or one over the whole deck?" }
field "existing.adhered_left_nails_shown" { type = "yes_no", stage = "dry-in",
  ask = "Is it shown, by papers or from the attic, that the deck under the old sheet is nailed as it must be?" }
field "existing.adhered_left_covered" { type = "yes_no", stage = "dry-in",
  ask = "Is the old adhered sheet covered again with a new one?" }
field "existing.fire_class_left" { type = "choice", choices = { "A", "B", "C", "none", "nothing_left" }, stage = "permit",
  ask = "What fire class has the part of the old roof that stays? (nothing_left if none stays)" }

field "covering.fire_class" { type = "choice", choices = { "A", "B", "C", "none" }, habit = "product", stage = "permit",
  ask = "Which fire class does the new covering's listing or wrapper show?" }
field "covering.fire_proof" { type = "choice", choices = { "listing", "wrapper", "evaluation_report", "none" }, habit = "product", stage = "permit",
  ask = "What paper shows that class?" }
field "covering.fire_test" { type = "choice", choices = { "E108", "UL_790", "D3462_glass_felt", "none" }, habit = "product", stage = "permit",
  ask = "Which test does it name: ASTM E108, UL 790, or ASTM D3462 for glass-felt shingles?" }
field "covering.over_noncombustible_deck" { type = "yes_no", answer = "desk", stage = "permit",
  ask = "Is the deck under it noncombustible everywhere (concrete or steel)?" }
field "covering.copper_oz" { type = "number", unit = "oz", range = { 0, 100 }, habit = "product", stage = "permit",
  ask = "If it is sheet copper, how many ounces does a square foot weigh? (0 if it is not copper)" }
field "covering.wood_pressure_treated" { type = "yes_no", habit = "product", stage = "permit",
  ask = "Are the wood shingles or shakes pressure-treated against fire?" }
field "covering.wood_bundles_labeled" { type = "yes_no", stage = "dry-in",
  ask = "Does every bundle carry a label with its fire class?" }
field "covering.wood_weathering_years" { type = "number", unit = "years", range = { 0, 30 }, habit = "product", stage = "permit",
  ask = "How many years of natural weathering does the wood's fire listing show?" }
field "covering.wood_length_in" { type = "number", unit = "in", range = { 12, 36 }, habit = "product", stage = "permit",
  ask = "How long are the wood shingles?" }
field "covering.wood_grade" { type = "choice", choices = { "No1", "No2", "No3" }, habit = "product", stage = "permit",
  ask = "Which grade are they?" }
field "covering.leaves_space" { type = "yes_no", answer = "desk", habit = "product", stage = "permit",
  ask = "Does its profile, or battens under it, leave a space between it and the deck?" }
field "covering.space_is" { type = "choice", choices = { "firestopped", "cap_sheet", "open" }, answer = "desk", stage = "dry-in",
  ask = "Is that space firestopped, is there cap sheet over the deck under it, or is it open?" }
field "covering.cap_sheet_lb" { type = "number", unit = "lb", range = { 0, 200 }, stage = "dry-in",
  ask = "How heavy is that cap sheet, per 100 sq ft? (0 if there is none)" }
field "covering.ends_stopped" { type = "yes_no", answer = "roof", stage = "dry-in",
  ask = "Are its open ends at eave and ridge closed?" }
field "covering.aged_reflectance" { type = "number", unit = "reflectance", range = { 0, 1 }, habit = "product", stage = "permit",
  ask = "What aged solar reflectance is the covering rated for?" }
field "covering.aged_emittance" { type = "number", unit = "emittance", range = { 0, 1 }, habit = "product", stage = "permit",
  ask = "What aged thermal emittance is it rated for?" }
field "covering.aged_SRI" { type = "number", unit = "SRI", range = { -20, 130 }, habit = "product", stage = "permit",
  ask = "What aged solar reflectance index is it rated for?" }

field "solar" { type = "group", stage = "permit", ask = "Solar panels" }
field "solar.put_on" { type = "yes_no", stage = "permit",
  ask = "Do solar panels go on, or back on, this roof?" }
field "solar.fire_class" { type = "choice", choices = { "A", "B", "C", "none" }, answer = "wrapper", stage = "permit",
  ask = "Which fire class are panels and racks listed for together?" }

field "gutters" { type = "group", answer = "roof", stage = "permit", ask = "The gutters" }
field "gutters.fitted" { type = "yes_no", stage = "permit",
  ask = "Has the house gutters?" }
field "gutters.guarded" { type = "yes_no", stage = "final",
  ask = "Do they have guards that keep leaves out?" }

field "attics[].vents[].ember_listed" { type = "yes_no", answer = "wrapper", habit = "product", stage = "permit",
  ask = "Is it listed as keeping out flame and embers (ASTM E2886)?" }
field "attics[].vents[].mesh_noncombustible" { type = "yes_no", habit = "product", stage = "permit",
  ask = "Is its mesh of a material that neither burns nor corrodes?" }

field "roof.slopes[].under_integrated_solar" { type = "yes_no", stage = "permit",
  ask = "Is this whole plane under building-integrated solar panels?" }

field "energy" { type = "group", answer = "attic", stage = "permit", ask = "What keeps heat in and out" }
field "energy.ceiling_R" { type = "number", unit = "R", range = { 0, 100 }, stage = "permit",
  ask = "What R-value has the insulation of the ceiling or roof?" }
field "energy.radiant_barrier" { type = "yes_no", stage = "permit",
  ask = "Is there a radiant barrier in the attic?" }
field "energy.radiant_barrier_on_spaced" { type = "yes_no", stage = "permit",
  ask = "Does the radiant barrier lie straight on spaced boards?" }
field "energy.ducts_in_attic" { type = "yes_no", stage = "permit",
  ask = "Are there air ducts in the attic?" }
field "energy.ducts_insulated_and_sealed" { type = "yes_no", stage = "permit",
  ask = "Are the attic's ducts insulated and sealed as the energy code asks?" }
field "energy.deck_R" { type = "number", unit = "R", range = { 0, 100 }, stage = "permit",
  ask = "What R-value of continuous insulation will lie at the deck after the work?" }
field "energy.deck_before_R" { type = "number", unit = "R", range = { 0, 100 }, stage = "permit",
  ask = "What R-value of continuous insulation lies at the deck now?" }
field "energy.air_space_in" { type = "number", unit = "in", range = { 0, 24 }, stage = "permit",
  ask = "How deep is the air space from the top of the deck to the underside of the covering?" }
field "energy.profile_ratio" { type = "number", unit = "ratio", range = { 0, 5 }, stage = "permit",
  ask = "How high is the covering's profile for its width? (1 in 5 is 0.2)" }
field "energy.profile_share_percent" { type = "number", unit = "percent", range = { 0, 100 }, stage = "permit",
  ask = "Over what share of its width is the profile that high?" }
field "energy.mass_psf" { type = "number", unit = "psf", range = { 0, 500 }, stage = "permit",
  ask = "How much weight of covering or ballast lies over the roof membrane, per square foot?" }
field "energy.cavity_opened" { type = "yes_no", stage = "permit",
  ask = "Does the work open rafter spaces that enclose heated rooms?" }
field "energy.cavity_bare" { type = "yes_no", answer = "roof", stage = "deck",
  ask = "Are rafter spaces right over heated rooms laid bare that hold no insulation?" }
field "energy.bare_insulated" { type = "yes_no", answer = "desk", stage = "deck",
  ask = "Do those rafter spaces get insulation, above or below the deck?" }
field "energy.cavity_R" { type = "number", unit = "R", range = { 0, 100 }, stage = "deck",
  ask = "What R-value of insulation lies in the opened rafter spaces?" }
field "energy.cavity_air_gap_in" { type = "number", unit = "in", range = { 0, 24 }, stage = "deck",
  ask = "How much clear air is left between that insulation and the deck?" }

field "flashing" { type = "group", answer = "wrapper", stage = "permit", ask = "The new flashing" }
field "flashing.base" { type = "choice", choices = { "metal", "mineral_roll", "other" }, answer = "desk", habit = "product", stage = "permit",
  ask = "Is base flashing metal, mineral-surfaced roll roofing, or something else?" }
field "flashing.base_thickness_in" { type = "number", unit = "in", range = { 0.001, 0.5 }, habit = "product", stage = "permit",
  ask = "How thick is the base flashing's metal? (26 gauge galvanized is 0.019 in)" }
for _, part in ipairs { "base", "cap" } do
  local group = "flashing." .. part
  field(group .. "_metal") { type = "choice",
    choices = { "copper", "aluminum", "stainless", "galvanized", "aluminum_zinc", "zinc", "lead",
      "painted_terne", "plain_steel", "other" }, habit = "product", stage = "permit",
    ask = "Which metal is the " .. part .. " flashing?" }
  field(group .. "_gage") { type = "integer", unit = "gage", range = { 1, 50 }, habit = "product", stage = "permit",
    ask = "Which gage is the " .. part .. " flashing, if stainless? (a higher number is thinner)" }
  field(group .. "_weight_lb") { type = "number", unit = "lb", range = { 0, 100 }, habit = "product", stage = "permit",
    ask = "How heavy is the " .. part .. " flashing, if lead or terne, by the weight it is sold under?" }
end
field "flashing.base_lb_per_square" { type = "number", unit = "lb_per_square", range = { 0, 300 }, habit = "product", stage = "permit",
  ask = "How heavy is the mineral-surfaced roll, per 100 sq ft?" }
field "flashing.bitumen_on_metal" { type = "yes_no", answer = "desk", habit = true, stage = "permit",
  ask = "Does anything with bitumen, such as roof cement or hot asphalt, go onto metal flashing?" }
field "flashing.primed" { type = "yes_no", answer = "desk", stage = "dry-in",
  ask = "Is metal flashing primed where bitumen goes onto it?" }
field "existing.rusted_metal_left" { type = "yes_no", answer = "roof", stage = "dry-in",
  ask = "Do old vents, metal edges, outlets or collars stay that are rusted, damaged or worn out?" }
field "flashing.corrosion_resistant" { type = "yes_no", habit = "product", stage = "permit",
  ask = "Is the flashing metal one that does not rust?" }
field "flashing.cap_thickness_in" { type = "number", unit = "in", range = { 0.001, 0.5 }, habit = "product", stage = "permit",
  ask = "How thick is the metal of cap (counter) flashing?" }

field "roof.walls" { type = "list", range = { 0, 60 }, stage = "permit",
  ask = "Each place where the roof meets a wall, or changes slope (an empty list if there is none)" }
field "roof.walls[].name" { type = "text", range = { 1, 60 }, stage = "permit",
  ask = "What do you call this place?" }
field "roof.walls[].kind" { type = "choice", choices = { "sidewall", "headwall", "slope_change" }, stage = "permit",
  ask = "Does the wall stand beside the plane (sidewall), above it (headwall), or does only the slope change?" }
field "roof.walls[].length_ft" { type = "number", unit = "ft", range = { 0.1, 1000 }, stage = "permit",
  ask = "How long is it, along the roof?" }
field "roof.walls[].flashing_is" { type = "choice", choices = { "new", "reused", "none" }, answer = "desk", stage = "dry-in",
  ask = "Is its flashing new, the old one used again, or is there none?" }
field "roof.walls[].flashing_condition" { type = "choice", choices = { "sound", "rusted", "damaged", "decayed" }, stage = "dry-in",
  ask = "In what condition is old flashing that is used again?" }
field "roof.walls[].flashing" { type = "choice", choices = { "step", "continuous", "by_instructions", "other" }, stage = "dry-in",
  ask = "Is it step flashing, one continuous piece, or what the maker prints for this place?" }
field "roof.walls[].up_in" { type = "number", unit = "in", range = { 0, 48 }, stage = "dry-in",
  ask = "How far does the flashing go up the wall?" }
field "roof.walls[].out_in" { type = "number", unit = "in", range = { 0, 48 }, stage = "dry-in",
  ask = "How far does it go out on the roof?" }
field "roof.walls[].eave_ends_here" { type = "yes_no", stage = "permit",
  ask = "Does an eave end against this wall?" }
field "roof.walls[].kickout" { type = "yes_no", stage = "dry-in",
  ask = "Is there a kick-out at its lower end?" }
field "roof.walls[].top_covered_by" { type = "choice", choices = { "siding", "counterflashing", "nothing" }, stage = "final",
  ask = "What covers the flashing's upper edge: siding, counterflashing, or nothing?" }

field "roof.chimneys" { type = "list", range = { 0, 20 }, stage = "permit",
  ask = "Each chimney that goes through the roof (an empty list if there is none)" }
field "roof.chimneys[].name" { type = "text", range = { 1, 60 }, stage = "permit",
  ask = "What do you call this chimney?" }
field "roof.chimneys[].slope" { type = "reference", refers = "roof.slopes", stage = "permit",
  ask = "Which plane does it go through?" }
field "roof.chimneys[].width_in" { type = "number", unit = "in", range = { 1, 240 }, stage = "permit",
  ask = "How wide is it along the ridge, square to the slope?" }
field "roof.chimneys[].masonry" { type = "yes_no", stage = "permit",
  ask = "Is it masonry?" }
field "roof.chimneys[].meets_ridge" { type = "yes_no", stage = "permit",
  ask = "Does the ridge meet it, so that no roof lies above it?" }
field "roof.chimneys[].flashing_is" { type = "choice", choices = { "new", "reused", "none" }, answer = "desk", stage = "dry-in",
  ask = "Is its flashing new, the old one used again, or is there none?" }
field "roof.chimneys[].flashing_condition" { type = "choice", choices = { "sound", "rusted", "damaged", "decayed" }, stage = "dry-in",
  ask = "In what condition is old flashing that is used again?" }
field "roof.chimneys[].counterflashed" { type = "yes_no", stage = "dry-in",
  ask = "Is it counterflashed?" }
field "roof.chimneys[].cricket" { type = "yes_no", stage = "dry-in",
  ask = "Is there a cricket or saddle on its ridge side?" }
field "roof.chimneys[].cricket_cover" { type = "choice", choices = { "sheet_metal", "roof_covering", "other" }, stage = "dry-in",
  ask = "What covers the cricket?" }
field "roof.chimneys[].cricket_height_in" { type = "number", unit = "in", range = { 0, 240 }, stage = "dry-in",
  ask = "How high does the cricket stand at the chimney?" }

field "roof.penetrations" { type = "list", range = { 0, 200 }, stage = "permit",
  ask = "Each pipe, vent, skylight or other thing that goes through the roof (an empty list if there is none)" }
field "roof.penetrations[].name" { type = "text", range = { 1, 60 }, stage = "permit",
  ask = "What do you call it?" }
field "roof.penetrations[].kind" { type = "choice", choices = { "pipe", "vent", "skylight", "other" }, stage = "permit",
  ask = "Is it a pipe, a vent, a skylight or something else?" }
field "roof.penetrations[].width_in" { type = "number", unit = "in", range = { 0.5, 240 }, stage = "permit",
  ask = "How wide is it along the ridge, square to the slope?" }
field "roof.penetrations[].flashing_is" { type = "choice", choices = { "new", "reused", "none" }, answer = "desk", stage = "dry-in",
  ask = "Is its flashing new, the old one used again, or is there none?" }
field "roof.penetrations[].flashing_condition" { type = "choice", choices = { "sound", "rusted", "damaged", "decayed" }, stage = "dry-in",
  ask = "In what condition is old flashing that is used again?" }
field "roof.penetrations[].per_instructions" { type = "yes_no", stage = "dry-in",
  ask = "Is it flashed as the shingle maker's (or the skylight maker's) printed instructions show?" }
field "roof.penetrations[].cricket" { type = "yes_no", stage = "dry-in",
  ask = "Is there a cricket or saddle on its ridge side?" }

field "roof.valleys" { type = "list", range = { 0, 60 }, stage = "permit",
  ask = "Each valley of the roof (an empty list if there is none)" }
field "roof.valleys[].name" { type = "text", range = { 1, 60 }, stage = "permit",
  ask = "What do you call this valley?" }
field "roof.valleys[].kind" { type = "choice", choices = { "open", "closed", "woven" }, habit = "product", stage = "permit",
  ask = "Is its lining exposed (open), or do shingles run over it (closed, woven)?" }
field "roof.valleys[].lining" { type = "choice",
  choices = { "metal", "two_ply_roll", "smooth_roll", "self_adhered", "none" }, habit = "product", stage = "permit",
  ask = "Is it lined with metal, two plies of mineral-surfaced roll, one of smooth roll, peel-and-stick (D1970), or nothing?" }
field "roof.valleys[].width_in" { type = "number", unit = "in", range = { 0, 120 }, habit = true, stage = "permit",
  ask = "How wide is the lining? (of two plies, the top one)" }
field "roof.valleys[].measured_width_in" { type = "numbers", unit = "in", range = { 0, 120 }, measured = true, stage = "dry-in",
  ask = "What widths of lining were measured? (of two plies, the top one)" }
field "roof.valleys[].bottom_width_in" { type = "number", unit = "in", range = { 0, 120 }, habit = true, stage = "permit",
  ask = "Of two plies, how wide is the bottom one?" }
field "roof.valleys[].metal" { type = "choice",
  choices = { "copper", "high_yield_copper", "lead_coated_copper", "lead_coated_high_yield_copper", "aluminum", "stainless", "galvanized",
    "aluminum_zinc", "zinc", "lead", "painted_terne", "plain_steel", "other" }, habit = "product", stage = "permit",
  ask = "Which metal lines it?" }
field "roof.valleys[].thickness_in" { type = "number", unit = "in", range = { 0.001, 0.5 }, habit = "product", stage = "permit",
  ask = "How thick is that metal?" }
field "roof.valleys[].gage" { type = "integer", unit = "gage", range = { 1, 50 }, habit = "product", stage = "permit",
  ask = "Which gage is stainless valley metal? (a higher number is thinner)" }
field "roof.valleys[].weight_lb" { type = "number", unit = "lb", range = { 0, 100 }, habit = "product", stage = "permit",
  ask = "How heavy is lead or terne valley metal, by the weight it is sold under?" }
field "roof.valleys[].lined_before_shingles" { type = "yes_no", stage = "dry-in",
  ask = "Was it lined before the shingles went on?" }
field "roof.valleys[].nails_from_center_in" { type = "number", unit = "in", range = { 0, 48 }, stage = "final",
  ask = "How far from the valley's center is the nearest nail?" }
field "roof.valleys[].cap_sheet_width_in" { type = "number", unit = "in", range = { 0, 120 }, stage = "dry-in",
  ask = "How wide is the cap sheet under exposed valley metal? (0 if there is none)" }
field "roof.valleys[].cap_sheet_lb" { type = "number", unit = "lb", range = { 0, 200 }, stage = "dry-in",
  ask = "How heavy is that cap sheet, per 100 sq ft? (0 if there is none)" }
field "roof.valleys[].cap_sheet_full_length" { type = "yes_no", stage = "dry-in",
  ask = "Does that cap sheet run the full length of the valley?" }

field "decks[].solid_at_eaves" { type = "yes_no", stage = "deck",
  ask = "Is this deck solid from the eave as far up as an ice barrier would go?" }

field "rot" { type = "list", range = { 0, 200 }, answer = "roof", stage = "deck",
  ask = "Each piece of wood found rotted when the roof was opened (an empty list if none was)" }
field "rot[].name" { type = "text", range = { 1, 60 }, stage = "deck",
  ask = "What do you call this piece?" }
field "rot[].member" { type = "choice",
  choices = { "rafter_tail", "rafter", "truss", "fascia", "rake_board", "starter_board", "deck_edge",
    "soffit" }, stage = "deck",
  ask = "Is it a rafter tail, rafter, truss, fascia, rake board, starter board, deck edge or soffit?" }
field "rot[].length_ft" { type = "number", unit = "ft", range = { 0, 500 }, stage = "deck",
  ask = "How many feet of it?" }
field "rot[].stock" { type = "text", range = { 1, 30 }, stage = "deck",
  ask = "Which stock is the new piece cut from? (such as 2x6 or 1x8)" }
field "rot[].repair" { type = "choice", choices = { "new_piece", "sistered", "filled", "left" }, stage = "deck",
  ask = "Was a new piece put in, was one nailed alongside (sistered), was it filled or patched, or was it left?" }
field "rot[].rot_cut_off" { type = "yes_no", stage = "deck",
  ask = "Is the rotted part cut off where the new piece lies alongside?" }
field "rot[].sister_past_ft" { type = "number", unit = "ft", range = { 0, 60 }, stage = "deck",
  ask = "How far does the new piece run on along sound wood, past the part that is replaced?" }
field "rot[].size_matches" { type = "yes_no", stage = "deck",
  ask = "Is the new piece the same size as the old?" }
field "rot[].species_matches" { type = "yes_no", stage = "deck",
  ask = "Is it of the same species, or of one as strong and durable?" }
field "rot[].primed_all_faces" { type = "yes_no", stage = "deck",
  ask = "Was it primed on all faces, back, ends and cuts, before nailing?" }
field "rot[].reaches_wall" { type = "yes_no", stage = "deck",
  ask = "Does the rot reach the wall, or past it, where the member bears?" }
field "rot[].strength_shown" { type = "yes_no", stage = "deck",
  ask = "Is there a drawing, or the building department's word, for the repair of this framing?" }

-- Permit, papers, visits, alarms ----------------------------------------------

field "scope.extent" { type = "choice", choices = { "reroof", "repair" }, stage = "permit",
  ask = "Is this a new covering, or a small repair of the old one?" }
field "scope.area_sqft" { type = "number", unit = "sqft", range = { 1, 100000 }, stage = "permit",
  ask = "How much covering is replaced or laid over in this job?" }
field "scope.price_usd" { type = "number", unit = "usd", range = { 0, 10000000 }, stage = "permit",
  ask = "What is the price of the job, labor and material together?" }
field "scope.pitch_change" { type = "yes_no", stage = "permit",
  ask = "Does the work change the pitch of any plane?" }
field "scope.material_change" { type = "yes_no", stage = "permit",
  ask = "Is the new covering of another kind, grade or fire class than the old?" }
field "scope.looks_change" { type = "yes_no", stage = "permit",
  ask = "Does the color or the look of the roof change?" }
field "scope.structure_altered" { type = "yes_no", stage = "permit",
  ask = "Are rafters, trusses or other framing altered or replaced?" }
field "scope.skylights_changed" { type = "yes_no", stage = "permit",
  ask = "Does the work put in, move, enlarge or take out a skylight?" }
field "scope.units_moved" { type = "yes_no", stage = "permit",
  ask = "Is equipment that stands on the roof, such as a cooling unit, taken off, moved or put back?" }
field "scope.new_underlayment" { type = "yes_no", stage = "permit",
  ask = "Does the work lay new underlayment?" }
field "scope.rest_to_code" { type = "yes_no", stage = "permit",
  ask = "Is the rest of the roof, or of the section, brought up to the present code as well?" }
field "scope.rest_under_relief" { type = "yes_no", stage = "permit",
  ask = "Was the old roof built or replaced under a code new enough that the rest of it may stay as it is?" }
field "scope.joins" { type = "choices", choices = { "none", "ridge", "hip", "open_valley", "closed_valley", "mid_slope" },
  stage = "permit", ask = "Where do the new covering and one of another kind meet? (none, or every such place)" }
field "scope.solar_reset" { type = "yes_no", stage = "permit",
  ask = "Are solar panels taken off and put back?" }
field "roof.slopes[].replaced_percent" { type = "number", unit = "percent", range = { 0, 100 }, answer = "desk", stage = "permit",
  ask = "How much of this plane's covering is replaced, in this job and in the months before together?" }

field "covering.grade" { type = "choice", choices = { "three_tab", "laminated", "other" }, habit = "product", stage = "permit",
  ask = "Which make-up of asphalt shingle is it: three-tab, laminated, or another?" }
field "covering.lifetime_warranty" { type = "yes_no", habit = "product", stage = "permit",
  ask = "Does the maker's warranty on the covering run for life?" }
field "covering.warranty_years" { type = "number", unit = "years", range = { 0, 100 }, habit = "product", stage = "permit",
  ask = "For how many years does the maker's warranty on the covering run?" }
field "covering.individual" { type = "yes_no", habit = "product", stage = "permit",
  ask = "Are they individual shingles, not strips? (only where they are)" }
field "covering.on_local_list" { type = "yes_no", answer = "department", stage = "permit",
  ask = "Is the covering on the place's own list of those it accepts?" }
field "roof.ties_at_each_rafter" { type = "yes_no", answer = "attic", stage = "deck",
  ask = "Is every rafter or truss tied down to the wall with metal?" }

field "permit" { type = "group", stage = "permit", ask = "The permit" }
field "permit.status" { type = "choice", choices = { "none", "applied", "issued" }, stage = "permit",
  ask = "Is there a permit: none, applied for, or issued?" }
field "permit.number" { type = "text", range = { 1, 60 }, answer = "paper", stage = "deck",
  ask = "What is the permit's number?" }
field "permit.telephone" { type = "text", range = { 3, 40 }, answer = "department", of_place = true,
  stage = "permit", ask = "What is the building department's telephone number?" }
field "permit.holder" { type = "choice", choices = { "owner", "contractor", "agent", "other" }, habit = true, stage = "permit",
  ask = "Who takes out the permit?" }
field "permit.owner_lives_there" { type = "yes_no", stage = "permit",
  ask = "If the owner takes it out: does the owner live in the house?" }
field "permit.owner_statement" { type = "choice", choices = { "none", "signed", "signed_in_person" }, stage = "permit",
  ask = "Has the owner signed the statement of an owner who does the work: no, signed, or signed at the counter?" }
field "permit.posted" { type = "yes_no", stage = "deck",
  ask = "Is the permit or its card on the site, and will it stay until the final?" }
field "permit.seen_from_street" { type = "yes_no", stage = "deck",
  ask = "Can the card be seen from the street?" }
field "permit.longest_idle_days" { type = "integer", unit = "days", range = { 0, 5000 }, stage = "deck",
  ask = "What was the longest wait: from the permit to the start of work, or a stop since?" }
field "permit.extended" { type = "yes_no", stage = "deck",
  ask = "Was the permit extended in writing?" }
field "permit.open_days" { type = "integer", unit = "days", range = { 0, 5000 }, stage = "deck",
  ask = "How many days is it since the permit was issued?" }

field "contractor" { type = "group", stage = "permit", ask = "Who does the work" }
field "contractor.license" { type = "choice", choices = { "none", "roofing", "general", "other" }, habit = true, stage = "permit",
  ask = "Which contractor's license is shown on the application?" }
field "contractor.registered" { type = "yes_no", stage = "permit",
  ask = "Is the contractor registered or licensed with the place itself?" }
field "contractor.overdue_permits" { type = "yes_no", stage = "permit",
  ask = "Has the contractor another permit here that stayed open too long?" }
field "contractor.insurance" { type = "choices", choices = { "none", "workers_comp", "liability" }, habit = true, stage = "permit",
  ask = "Which insurance papers are shown? (none, or each)" }
field "contractor.workers_comp" { type = "choice", choices = { "none", "certificate", "exemption" }, habit = true, stage = "permit",
  ask = "What is shown of workers' compensation: nothing, a certificate of insurance, or a certificate of exemption?" }
field "contractor.has_employees" { type = "yes_no", answer = "desk", habit = true, stage = "permit",
  ask = "Has the contractor anyone employed?" }
field "contractor.liability_usd" { type = "number", unit = "usd", range = { 0, 100000000 }, habit = true, stage = "permit",
  ask = "What sum does the liability insurance cover?" }
field "contractor.lead_safe_firm" { type = "yes_no", habit = true, stage = "permit",
  ask = "Does the application show the number of a lead-safe certified firm?" }

field "site.historic" { type = "yes_no", stage = "permit",
  ask = "Is the house a landmark or in a historic district?" }
field "site.open_violations" { type = "yes_no", stage = "permit",
  ask = "Are there code violations open on this property?" }
field "site.right_of_way_used" { type = "yes_no", answer = "desk", stage = "permit",
  ask = "Will material, a bin or a chute stand in the street or on the sidewalk?" }
field "site.right_of_way_permit" { type = "yes_no", answer = "paper", stage = "permit",
  ask = "Is there a permit for using the street or sidewalk?" }
field "site.bin_used" { type = "yes_no", answer = "desk", stage = "permit",
  ask = "Will there be a debris bin?" }
field "site.bin_permit" { type = "yes_no", answer = "paper", stage = "permit",
  ask = "Is there a permit for the debris bin?" }
field "site.association" { type = "yes_no", answer = "desk", stage = "permit",
  ask = "Does a homeowners' association have a say in the roof?" }
field "site.address_posted" { type = "yes_no", answer = "desk", stage = "permit",
  ask = "Is the house number posted where it reads from the street?" }
field "site.address_height_in" { type = "number", unit = "in", range = { 0, 36 }, answer = "desk", stage = "permit",
  ask = "How tall are its digits?" }
field "site.address_stroke_in" { type = "number", unit = "in", range = { 0, 6 }, answer = "desk", stage = "permit",
  ask = "How wide are the strokes of its digits?" }
field "site.snow_on_roof" { type = "yes_no", measured = true, answer = "roof", stage = "deck",
  ask = "Is there snow on the roof on the day of the visit?" }
field "site.clean" { type = "yes_no", measured = true, answer = "desk", stage = "final",
  ask = "Is the site clean of debris?" }
field "site.bin_gone" { type = "yes_no", measured = true, answer = "desk", stage = "final",
  ask = "Is the debris bin gone?" }
field "site.downspouts_to_storm_sewer" { type = "yes_no", measured = true, answer = "roof", stage = "final",
  ask = "Do downspouts run into the storm sewer?" }

field "papers" { type = "group", answer = "paper", stage = "permit", ask = "The papers" }
field "papers.application_states" { type = "choices",
  choices = { "squares", "price", "old_covering", "new_covering", "old_layers", "layers_removed", "deck_replaced",
    "pitch", "weight", "fire_class", "wind_class", "warranty", "maker", "color", "listing_number", "who_works",
    "which_building", "structure_ok", "flood_zone" }, stage = "permit",
  ask = "Which of these does the application state?" }
field "papers.contract" { type = "yes_no", stage = "permit",
  ask = "Is a copy of the signed contract handed in?" }
field "papers.sketch_copies" { type = "integer", unit = "count", range = { 0, 20 }, stage = "permit",
  ask = "How many copies of a roof sketch or plan are handed in? (0 for none)" }
field "papers.plans" { type = "yes_no", stage = "permit",
  ask = "Are drawings by someone entitled to make them handed in?" }
field "papers.approval_sheets" { type = "integer", unit = "count", range = { 0, 50 }, stage = "permit",
  ask = "How many product approval sheets are handed in? (0 for none)" }
field "papers.approval_numbers" { type = "yes_no", stage = "permit",
  ask = "Are the product approval numbers of the materials given?" }
field "papers.maker_specification" { type = "yes_no", stage = "permit",
  ask = "Is the maker's specification or evaluation report handed in?" }
field "papers.commencement_recorded" { type = "yes_no", stage = "permit",
  ask = "Is a notice of commencement recorded?" }
field "papers.commencement_posted" { type = "yes_no", stage = "deck",
  ask = "Is the recorded notice of commencement posted on the site?" }
field "papers.association_letter" { type = "yes_no", stage = "permit",
  ask = "Is the association's letter of consent handed in?" }
field "papers.association_notice_days" { type = "integer", unit = "days", range = { 0, 365 }, stage = "permit",
  ask = "How many business days ahead was the association told?" }
field "papers.planning_consent" { type = "yes_no", stage = "permit",
  ask = "Has the planning or design office consented?" }
field "papers.historic_certificate" { type = "yes_no", stage = "permit",
  ask = "Is there a certificate from the historic commission?" }
field "papers.engineer_report" { type = "yes_no", stage = "permit",
  ask = "Has an engineer written that the structure carries the new covering?" }
field "papers.asbestos_notice" { type = "yes_no", stage = "permit",
  ask = "Does the permit carry the notice on asbestos?" }
field "papers.asbestos_test" { type = "choice", choices = { "none", "free_of_it", "found" }, stage = "permit",
  ask = "Was the old roof tested for asbestos, and what came out?" }
field "papers.waste_plan" { type = "yes_no", stage = "permit",
  ask = "Is a plan for the debris handed in?" }
field "papers.waste_deposit_usd" { type = "number", unit = "usd", range = { 0, 100000 }, stage = "permit",
  ask = "What deposit for the debris was paid? (0 for none)" }
field "papers.site_measures" { type = "yes_no", stage = "permit",
  ask = "Are chutes, fences, scaffolds and the bin described?" }
field "papers.handed_in" { type = "choices",
  choices = { "none", "cost_proof", "appraisal", "owner_notice", "wind_load_data", "energy_forms", "tie_affidavit",
    "fastening_method", "fire_class_page", "flood_form", "alarm_form", "business_license" }, stage = "permit",
  ask = "Which of these are handed in with the application? (none, or each)" }
field "papers.on_site" { type = "choices",
  choices = { "none", "approved_plans", "maker_instructions", "product_approvals", "roof_plan", "wrappers", "nail_box_label",
    "affidavit", "tie_affidavit", "alarm_form", "weight_tags", "correction_notice" }, stage = "deck",
  ask = "Which of these lie ready on the site for the inspector? (none, or each)" }
field "papers.wrapper_at_final" { type = "yes_no", stage = "final",
  ask = "Is a shingle wrapper on the site at the final?" }
field "papers.affidavit" { type = "group", stage = "deck", ask = "The affidavit on hidden work" }
field "papers.affidavit.covers" { type = "choices",
  choices = { "none", "sheathing", "deck_nailing", "dry_in", "flashing", "ice_barrier", "drip_edge" }, stage = "deck",
  ask = "Which hidden work does the signed affidavit cover? (none if there is none)" }
field "papers.affidavit.signed_by" { type = "choice", choices = { "license_holder", "engineer", "owner", "other" }, stage = "deck",
  ask = "Who signed the affidavit?" }
field "papers.affidavit.notarized" { type = "yes_no", stage = "deck",
  ask = "Is the affidavit notarized?" }
field "papers.affidavit.on_site" { type = "yes_no", stage = "deck",
  ask = "Is the affidavit posted or kept on the site?" }
field "papers.affidavit.filed" { type = "yes_no", stage = "deck",
  ask = "Is the affidavit on file with the department before the final?" }
field "papers.photos" { type = "group", stage = "deck", ask = "The photographs" }
field "papers.photos.deck" { type = "choices",
  choices = { "none", "each_plane", "deck_nails", "nail_spacing", "nail_depth", "nail_box_label", "deck_joints", "replaced_deck" },
  stage = "deck", ask = "What is photographed of the deck? (none, or each)" }
field "papers.photos.dry_in" { type = "choices",
  choices = { "none", "each_plane", "underlayment", "ice_barrier", "ice_barrier_measured", "drip_edge", "flashings", "valleys" },
  stage = "dry-in", ask = "What is photographed of the dry-in? (none, or each)" }
field "papers.photos.final" { type = "choices",
  choices = { "none", "street_view", "each_plane", "pipes", "vents", "flashings", "chimney_saddles", "ridge" },
  stage = "final", ask = "What is photographed of the finished roof? (none, or each)" }
field "papers.photos.tied_to_job" { type = "yes_no", stage = "deck",
  ask = "Does every photograph show the permit number or the address, in the shot or with it?" }
field "papers.photos.clear" { type = "yes_no", stage = "deck",
  ask = "Are the photographs sharp when enlarged, and sent as plain files?" }

field "inspection" { type = "group", stage = "permit", ask = "The inspector's visits" }
field "inspection.notice_hours" { type = "number", unit = "hours", range = { 0, 1000 }, habit = true, stage = "permit",
  ask = "How many hours ahead are visits asked for?" }
field "inspection.called_by" { type = "choice", choices = { "owner", "contractor", "agent", "crew", "other" }, habit = true, stage = "permit",
  ask = "Who calls the inspector?" }
field "inspection.access" { type = "choice", choices = { "ladder", "scaffold", "lift", "inside", "drone", "none" }, habit = true, stage = "permit",
  ask = "How will the inspector get to see the roof?" }
field "inspection.ladder_tied" { type = "yes_no", habit = true, stage = "permit",
  ask = "Will the ladder be set up and tied at the top?" }
field "inspection.ladder_past_eave_in" { type = "number", unit = "in", range = { 0, 240 }, habit = true, stage = "permit",
  ask = "How far do the ladder's rails run past the eave?" }
field "inspection.ladder_rating_lb" { type = "number", unit = "lb", range = { 0, 1000 }, habit = true, stage = "permit",
  ask = "For what load is the ladder rated?" }
field "inspection.someone_home" { type = "yes_no", stage = "permit",
  ask = "Will a grown person be there, or a note be left where the inspector may go?" }
field "inspection.solar_proof" { type = "choice", choices = { "none", "visit", "with_final" }, stage = "permit",
  ask = "Who looks at the solar panels that are put back: nobody, a visit of its own, or the final?" }
field "inspection.solar_electrician" { type = "yes_no", stage = "permit",
  ask = "Is the electrician named who puts the panels back?" }
field "inspection.labels_kept" { type = "yes_no", measured = true, stage = "dry-in",
  ask = "Are the labels of the bundles and rolls there to be read?" }

-- The same facts for each visit that a place may have. What a place calls
-- "mid-roof" stands for one of five moments, so its job says which.
local VISITS = {
  { "pre", "permit", "before anything comes off or is laid over", "deck" },
  { "deck", "permit", "at the bare deck", "deck" },
  { "nailing", "permit", "when new deck is nailed", "deck" },
  { "dry_in", "permit", "when the dry-in is on", "dry-in" },
  { "mid_roof", "permit", "part-way up the roof (mid-roof)", "dry-in" },
  { "final", "permit", "when the roof is done", "final" },
}
for _, visit in ipairs(VISITS) do
  local name, known_at, when, hidden_at = visit[1], visit[2], visit[3], visit[4]
  local group = "inspection." .. name
  field(group) { type = "group", stage = known_at, ask = "The look " .. when }
  field(group .. ".proof") { type = "choice",
    choices = { "none", "visit", "photos", "affidavit", "self_certified", "third_party", "drone", "winter_rule" },
    stage = known_at,
    ask = "What shows the work " .. when .. ": nothing, a visit, photographs, an affidavit, the contractor's own report, "
      .. "someone licensed from outside, a drone, or a later look under the place's winter rule?" }
  field(group .. ".hidden_first") { type = "yes_no", measured = true, stage = hidden_at,
    ask = "Was any of the work " .. when .. " hidden before it was looked at?" }
  field(group .. ".result") { type = "choice", choices = { "not_held", "corrections", "partial", "passed" }, stage = hidden_at,
    ask = "What came of the look " .. when .. "?" }
end
field "inspection.mid_roof.moment" { type = "choice",
  choices = { "after_tear_off", "dried_in", "courses_laid", "loaded", "battens_on" }, stage = "permit",
  ask = "At which moment is the mid-roof look: after tear-off, dried in, some courses laid, dried in and loaded, or battens on?" }
field "inspection.mid_roof.courses_laid" { type = "integer", unit = "count", range = { 0, 500 }, stage = "dry-in",
  ask = "How many courses are laid when the mid-roof look is made?" }
field "inspection.mid_roof.covering_percent" { type = "number", unit = "percent", range = { 0, 100 }, stage = "dry-in",
  ask = "How much of the covering is laid when the mid-roof look is made?" }

field "alarms" { type = "group", stage = "permit", ask = "Smoke and carbon monoxide alarms" }
field "alarms.smoke_at" { type = "choices", choices = { "none", "each_bedroom", "outside_bedrooms", "each_story" }, stage = "final",
  ask = "Where are there working smoke alarms? (none, or each)" }
field "alarms.co_at" { type = "choices", choices = { "none", "fuel_bedroom", "outside_bedrooms", "each_story" }, stage = "final",
  ask = "Where are there working carbon monoxide alarms? (none, or each)" }
field "alarms.listed" { type = "yes_no", stage = "final",
  ask = "Do all the alarms bear the listing that the place asks for?" }
field "alarms.power" { type = "choice", choices = { "wired", "sealed_battery", "battery" }, stage = "final",
  ask = "What feeds the alarms: house wiring, sealed long-life batteries, or batteries that are changed?" }
field "scope.finish_opened" { type = "yes_no", stage = "permit",
  ask = "Does the work take down the finish of any wall or ceiling inside?" }
field "house.wiring_access" { type = "yes_no", answer = "attic", stage = "final",
  ask = "Could wires be run to the alarms through an attic, a crawl space or a basement?" }
field "alarms.from_bath_door_in" { type = "number", unit = "in", range = { 0, 1000 }, stage = "final",
  ask = "How far is the nearest alarm from a bathroom door?" }
field "alarms.from_register_in" { type = "number", unit = "in", range = { 0, 1000 }, stage = "final",
  ask = "How far is the nearest alarm from an air register or the tip of a fan blade?" }
field "alarms.from_cooking_ft" { type = "number", unit = "ft", range = { 0, 300 }, stage = "final",
  ask = "How far, measured level, is the nearest smoke alarm from a stove or oven that is built in?" }
field "alarms.nearest_cooking_is" { type = "choice",
  choices = { "ionization", "silenced", "photoelectric", "photoelectric_open", "listed" }, stage = "final",
  ask = "What is that alarm, by its label: ionization, ionization with a silencing switch, photoelectric, photoelectric where the kitchen is open to the room and no other place is left, or listed for use near a stove?" }
field "alarms.proof" { type = "choice", choices = { "none", "seen", "signed_form", "affidavit" }, stage = "final",
  ask = "What shows the alarms: nothing, an inspector saw them, a signed form, or an affidavit?" }
field "alarms.form_signed_by" { type = "choices", choices = { "none", "owner", "contractor", "tenant" }, stage = "final",
  ask = "Who signed the alarm form? (none, or each)" }
field "house.co_sources" { type = "choices",
  choices = { "none", "fuel_appliance", "bedroom_appliance", "fireplace", "attached_garage" }, stage = "permit",
  ask = "Which of these has the house: an appliance that burns fuel, one in a bedroom, a fireplace, an attached garage? "
    .. "(none, or each)" }
field "house.solid_fuel_chimney" { type = "yes_no", stage = "permit",
  ask = "Is there a chimney of a fireplace or stove that burns wood?" }
field "house.spark_arrester" { type = "yes_no", answer = "roof", stage = "final",
  ask = "Does every such chimney have a spark arrester?" }
field "house.spark_arrester_opening_in" { type = "number", unit = "in", range = { 0.1, 2 }, answer = "roof", stage = "final",
  ask = "How wide are the arrester's openings?" }
field "house.gas_vents_fit" { type = "yes_no", measured = true, answer = "attic", stage = "final",
  ask = "Were the gas vent pipes looked at in the attic, and do they still fit together?" }

-- What single places ask -----------------------------------------------------

field "scope.part_as_new" { type = "yes_no", stage = "permit",
  ask = "Is the part that is done built as the code asks of a new building?" }
field "scope.addition_floor_sqft" { type = "number", unit = "sqft", range = { 0, 20000 }, stage = "permit",
  ask = "How much floor does an addition of this job add on the story where it adds most? (0 without one)" }
field "house.value_usd" { type = "number", unit = "usd", range = { 0, 100000000 }, stage = "permit",
  ask = "For what is the house insured or, failing that, assessed?" }
field "decks[].shear_listed" { type = "yes_no", answer = "wrapper", stage = "permit",
  ask = "Are the panels listed as equal in shear to the thickness that the place names?" }
field "decks[].panel_edges_bare" { type = "yes_no", stage = "deck",
  ask = "Can the edge of a new panel be seen at an eave or rake?" }
field "roof.valleys[].ice_barrier" { type = "yes_no", stage = "permit",
  ask = "Does ice barrier lie under this valley?" }
field "permit.variances" { type = "choices", choices = { "none", "drip_edge", "underlayment" }, stage = "permit",
  ask = "For which of these has the place granted a variance or another method in writing? (none, or each)" }
field "permit.kind" { type = "choice", choices = { "reroof", "small_repair" }, stage = "permit",
  ask = "Is the permit one for a reroof or one for a small repair?" }
field "permit.mostly_done" { type = "yes_no", stage = "deck",
  ask = "Was most of the work done before the permit's time was up?" }
field "permit.delay_explained" { type = "yes_no", stage = "deck",
  ask = "Has the place been given a reason for the delay?" }
field "permit.certificate" { type = "yes_no", stage = "final",
  ask = "Has the place issued a certificate of compliance?" }
field "site.bin_deposit" { type = "yes_no", answer = "paper", stage = "permit",
  ask = "Is the deposit for the debris bin paid?" }
field "papers.packets" { type = "integer", unit = "count", range = { 0, 20 }, stage = "permit",
  ask = "How many whole sets of the application are handed in?" }
field "papers.approvals_marked" { type = "choice", choices = { "circled", "highlighted", "unmarked" }, stage = "permit",
  ask = "How is what applies marked on the approval sheets: circled, highlighted, or not at all?" }
field "papers.underlayment_stated" { type = "choice", choices = { "none", "no_30_felt", "self_adhered", "other" }, stage = "permit",
  ask = "Which underlayment does the form name?" }
field "papers.waste_reused_percent" { type = "number", unit = "percent", range = { 0, 100 }, stage = "final",
  ask = "What share of the debris went to be used again, by the weight tags?" }
field "inspection.deputy" { type = "yes_no", stage = "permit",
  ask = "Is a deputy inspector engaged to watch the work?" }

field "site.wildfire_hazard_zone" { type = "yes_no", answer = "department", of_place = true, stage = "permit",
  ask = "Has the city or county mapped the lot as a wildfire hazard zone?" }
field "covering.integrated_solar" { type = "yes_no", answer = "desk", stage = "permit",
  ask = "Are solar panels built into the new covering?" }

-- What cannot be ------------------------------------------------------------
-- Each check runs once, or once per item of `per`; it reports when `when`
-- returns a text. A fact it lacks only means it has nothing to say. More of them,
-- and those that are only asked back, stand in cannot_be.lua.

impossible "the layers listed are the layers counted" {
  at = "existing.coverings",
  when = function(job)
    local listed, counted = #job.existing.coverings, job.existing.layers
    if listed ~= counted then
      return "lists " .. listed .. " of them, but /existing/layers says " .. counted
    end
  end,
}

impossible "no more layers come off than are there" {
  at = "existing.layers_removed",
  when = function(job)
    local removed, there = job.existing.layers_removed, job.existing.layers
    if removed > there then
      return removed .. " layers cannot come off a roof that has " .. there
    end
  end,
}

impossible "the layers marked as removed are the layers removed" {
  at = "existing.layers_removed",
  when = function(job)
    local marked = 0
    for _, layer in ipairs(job.existing.coverings) do
      if layer.removed then marked = marked + 1 end
    end
    if marked ~= job.existing.layers_removed then
      return "says " .. job.existing.layers_removed .. ", but " .. marked .. " of /existing/coverings are marked removed"
    end
  end,
}

impossible "a layer stays above one that comes off" {
  at = "existing.coverings",
  when = function(job)
    local kept
    for i, layer in ipairs(job.existing.coverings) do
      if layer.removed and kept then
        return "layer " .. i .. " comes off from under layer " .. kept .. ", which stays"
      end
      if not layer.removed then kept = i end
    end
  end,
}

impossible "no plane has more layers than are counted where there are most" {
  at = "old_layers", per = "roof.slopes",
  when = function(job, slope)
    local here, most = slope.old_layers, job.existing.layers
    if here > most then
      return here .. " layers here, but /existing/layers, which counts them where there are "
        .. "most, says " .. most
    end
  end,
}

-- Fewer on every plane, or more taken off every plane, would let a roof off by what the
-- count of the whole roof itself denies.
local function some_plane(job, is_so)
  for _, slope in ipairs(job.roof.slopes) do
    if is_so(old_layers_on(job, slope)) then return true end
  end
  return false
end

impossible "some plane has as many layers as are counted" {
  at = "existing.layers",
  when = function(job)
    local most = job.existing.layers
    if not some_plane(job, function(here) return here >= most end) then
      return "counts the layers where there are most, but every plane of the roof has fewer than "
        .. most
    end
  end,
}

impossible "some plane keeps what is said to stay" {
  at = "existing.layers_removed",
  when = function(job)
    local least = job.existing.layers_removed
    if job.existing.layers > 0
      and not some_plane(job, function(here, off) return here > 0 and off <= least end) then
      return "counts what comes off where least does, but of every plane of the roof more than "
        .. least .. " come off"
    end
  end,
}

impossible "no more layers come off a plane than are there" {
  at = "old_layers_removed", per = "roof.slopes",
  when = function(job, slope)
    local off, here = slope.old_layers_removed, old_layers_on(job, slope)
    if off > here then return off .. " layers cannot come off a plane that has " .. here end
  end,
}

impossible "a layer that is said to come off comes off every plane" {
  at = "old_layers_removed", per = "roof.slopes",
  when = function(job, slope)
    local coverings, here, off = job.existing.coverings, old_layers_on(job, slope)
    for i = math.max(1, #coverings - here + 1), #coverings do
      if coverings[i].removed and not select(2, old_layer_at(job, slope, i)) then
        return "only " .. off .. " of " .. here .. " come off here, but layer " .. i
          .. " of /existing/coverings is marked removed: mark what comes off wherever it lies"
      end
    end
  end,
}

impossible "an overlay lays over something" {
  at = "scope.method",
  when = function(job)
    if job.scope.method == "overlay" and job.existing.layers - job.existing.layers_removed < 1 then
      return "an overlay leaves at least one old layer, but none stays"
    end
  end,
}

impossible "a repair is not the whole roof" {
  at = "scope.extent",
  when = function(job)
    if job.scope.extent == "repair" and job.scope.roof_share_percent >= 100 then
      return "a small repair cannot be the whole roof"
    end
  end,
}

impossible "a plane has a length" {
  at = "eave_ft", per = "roof.slopes",
  when = function(job, slope)
    if slope.eave_ft == 0 and slope.ridge_ft == 0 then
      return "a plane with neither lower nor upper edge has no area"
    end
  end,
}

impossible "a plane covers no more than its longer edge over its run" {
  at = "plan_sqft", per = "roof.slopes",
  when = function(job, slope)
    local most = math.max(slope.eave_ft, slope.ridge_ft) * slope.run_ft
    if slope.plan_sqft > most + 1 then
      return number(slope.plan_sqft, "sqft") .. " seen from above, on a plane of at most "
        .. number(most, "sqft")
    end
  end,
}

-- A slip of a digit would shrink the roof, and let a permit or a share be free.
impossible "what cuts into a plane leaves half of it" {
  at = "plan_sqft", per = "roof.slopes",
  when = function(job, slope)
    local whole = (slope.eave_ft + slope.ridge_ft) / 2 * slope.run_ft
    if slope.plan_sqft < whole / 2 - 1 then
      return number(slope.plan_sqft, "sqft") .. " seen from above is less than half of the "
        .. number(whole, "sqft") .. " that its edges enclose; what is left of a plane cut up so "
        .. "is told better as planes of its own"
    end
  end,
}

impossible "the ridge is no longer than the planes that meet there" {
  at = "roof.ridge_ft",
  when = function(job)
    local upper = 0
    for _, slope in ipairs(job.roof.slopes) do upper = upper + slope.ridge_ft end
    if job.roof.ridge_ft > upper + 0.01 then
      return tostring(job.roof.ridge_ft) .. " ft of ridge, but the upper edges of all planes add up to " .. tostring(upper) .. " ft"
    end
  end,
}

-- Both planes list the hip or valley between them, so each counts twice there;
-- lengths along the slope are rounded.
local function listed_edges_ft(job, kind)
  local sum = 0
  for _, edge in ipairs(job.roof.edges) do
    if edge.kind == kind then sum = sum + edge.length_ft end
  end
  return sum / 2
end

for _, kind in ipairs { "hip", "valley" } do
  local name, these = kind .. "_ft", kind == "hip" and "hips" or "valleys"
  impossible("no " .. kind .. " is listed that is not counted") {
    at = "roof." .. name,
    when = function(job)
      local counted, listed = job.roof[name], listed_edges_ft(job, kind)
      if counted < listed - 0.5 then
        return number(counted, "ft") .. ", but the " .. these .. " listed under /roof/edges come to "
          .. number(listed, "ft") .. " or more"
      end
    end,
  }
end

impossible "valleys are listed where there are any" {
  at = "roof.valleys",
  when = function(job)
    local listed, feet = #job.roof.valleys, job.roof.valley_ft
    if (listed == 0) ~= (feet == 0) then
      return "lists " .. (listed == 0 and "none" or number(listed) .. " valley"
        .. (listed == 1 and "" or "s")) .. ", but /roof/valley_ft says " .. number(feet, "ft")
    end
  end,
}

-- Less than an inch showing is a slip of the tape, and no number of rolls would do.
local function all_lap(lap, width)
  if lap > width - 1 then
    return "a lap of " .. number(lap, "in") .. " leaves nothing to show of a roll of "
      .. number(width, "in")
  end
end

impossible "an underlayment shows some of itself" {
  at = "head_lap_in", per = "underlayments",
  when = function(job, sheet) return all_lap(sheet.head_lap_in, sheet.roll_width_in) end,
}

impossible "an ice barrier shows some of itself" {
  at = "ice_barrier.lap_in",
  when = function(job) return all_lap(job.ice_barrier.lap_in, job.ice_barrier.roll_width_in) end,
}

impossible "a ridge vent needs a ridge" {
  at = "kind", per = "attics[].vents",
  when = function(job, vent)
    if vent.kind == "ridge" and job.roof.ridge_ft == 0 then
      return "a ridge vent on a roof that has no ridge (/roof/ridge_ft is 0)"
    end
  end,
}

impossible "ridge vents fit on the ridge" {
  at = "attics",
  when = function(job)
    local vented = 0
    for _, attic in ipairs(job.attics) do
      for _, vent in ipairs(attic.vents) do
        if vent.kind == "ridge" then vented = vented + vent.length_ft end
      end
    end
    if vented > job.roof.ridge_ft + 0.01 and job.roof.ridge_ft > 0 then
      return tostring(vented) .. " ft of ridge vent on " .. tostring(job.roof.ridge_ft) .. " ft of ridge"
    end
  end,
}

impossible "an edge is no longer than its plane allows" {
  at = "length_ft", per = "roof.edges",
  when = function(job, edge)
    local slope = edge.slope
    if edge.kind == "eave" or edge.kind == "onto_roof" then
      if edge.length_ft > slope.eave_ft + 0.01 then
        return "an eave of " .. tostring(edge.length_ft) .. " ft on a plane whose lower edge is " .. tostring(slope.eave_ft) .. " ft"
      end
      return
    end
    local longest = trade.sloped_length_ft { run_ft = slope.run_ft, pitch = slope.pitch }
    if edge.kind == "hip" or edge.kind == "valley" then -- these run askew
      local across = math.sqrt(longest ^ 2 + math.max(slope.eave_ft, slope.ridge_ft) ^ 2)
      if edge.length_ft > across + 0.05 then
        return "a " .. edge.kind .. " of " .. number(edge.length_ft, "ft")
          .. ", but no line across its plane is longer than " .. number(across, "ft")
      end
      return
    end
    if edge.length_ft > longest + 0.05 then
      return "a " .. edge.kind .. " of " .. tostring(edge.length_ft) .. " ft on a plane that is only "
        .. number(longest, "ft") .. " from eave to ridge along the slope"
    end
  end,
}

-- New deck means that nothing lies on it any more.
impossible "an overlay leaves the deck under it" {
  at = "work", per = "decks",
  when = function(job, deck)
    if job.scope.method == "overlay" and (deck.work == "replaced" or deck.work == "paneled_over") then
      return "the old covering stays, and so does the deck under it"
    end
  end,
}

impossible "hips listed are hips counted" {
  at = "roof.hip_ft",
  when = function(job)
    if job.roof.hip_ft > 0 then return end
    for _, edge in ipairs(job.roof.edges) do
      if edge.kind == "hip" then return "no hip, but /roof/edges lists " .. edge.name .. " as one" end
    end
  end,
}

impossible "valleys listed are valleys counted" {
  at = "roof.valley_ft",
  when = function(job)
    if job.roof.valley_ft > 0 then return end
    for _, edge in ipairs(job.roof.edges) do
      if edge.kind == "valley" then
        return "no valley, but /roof/edges lists " .. edge.name .. " as one"
      end
    end
  end,
}

-- A hip takes off the upper edge what a valley adds to it.
impossible "a plane between hips narrows upward" {
  at = "ridge_ft", per = "roof.slopes",
  when = function(job, slope)
    local hips = 0
    for _, edge in ipairs(job.roof.edges) do
      if edge.slope.name == slope.name then
        if edge.kind == "valley" then return end
        if edge.kind == "hip" then hips = hips + 1 end
      end
    end
    if hips > 0 and slope.ridge_ft >= slope.eave_ft then
      return "the upper edge is not shorter than the lower one, though a hip bounds this plane"
    end
  end,
}

impossible "some lower edge is an eave" {
  at = "roof.edges",
  when = function(job)
    local onto = 0
    for _, edge in ipairs(job.roof.edges) do
      if edge.kind == "eave" then return end
      if edge.kind == "onto_roof" then onto = onto + 1 end
    end
    if onto > 0 then return "every lower edge listed lies onto another roof, but there is no other" end
  end,
}

impossible "no more deck is replaced than there is" {
  at = "replaced_sqft", per = "decks",
  when = function(job, deck)
    local area = deck_sqft(job, deck)
    if deck.replaced_sqft > area + 1 then
      return number(deck.replaced_sqft, "sqft") .. " replaced, but its planes cover only " .. number(area, "sqft")
    end
  end,
}

-- What inspectors' lists of faults, and single handouts, ask beside the rest.
field "permit.begun_before" { type = "yes_no", stage = "permit",
  ask = "Has any of the work begun before the permit was issued?" }
field "inspection.ready_at_call" { type = "yes_no", stage = "deck",
  ask = "Is all the work of the stage done when the inspector is called?" }
field "inspection.built_as_permitted" { type = "yes_no", stage = "final",
  ask = "Is the roof built as the papers of the permit say: covering, underlayment, deck and nails?" }
field "inspection.deck.roof_loaded" { type = "yes_no", stage = "deck",
  ask = "Does the new covering lie on the roof when the bare deck is looked at?" }
field "inspection.winter" { type = "group", stage = "deck", ask = "The winter rule" }
field "inspection.winter.felted_on" { type = "date", stage = "deck",
  ask = "On which day was the deck felted without a look, under the winter rule?" }
field "inspection.winter.letter" { type = "yes_no", stage = "deck",
  ask = "Is there a letter of the contractor, with a sketch of the rot that was found?" }
field "inspection.winter.covering_sqft" { type = "number", unit = "sqft", range = { 0, 20000 }, stage = "deck",
  ask = "How much of the covering is laid when the inspector comes under the winter rule?" }
field "inspection.winter.felt_peeled" { type = "integer", unit = "count", range = { 0, 100 }, stage = "deck",
  ask = "In how many places can the felt be peeled back for the inspector?" }
field "decks[].joints_staggered" { type = "yes_no", answer = "roof", stage = "deck",
  ask = "Are the panel joints staggered?" }
field "decks[].joints_on_supports" { type = "yes_no", answer = "roof", stage = "deck",
  ask = "Does every end joint lie on a rafter or truss?" }
field "decks[].joints_filled" { type = "yes_no", answer = "roof", stage = "deck",
  ask = "Is there solid wood under the joints that run along the slope's courses?" }

field "underlayments[].cap_made_of" { type = "choice", choices = { "metal", "power_driven_metal", "plastic" },
  habit = "product", stage = "permit",
  ask = "What are the caps made of: metal, metal for a power tool, or plastic?" }
field "underlayments[].cap_thickness_in" { type = "number", unit = "in", range = { 0.001, 0.25 }, habit = "product", stage = "permit",
  ask = "How thick are the caps, by the box? (plastic ones at their edge)" }
field "underlayments[].fastener_shank_in" { type = "number", unit = "in", range = { 0.01, 0.25 }, habit = "product", stage = "permit",
  ask = "How thick is the fastener's shank or wire, by the box?" }
field "underlayments[].fastener_ringed" { type = "yes_no", habit = "product", stage = "permit",
  ask = "Is the shank of the cap nails ringed or otherwise deformed?" }
field "underlayments[].fastener_through_deck" { type = "yes_no", habit = true, stage = "permit",
  ask = "Do the fasteners go through the deck?" }
field "underlayments[].fastener_into_deck_in" { type = "number", unit = "in", range = { 0, 6 }, habit = true, stage = "permit",
  ask = "How far do the fasteners go into the deck?" }

field "scope.old_roof_permitted_on" { type = "date", answer = "department", stage = "permit",
  ask = "On which day was the permit of the old roof issued?" }
