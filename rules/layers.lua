-- layers.lua - how many coverings a roof may carry, and what may be covered over.
--
-- A figure asked for in `applies` is cited with the finding like one asked for
-- in `judge`, so yes-or-no duties are asked for there.
--
-- An overlay adds one layer to whatever stays; a tear-off goes down to the deck. Planes
-- may differ in what lies on them: then each is counted for itself. Every bar to an
-- overlay is a rule of its own, so that a county can move or drop one without touching
-- the others. They look at what stays, not at the word: a tear-off that leaves a layer
-- lays over it.

local is_overlay = reads({
  facts = { "existing.layers", "existing.layers_removed", "scope.method" },
}, function(job)
  if job.scope.method == "overlay" then return true end
  return job.existing.layers_removed < job.existing.layers,
    "nothing is laid over: the old covering is torn off"
end)

local is_wood = reads({ facts = { "existing.coverings[].kind" } }, function(layer)
  return is_wood_kind(layer.kind)
end)

demand "layers.overlay" {
  title = "Laying over an old covering",
  stage = "permit",
  when = { is { "scope.method", "overlay",
    otherwise = "nothing is laid over: the old covering is torn off" } },
  choose = {
    -- Where overlays are barred, a listing over the old roof may still let one in.
    { when = { off "layers.overlay_allowed", on "layers.overlay_by_listing" },
      fact = "covering.listed_over_old", shown = "a listing of the new covering over the old",
      also = { { fact = "existing.fire_class_left", meets = "layers.listing_over_classes" } } },
    { fact = "scope.method", meets = { sense = "one_of", limit = function(job, figure)
      if figure "layers.overlay_allowed" then return { "tear-off", "overlay" } end
      return { "tear-off" }
    end } },
  },
  mend = "Tear off to the deck.",
}

-- A place may let flat roofs carry more than pitched ones. One pitched plane is
-- enough for the smaller number.
local all_flat = reads({
  facts = { "roof.slopes[].pitch" },
  figures = { "layers.flat_under" },
}, function(job, figure)
  for _, slope in ipairs(job.roof.slopes) do
    local pitch = math.floor(slope.pitch * 100 + 0.5) / 100
    if pitch >= figure "layers.flat_under" then return false end
  end
  return true
end)

local layers_most = reads({
  all_flat,
  figures = { "layers.flat_differs", "layers.most", "layers.most_flat" },
}, function(job, figure)
  if figure "layers.flat_differs" and all_flat(job, figure) then
    return figure "layers.most_flat"
  end
  return figure "layers.most"
end)

-- A layer that is peeled off to make room still counts: the code asks how many
-- are on before the work, and where they are too many, all of them come off.
local layers_after = reads({ figures = { "layers.peeled_counts" } }, function(figure, here, off)
  if off > 0 and off < here and figure "layers.peeled_counts" then
    return trade.sum { { "on the roof now", here }, { "new", 1 }, unit = "layers" }, true
  end
  return trade.sum {
    { "on the roof now", here },
    { "taken off", -off },
    { "new", 1 },
    unit = "layers",
  }
end)

-- Judged by the plane that will carry most.
rule "layers.total" {
  title = "Layers of covering, old and new",
  stage = "permit",
  reads = {
    planes_covered, layers_after, old_layers_on, layers_most,
    facts = { "roof.slopes[].name" },
  },
  judge = function(job, figure)
    local most, peeled, where
    for _, slope in ipairs(planes_covered(job, true)) do
      local after, counted = layers_after(figure, old_layers_on(job, slope))
      if not most or after > most then most, peeled, where = after, counted, slope end
    end
    local judged = at_most(most, layers_most(job, figure), "layers")
    if where then judged = judged:say("Most will lie on " .. where.name .. ".") end
    if peeled then
      judged = judged:say("A layer that is peeled off counts where another stays under the new "
        .. "one.")
    end
    return judged
  end,
  mend = "Tear off to the deck.",
  caution = "Every layer left in place adds weight that the rafters must carry (R908.2).",
}

demand "layers.tear_off" {
  title = "A tear-off reaches the deck",
  stage = "permit",
  when = {
    is { "scope.method", "tear-off", otherwise = "the old covering is laid over" },
    on { "layers.tear_off_to_deck", otherwise = "a tear-off may leave old layers here" },
  },
  fact = "existing.layers_removed", meets = { fact = "existing.layers", sense = "equals" },
  mend = "Take every old layer off, or file the job as an overlay.",
}

demand "layers.base_kind" {
  title = "Kind of covering that is laid over",
  stage = "permit",
  per = "existing.coverings",
  when = {
    is_overlay,
    is { "existing.coverings[].removed", false, otherwise = "this layer comes off" },
  },
  fact = "existing.coverings[].kind", meets = "layers.not_over",
  also = {
    { when = is { "existing.coverings[].kind", "wood_shake" },
      found = function(job, figure) return figure "layers.over_wood_shake_allowed" end,
      shown = "leave to cover wood shakes over" },
  },
  reads = { figures = { "layers.over_wood_shake_allowed" } },
  mend = "Take this layer off.",
}

demand "layers.base_condition" {
  title = "Condition of what is laid over",
  stage = "permit",
  when = { is_overlay },
  fact = "existing.condition", meets = "layers.bases_allowed",
  mend = "Tear off to the deck and replace what is wet or rotted.",
}

