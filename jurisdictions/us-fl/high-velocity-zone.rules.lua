-- high-velocity-zone.rules.lua - what the zone's sections ask beside the state's: the
-- owner's papers, nails with rings, cement under the edges of the shingles, the shape of
-- the drip edge, classes by the distance to the neighbor, and decks by section 2322.

impossible "a house of this place lies in the high-velocity hurricane zone" {
  at = "site.high_velocity_hurricane_zone",
  when = function(job)
    if not job.site.high_velocity_hurricane_zone then
      return "all of Miami-Dade and Broward lies in the high-velocity hurricane zone: this is "
        .. "true, or the house lies elsewhere in the state (us-fl)"
    end
  end,
}

-- Papers and height ------------------------------------------------------------------

field "papers.zone_form" { type = "yes_no", stage = "permit",
  ask = "Is the zone's uniform roofing permit application filled in and signed by the "
    .. "contractor?" }
field "papers.owner_notification" { type = "yes_no", stage = "permit",
  ask = "Is the owner's notification of roofing considerations handed in, initialed by the owner?" }
field "covering.approval_any_height" { type = "yes_no", stage = "permit",
  ask = "Does the product approval of the shingles let them lie at this house's mean height?" }

demand "papers.zone_form" {
  title = "The zone's uniform permit application",
  stage = "permit",
  when = { on { "papers.zone_form_required", otherwise = "the place does not ask for it" } },
  fact = "papers.zone_form",
  shown = "the uniform application with the calculations that it asks for",
  mend = "Fill in the zone's form and have the contractor sign it.",
}

demand "papers.owner_notification" {
  title = "The owner's notification",
  stage = "permit",
  when = { on { "papers.owner_notification_required", otherwise = "the place does not ask for it" } },
  fact = "papers.owner_notification",
  shown = "the owner's notification, initialed item by item",
  mend = "Go through the sheet with the owner and hand it in, twice.",
}

demand "shingle.zone_height" {
  title = "Height at which shingles may lie",
  stage = "permit",
  when = { shingles_only },
  fact = "house.mean_roof_height_ft", meets = "shingle.zone_height_most",
  instead = { { fact = "covering.approval_any_height",
    shown = "a product approval for this height" } },
  mend = "Use shingles whose product approval names this height.",
}

-- Nails, cement, edges ------------------------------------------------------------------

field "fasteners.rings_per_inch" { type = "number", unit = "count", range = { 0, 60 },
  stage = "permit",
  ask = "How many rings to the inch has the shank of the roofing nails? (0 if it is smooth)" }
field "covering.cement_bed_in" { type = "number", unit = "in", range = { 0, 36 }, stage = "permit",
  ask = "How wide is the bed of cement or cold adhesive under the starter and along eaves, rakes, "
    .. "valleys and walls, at its narrowest? (0 for none)" }
field "covering.past_drip_in" { type = "number", unit = "in", range = { 0, 6 }, stage = "permit",
  ask = "How far do the shingles go past the drip edge, at eaves and rakes?" }
field "drip_edge.face_in" { type = "number", unit = "in", range = { 0, 12 }, stage = "permit",
  ask = "How high is the face of the drip edge?" }
field "drip_edge.kick_in" { type = "number", unit = "in", range = { 0, 6 }, stage = "permit",
  ask = "How far off the house does the drip edge's kick stand?" }
field "drip_edge.joints_cemented" { type = "yes_no", stage = "permit",
  ask = "Are the laps of the drip edge coated inside with flashing cement?" }

local has_drip_edge = reads({
  facts = { "roof.edges[].drip_edge", "roof.edges[].kind" },
}, function(job)
  for _, edge in ipairs(job.roof.edges) do
    if (edge.kind == "eave" or edge.kind == "rake") and edge.drip_edge then return true end
  end
  return false, "no edge gets drip edge"
end)

demand "fasteners.rings" {
  title = "Rings on the shank of the roofing nails",
  stage = "permit",
  when = { shingles_only },
  fact = "fasteners.rings_per_inch", meets = "fasteners.rings_least",
  mend = "Use ring-shank roofing nails that are listed for the zone.",
}

