-- us-wi.rules.lua - what a dwelling code other than the model's says of spaced
-- boards, of uplift and ties, and of the sheet at eaves.

field "roof.uplift_psf" { type = "number", unit = "psf", range = { 0, 200 }, stage = "permit",
  ask = "For what uplift is the altered framing of the roof made?" }
field "roof.rafter_span_ft" { type = "number", unit = "ft", range = { 0, 100 }, stage = "permit",
  ask = "How far do the altered rafters or trusses span, at most?" }

-- The code binds houses from a day within that year; only the year is known.
local is_under_code = reads({
  facts = { "house.year_built" },
  figures = { "permit.dwelling_code_from" },
}, function(job, figure)
  local from = figure "permit.dwelling_code_from"
  local built = job.house.year_built
  if built == from then
    return cannot_tell("the code binds houses from 1 June of that year: was it built before?")
  end
  return built > from, "the house is older than the state's code: the local code binds"
end)

demand "deck.spaced_board_thickness" {
  title = "Thickness of spaced boards",
  stage = "permit",
  per = "decks",
  when = {
    is { "decks[].kind", "spaced_board", otherwise = "this deck is not spaced boards" },
    is_under_code,
  },
  open = { { says = function(job, figure, deck)
    local most = figure "deck.board_spacing_most"
    return deck.support_spacing_in > most and "the text gives spaced boards for rafters "
      .. number(most, "in") .. " apart or closer" or nil
  end } },
  fact = "decks[].thickness_in", meets = "deck.spaced_thickness_least",
  reads = { facts = { "decks[].support_spacing_in" }, figures = { "deck.board_spacing_most" } },
  mend = "Lay thicker boards, or panels rated for the rafter spacing.",
}

local framing_altered = reads({
  is_under_code,
  facts = { "scope.structure_altered" },
}, function(job, figure)
  if not job.scope.structure_altered then return false, "the framing is left alone" end
  return is_under_code(job, figure)
end)

demand "wind.uplift" {
  title = "Uplift on altered framing",
  stage = "permit",
  when = { framing_altered },
  fact = "roof.uplift_psf", meets = "wind.uplift_least",
  mend = "Have the framing and its ties made for that uplift.",
}

demand "wind.framing_ties" {
  title = "Altered rafters or trusses clipped or strapped",
  stage = "deck",
  when = {
    framing_altered,
    meant { "roof.rafter_span_ft", "wind.ties_span_over", otherwise = "the spans are short" },
  },
  fact = "roof.ties_at_each_rafter", shown = "a clip or strap at each rafter or truss",
  mend = "Fit clips or straps while the deck is open.",
}

-- 12 in past the inner face, measured up the slope, and 30 in in all at least.
local reach_needed = reads({
  facts = { "roof.edges[].overhang_in", "roof.edges[].slope", "roof.edges[].wall_thickness_in",
    "roof.slopes[].pitch" },
  figures = { "ice_barrier.past_inner_face_least", "ice_barrier.up_slope_least" },
}, function(figure, edge)
  local pitch = edge.slope.pitch
  local to_face = trade.sum { { "overhang", edge.overhang_in },
    { "wall", edge.wall_thickness_in }, unit = "in" }
  local along = 12 * trade.sloped_length_ft { run_ft = to_face / 12, pitch = pitch }
  local past = trade.sum { { "to the inner face, along the slope", along },
    { "past it", figure "ice_barrier.past_inner_face_least" }, unit = "in" }
  return math.max(past, figure "ice_barrier.up_slope_least")
end)

rule "ice_barrier.up_slope" {
  title = "How far up the slope the ice-dam sheet reaches",
  stage = "dry-in",
  per = "roof.edges",
  reads = {
    is_under_code, reach_needed,
    facts = { "roof.edges[].ice_barrier_reach_in", "roof.edges[].kind",
      "roof.edges[].measured_ice_barrier_reach_in", "roof.edges[].over_heated_space" },
    figures = { "ice_barrier.pitch_most" },
  },
  applies = function(job, figure, edge)
    if edge.kind ~= "eave" then return false, "the sheet is laid from eaves" end
    if not edge.over_heated_space then
      return false, "there is no heated space behind this eave"
    end
    return is_under_code(job, figure)
  end,
  judge = function(job, figure, edge)
    local needed = reach_needed(figure, edge)
    local measured = inspecting() and edge.measured_ice_barrier_reach_in
    local least = measured and measured[1] or edge.ice_barrier_reach_in
    for i = 2, measured and #measured or 1 do
      least = math.min(least, measured[i])
    end
    local low = edge.slope.pitch <= figure "ice_barrier.pitch_most" + 0.005
    if not low and least < needed - 0.05 then
      return cannot_tell("it reaches " .. number(least, "in") .. " of the " .. number(needed, "in")
        .. " asked for; one page ties the sheet to flatter slopes than this")
    end
    return at_least(least, needed, "in")
  end,
  mend = "Add a course up the slope.",
}
