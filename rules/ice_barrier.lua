-- ice_barrier.lua - the watertight sheet at eaves where ice dams form.

-- A place may ask for it outright, or leave it to its climate table, which the
-- job has to quote.
local function is_asked_for(job, figure)
  if figure "ice_barrier.required" then return true end
  -- Or by how cold January is, or by a history of ice where one is known.
  if figure "ice_barrier.by_january_mean"
    and as_printed(job.site.january_mean_F, "F") <= figure "ice_barrier.january_mean_most" then
    return true
  end
  if figure "ice_barrier.by_history" and job.site.ice_history then return true end
  return figure "ice_barrier.by_table" and job.site.ice_barrier_in_table
end

local function is_needed(job, figure)
  if not is_asked_for(job, figure) then return false, "no ice barrier is asked for here" end
  if figure "ice_barrier.one_family_exempt" and job.house.kind == "one_family" then
    return false, "one-family houses are let off here"
  end
  local listed = false
  for _, kind in ipairs(figure "ice_barrier.coverings") do
    if kind == job.covering.kind then listed = true end
  end
  if not listed then return false, "the ice barrier section does not name this covering" end
  if job.scope.method == "overlay" and not figure "ice_barrier.on_overlay_required" then
    return false, "an overlay does not open the eaves"
  end
  return true
end

demand "ice_barrier.kind" {
  title = "What the ice barrier is",
  stage = "dry-in",
  when = { is_needed },
  fact = "ice_barrier.kind", meets = "ice_barrier.kinds",
  mend = "Use a self-adhered sheet, or two plies of underlayment cemented together.",
}

-- Tape and paper differ by this much before an eave counts as not wholly listed.
local SLACK_FT = 0.5

-- An eave that is not listed is one that nobody laid the barrier along.
rule "ice_barrier.eaves_listed" {
  title = "Every eave of the plane listed",
  stage = "permit",
  per = "roof.slopes",
  applies = is_needed,
  judge = function(job, figure, slope)
    local listed = 0
    for _, edge in ipairs(job.roof.edges) do
      if edge.slope.name == slope.name and (edge.kind == "eave" or edge.kind == "onto_roof") then
        listed = listed + edge.length_ft
      end
    end
    local least = slope.eave_ft - SLACK_FT
    if listed < least then
      cannot_tell("this plane's lower edge is " .. number(slope.eave_ft, "ft")
        .. " long, but the eaves listed for it come to " .. number(listed, "ft"))
    end
    return at_least(listed, least, "ft")
  end,
  asks_only = true,
  mend = "List the missing eaves in the job.",
}

rule "ice_barrier.reach" {
  title = "Reach of the ice barrier upslope",
  stage = "dry-in",
  per = "roof.edges",
  applies = function(job, figure, edge)
    if edge.kind ~= "eave" then return false, "ice barrier is laid from eaves" end
    local needed, why = is_needed(job, figure)
    if not needed then return false, why end
    if figure "ice_barrier.unheated_exempt" then
      return edge.over_heated_space, "there is no heated space behind this eave"
    end
    -- Such as a porch's roof that ends at the house.
    if figure "ice_barrier.unheated_at_wall_exempt" and not edge.over_heated_space then
      return not edge.slope.ends_at_wall,
        "there is no heated space behind this eave, and its plane ends at a wall"
    end
    return true
  end,
  judge = function(job, figure, edge)
    local needed = barrier_reach(figure, edge)
    if inspecting() then return each_at_least(edge.measured_ice_barrier_reach_in, needed, "in") end
    return at_least(edge.ice_barrier_reach_in, needed, "in")
  end,
  mend = "Add a course of ice barrier up the slope, lapped as its maker prints.",
}

-- Some places want it along the other edges and in valleys too. Across the
-- slope there is no pitch to count.
rule "ice_barrier.rakes" {
  title = "Ice barrier along the rakes",
  stage = "dry-in",
  per = "roof.edges",
  applies = function(job, figure, edge)
    if edge.kind ~= "rake" then return false, "this edge is no rake" end
    if not figure "ice_barrier.rakes_required" then
      return false, "no ice barrier is asked for along rakes"
    end
    return is_needed(job, figure)
  end,
  judge = function(job, figure, edge)
    local wall = 0
    if figure "ice_barrier.wall_counts" then wall = edge.wall_thickness_in end
    local needed = trade.sum { { "overhang", edge.overhang_in }, { "wall", wall },
      { "inside it", figure "ice_barrier.inside_wall_least" }, unit = "in" }
    if inspecting() then return each_at_least(edge.measured_ice_barrier_reach_in, needed, "in") end
    return at_least(edge.ice_barrier_reach_in, needed, "in")
  end,
  mend = "Lay ice barrier along the rake as well.",
}

demand "ice_barrier.valleys" {
  title = "Ice barrier in the valleys",
  stage = "dry-in",
  per = "roof.valleys",
  when = {
    on { "ice_barrier.valleys_required", otherwise = "no ice barrier is asked for in valleys" },
    is_needed,
  },
  fact = "roof.valleys[].ice_barrier", shown = "ice barrier under this valley",
  mend = "Lay ice barrier down the valley before it is lined.",
}
