-- underlayment.lua - what lies between deck and shingles, plane by plane.
--
-- Three things decide what is asked of it: whether the plane is stripped at
-- all, whether its slope calls for two plies, and whether the place is windy.

-- The least of what was measured. An empty list shows nothing.
local function least_of(list)
  if #list == 0 then cannot_tell("no laps were measured") end
  local least = list[1]
  for _, one in ipairs(list) do least = math.min(least, one) end
  return least
end

local is_laid = reads({
  gets_covering,
  facts = { "covering.kind", "scope.method" },
  figures = { "underlayment.on_overlay_required" },
}, function(job, figure, slope)
  local gets, other = gets_covering(slope)
  if not gets then return false, other end
  if job.covering.kind ~= "asphalt_shingle" then
    return false, "the figures here are for asphalt shingles; this covering has its own"
  end
  if job.scope.method == "overlay" and not figure "underlayment.on_overlay_required" then
    return false, "an overlay strips nothing, so no underlayment is laid"
  end
  return true
end)

local is_double = reads({
  facts = { "roof.slopes[].pitch" },
  figures = { "slope.double_below" },
}, function(figure, slope)
  return as_printed(slope.pitch, "rise_in_12") < figure "slope.double_below"
end)

local FELTS = { "D226_I", "D226_II", "D4869_I", "D4869_II", "D4869_III", "D4869_IV", "D6757",
  "unlabeled_felt" }

-- Some codes measure a double lap by the roll: half its width and so much more. The
-- figure in inches is that of common felt; other rolls have to say their width.
local goes_by_roll = reads({
  facts = { "underlayments[].kind", "underlayments[].roll_width_in" },
  figures = { "underlayment.double_lap_by_roll" },
}, function(figure, sheet)
  if not figure "underlayment.double_lap_by_roll" then return false end
  return known(sheet, "roll_width_in") or not has(FELTS, sheet.kind)
end)

local half_roll_in = reads({ facts = { "underlayments[].roll_width_in" } }, function(sheet)
  work("half of a roll " .. number(sheet.roll_width_in, "in") .. " wide: "
    .. number(sheet.roll_width_in / 2, "in"))
  return sheet.roll_width_in / 2
end)

local double_lap_least = reads({
  goes_by_roll, half_roll_in,
  figures = { "underlayment.double_lap_past_half_least", "underlayment.head_lap_double_least" },
}, function(figure, sheet)
  if not goes_by_roll(figure, sheet) then return figure "underlayment.head_lap_double_least" end
  return half_roll_in(sheet) + figure "underlayment.double_lap_past_half_least"
end)

local starter_least = reads({
  goes_by_roll, half_roll_in,
  figures = { "underlayment.starter_width_least" },
}, function(figure, sheet)
  if not goes_by_roll(figure, sheet) then return figure "underlayment.starter_width_least" end
  return half_roll_in(sheet)
end)

-- Which figure says the plies where one would do but for the wind.
local which_plies = reads({
  is_stormy, is_self_adhered, is_taped,
  facts = { "roof.slopes[].underlayment" },
  figures = { "underlayment.plies_high_wind_least", "underlayment.plies_least" },
}, function(job, figure, slope)
  local least = figure "underlayment.plies_least"
  if is_stormy(job, figure) and figure "underlayment.plies_high_wind_least" > least
    and not is_self_adhered(slope.underlayment) and not is_taped(figure, slope.underlayment) then
    return "underlayment.plies_high_wind_least"
  end
  return "underlayment.plies_least"
end)

local plies_wanted = reads({ which_plies }, function(job, figure, slope)
  return figure(which_plies(job, figure, slope))
end)

-- Laid as double underlayment, for the slope or for the wind.
local is_laid_double = reads({
  is_double, plies_wanted,
  figures = { "slope.double_plies_least" },
}, function(job, figure, slope)
  return is_double(figure, slope)
    or plies_wanted(job, figure, slope) >= figure "slope.double_plies_least"
end)

-- Laps are the maker's business where the sheet sticks to the deck.
local is_lapped = reads({
  is_laid, is_self_adhered,
  facts = { "roof.slopes[].underlayment" },
}, function(job, figure, slope)
  local laid, why = is_laid(job, figure, slope)
  if not laid then return false, why end
  return not is_self_adhered(slope.underlayment), "a self-adhered sheet laps as its maker prints"
end)

local is_wind_fastened = reads({
  is_laid, is_self_adhered, is_windy,
  facts = { "roof.slopes[].underlayment" },
}, function(job, figure, slope)
  local laid, why = is_laid(job, figure, slope)
  if not laid then return false, why end
  if is_self_adhered(slope.underlayment) then
    return false, "a self-adhered sheet needs no fasteners"
  end
  return is_windy(job, figure), "it is not windy enough here: what holds it in place will do"
end)