demand "layers.wood_hollow" {
  title = "Hollow space over old wood",
  stage = "permit",
  when = {
    is_overlay,
    function(job)
      for _, layer in ipairs(job.existing.coverings) do
        if not layer.removed and is_wood(layer) then return true end
      end
      return false, "no old wood shingles or shakes stay"
    end,
    is { "existing.hidden_space_over_wood",
      otherwise = "the new covering leaves no hollow space over the old wood" },
    on { "layers.wood_hollow_needs_cover",
      otherwise = "old wood may stay bare under a hollow here" },
  },
  fact = "existing.wood_covered_with_noncombustible",
  shown = "a cover of gypsum board, mineral or glass fiber over the whole of the old wood",
  reads = { is_wood, facts = { "existing.coverings[].removed" } },
  mend = "First cover the old wood all over with gypsum board, mineral or glass fiber or the like.",
}

demand "layers.maker" {
  title = "The maker's word on laying over",
  stage = "permit",
  when = {
    is_overlay,
    on { "layers.overlay_needs_maker", otherwise = "the maker's word is not asked for here" },
  },
  fact = "covering.maker_allows_overlay",
  shown = "the maker's printed instructions for laying over such a covering",
  mend = "Use a shingle whose printed instructions allow it, or tear off.",
}

demand "layers.hail" {
  title = "Laying over asphalt shingles where it hails",
  stage = "permit",
  when = {
    is_overlay,
    on { "layers.hail_bars_overlay", otherwise = "hail does not bar an overlay here" },
    some { "existing.coverings", is { "existing.coverings[].removed", false },
      is { "existing.coverings[].kind", "asphalt_shingle" },
      otherwise = "no old asphalt shingles stay" },
  },
  fact = "site.hail_exposure", meets = "layers.hail_zones_barred",
  mend = "Tear off to the deck.",
}

-- What a plane carries --------------------------------------------------------

-- Pounds per sq ft of slope, as a sum. A roll whose weight is not stated counts
-- as the heaviest there is, so that leaving it out never helps.
local layers_on = reads({
  old_layer_told,
  facts = { "covering.weight_lb_per_square", "decks[].kind", "decks[].over_panel_thickness_in",
    "decks[].thickness_in", "decks[].work", "existing.coverings[].weight_lb_per_square",
    "roof.slopes[].deck", "roof.slopes[].underlayment", "underlayments[].plies",
    "underlayments[].weight_lb_per_square" },
  figures = { "weight.board_inch", "weight.panel_inch", "weight.underlayment_ply" },
}, function(job, figure, slope)
  local parts = { unit = "psf" }
  local function layer(what, weight)
    table.insert(parts, { what, trade.layer_psf { lb_per_square = weight } })
  end
  layer("new covering", job.covering.weight_lb_per_square)
  local here, off = old_layers_on(job, slope)
  if here > off then
    for i, old in ipairs(job.existing.coverings) do
      local there, removed = old_layer_told(job, slope, i)
      if there and not removed then layer("old layer " .. i, old.weight_lb_per_square) end
    end
  end
  local underlayment, ply = slope.underlayment, figure "weight.underlayment_ply"
  if known(underlayment, "weight_lb_per_square") then ply = underlayment.weight_lb_per_square end
  layer("underlayment", underlayment.plies * ply)
  local deck = slope.deck
  local inch = figure "weight.board_inch"
  if deck.kind == "panel" then inch = figure "weight.panel_inch" end
  table.insert(parts, { "deck",
    trade.deck_psf { thickness_in = deck.thickness_in, psf_per_in = inch } })
  if deck.work == "paneled_over" then
    table.insert(parts, { "panels over it", trade.deck_psf {
      thickness_in = deck.over_panel_thickness_in, psf_per_in = figure "weight.panel_inch" } })
  end
  return trade.sum(parts)
end)

demand "layers.dead_load" {
  title = "Weight of all layers on the rafters",
  stage = "permit",
  per = "roof.slopes",
  when = { function(job, figure, slope) return gets_covering(slope) end },
  found = function(job, figure, slope)
    return trade.plan_load_psf {
      slope_psf = layers_on(job, figure, slope), pitch = slope.pitch }
  end,
  unit = "psf", meets = "weight.design_dead_load",
  say = "The rafters themselves, and a ceiling hung from them, come on top.",
  reads = { gets_covering, layers_on, facts = { "roof.slopes[].pitch" } },
  mend = "Have the framing looked at by an engineer, take old layers off, or use a lighter "
    .. "covering.",
  caution = "Old houses may have been framed for less than is assumed here.",
}

demand "layers.coating" {
  title = "A coating over an old roof",
  stage = "permit",
  per = "existing.coverings",
  when = {
    is { "covering.kind", "coating", otherwise = "the new covering is no coating" },
    is { "existing.coverings[].removed", false, otherwise = "this layer comes off" },
  },
  fact = "existing.coverings[].kind", meets = "layers.coating_over",
  mend = "Take this layer off, or use a covering that may lie over it.",
}

rule "layers.under_coating" {
  title = "An old roof under the coating",
  stage = "permit",
  reads = {
    facts = { "existing.layers", "existing.layers_removed" },
    figures = { "layers.coating_over" },
  },
  when = { is { "covering.kind", "coating", otherwise = "the new covering is no coating" } },
  judge = function(job, figure)
    figure "layers.coating_over" -- names what it may lie on; a bare deck is not among it
    return shown(job.existing.layers > job.existing.layers_removed,
      "an old covering that stays under the coating")
  end,
  mend = "Choose a covering that may lie on a deck, or leave on what a coating may lie over.",
}