demand "shingle.cement_bed" {
  title = "Bed of cement under the shingles' edges",
  stage = "final",
  when = { shingles_only },
  fact = "covering.cement_bed_in", meets = "shingle.cement_bed_least",
  mend = "Set starter, eaves, rakes, valleys and walls in a bed of cement or cold adhesive, as "
    .. "the product approval says.",
}

demand "shingle.past_drip" {
  title = "Shingles no farther past the drip edge",
  stage = "final",
  when = { shingles_only },
  fact = "covering.past_drip_in", meets = "shingle.past_drip_most",
  mend = "Cut the shingles back to the drip edge.",
}

demand "drip_edge.face" {
  title = "Face of the drip edge",
  stage = "dry-in",
  when = { has_drip_edge },
  fact = "drip_edge.face_in", meets = "drip_edge.face_least",
  mend = "Use a drip edge with a higher face.",
}

demand "drip_edge.kick" {
  title = "Kick of the drip edge off the house",
  stage = "dry-in",
  when = { has_drip_edge },
  fact = "drip_edge.kick_in", meets = "drip_edge.kick_least",
  mend = "Use a drip edge whose kick stands farther off.",
}

demand "drip_edge.joints_cemented" {
  title = "Cement in the laps of the drip edge",
  stage = "dry-in",
  when = { on { "drip_edge.joints_cemented_required", otherwise = "the place does not ask for it" },
    has_drip_edge },
  fact = "drip_edge.joints_cemented",
  shown = "laps coated inside with flashing cement",
  mend = "Take the laps apart and coat them.",
}

-- Layers and class --------------------------------------------------------------------

field "existing.level_difference_in" { type = "number", unit = "in", range = { 0, 6 },
  stage = "permit",
  ask = "By how much does the old shingles' surface step up and down, at most?" }
field "site.neighbor_ft" { type = "number", unit = "ft", range = { 0, 10000 }, stage = "permit",
  ask = "How far is the nearest other building, level, from the nearest edge of this one?" }

demand "layers.level" {
  title = "Old shingles level enough to lay over",
  stage = "permit",
  when = {
    function(job)
      return job.existing.layers_removed < job.existing.layers,
        "nothing is laid over: the old covering is torn off"
    end,
    on { "layers.level_counts", otherwise = "steps in the old surface are not judged here" },
  },
  fact = "existing.level_difference_in", meets = "layers.level_most",
  reads = { facts = { "existing.layers", "existing.layers_removed" } },
  mend = "Tear off to the deck.",
}

demand "layers.zone_base" {
  title = "Shingles laid over shingles only",
  stage = "permit",
  per = "existing.coverings",
  when = {
    shingles_only,
    is { "existing.coverings[].removed", false, otherwise = "this layer comes off" },
  },
  fact = "existing.coverings[].kind", meets = "layers.zone_bases",
  mend = "Take this layer off.",
}

demand "fire.neighbor" {
  title = "Class by the distance to the next building",
  stage = "permit",
  fact = "covering.fire_class",
  meets = { "fire.classes_near", "fire.classes_far", which = function(job, figure)
    local near = figure "fire.neighbor_within"
    if as_printed(job.site.neighbor_ft, "ft") > near then return "fire.classes_far" end
    work("the next building is within " .. number(near, "ft"))
    return "fire.classes_near"
  end },
  reads = { facts = { "site.neighbor_ft" }, figures = { "fire.neighbor_within" } },
  mend = "Use a covering listed for the class, on this deck and slope.",
}

-- Decks ------------------------------------------------------------------------------

local is_new = reads({ facts = { "decks[].work" } }, function(deck)
  if deck.work == "kept" then return false, "this deck is kept" end
  return true
end)

local stripped = reads({ facts = { "scope.method" } }, function(job)
  return job.scope.method ~= "overlay", "the deck stays hidden under the old covering"
end)

demand "deck.zone_wood" {
  title = "Wood of new panels",
  stage = "permit",
  per = "decks",
  when = {
    function(job, figure, deck) return is_new(deck) end,
    either { is { "decks[].kind", "panel" }, is { "decks[].work", "paneled_over" },
      otherwise = "boards may be any" },
  },
  fact = "decks[].panel_wood", meets = "deck.zone_woods",
  reads = { is_new },
  mend = "Lay boards or plywood.",
}