demand "underlayment.plies" {
  title = "Underlayment on the plane",
  stage = "dry-in",
  per = "roof.slopes",
  when = { function(job, figure, slope)
    local laid, why = is_laid(job, figure, slope)
    if not laid then return false, why end
    return not is_double(figure, slope), "slope.double_underlayment judges so low a slope"
  end },
  fact = "roof.slopes[].underlayment.plies",
  meets = { "underlayment.plies_least", "underlayment.plies_high_wind_least", which = which_plies },
  reads = { is_laid, is_double, plies_wanted },
  mend = function(job, figure, slope)
    if plies_wanted(job, figure, slope) == figure "underlayment.plies_least" then
      return "Lay underlayment over the whole plane."
    end
    return "Lay two plies shingle-fashion over the whole plane, or a self-adhered sheet, or tape "
      .. "the joints of the deck first: this wind asks for one of them."
  end,
}

-- Other coverings have sections of their own, which are not carried here: the one
-- rule that says so is open, so that silence is never taken for a pass.
local is_laid_or_other = reads({ is_laid }, function(job, figure, slope)
  if job.covering.kind == "asphalt_shingle" then return is_laid(job, figure, slope) end
  local gets, other = gets_covering(slope)
  if not gets then return false, other end
  if job.covering.kind == "coating" then return false, "no underlayment lies under a coating" end
  return job.scope.method ~= "overlay", "an overlay strips nothing, so no underlayment is laid"
end)

rule "underlayment.kind" {
  title = "Kind printed on the roll",
  stage = "dry-in",
  per = "roof.slopes",
  reads = {
    is_self_adhered, is_windy, is_taped,
    facts = { "roof.slopes[].underlayment", "underlayments[].evaluation_report" },
    figures = { "underlayment.kinds_by_report", "underlayment.kinds_high_wind",
      "underlayment.kinds_normal", "underlayment.kinds_self_adhered",
      "underlayment.tape_frees_kind", "underlayment.tape_kinds" },
  },
  applies = is_laid_or_other,
  judge = function(job, figure, slope)
    if job.covering.kind ~= "asphalt_shingle" then
      cannot_tell(NOT_JUDGED_HERE)
    end
    local kind = slope.underlayment.kind
    local normal = figure "underlayment.kinds_normal"
    local high = figure "underlayment.any_wind_counts" and normal
      or figure "underlayment.kinds_high_wind"
    -- A kind on both lists, or an exception to them, does whatever the wind.
    if has(normal, kind) and has(high, kind) then return one_of(kind, high) end
    if not has(normal, kind) and not has(high, kind) then
      if is_self_adhered(slope.underlayment) then
        return one_of(kind, figure "underlayment.kinds_self_adhered")
      end
      if has(figure "underlayment.kinds_by_report", kind) then
        return shown(slope.underlayment.evaluation_report,
          "an evaluation report that accepts it in place of a listed felt")
          :say("The tables do not list it; the building department accepts the report or not.")
      end
    end
    if is_windy(job, figure) then
      if figure "underlayment.tape_frees_kind" and is_taped(figure, slope.underlayment) then
        return one_of(kind, figure "underlayment.tape_kinds")
          :say("Over taped joints the kinds of calmer places do.")
      end
      return one_of(kind, high)
    end
    if has(high, kind) then
      return one_of(kind, high)
        :warn("It is listed for windy places only; being the heavier felt it is taken everywhere.")
    end
    return one_of(kind, normal)
  end,
  mend = "Use a roll with a listed standard and type printed on it, and keep the wrapper.",
}

local head_lap_least = reads({
  is_laid_double, double_lap_least,
  figures = { "underlayment.head_lap_high_wind_least", "underlayment.head_lap_least" },
}, function(job, figure, slope)
  local sheet = slope.underlayment
  if is_laid_double(job, figure, slope) then return double_lap_least(figure, sheet) end
  if is_stormy(job, figure) and not is_taped(figure, sheet) then
    return figure "underlayment.head_lap_high_wind_least"
  end
  return figure "underlayment.head_lap_least"
end)

demand "underlayment.head_lap" {
  title = "Lap of each sheet over the one below",
  stage = "dry-in",
  cause = "two plies",
  per = "roof.slopes",
  when = { is_lapped },
  fact = "roof.slopes[].underlayment.head_lap_in",
  measured = "roof.slopes[].underlayment.measured_head_lap_in",
  meets = { "underlayment.head_lap_least", "underlayment.head_lap_high_wind_least",
    "underlayment.head_lap_double_least", "underlayment.double_lap_past_half_least",
    unit = "in", limit = head_lap_least },
  mend = "Lay each sheet shingle-fashion from the eave with the full lap.",
}

