-- flashing.lua - metal where water would get in: walls, chimneys, pipes,
-- skylights, and the crickets behind what is wide.
--
-- Walls, chimneys and penetrations are lists of the job; an empty list says
-- that there are none, a missing one that nobody looked.

-- A flashing that is there is new, or the old one used again.
local is_there = reads({
  facts = { "roof.chimneys[].flashing_is", "roof.penetrations[].flashing_is",
    "roof.walls[].flashing_is" },
}, function(one)
  return one.flashing_is ~= "none"
end)

-- Listed ---------------------------------------------------------------------------

-- How many sides of planes run along a wall, and how many planes end below one.
local walled = reads({
  facts = { "roof.edges[].kind", "roof.slopes[].ends_at_wall" },
}, function(job)
  local sides, heads = 0, 0
  for _, edge in ipairs(job.roof.edges) do
    if edge.kind == "sidewall" then sides = sides + 1 end
  end
  for _, slope in ipairs(job.roof.slopes) do
    if known(slope, "ends_at_wall") and slope.ends_at_wall then heads = heads + 1 end
  end
  return sides, heads
end)

-- Each side has a wall of its own; several planes may end below one.
rule "flashing.walls_listed" {
  title = "Every wall that a plane runs into listed",
  stage = "permit",
  asks_only = true,
  reads = { walled, facts = { "roof.walls[].kind" }, figures = { "flashing.required" } },
  applies = function(job, figure)
    if not figure "flashing.required" then return false, "no flashing is asked for here" end
    local sides, heads = walled(job)
    return sides + heads > 0, "no side of a plane runs along a wall"
  end,
  judge = function(job)
    local sides, heads = walled(job)
    local listed = { sidewall = 0, headwall = 0, slope_change = 0 }
    for _, wall in ipairs(job.roof.walls) do listed[wall.kind] = listed[wall.kind] + 1 end
    if listed.sidewall < sides then
      cannot_tell(sides .. " sides of planes run along a wall, but only " .. listed.sidewall
        .. " sidewalls are listed under roof.walls")
    end
    if heads > 0 and listed.headwall == 0 then
      cannot_tell("a plane is said to end at a wall, but no headwall is listed under roof.walls")
    end
    return at_least(listed.sidewall + listed.headwall, sides + math.min(heads, 1), "count")
  end,
  mend = "List the missing walls in the job.",
}

local is_asked_for = on { "flashing.required", otherwise = "no flashing is asked for here" }

local there = reads({ is_there }, function(job, figure, one) return is_there(one) end)

-- Walls ----------------------------------------------------------------------------

local METHODS = { sidewall = "flashing.sidewall_methods", headwall = "flashing.headwall_methods",
  slope_change = "flashing.slope_change_methods" }

demand "flashing.walls" {
  title = "Flashing where the roof meets a wall or changes slope",
  stage = "dry-in",
  per = "roof.walls",
  when = { is_asked_for },
  choose = {
    { when = there, fact = "roof.walls[].flashing", meets = { "flashing.sidewall_methods",
      "flashing.headwall_methods", "flashing.slope_change_methods",
      which = function(job, figure, wall) return METHODS[wall.kind] end } },
    { found = there, shown = "flashing along the whole of it" },
  },
  reads = { facts = { "roof.walls[].kind" } },
  mend = "Flash it along its whole length.",
}

local is_flashed_sidewall = reads({
  is_there,
  facts = { "roof.walls[].flashing", "roof.walls[].kind" },
  figures = { "flashing.step_has_size" },
}, function(figure, wall)
  if wall.kind ~= "sidewall" then return false, "this is no sidewall" end
  if not figure "flashing.step_has_size" and wall.flashing == "step" then
    return false, "no size of step flashing is given here"
  end
  return is_there(wall), "there is no flashing to measure; flashing.walls judges that"
end)

demand "flashing.sidewall_size" {
  title = "Size of base flashing at a sidewall",
  stage = "dry-in",
  per = "roof.walls",
  when = { function(job, figure, wall)
    if job.covering.kind == "coating" then return false, "a coating lies on the old roof" end
    local flashed, why = is_flashed_sidewall(figure, wall)
    if not flashed then return false, why end
    if job.covering.kind ~= "asphalt_shingle" then
      cannot_tell(NOT_JUDGED_HERE)
    end
    return true
  end },
  fact = "roof.walls[].up_in", meets = "flashing.sidewall_up_least",
  also = { { fact = "roof.walls[].out_in", meets = "flashing.sidewall_out_least" } },
  reads = { is_flashed_sidewall, facts = { "covering.kind" } },
  mend = "Use wider flashing: the one leg up the wall, the other out on the roof.",
}

