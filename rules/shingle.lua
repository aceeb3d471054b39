-- shingle.lua - the shingles themselves: wind class, exposure, offset, papers.

-- Wind ------------------------------------------------------------------------

-- The speed the label is good for by one test; nil when it shows no class.
local label_speed = reads({
  figures = { "shingle.D3161_classes", "shingle.D3161_vult_most.*", "shingle.D7158_vult_most.*" },
}, function(figure, test, class)
  if class == "none" then return nil end
  -- A class that the place's table does not name is good for no speed.
  if test == "D3161" and not has(figure "shingle.D3161_classes", class) then return nil end
  return figure("shingle." .. test .. "_vult_most." .. class)
end)

-- Speeds are whole miles an hour, as they print and as the engine compares them.
local wind_speed = reads({ facts = { "site.wind_vult_mph" } }, function(job)
  return math.ceil(job.site.wind_vult_mph - 0.5)
end)

-- Either label will do. The second is read only when the first does not reach,
-- so that a weaker figure casts no doubt on a label that already suffices.
local best_speed = reads({
  wind_speed, label_speed,
  facts = { "covering.D3161_class", "covering.D7158_class" },
}, function(job, figure)
  local covering, speed = job.covering, wind_speed(job)
  local first
  if known(covering, "D7158_class") then
    first = label_speed(figure, "D7158", covering.D7158_class)
    if first and speed <= first then return first end
  end
  local second
  if known(covering, "D3161_class") then
    second = label_speed(figure, "D3161", covering.D3161_class)
    if second and speed <= second then return second end
  end
  -- Not shown by what is known: the other label has to be read.
  first = first or label_speed(figure, "D7158", covering.D7158_class)
  second = second or label_speed(figure, "D3161", covering.D3161_class)
  if first and second then return math.max(first, second) end
  return first or second
end)

rule "shingle.wind_class" {
  title = "Wind class on the shingle wrapper",
  stage = "permit",
  -- Open for other coverings, so that silence is never taken for a pass.
  reads = {
    shingles_only, best_speed,
    facts = { "house.mean_roof_height_ft", "site.exposure" },
    figures = { "shingle.D7158_classes", "shingle.wind_exposures", "shingle.wind_height_most" },
  },
  applies = function(job)
    return job.covering.kind ~= "coating", "a coating bears no wind class"
  end,
  judge = function(job, figure)
    if not shingles_only(job) then
      cannot_tell(NOT_JUDGED_HERE)
    end
    local most = best_speed(job, figure)
    if not most then return one_of(job.covering.D7158_class, figure "shingle.D7158_classes") end
    local speed = wind_speed(job)
    if speed > most then return at_most(speed, most, "mph") end
    -- The classes were worked out for ordinary sites and heights only.
    if not has(figure "shingle.wind_exposures", job.site.exposure) then
      return cannot_tell("the class on the label does not cover wind exposure "
        .. job.site.exposure .. ": ask the maker for a calculation for this site")
    end
    if job.house.mean_roof_height_ft > figure "shingle.wind_height_most" then
      return cannot_tell("the class on the label does not cover a roof this high: "
        .. "ask the maker for a calculation for this house")
    end
    return at_most(speed, most, "mph")
  end,
  mend = "Use shingles whose wrapper shows a class for this wind speed.",
  caution = "On a hill, ridge or bluff the wind is faster than the map says: have it worked out.",
}

-- A place may name the classes that will do, whatever the wind speed: either
-- test is enough.
rule "shingle.wind_label" {
  title = "Wind class that the place names",
  stage = "permit",
  reads = {
    shingles_only,
    facts = { "covering.D3161_class", "covering.D7158_class" },
    figures = { "shingle.wind_label_required", "shingle.wind_labels_D3161",
      "shingle.wind_labels_D7158" },
  },
  applies = function(job, figure)
    if not figure "shingle.wind_label_required" then
      return false, "the place names no wind class: the wind speed decides"
    end
    return shingles_only(job)
  end,
  judge = function(job, figure)
    local new, old = figure "shingle.wind_labels_D7158", figure "shingle.wind_labels_D3161"
    local covering = job.covering
    if #old == 0 then return one_of(covering.D7158_class, new) end
    if #new == 0 then return one_of(covering.D3161_class, old) end
    if known(covering, "D7158_class") and has(new, covering.D7158_class) then
      return one_of(covering.D7158_class, new)
    end
    if known(covering, "D3161_class") and has(old, covering.D3161_class) then
      return one_of(covering.D3161_class, old)
    end
    return any_of(one_of(covering.D7158_class, new), one_of(covering.D3161_class, old))
  end,
  mend = "Use shingles whose wrapper shows one of the classes named.",
}