demand "underlayment.end_lap" {
  title = "Lap at the ends of sheets",
  stage = "dry-in",
  per = "roof.slopes",
  when = { is_lapped },
  fact = "roof.slopes[].underlayment.end_lap_in",
  measured = "roof.slopes[].underlayment.measured_end_lap_in",
  meets = { "underlayment.end_lap_least", "underlayment.end_lap_double_least", unit = "in",
    limit = function(job, figure, slope)
      return figure(is_double(figure, slope) and "underlayment.end_lap_double_least"
        or "underlayment.end_lap_least")
    end },
  reads = { is_double },
  mend = "Lap the ends further, or patch short ones with a full piece.",
}

demand "underlayment.end_lap_offset" {
  title = "End laps apart, course to course",
  stage = "dry-in",
  per = "roof.slopes",
  when = { is_lapped },
  fact = "roof.slopes[].underlayment.end_lap_offset_ft",
  meets = "underlayment.end_lap_offset_least",
  mend = "Start the next course with a sheet of another length.",
}

demand "underlayment.starter" {
  title = "Starter strip under two plies",
  stage = "dry-in",
  cause = "two plies",
  per = "roof.slopes",
  when = { is_lapped, function(job, figure, slope)
    return is_laid_double(job, figure, slope), "only double underlayment starts with a strip"
  end },
  fact = "roof.slopes[].underlayment.starter_width_in",
  meets = { "underlayment.starter_width_least", unit = "in", sense = "at_least",
    limit = function(job, figure, slope) return starter_least(figure, slope.underlayment) end },
  reads = { is_laid_double, starter_least },
  mend = "Start at the eave with a strip of half the roll's width or a little more.",
}

demand "underlayment.fasteners" {
  title = "What holds the underlayment in wind",
  stage = "dry-in",
  per = "roof.slopes",
  when = { is_wind_fastened },
  fact = "roof.slopes[].underlayment.fastener", meets = "underlayment.fasteners_wind",
  mend = function(job, figure)
    if has(figure "underlayment.fasteners_wind", "cap_staple") then
      return "Use cap nails or cap staples."
    end
    return "Use cap nails."
  end,
}

demand "underlayment.cap" {
  title = "Width of the caps",
  stage = "dry-in",
  per = "roof.slopes",
  when = { is_wind_fastened },
  fact = "roof.slopes[].underlayment.cap_in", meets = "underlayment.cap_wind_least",
  mend = "Use fasteners with wider caps.",
}

demand "underlayment.cap_thickness" {
  title = "Thickness of the caps",
  stage = "dry-in",
  per = "roof.slopes",
  when = { is_wind_fastened },
  found = function(job, figure, slope) return slope.underlayment.cap_thickness_in * 1000 end,
  unit = "mil", meets = "underlayment.cap_mils_least",
  by = "roof.slopes[].underlayment.cap_made_of",
  reads = { facts = { "underlayments[].cap_thickness_in" } },
  mend = "Use fasteners with thicker caps.",
}

demand "underlayment.cap_metal" {
  title = "Metal caps in very strong wind",
  stage = "dry-in",
  per = "roof.slopes",
  when = {
    on { "underlayment.metal_caps_count", otherwise = "no wind asks for metal caps here" },
    is_wind_fastened,
    meant { "site.wind_vult_mph", "underlayment.metal_caps_from",
      otherwise = "it is not windy enough: plastic caps will do" },
  },
  fact = "roof.slopes[].underlayment.cap_made_of", meets = "underlayment.caps_metal",
  mend = "Use cap nails with metal caps.",
}

-- Ringed nails may be thinner; staples are measured by their wire.
local shank_kind = reads({
  facts = { "underlayments[].fastener", "underlayments[].fastener_ringed" },
}, function(sheet)
  if sheet.fastener == "cap_staple" then return "staple" end
  return sheet.fastener_ringed and "ringed" or "smooth"
end)

demand "underlayment.shank" {
  title = "Shank of the underlayment's fasteners",
  stage = "dry-in",
  per = "roof.slopes",
  when = { is_wind_fastened },
  choose = {
    { when = function(job, figure, slope)
      return has(figure "underlayment.shanks", shank_kind(slope.underlayment))
    end,
      fact = "roof.slopes[].underlayment.fastener_shank_in",
      meets = { "underlayment.shank_least.smooth", "underlayment.shank_least.ringed",
        "underlayment.shank_least.staple", which = function(job, figure, slope)
          return "underlayment.shank_least." .. shank_kind(slope.underlayment)
        end } },
    { found = function(job, figure, slope) return shank_kind(slope.underlayment) end,
      meets = "underlayment.shanks" },
  },
  reads = { shank_kind, figures = { "underlayment.shank_least.*" } },
  mend = "Use heavier fasteners; the box says how thick they are.",
}