demand "flashing.wall_cover" {
  title = "What covers the top of wall flashing",
  stage = "final",
  per = "roof.walls",
  when = {
    no { is { "roof.walls[].kind", "slope_change" }, otherwise = "there is no wall" },
    no { is { "roof.walls[].flashing_is", "none" },
      otherwise = "there is no flashing to cover; flashing.walls judges that" },
  },
  fact = "roof.walls[].top_covered_by", meets = "flashing.wall_covers",
  say = "Masonry veneer and plaster have sections of their own for their counterflashing.",
  mend = "Bring the upright leg behind the siding, or counterflash it.",
}

demand "flashing.kickout" {
  title = "Kick-out where an eave ends against a wall",
  stage = "dry-in",
  per = "roof.walls",
  when = {
    is { "roof.walls[].kind", "sidewall", otherwise = "this is no sidewall" },
    is { "roof.walls[].eave_ends_here", otherwise = "no eave ends against this wall" },
    on { "flashing.kickout_required", otherwise = "no kick-out is asked for here" },
  },
  fact = "roof.walls[].kickout",
  shown = "the lowest flashing turned out, to throw water clear of the wall",
  mend = "Set a kick-out at the lower end and lap the siding over it.",
  caution = "Rot hides in the wall under a missing kick-out: look before closing it.",
}

-- Penetrations and chimneys ----------------------------------------------------------

demand "flashing.penetrations" {
  title = "Flashing around pipes, vents and skylights",
  stage = "dry-in",
  per = "roof.penetrations",
  when = { is_asked_for },
  choose = {
    { when = there, fact = "roof.penetrations[].per_instructions",
      shown = "flashing as the shingle maker's (or the unit's) printed instructions show it" },
    { found = there, shown = "flashing all around it" },
  },
  mend = "Flash it as the printed instructions show.",
}

demand "flashing.chimneys" {
  title = "Flashing around a chimney",
  stage = "dry-in",
  per = "roof.chimneys",
  when = { is_asked_for },
  found = there, shown = "base flashing all around the chimney",
  mend = "Flash the chimney all around.",
}

-- The code asks for it where a cricket meets the chimney, practice all around.
demand "flashing.counterflashing" {
  title = "Counterflashing on a masonry chimney",
  stage = "dry-in",
  per = "roof.chimneys",
  when = { is { "roof.chimneys[].masonry", otherwise = "only masonry is counterflashed" } },
  fact = "roof.chimneys[].counterflashed",
  meets = { "flashing.masonry_counterflashed", "flashing.cricket_counterflashed",
    sense = "equals",
    limit = function(job, figure, chimney)
      local cricket = known(chimney, "cricket") and chimney.cricket
      return figure(cricket and "flashing.cricket_counterflashed"
        or "flashing.masonry_counterflashed")
    end },
  say = "A masonry chimney is counterflashed.",
  reads = { facts = { "roof.chimneys[].cricket" } },
  mend = "Set counterflashing into the joints of the masonry.",
}

local is_wide = reads({
  facts = { "roof.chimneys[].width_in" },
  figures = { "flashing.cricket_over" },
}, function(figure, one)
  return as_printed(one.width_in, "in") > figure "flashing.cricket_over"
end)

local NARROW = "only what is wider than the figure needs a cricket; exactly that wide does not"

local chimney_needs_cricket = reads({
  is_wide,
  facts = { "roof.chimneys[].meets_ridge" },
  figures = { "flashing.cricket_required" },
}, function(job, figure, chimney)
  if not figure "flashing.cricket_required" then return false, "no cricket is asked for here" end
  if not is_wide(figure, chimney) then return false, NARROW end
  return not chimney.meets_ridge, "the ridge meets this chimney: it has no upper side"
end)

demand "flashing.cricket" {
  title = "Cricket above a wide chimney",
  stage = "dry-in",
  per = "roof.chimneys",
  when = {
    on { "flashing.cricket_required", otherwise = "no cricket is asked for here" },
    meant { "roof.chimneys[].width_in", "flashing.cricket_over", otherwise = NARROW },
    no { is "roof.chimneys[].meets_ridge",
      otherwise = "the ridge meets this chimney: it has no upper side" },
  },
  fact = "roof.chimneys[].cricket", shown = "a cricket or saddle on the ridge side",
  mend = "Build a cricket on the ridge side and cover it.",
}