demand "deck.zone_thickness" {
  title = "Thickness of new panels",
  stage = "permit",
  per = "decks",
  when = {
    no { is { "decks[].work", "kept" }, otherwise = "this deck is kept" },
    either { is { "decks[].kind", "panel" }, is { "decks[].work", "paneled_over" },
      otherwise = "this deck is boards" },
  },
  choose = {
    { when = is { "decks[].work", "paneled_over" },
      fact = "decks[].over_panel_thickness_in", meets = "deck.zone_panel_least" },
    { fact = "decks[].thickness_in", meets = "deck.zone_panel_least" },
  },
  mend = "Lay thicker plywood.",
}

demand "deck.zone_board_thickness" {
  title = "Thickness of new boards",
  stage = "permit",
  per = "decks",
  when = {
    no { is { "decks[].work", "kept" }, otherwise = "this deck is kept" },
    no { either { is { "decks[].kind", "panel" }, is { "decks[].work", "paneled_over" } },
      otherwise = "no new boards are laid here" },
  },
  fact = "decks[].support_spacing_in", meets = "deck.zone_board_span_most",
  also = { { fact = "decks[].thickness_in", meets = {
    "deck.zone_board_least.near", "deck.zone_board_least.far",
    which = function(job, figure, deck)
      local near = as_printed(deck.support_spacing_in, "in") <= figure "deck.zone_board_near_most"
      return "deck.zone_board_least." .. (near and "near" or "far")
    end } } },
  reads = { facts = { "decks[].support_spacing_in" }, figures = { "deck.zone_board_near_most" } },
  mend = "Lay thicker boards, or have the rafters brought closer.",
}

-- Of a deck that stays in part both nailings are asked; the job gives one, so that must
-- do for both.
rule "deck.zone_nail_kind" {
  title = "Deck nails of the zone",
  stage = "permit",
  per = "decks",
  reads = {
    stripped,
    facts = { "decks[].nails.kind", "decks[].renailed", "decks[].work" },
    figures = { "deck.zone_new_kinds", "deck.zone_old_kinds" },
  },
  applies = function(job) return stripped(job) end,
  judge = function(job, figure, deck)
    if deck.work == "kept" then
      if deck.renailed then return one_of(deck.nails.kind, figure "deck.zone_old_kinds") end
      cannot_tell("the old deck is nailed again here unless its nails are as close already: ask "
        .. "what must be shown of them")
    end
    if deck.work ~= "replaced" then
      cannot_tell("new panels take ring-shank nails here and old ones smooth: the job gives one "
        .. "kind for both")
    end
    return one_of(deck.nails.kind, figure "deck.zone_new_kinds")
  end,
  mend = "Nail old sheathing with common 8d, new with ring-shank 8d.",
}

local function spaced(measured, planned, most)
  if inspecting() then return each_at_most(measured(), most, "in") end
  return at_most(planned(), most, "in")
end

local nailed = reads({
  stripped,
  facts = { "decks[].kind", "decks[].renailed", "decks[].work" },
}, function(job, figure, deck)
  local so, why = stripped(job)
  if not so then return false, why end
  if deck.kind ~= "panel" and deck.work ~= "paneled_over" then
    return false, "boards are nailed by the piece"
  end
  if deck.work == "kept" then
    return deck.renailed, "deck.zone_nail_kind asks whether its old nails will do"
  end
  return true
end)

demand "deck.zone_spacing" {
  title = "Deck nails along edges and inside panels",
  stage = "deck",
  per = "decks",
  when = { nailed },
  fact = "decks[].nails.edge_spacing_in", measured = "decks[].nails.measured_edge_spacing_in",
  meets = "deck.zone_spacing_most",
  also = {
    { fact = "decks[].nails.field_spacing_in",
      measured = "decks[].nails.measured_field_spacing_in", meets = "deck.zone_spacing_most" },
    { when = no { is { "decks[].work", "kept" } }, fact = "site.wind_design_done",
      shown = "a design by the wind standard of the nails in new panels" },
  },
  mend = "Drive more nails between those that are too far apart.",
}

demand "deck.zone_gable" {
  title = "Deck nails over gable ends and subfascia",
  stage = "deck",
  per = "decks",
  when = { nailed },
  fact = "decks[].nails.gable_spacing_in", measured = "decks[].nails.measured_gable_spacing_in",
  meets = "deck.zone_gable_most",
  mend = "Drive more nails into the gable ends and the subfascia.",
}