rule "underlayment.bite" {
  title = "How far the underlayment's fasteners go in",
  stage = "dry-in",
  per = "roof.slopes",
  reads = {
    facts = { "underlayments[].fastener_into_deck_in", "underlayments[].fastener_through_deck" },
    figures = { "underlayment.bite_least" },
  },
  applies = is_wind_fastened,
  judge = function(job, figure, slope)
    local sheet, least = slope.underlayment, figure "underlayment.bite_least"
    if sheet.fastener_through_deck then
      return shown(sheet.fastener_through_deck, "fasteners that go through the deck")
    end
    return at_least(sheet.fastener_into_deck_in, least, "in")
  end,
  mend = "Use longer fasteners.",
}

demand "underlayment.lap_spacing" {
  title = "Fasteners along the laps in wind",
  stage = "dry-in",
  per = "roof.slopes",
  when = { is_wind_fastened },
  fact = "roof.slopes[].underlayment.lap_spacing_in", meets = "underlayment.lap_spacing_wind_most",
  mend = "Add fasteners along side and end laps.",
}

demand "underlayment.field_spacing" {
  title = "Fasteners between the laps in wind",
  stage = "dry-in",
  per = "roof.slopes",
  when = { is_wind_fastened },
  fact = "roof.slopes[].underlayment.field_spacing_in",
  meets = "underlayment.field_spacing_wind_most",
  mend = "Fasten on a closer grid between the laps.",
}

local two_plies = reads({
  double_lap_least,
  figures = { "underlayment.two_ply_kinds" },
}, function(figure, underlayment, lap)
  local kinds = figure "underlayment.two_ply_kinds"
  if not has(kinds, underlayment.kind) then return one_of(underlayment.kind, kinds) end
  return all_of(
    one_of(underlayment.kind, kinds),
    at_least(lap, double_lap_least(figure, underlayment), "in"))
end)

rule "underlayment.sealed_deck" {
  title = "Deck sealed against water if shingles blow off",
  stage = "dry-in",
  per = "roof.slopes",
  reads = {
    is_laid, is_self_adhered, sealed_deck_is_asked_for, two_plies,
    facts = { "decks[].kind", "decks[].work", "roof.slopes[].deck", "roof.slopes[].underlayment",
      "underlayments[].deck_joints_taped", "underlayments[].head_lap_in",
      "underlayments[].measured_head_lap_in", "underlayments[].plies",
      "underlayments[].tape_width_in" },
    figures = { "slope.double_plies_least", "underlayment.kinds_self_adhered",
      "underlayment.plies_least", "underlayment.sealed_deck_decks",
      "underlayment.sealed_deck_methods", "underlayment.tape_kinds",
      "underlayment.tape_width_least" },
  },
  applies = function(job, figure, slope)
    local laid, why = is_laid(job, figure, slope)
    if not laid then return false, why end
    if not sealed_deck_is_asked_for(job, figure) then
      return false, "no sealed deck is asked for here"
    end
    local deck = slope.deck
    local laid_on = deck.work == "paneled_over" and "panel" or deck.kind
    return has(figure "underlayment.sealed_deck_decks", laid_on),
      "a deck of this kind need not be sealed"
  end,
  judge = function(job, figure, slope)
    local methods = figure "underlayment.sealed_deck_methods"
    local underlayment = slope.underlayment
    local kind, plies = underlayment.kind, underlayment.plies

    if has(methods, "full_self_adhered") and is_self_adhered(slope.underlayment) then
      return all_of(one_of(kind, figure "underlayment.kinds_self_adhered"),
        at_least(plies, figure "underlayment.plies_least", "plies"))
    end

    -- Two plies that do are enough; if they do not, taped joints still may be.
    local two = has(methods, "two_plies") and plies >= figure "slope.double_plies_least"
    local lap
    if two then
      lap = underlayment.head_lap_in
      if inspecting() then lap = least_of(underlayment.measured_head_lap_in) end
      if has(figure "underlayment.two_ply_kinds", kind)
        and lap >= double_lap_least(figure, underlayment) then
        return two_plies(figure, underlayment, lap)
      end
    end
    if has(methods, "taped_joints") and underlayment.deck_joints_taped then
      return all_of(
        at_least(underlayment.tape_width_in, figure "underlayment.tape_width_least", "in"),
        at_least(plies, figure "underlayment.plies_least", "plies"),
        one_of(kind, figure "underlayment.tape_kinds"))
    end
    if two then return two_plies(figure, underlayment, lap) end
    return one_of("single_ply", methods)
      :say("The deck joints are not taped, and one ply alone does not seal the deck.")
  end,
  mend = "Cover the deck with a self-adhered sheet, tape its joints first, or lay two plies.",
}