local has_cricket = reads({
  chimney_needs_cricket,
  facts = { "roof.chimneys[].cricket" },
}, function(job, figure, chimney)
  local needs, why = chimney_needs_cricket(job, figure, chimney)
  if not needs then return false, why end
  return chimney.cricket, "there is no cricket; flashing.cricket judges that"
end)

demand "flashing.cricket_cover" {
  title = "What covers the cricket",
  stage = "dry-in",
  per = "roof.chimneys",
  when = { has_cricket },
  fact = "roof.chimneys[].cricket_cover", meets = "flashing.cricket_covers",
  mend = "Cover it with sheet metal or with the roof covering.",
}

demand "flashing.cricket_height" {
  title = "Height of the cricket behind a masonry chimney",
  stage = "dry-in",
  per = "roof.chimneys",
  when = {
    on { "flashing.cricket_by_table",
      otherwise = "no height of the cricket is asked for here" },
    has_cricket,
    is { "roof.chimneys[].masonry", otherwise = "the table is for masonry chimneys" },
  },
  fact = "roof.chimneys[].cricket_height_in",
  meets = { "flashing.cricket_by_table", unit = "in", sense = "at_least",
    limit = function(job, figure, chimney)
      return trade.cricket_height_in { width_in = chimney.width_in, pitch = chimney.slope.pitch }
    end },
  reads = { facts = { "roof.chimneys[].slope", "roof.chimneys[].width_in",
    "roof.slopes[].pitch" } },
  mend = "Raise the cricket: its planes rise at the roof's own slope.",
}

demand "flashing.cricket_other" {
  title = "Cricket above any other wide penetration",
  stage = "dry-in",
  per = "roof.penetrations",
  when = {
    on { "flashing.cricket_required", otherwise = "no cricket is asked for here" },
    meant { "roof.penetrations[].width_in", "flashing.cricket_over", otherwise = NARROW },
    no { all {
      is { "roof.penetrations[].kind", "skylight" },
      on "flashing.cricket_skylight_exempt",
      is "roof.penetrations[].per_instructions",
    }, otherwise = "a unit skylight flashed as its maker prints needs no cricket" },
  },
  fact = "roof.penetrations[].cricket", shown = "a cricket or saddle on the ridge side",
  mend = "Build a cricket on the ridge side and cover it.",
}

-- The metal --------------------------------------------------------------------------

-- Does any flashing go on new? Old flashing that stays is judged by its condition.
local any_new = reads({
  facts = { "roof.chimneys[].flashing_is", "roof.penetrations[].flashing_is",
    "roof.walls[].flashing_is" },
}, function(job)
  local lists = { job.roof.walls, job.roof.chimneys, job.roof.penetrations }
  for _, list in ipairs(lists) do
    for _, one in ipairs(list) do
      if one.flashing_is == "new" then return true end
    end
  end
  return false, "no new flashing goes on"
end)

-- A table by metal: thickness for most, gage for some, weight for others. `read` gets
-- the one that is asked for.
local of_metal = reads({
  behind = { { "flashing.by_metal", "flashing.metal_gage_most.*", "flashing.metal_mils_least.*",
    "flashing.metal_weight_least.*", "flashing.metals", "flashing.metals_by_gage",
    "flashing.metals_by_weight" } },
}, function(figure, metal, read)
  local named = figure "flashing.metals"
  if not has(named, metal) then return one_of(metal, named) end
  if has(figure "flashing.metals_by_gage", metal) then
    return at_most(read.gage(), figure("flashing.metal_gage_most." .. metal), "gage")
  end
  if has(figure "flashing.metals_by_weight", metal) then
    return at_least(read.weight(), figure("flashing.metal_weight_least." .. metal), "lb")
  end
  return at_least(read.thickness() * 1000, figure("flashing.metal_mils_least." .. metal), "mil")
end)

rule "flashing.base" {
  title = "What base flashing is made of",
  stage = "dry-in",
  reads = {
    of_metal,
    facts = { "flashing.base", "flashing.base_lb_per_square", "flashing.base_thickness_in",
      "flashing.corrosion_resistant" },
    facts_of_some_places = { "flashing.base_gage", "flashing.base_metal",
      "flashing.base_weight_lb" },
    figures = { "flashing.base_kinds", "flashing.base_roll_least", "flashing.by_metal",
      "flashing.metal_least" },
  },
  applies = any_new,
  judge = function(job, figure)
    local flashing = job.flashing
    local kind = one_of(flashing.base, figure "flashing.base_kinds")
    if flashing.base == "mineral_roll" then
      return all_of(kind, at_least(flashing.base_lb_per_square,
        figure "flashing.base_roll_least", "lb_per_square"))
    end
    if flashing.base ~= "metal" then return kind end
    if figure "flashing.by_metal" then
      return all_of(kind, of_metal(figure, flashing.base_metal, {
        thickness = function() return flashing.base_thickness_in end,
        gage = function() return flashing.base_gage end,
        weight = function() return flashing.base_weight_lb end }))
    end
    return all_of(kind,
      shown(flashing.corrosion_resistant, "metal that does not rust"),
      at_least(flashing.base_thickness_in, figure "flashing.metal_least", "in"))
  end,
  mend = "Use corrosion-resistant metal, or mineral-surfaced roll, of that thickness or weight.",
}

