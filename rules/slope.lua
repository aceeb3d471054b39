-- slope.lua - whether a plane is steep enough for what goes on it.

-- Coverings whose least slope turns on nothing but the covering itself.
local LEAST = {
  asphalt_shingle = "slope.least.asphalt_shingle",
  wood_shingle = "slope.least.wood_shingle",
  wood_shake = "slope.least.wood_shake",
  roll_roofing = "slope.least.roll_roofing",
  coating = "slope.least.coating",
  built_up = "slope.least.built_up",
  coal_tar_built_up = "slope.least.coal_tar_built_up",
  modified_bitumen = "slope.least.modified_bitumen",
  thermoset_membrane = "slope.least.thermoset_membrane",
  thermoplastic_membrane = "slope.least.thermoplastic_membrane",
  spray_foam = "slope.least.spray_foam",
}

-- What goes on the plane; whether that is the job's own covering; and whether it is only taken
-- for that, because other planes get another and nothing is said of this one.
local covering_of = reads({ gets_covering, facts = { "covering.kind" } }, function(job, slope)
  local differ = planes_differ(job)
  if not gets_covering(slope) then return slope.gets, false, false end
  return job.covering.kind, true, differ and not known(slope, "gets")
end)

local function say_if(taken, judged)
  if not taken then return judged end
  return judged:say("What this plane gets is not said (gets): it is taken for the job's covering.")
end

rule "slope.least" {
  title = "Least slope for the covering",
  stage = "permit",
  per = "roof.slopes",
  reads = {
    covering_of,
    facts = { "covering.metal_seam", "roof.slopes[].pitch" },
    figures = { "slope.least.*" },
  },
  applies = function(job, figure, slope)
    return covering_of(job, slope) ~= "old_stays", "the old covering of this plane stays"
  end,
  judge = function(job, figure, slope)
    local kind, own, taken = covering_of(job, slope)
    if LEAST[kind] then
      return say_if(taken, at_least(slope.pitch, figure(LEAST[kind]), "rise_in_12"))
    end
    if kind ~= "metal_panel" then
      cannot_tell(NOT_JUDGED_HERE)
    end
    -- Seams differ; lapped and unsealed needs the most, so that much does for all.
    local least = figure "slope.least.metal_panel_lapped"
    if as_printed(slope.pitch, "rise_in_12") >= least then
      return say_if(taken, at_least(slope.pitch, least, "rise_in_12"))
    end
    if not own then
      cannot_tell("how the panels of this plane are joined is not told: that decides on a slope "
        .. "so low")
    end
    return say_if(taken, at_least(slope.pitch,
      figure("slope.least.metal_panel_" .. job.covering.metal_seam), "rise_in_12"))
  end,
  mend = "Use a covering made for that slope on this plane.",
}

-- The deck of an overlay is hidden, and gets no underlayment: not so of a plane that is
-- stripped meanwhile.
local is_stripped = reads({ old_layers_on, facts = { "scope.method" } }, function(job, slope)
  if job.scope.method ~= "overlay" then return false end
  if not (known(slope, "old_layers") or known(slope, "old_layers_removed")) then return false end
  local here, off = old_layers_on(job, slope)
  return here > 0 and off >= here
end)

-- A job tells the facts of one covering, laid over or on a bare deck. Of another on part of
-- the roof only the slope is looked at, and of a plane stripped beside an overlay not the deck
-- and what lies on it, so that the rest is never taken for a pass.
demand "slope.other_covering" {
  title = "Another covering, or a bare deck, on part of the roof",
  stage = "permit",
  per = "roof.slopes",
  when = { function(job, figure, slope)
    local kind, own = covering_of(job, slope)
    if own then return is_stripped(job, slope), "this plane gets the job's covering" end
    return kind ~= "old_stays", "the old covering of this plane stays"
  end },
  open = {
    { when = is { "roof.slopes[].other_checked", false },
      says = function(job, figure, slope)
        if is_stripped(job, slope) then
          return "the deck of this plane, its underlayment and ice barrier are not judged with an "
            .. "overlay: check it as a tear-off of its own"
        end
        return "the fire class, fastening, underlayment and flashing of this plane's covering "
          .. "are not told here: check it as a job of its own"
      end },
  },
  fact = "roof.slopes[].other_checked", meets = "slope.other_checked_required",
  asks_only = true,
  reads = { covering_of, is_stripped },
  mend = "Write a job for those planes alone, and check it too.",
}

rule "slope.double_underlayment" {
  title = "Double underlayment on a low slope",
  stage = "permit",
  cause = "two plies",
  per = "roof.slopes",
  reads = {
    gets_covering,
    facts = { "covering.kind", "roof.slopes[].pitch", "roof.slopes[].underlayment",
      "scope.method", "underlayments[].kind", "underlayments[].plies" },
    figures = { "slope.double_below", "slope.double_plies_least", "slope.least.asphalt_shingle",
      "underlayment.kinds_self_adhered", "underlayment.plies_least" },
  },
  applies = function(job, figure, slope)
    if job.covering.kind ~= "asphalt_shingle" then
      return false, "only asphalt shingles are judged here"
    end
    local gets, other = gets_covering(slope)
    if not gets then return false, other end
    local pitch = as_printed(slope.pitch, "rise_in_12")
    if pitch >= figure "slope.double_below" then return false, "the plane is steep enough" end
    return pitch >= figure "slope.least.asphalt_shingle",
      "the plane is too flat for shingles at all"
  end,
  judge = function(job, figure, slope)
    if job.scope.method == "overlay" and not known(slope, "underlayment") then
      cannot_tell("an overlay hides the old underlayment, and a slope this low needs it double; "
        .. "ask the building department whether it may be laid over")
    end
    local underlayment = slope.underlayment
    local two = at_least(underlayment.plies, figure "slope.double_plies_least", "plies")
    -- Only a self-adhered sheet may do with fewer, where the place takes it.
    if underlayment.kind ~= "D1970" then return two end
    return any_of(two, all_of(
      one_of(underlayment.kind, figure "underlayment.kinds_self_adhered"),
      at_least(underlayment.plies, figure "underlayment.plies_least", "plies")))
  end,
  mend = "Lay two plies shingle-fashion with a starter strip, or one self-adhered sheet all over.",
  caution = "Water runs slowly on a low slope: wrinkles and short laps leak first.",
}