demand "underlayment.tape" {
  title = "What the deck's joints are taped with",
  stage = "dry-in",
  per = "roof.slopes",
  when = {
    is_laid,
    on { "underlayment.tape_kinds_count",
      otherwise = "what the tape is made of is not judged here" },
    function(job, figure, slope)
      if is_self_adhered(slope.underlayment) then
        return false, "a self-adhered sheet needs no tape under it"
      end
      return slope.underlayment.deck_joints_taped, "the deck's joints are not taped"
    end,
  },
  fact = "roof.slopes[].underlayment.tape_is", meets = "underlayment.tapes",
  reads = { is_self_adhered, facts = { "underlayments[].deck_joints_taped" } },
  mend = "Tape the joints with one that is listed, as its maker prints.",
}

-- What sticks to the deck may be hard to strip; some editions let it stay.
demand "underlayment.old_left" {
  title = "Old adhered sheet left on the deck",
  stage = "dry-in",
  when = {
    is { "scope.method", "tear-off", otherwise = "an overlay strips nothing" },
    no { is { "existing.adhered_left", "none" },
      otherwise = "no old adhered sheet stays on the deck" },
  },
  open = {
    { when = no { meant { "existing.adhered_left", "underlayment.old_may_stay" } },
      says = "the edition in force says nothing of an old adhered sheet of this kind left on the "
        .. "deck: ask the building department" },
  },
  choose = {
    { fact = "existing.adhered_left_covered",
      shown = "a new sheet of the same duty over the old one",
      also = { { when = on "underlayment.old_needs_nails_shown",
        fact = "existing.adhered_left_nails_shown",
        shown = "proof that the deck under the old sheet is nailed as it must be" } } },
  },
  mend = "Cover the old sheet with a new one, or strip it.",
}

-- One state laps the first full sheet over another further than those after it.
demand "underlayment.third_course" {
  title = "Lap of the third course of double underlayment",
  stage = "dry-in",
  per = "roof.slopes",
  when = {
    on { "underlayment.third_course_counts", otherwise = "all courses lap alike here" },
    is_lapped,
    function(job, figure, slope)
      return slope.underlayment.plies >= figure "slope.double_plies_least",
        "one ply has no such course"
    end,
  },
  fact = "roof.slopes[].underlayment.third_course_lap_in",
  meets = { "underlayment.third_course_lap_least", "underlayment.third_course_past_half_least",
    unit = "in", limit = function(job, figure, slope)
      local sheet = slope.underlayment
      if not goes_by_roll(figure, sheet) then
        return figure "underlayment.third_course_lap_least"
      end
      return half_roll_in(sheet) + figure "underlayment.third_course_past_half_least"
    end },
  reads = {
    goes_by_roll, half_roll_in,
    facts = { "underlayments[].plies" },
    figures = { "slope.double_plies_least" },
  },
  mend = "Lap the second full sheet over the first by half the roll and two inches.",
}

-- One old edition asked for some fasteners before the wind got strong.
demand "underlayment.lap_spacing_mid" {
  title = "Fasteners along the laps in moderate wind",
  stage = "dry-in",
  per = "roof.slopes",
  when = {
    on { "underlayment.mid_wind_applies", otherwise = "nothing is set for moderate wind here" },
    function(job, figure, slope)
      local laid, why = is_laid(job, figure, slope)
      if not laid then return false, why end
      if is_self_adhered(slope.underlayment) then
        return false, "a self-adhered sheet needs no fasteners"
      end
      if is_windy(job, figure) then return false, "the wind is stronger: closer fasteners" end
      local speed = job.site.wind_vult_mph
      if figure "underlayment.wind_on_vasd" then speed = trade.vult_to_vasd(speed) end
      return as_printed(speed, "mph") > figure "underlayment.mid_wind_over",
        "it is not windy enough here: what holds it in place will do"
    end,
  },
  fact = "roof.slopes[].underlayment.lap_spacing_in", meets = "underlayment.lap_spacing_mid_most",
  reads = { is_laid, is_self_adhered, is_windy, figures = { "underlayment.mid_wind_over" } },
  mend = "Add fasteners along the laps.",
}
