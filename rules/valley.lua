-- valley.lua - what lies under the shingles, or open to the sky, in a valley.

local shingled = reads({ facts = { "covering.kind" } }, function(job)
  return job.covering.kind == "asphalt_shingle", "the figures here are for asphalt shingles"
end)

-- An overlay lays new lining too, unless the place says otherwise.
local is_judged = reads({
  shingled,
  facts = { "scope.method" },
  figures = { "valley.on_overlay_required" },
}, function(job, figure)
  local shingles, why = shingled(job)
  if not shingles then return false, why end
  if job.scope.method == "overlay" and not figure "valley.on_overlay_required" then
    return false, "an overlay keeps the old lining here"
  end
  return true
end)

rule "valley.listed" {
  title = "Every valley listed",
  stage = "permit",
  asks_only = true,
  reads = {
    is_judged,
    facts = { "roof.edges[].kind", "roof.valleys" },
    figures = { "valley.lining_required" },
  },
  applies = function(job, figure)
    local judged, why = is_judged(job, figure)
    if not judged then return false, why end
    if not figure "valley.lining_required" then return false, "no lining is asked for here" end
    for _, edge in ipairs(job.roof.edges) do
      if edge.kind == "valley" then return true end
    end
    return false, "no side of a plane is a valley"
  end,
  judge = function(job)
    local sides = 0
    for _, edge in ipairs(job.roof.edges) do
      if edge.kind == "valley" then sides = sides + 1 end
    end
    -- Two planes share a valley, so its edge may be listed twice.
    local least = math.ceil(sides / 2)
    if #job.roof.valleys < least then
      cannot_tell(sides .. " sides of planes are valleys, but only " .. #job.roof.valleys
        .. " valleys are listed under roof.valleys")
    end
    return at_least(#job.roof.valleys, least, "count")
  end,
  mend = "List the missing valleys in the job.",
}

demand "valley.lining" {
  title = "Kind of valley lining",
  stage = "dry-in",
  per = "roof.valleys",
  -- The one rule that says so of other coverings, so that silence is no pass.
  when = {
    no { is { "covering.kind", "coating" }, otherwise = "a coating lies on the old roof" },
    either {
      no { is { "covering.kind", "asphalt_shingle" } },
      all { is_judged, on { "valley.lining_required", otherwise = "no lining is asked for here" } },
    },
  },
  open = {
    { when = no { is { "covering.kind", "asphalt_shingle" } }, says = NOT_JUDGED_HERE },
  },
  choose = {
    { when = is { "roof.valleys[].kind", "open" },
      fact = "roof.valleys[].lining", meets = "valley.linings_open" },
    { fact = "roof.valleys[].lining", meets = "valley.linings_closed" },
  },
  mend = "Line the valley before the shingles go on.",
}

local is_lined = reads({
  is_judged,
  facts = { "roof.valleys[].lining" },
}, function(job, figure, valley)
  local judged, why = is_judged(job, figure)
  if not judged then return false, why end
  return valley.lining ~= "none", "there is no lining; valley.lining judges that"
end)

local WIDTHS = { metal = "valley.metal_width_least", two_ply_roll = "valley.roll_top_width_least",
  smooth_roll = "valley.smooth_width_least", self_adhered = "valley.self_adhered_width_least" }

demand "valley.width" {
  title = "Width of valley lining",
  stage = "dry-in",
  per = "roof.valleys",
  when = { is_lined },
  fact = "roof.valleys[].width_in", measured = "roof.valleys[].measured_width_in",
  meets = { "valley.metal_width_least", "valley.roll_top_width_least", "valley.smooth_width_least",
    "valley.self_adhered_width_least",
    which = function(job, figure, valley) return WIDTHS[valley.lining] end },
  also = {
    { when = is { "roof.valleys[].lining", "two_ply_roll" },
      fact = "roof.valleys[].bottom_width_in", meets = "valley.roll_bottom_width_least" },
  },
  mend = "Use wider lining, centered on the valley.",
}

local in_table = meant { "roof.valleys[].metal", "valley.metals" }
local by_gage = meant { "roof.valleys[].metal", "valley.metals_by_gage" }
local by_weight = meant { "roof.valleys[].metal", "valley.metals_by_weight" }

demand "valley.metal" {
  title = "Metal of an exposed or covered valley",
  stage = "dry-in",
  per = "roof.valleys",
  when = {
    is_judged,
    is { "roof.valleys[].lining", "metal", otherwise = "the lining is not metal" },
  },
  fact = "roof.valleys[].metal", meets = "valley.metals",
  -- The table gives gage for one metal, weight for two, thickness for the rest.
  also = {
    { when = { in_table, by_gage },
      fact = "roof.valleys[].gage", meets = "valley.metal_gage_most", by = "roof.valleys[].metal" },
    { when = { in_table, no(by_gage), by_weight },
      fact = "roof.valleys[].weight_lb", meets = "valley.metal_weight_least",
      by = "roof.valleys[].metal" },
    { when = { in_table, no(by_gage), no(by_weight) },
      found = function(job, figure, valley) return valley.thickness_in * 1000 end, unit = "mil",
      meets = "valley.metal_mils_least", by = "roof.valleys[].metal" },
  },
  reads = { facts = { "roof.valleys[].thickness_in" } },
  mend = "Use a metal of the table, as thick as it says.",
}

demand "valley.before" {
  title = "Lining laid before the shingles",
  stage = "dry-in",
  per = "roof.valleys",
  when = { is_lined },
  fact = "roof.valleys[].lined_before_shingles", meets = "valley.lined_first",
  say = "Lay it as its maker prints.",
  mend = "Take the shingles in the valley up and line it first.",
}

demand "valley.nails" {
  title = "Nails kept away from the valley's center",
  stage = "final",
  per = "roof.valleys",
  when = { is_judged },
  fact = "roof.valleys[].nails_from_center_in", meets = "valley.nails_from_center_least",
  mend = "Pull nails near the center and seal their holes.",
}
