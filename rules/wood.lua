-- wood.lua - rotted wood found when the roof is opened, and wood shingles and
-- shakes.
--
-- Rot is a list: one entry for each member found, such as a rafter tail, fascia
-- or the deck's edge; an empty list says that none was found.

-- Rot ------------------------------------------------------------------------------

demand "wood.replaced" {
  title = "Rotted wood replaced",
  stage = "deck",
  per = "rot",
  when = { on { "wood.rot_replaced_required", otherwise = "rotted wood may stay here" } },
  fact = "rot[].repair", meets = "wood.repairs_allowed",
  mend = "Cut back to sound wood and put in a new piece before the deck is covered.",
  caution = "Rotted eaves do not hold a foot or a ladder: keep off them.",
}

local is_sistered = is { "rot[].repair", "sistered",
  otherwise = "no piece is nailed alongside" }

demand "wood.sister_cut" {
  title = "Rotted part cut off beside its new piece",
  stage = "deck",
  per = "rot",
  when = {
    on { "wood.rot_replaced_required", otherwise = "rotted wood may stay here" },
    is_sistered,
  },
  fact = "rot[].rot_cut_off", shown = "the rotted part cut off",
  mend = "Cut the rotted part off before the deck is covered: rot left beside new wood goes on.",
}

-- No figure is asked for: what follows is practice, and only warns.
demand "wood.sister_length" {
  title = "How far a new piece runs along sound wood",
  stage = "deck",
  per = "rot",
  when = {
    is_sistered,
    meant { "rot[].member", "wood.framing_members", otherwise = "this member carries no roof" },
  },
  found = function(_, _, piece)
    local times = piece.sister_past_ft / piece.length_ft
    work(number(piece.sister_past_ft, "ft") .. " along sound wood / "
      .. number(piece.length_ft, "ft") .. " replaced = " .. number(times, "times"))
    return times
  end,
  unit = "times", meets = "wood.sister_times_least",
  reads = { facts = { "rot[].length_ft", "rot[].sister_past_ft" } },
  mend = "Use a longer piece, or ask the building department how to splice this one.",
}

local is_new = is { "rot[].repair", "new_piece", "sistered",
  otherwise = "no new wood goes in; wood.replaced judges that" }

demand "wood.matched" {
  title = "New wood of the same kind and size",
  stage = "deck",
  per = "rot",
  when = {
    on { "wood.match_required", otherwise = "new wood need not match here" },
    is_new,
  },
  fact = "rot[].size_matches", shown = "new wood of the same size",
  also = { { fact = "rot[].species_matches",
    shown = "new wood of the same species, or one as strong and durable" } },
  mend = "Match species and size, or ask the building department about another.",
}

demand "wood.primed" {
  title = "New outside wood primed on all faces",
  stage = "deck",
  per = "rot",
  when = {
    is_new,
    meant { "rot[].member", "wood.primed_members", otherwise = "this member is not painted" },
  },
  fact = "rot[].primed_all_faces", meets = "wood.primed_required",
  say = "Back, ends and every cut on the job, the end grain most of all, before nailing.",
  mend = "Take it down and prime the back and the cuts, or use boards primed all around.",
}

demand "wood.carries" {
  title = "Framing that can carry the roof after the repair",
  stage = "deck",
  per = "rot",
  when = {
    on { "wood.structure_required", otherwise = "nothing is asked about the framing here" },
    meant { "rot[].member", "wood.framing_members", otherwise = "this member carries no roof" },
    is { "rot[].reaches_wall",
      otherwise = "the rot lies outside the wall: the member still bears whole" },
  },
  fact = "rot[].strength_shown",
  shown = "a repair of the framing drawn, or accepted by the building department",
  mend = "Ask the building department, or an engineer, how to repair framing at its bearing.",
}

-- Wood shingles and shakes -----------------------------------------------------------

local is_wood = reads({ facts = { "covering.kind" } }, function(job)
  return is_wood_kind(job.covering.kind), "the covering is not wood"
end)

-- The table's lengths; a shingle of another length has no row.
local LENGTHS = { 16, 18, 24 }

-- The row of the table for this length, or nil.
local length_of = reads({ facts = { "covering.wood_length_in" } }, function(job)
  for _, one in ipairs(LENGTHS) do
    if as_printed(job.covering.wood_length_in, "in") == one then return one end
  end
  return nil
end)

demand "wood.exposure" {
  title = "Exposure of wood shingles",
  stage = "final",
  per = "roof.slopes",
  when = {
    on { "wood.exposure_limited", otherwise = "no exposure of wood is set here" },
    function(job, figure, slope) return gets_covering(slope) end,
    is_wood,
  },
  open = {
    { when = is { "covering.kind", "wood_shake" },
      says = "the table of exposures of shakes is not held here: see R905.8 as adopted" },
    { says = function(job, figure, slope)
      return as_printed(slope.pitch, "rise_in_12") < figure "slope.least.wood_shingle"
        and "the plane is too flat for wood shingles; slope.least judges that" or nil
    end },
    { says = function(job)
      return not length_of(job) and "the table has no row for shingles of this length" or nil
    end },
  },
  fact = "covering.exposure_printed_in", measured = "covering.measured_exposure_in",
  meets = { sense = "at_most", unit = "in", limit = function(job, figure, slope)
    local low = as_printed(slope.pitch, "rise_in_12") < figure "wood.exposure_low_below"
    return figure("wood.exposure_most." .. (low and "low" or "steep") .. "."
      .. string.format("%d", length_of(job)) .. "." .. job.covering.wood_grade)
  end, behind = { { "wood.exposure_limited", "wood.exposure_most.*" } } },
  reads = {
    gets_covering, length_of,
    facts = { "covering.wood_grade", "roof.slopes[].pitch" },
    figures = { "slope.least.wood_shingle", "wood.exposure_low_below" },
  },
  mend = "Lay the courses closer.",
}

demand "wood.solid_eaves" {
  title = "Solid deck under wood shingles where eaves ice up",
  stage = "deck",
  per = "decks",
  when = {
    is_wood,
    on { "wood.solid_eaves_required", otherwise = "spaced boards may run to the eave here" },
    is { "decks[].kind", "spaced_board", otherwise = "the deck is solid" },
    no { is { "decks[].work", "paneled_over" }, otherwise = "the deck is solid" },
    meant { "site.january_mean_F", "wood.solid_eaves_at_most",
      otherwise = "January is not cold enough here" },
  },
  fact = "decks[].solid_at_eaves",
  shown = "a solid deck under the ice-barrier part of the roof",
  mend = "Fill between the boards, or lay panels, from the eave up as far as the ice barrier goes.",
}

demand "wood.spaced_deck" {
  title = "Spaced boards and earthquakes",
  stage = "permit",
  per = "decks",
  when = {
    is_wood,
    is { "decks[].kind", "spaced_board", otherwise = "the deck is not spaced" },
    no { is { "decks[].work", "paneled_over" }, otherwise = "the deck is not spaced" },
  },
  fact = "site.seismic_category", meets = "wood.spaced_deck_barred_in",
  mend = "Lay panels over the spaced boards.",
}