rule "flashing.cap" {
  title = "Thickness of cap flashing",
  stage = "dry-in",
  reads = {
    of_metal,
    facts = { "flashing.cap_thickness_in", "roof.chimneys[].counterflashed", "roof.walls[].kind",
      "roof.walls[].top_covered_by" },
    facts_of_some_places = { "flashing.cap_gage", "flashing.cap_metal",
      "flashing.cap_weight_lb" },
    figures = { "flashing.by_metal", "flashing.cap_least" },
  },
  applies = function(job, figure)
    for _, chimney in ipairs(job.roof.chimneys) do
      if chimney.counterflashed then return true end
    end
    for _, wall in ipairs(job.roof.walls) do
      if wall.kind ~= "slope_change" and wall.top_covered_by == "counterflashing" then
        return true
      end
    end
    return false, "there is no cap flashing"
  end,
  judge = function(job, figure)
    local flashing = job.flashing
    if figure "flashing.by_metal" then
      return of_metal(figure, flashing.cap_metal, {
        thickness = function() return flashing.cap_thickness_in end,
        gage = function() return flashing.cap_gage end,
        weight = function() return flashing.cap_weight_lb end })
    end
    return at_least(flashing.cap_thickness_in, figure "flashing.cap_least", "in")
  end,
  mend = "Use thicker metal.",
}

rule "flashing.reuse" {
  title = "Old flashing used again",
  stage = "dry-in",
  reads = {
    facts = { "roof.chimneys[].flashing_condition", "roof.chimneys[].flashing_is",
      "roof.chimneys[].name", "roof.penetrations[].flashing_condition",
      "roof.penetrations[].flashing_is", "roof.penetrations[].name",
      "roof.walls[].flashing_condition", "roof.walls[].flashing_is", "roof.walls[].name" },
    figures = { "flashing.reuse_allowed", "flashing.reuse_barred" },
  },
  applies = function(job)
    local lists = { job.roof.walls, job.roof.chimneys, job.roof.penetrations }
    for _, list in ipairs(lists) do
      for _, one in ipairs(list) do
        if one.flashing_is == "reused" then return true end
      end
    end
    return false, "no old flashing is used again"
  end,
  judge = function(job, figure)
    if not figure "flashing.reuse_allowed" then
      return shown(false, "new flashing everywhere: this place takes no old one")
    end
    local barred, found = figure "flashing.reuse_barred", {}
    local lists = { job.roof.walls, job.roof.chimneys, job.roof.penetrations }
    for _, list in ipairs(lists) do
      for _, one in ipairs(list) do
        if one.flashing_is == "reused" then
          local condition = one.flashing_condition
          if not has(found, condition) then table.insert(found, condition) end
          if has(barred, condition) then work(name_of(one, "one unnamed") .. ": " .. condition) end
        end
      end
    end
    return none_of(found, barred)
  end,
  mend = "Put new flashing where the old is rusted, damaged or decayed.",
}

demand "flashing.primed" {
  title = "Metal flashing primed under bitumen",
  stage = "dry-in",
  when = {
    on { "flashing.primed_counts", otherwise = "primer under bitumen is not looked at" },
    is { "flashing.bitumen_on_metal", otherwise = "no bitumen goes onto metal flashing" },
  },
  fact = "flashing.primed", shown = "metal flashing primed where bitumen goes onto it",
  mend = "Wipe the metal and prime it before any cement or asphalt goes on.",
}

demand "flashing.rusted_metal" {
  title = "No rusted vents, edges or outlets left",
  stage = "dry-in",
  when = {
    on { "flashing.rusted_metal_counts", otherwise = "old vents and edges are not looked at" },
    is { "scope.method", "tear-off", otherwise = "an overlay leaves them as they are" },
  },
  fact = "existing.rusted_metal_left", wants = false,
  shown = "no rusted, damaged or worn vents, edges, outlets or collars left",
  mend = "Put new ones in while the roof is open.",
}