-- Hail ------------------------------------------------------------------------

local hail_label_due = reads({
  shingles_only,
  facts = { "existing.hail_damaged", "existing.hail_documented", "existing.hail_on" },
  figures = { "shingle.hail_early_exempt", "shingle.hail_early_most",
    "shingle.hail_label_required" },
}, function(job, figure)
  if not figure "shingle.hail_label_required" then
    return false, "no hail class is asked for here"
  end
  local shingled, why = shingles_only(job)
  if not shingled then return false, why end
  if not figure "shingle.hail_early_exempt" or not job.existing.hail_damaged then return true end
  if as_date(job.existing.hail_on) > figure "shingle.hail_early_most" then return true end
  return not job.existing.hail_documented, "the hail that is made good fell before the duty began"
end)

demand "shingle.hail_label" {
  title = "Hail class on the shingle wrapper",
  stage = "permit",
  when = { hail_label_due },
  fact = "covering.UL_2218_class", meets = "shingle.hail_labels",
  mend = "Use shingles whose wrapper names that class of UL 2218.",
}

demand "shingle.hail_proof" {
  title = "What shows the hail class",
  stage = "final",
  when = { hail_label_due },
  fact = "covering.hail_proof", meets = "shingle.hail_proofs",
  mend = "Keep a wrapper or the maker's papers for the inspector.",
}

-- At the final ------------------------------------------------------------------

local measured_at_final = reads({ shingles_only }, function(what)
  return { shingles_only, inspected { otherwise = what } }
end)

-- Where the code makes the maker's printed figure its own.
local printed_figure_binds = reads({
  measured_at_final,
  figures = { "shingle.follow_instructions" },
}, function(what)
  return {
    on { "shingle.follow_instructions",
      otherwise = "the place does not hold shingles to the maker's printed figure" },
    measured_at_final(what),
  }
end)

demand "shingle.exposure" {
  title = "Exposure of the courses",
  stage = "final",
  when = printed_figure_binds("measured on the roof, against the maker's printed exposure"),
  fact = "covering.measured_exposure_in",
  meets = { fact = "covering.exposure_printed_in", sense = "at_most" },
  mend = "Lay the courses that are too far apart again.",
}

demand "shingle.offset" {
  title = "Offset of joints, course to course",
  stage = "final",
  when = printed_figure_binds("measured on the roof, against the maker's printed offset"),
  fact = "covering.measured_offset_in",
  meets = { fact = "covering.offset_printed_in", sense = "at_least" },
  mend = "Lay the courses whose joints fall too close together again.",
}

demand "shingle.offset_usual" {
  title = "Offset usual in the trade",
  stage = "final",
  when = measured_at_final("measured on the roof, against what is usual in the trade"),
  fact = "covering.measured_offset_in", meets = "shingle.offset_least",
  mend = "Ask the maker whether so small an offset is sound for this shingle.",
}

demand "shingle.instructions" {
  title = "Maker's printed instructions on the site",
  stage = "final",
  when = {
    shingles_only,
    on { "shingle.instructions_required",
      otherwise = "the place does not ask for them on the site" },
  },
  fact = "covering.instructions_on_site", meets = "shingle.instructions_required",
  mend = "Keep a wrapper and the printed instructions on the site until the final.",
}

demand "shingle.standard" {
  title = "Standard of the shingles",
  stage = "permit",
  when = { shingles_only },
  fact = "covering.made_to", meets = "shingle.standards",
  mend = "Use shingles whose wrapper names the standard.",
}

demand "shingle.weight" {
  title = "Weight of the shingles",
  stage = "permit",
  when = {
    on { "shingle.weight_counts", otherwise = "no least weight is set for shingles" },
    shingles_only,
  },
  fact = "covering.weight_lb_per_square", meets = "shingle.weight_least",
  mend = "Choose a heavier shingle.",
}
