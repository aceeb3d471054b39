-- ice_barrier.lua - the watertight sheet at eaves where ice dams form.

demand "ice_barrier.kind" {
  title = "What the ice barrier is",
  stage = "dry-in",
  when = { ice_barrier_is_needed },
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
  reads = {
    ice_barrier_is_needed, gets_covering,
    facts = { "roof.edges[].kind", "roof.edges[].length_ft", "roof.edges[].slope",
      "roof.slopes[].eave_ft", "roof.slopes[].name" },
  },
  applies = function(job, figure, slope)
    local needed, why = ice_barrier_is_needed(job, figure)
    if not needed then return false, why end
    return gets_covering(slope)
  end,
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

demand "ice_barrier.reach" {
  title = "Reach of the ice barrier upslope",
  stage = "dry-in",
  per = "roof.edges",
  when = { is_iced_eave },
  fact = "roof.edges[].ice_barrier_reach_in",
  measured = "roof.edges[].measured_ice_barrier_reach_in",
  meets = { "ice_barrier.inside_wall_least", "ice_barrier.steep_reach_least",
    "ice_barrier.strip_least", unit = "in",
    limit = function(job, figure, edge) return barrier_reach(figure, edge) end },
  reads = { barrier_reach },
  mend = "Add a course of ice barrier up the slope, lapped as its maker prints.",
}

-- Some places want it along the other edges and in valleys too. Across the
-- slope there is no pitch to count.
demand "ice_barrier.rakes" {
  title = "Ice barrier along the rakes",
  stage = "dry-in",
  per = "roof.edges",
  when = {
    is { "roof.edges[].kind", "rake", otherwise = "this edge is no rake" },
    function(job, figure, edge) return gets_covering(edge.slope) end,
    on { "ice_barrier.rakes_required", otherwise = "no ice barrier is asked for along rakes" },
    ice_barrier_is_needed,
  },
  fact = "roof.edges[].ice_barrier_reach_in",
  measured = "roof.edges[].measured_ice_barrier_reach_in",
  meets = { "ice_barrier.inside_wall_least", unit = "in", limit = function(job, figure, edge)
    local wall = 0
    if figure "ice_barrier.wall_counts" then wall = edge.wall_thickness_in end
    return trade.sum { { "overhang", edge.overhang_in }, { "wall", wall },
      { "inside it", figure "ice_barrier.inside_wall_least" }, unit = "in" }
  end },
  reads = {
    gets_covering,
    facts = { "roof.edges[].overhang_in", "roof.edges[].slope",
      "roof.edges[].wall_thickness_in" },
    figures = { "ice_barrier.wall_counts" },
  },
  mend = "Lay ice barrier along the rake as well.",
}

demand "ice_barrier.valleys" {
  title = "Ice barrier in the valleys",
  stage = "dry-in",
  per = "roof.valleys",
  when = {
    on { "ice_barrier.valleys_required", otherwise = "no ice barrier is asked for in valleys" },
    ice_barrier_is_needed,
  },
  fact = "roof.valleys[].ice_barrier", shown = "ice barrier under this valley",
  mend = "Lay ice barrier down the valley before it is lined.",
}
