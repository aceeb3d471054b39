-- fasteners.lua - what holds the shingles: kind, size, number, and how deep it goes.

local nails_only = reads({
  gets_covering, shingles_only,
  facts = { "fasteners.kind" },
}, function(job, _, slope)
  local gets, other = gets_covering(slope)
  if not gets then return false, other end
  if not shingles_only(job) then return false, "only asphalt shingles are judged here" end
  return job.fasteners.kind == "nail", "these figures are for nails"
end)

-- Other coverings are fastened by sections of their own, which are not carried
-- here: this rule is open for them, so that silence is never taken for a pass.
demand "fasteners.kind" {
  title = "Kind of fastener",
  stage = "permit",
  when = { function(job)
    if job.covering.kind == "coating" then return false, "a coating has no fasteners" end
    if job.covering.kind ~= "asphalt_shingle" then
      cannot_tell(NOT_JUDGED_HERE)
    end
    return true
  end },
  fact = "fasteners.kind", meets = "fasteners.kinds",
  reads = { facts = { "covering.kind" } },
  mend = "Use roofing nails.",
}

demand "fasteners.metal" {
  title = "Metal of the roofing nails",
  stage = "permit",
  when = { nails_only },
  fact = "fasteners.metal", meets = "fasteners.metals",
  mend = "Use nails that do not rust: galvanized (not plated), stainless, aluminum or copper.",
}

demand "fasteners.shank" {
  title = "Shank of the roofing nails",
  stage = "permit",
  when = { nails_only },
  fact = "fasteners.shank_in", meets = "fasteners.shank_least",
  mend = "Use a heavier nail: 12 gauge is 0.105 in, 11 gauge 0.120 in.",
}

demand "fasteners.head" {
  title = "Head of the roofing nails",
  stage = "permit",
  when = { nails_only },
  fact = "fasteners.head_in", meets = "fasteners.head_least",
  mend = "Use nails with wider heads.",
  caution = "A small head pulls through the shingle in wind.",
}

-- The code's number or the maker's, whichever is more.
local count_needed = reads({
  facts = { "covering.individual", "covering.nails_printed",
    "site.high_velocity_hurricane_zone" },
  figures = { "fasteners.hurricane_zone_counts", "fasteners.per_individual_least",
    "fasteners.per_shingle_least", "fasteners.per_shingle_least_hurricane_zone" },
}, function(job, figure)
  local single = known(job.covering, "individual") and job.covering.individual
  local code = figure(single and "fasteners.per_individual_least" or "fasteners.per_shingle_least")
  local least = math.max(code, job.covering.nails_printed)
  -- Only some codes know such zones; elsewhere the question is not put.
  if figure "fasteners.hurricane_zone_counts" and job.site.high_velocity_hurricane_zone then
    least = math.max(least, figure "fasteners.per_shingle_least_hurricane_zone")
  end
  return least
end)

demand "fasteners.count" {
  title = "Nails in each shingle",
  stage = "final",
  when = { shingles_only },
  fact = "fasteners.per_shingle", measured = "fasteners.measured_per_shingle",
  meets = { "fasteners.per_shingle_least", "fasteners.per_individual_least",
    "fasteners.per_shingle_least_hurricane_zone", unit = "nails", limit = count_needed },
  mend = function(job, figure)
    return "Nail every shingle with " .. number(count_needed(job, figure), "nails")
      .. ", on the maker's nail line."
  end,
}

-- How deep --------------------------------------------------------------------

-- Everything the nail goes through before it reaches the deck. Drip edge and
-- ice barrier are left out: they are thin, and lie along the edges only.
local stack = reads({
  old_layer_told,
  facts = { "covering.thickness_at_nail_in", "existing.coverings[].thickness_in",
    "roof.slopes[].underlayment", "underlayments[].plies", "underlayments[].thickness_in" },
}, function(job, slope)
  local plies = { { "new covering", job.covering.thickness_at_nail_in } }
  local here, off = old_layers_on(job, slope)
  if here > off then
    for i, layer in ipairs(job.existing.coverings) do
      local there, removed = old_layer_told(job, slope, i)
      if there and not removed then
        table.insert(plies, { "old layer " .. i, layer.thickness_in })
      end
    end
  end
  local underlayment = slope.underlayment
  if underlayment.plies > 0 then
    table.insert(plies, { "underlayment", underlayment.plies * underlayment.thickness_in })
  end
  plies.unit = "in"
  return trade.sum(plies)
end)

-- New panels over an old deck are never thinner together than the figure.
local deck_is_thin = reads({
  facts = { "decks[].thickness_in", "decks[].work" },
  figures = { "fasteners.penetration_least" },
}, function(figure, deck)
  return deck.work ~= "paneled_over" and deck.thickness_in < figure "fasteners.penetration_least"
end)

-- The figure, or the whole thickness of a deck that is thinner.
local depth_needed = reads({ deck_is_thin }, function(figure, deck)
  if deck_is_thin(figure, deck) then return deck.thickness_in end
  return figure "fasteners.penetration_least"
end)

-- The least length, and the next that shops stock. past: out of a thin deck.
local use_nails = reads({
  stack,
  facts = { "decks[].thickness_in", "decks[].work", "roof.slopes[].deck" },
  figures = { "fasteners.penetration_least", "takeoff.nail_lengths" },
}, function(job, figure, slope, past)
  local deck = slope.deck
  local needed = trade.nail_length_in { through_in = stack(job, slope),
    deck_in = deck.work == "paneled_over" and figure "fasteners.penetration_least"
      or deck.thickness_in,
    into_in = figure "fasteners.penetration_least", past_in = past }
  local stocked = {}
  for i, length in ipairs(figure "takeoff.nail_lengths") do stocked[i] = tonumber(length) end
  local next_length = trade.stocked_length_in(needed, stocked)
  local says = "Use nails at least " .. number(needed, "in") .. " long"
  if not next_length then return says .. "; none so long is stocked." end
  return says .. ": " .. number(next_length, "in") .. " is the next that is stocked."
end)

