-- slope.lua - whether a plane is steep enough for what goes on it.

-- Coverings whose least slope turns on nothing but the covering itself.
local LEAST = {
  asphalt_shingle = "slope.least.asphalt_shingle",
  wood_shingle = "slope.least.wood_shingle",
  wood_shake = "slope.least.wood_shake",
  roll_roofing = "slope.least.roll_roofing",
}

rule "slope.least" {
  title = "Least slope for the covering",
  stage = "permit",
  per = "roof.slopes",
  judge = function(job, figure, slope)
    local kind = job.covering.kind
    if LEAST[kind] then return at_least(slope.pitch, figure(LEAST[kind]), "rise_in_12") end
    if kind ~= "metal_panel" then
      cannot_tell("this covering is not judged here: the code's section on it and its maker's "
        .. "instructions say what it asks")
    end
    -- Seams differ; lapped and unsealed needs the most, so that much does for all.
    local least = figure "slope.least.metal_panel_lapped"
    if as_printed(slope.pitch, "rise_in_12") >= least then
      return at_least(slope.pitch, least, "rise_in_12")
    end
    return at_least(slope.pitch, figure("slope.least.metal_panel_" .. job.covering.metal_seam),
      "rise_in_12")
  end,
  mend = "Use a covering made for that slope on this plane.",
}

rule "slope.double_underlayment" {
  title = "Double underlayment on a low slope",
  stage = "permit",
  cause = "two plies",
  per = "roof.slopes",
  applies = function(job, figure, slope)
    if job.covering.kind ~= "asphalt_shingle" then
      return false, "only asphalt shingles are judged here"
    end
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