-- The whole of a thin deck, or the figure into a thick one.
local into_deck = reads({ depth_needed }, function(figure, deck, length, through)
  local depth = trade.nails_penetration_in { length_in = length, through_in = through }
  local found = at_least(depth, depth_needed(figure, deck), "in")
  if deck_is_thin(figure, deck) then
    return found:say("This deck is thinner than the figure, so the nails must go through it.")
  end
  return found
end)

rule "fasteners.penetration" {
  title = "How far the nails go into the deck",
  stage = "permit",
  per = "roof.slopes",
  reads = { into_deck, use_nails, facts = { "fasteners.length_in" } },
  applies = nails_only,
  judge = function(job, figure, slope)
    return into_deck(figure, slope.deck, job.fasteners.length_in, stack(job, slope))
  end,
  mend = function(job, figure, slope)
    return use_nails(job, figure, slope, 0)
  end,
  caution = "Nail points come through a thin deck: look below before anyone works in the attic.",
}

-- Open eaves are often of another deck, and shorter nails driven there so that no point
-- shows: those have to hold as well.
rule "fasteners.eave_penetration" {
  title = "How far the nails go into the deck of open eaves",
  stage = "permit",
  per = "roof.edges",
  reads = {
    nails_only, into_deck, stack,
    facts = { "fasteners.eave_length_in", "fasteners.length_in", "roof.edges[].deck",
      "roof.edges[].slope" },
  },
  applies = function(job, figure, edge)
    local nailed, why = nails_only(job, figure, edge.slope)
    if not nailed then return false, why end
    return known(edge, "deck"), "its plane's deck runs to this edge"
  end,
  judge = function(job, figure, edge)
    local length = job.fasteners.length_in
    if known(job.fasteners, "eave_length_in") then length = job.fasteners.eave_length_in end
    return into_deck(figure, edge.deck, length, stack(job, edge.slope))
  end,
  mend = "Use longer nails over the eaves. Through a thin deck their points will show: only a "
    .. "thicker deck there holds them unseen.",
}

-- Asked only of a house of which the job says that some deck shows from below.
local shows_deck = reads({ facts = { "decks[].seen_from_below" } }, function(job)
  for _, deck in ipairs(job.decks) do
    if known(deck, "seen_from_below") and deck.seen_from_below then return true end
  end
  return false, "no deck is said to be seen from below"
end)

demand "fasteners.seen_below" {
  title = "No nail points showing below open eaves",
  stage = "final",
  when = {
    function(job) return shingles_only(job), "only asphalt shingles are judged here" end,
    either { said "fasteners.seen_below", shows_deck },
    on { "fasteners.hidden_at_eaves_wanted", otherwise = "nail points may show here" },
  },
  fact = "fasteners.seen_below", wants = false, shown = "no nail points below open eaves",
  reads = { shingles_only },
  mend = "Do not cut them off: the nail would hold less. Cover the eave from below, or ask the "
    .. "owner.",
}

demand "fasteners.past_thin_deck" {
  title = "Nail points out of a thin deck",
  stage = "permit",
  per = "roof.slopes",
  when = { function(job, figure, slope)
    local nailed, why = nails_only(job, figure, slope)
    if not nailed then return false, why end
    -- A figure of its own, so that practice alone is cited for what is practice.
    local deck = slope.deck
    return deck.work ~= "paneled_over" and deck.thickness_in < figure "fasteners.thin_deck_under",
      "the deck is thick enough to hold the whole nail"
  end },
  found = function(job, figure, slope)
    local depth = trade.nails_penetration_in {
      length_in = job.fasteners.length_in, through_in = stack(job, slope) }
    local past = depth - slope.deck.thickness_in
    work(number(depth, "in") .. " less the deck's " .. number(slope.deck.thickness_in, "in")
      .. " = " .. number(past, "in") .. " past it")
    return past
  end,
  unit = "in", meets = "fasteners.past_thin_deck_least",
  reads = {
    nails_only, use_nails,
    facts = { "fasteners.length_in" },
    figures = { "fasteners.thin_deck_under" },
  },
  mend = function(job, figure, slope)
    return use_nails(job, figure, slope, figure "fasteners.past_thin_deck_least")
  end,
}

demand "fasteners.steep" {
  title = "Maker's fastening for very steep planes",
  stage = "permit",
  per = "roof.slopes",
  when = {
    shingles_only,
    function(job, figure, slope) return gets_covering(slope) end,
    meant { "roof.slopes[].pitch", "fasteners.steep_over",
      otherwise = "this plane is not that steep" },
  },
  found = function(job, figure)
    work("steeper than " .. number(figure "fasteners.steep_over", "rise_in_12"))
    return job.fasteners.steep_method
  end,
  shown = "the maker's steep-slope fastening",
  reads = { gets_covering, facts = { "fasteners.steep_method" } },
  mend = "Fasten as the maker's steep-slope instructions say, with sealant spots where they ask.",
  caution = "No one stands on a plane this steep: work from staging.",
}

demand "fasteners.driven" {
  title = "Nails flush, straight and on the nail line",
  stage = "final",
  when = {
    shingles_only,
    inspected {
      otherwise = "looked at on the roof: heads flush, straight, on the maker's nail line" },
  },
  fact = "fasteners.overdriven_or_high", meets = "fasteners.overdriven_allowed",
  mend = "Pull high nails, seal the holes and nail again on the line; seal and renail sunk ones.",
}
