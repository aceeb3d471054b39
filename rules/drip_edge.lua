-- drip_edge.lua - metal at eaves and rakes: there, lapped, nailed, and in order
-- with the underlayment.

local is_judged = reads({
  gets_covering,
  facts = { "covering.kind", "scope.method" },
  figures = { "drip_edge.on_overlay_required" },
}, function(job, figure, slope)
  local gets, other = gets_covering(slope)
  if not gets then return false, other end
  if job.covering.kind ~= "asphalt_shingle" then
    return false, "the figures here are for asphalt shingles"
  end
  if job.scope.method == "overlay" and not figure "drip_edge.on_overlay_required" then
    return false, "an overlay needs no new drip edge here"
  end
  return true
end)

-- Tape and paper differ by this much before a plane's lower edge counts as not
-- wholly listed.
local SLACK_FT = 0.5

-- An edge that is not listed is an edge that nobody looked at.
rule "drip_edge.edges_listed" {
  title = "Every edge of the plane listed",
  stage = "permit",
  per = "roof.slopes",
  reads = {
    is_judged,
    facts = { "roof.edges[].kind", "roof.edges[].length_ft", "roof.edges[].slope",
      "roof.slopes[].eave_ft", "roof.slopes[].name" },
    figures = { "drip_edge.eave_required", "drip_edge.rake_required" },
  },
  applies = function(job, figure, slope)
    local judged, why = is_judged(job, figure, slope)
    if not judged then return false, why end
    return figure "drip_edge.eave_required" or figure "drip_edge.rake_required",
      "no drip edge is asked for here"
  end,
  judge = function(job, figure, slope)
    local eaves, sides = 0, 0
    for _, edge in ipairs(job.roof.edges) do
      if edge.slope.name == slope.name then
        if edge.kind == "eave" or edge.kind == "onto_roof" then
          eaves = eaves + edge.length_ft
        else
          sides = sides + 1
        end
      end
    end
    if eaves < slope.eave_ft - SLACK_FT then
      cannot_tell("this plane's lower edge is " .. number(slope.eave_ft, "ft")
        .. " long, but the eaves listed for it come to " .. number(eaves, "ft"))
    end
    if sides < 2 then
      cannot_tell("only " .. sides .. " of this plane's two sides is listed under roof.edges: "
        .. "say whether each is a rake, a sidewall, a hip or a valley")
    end
    return at_least(eaves, slope.eave_ft - SLACK_FT, "ft")
  end,
  asks_only = true,
  mend = "List the missing edges in the job.",
}

-- Over an old roof it is asked for by the switch that says so, too.
local plane_is_judged = {
  reads({
    is_judged,
    facts = { "roof.edges[].slope" },
  }, function(job, figure, edge) return is_judged(job, figure, edge.slope) end),
  either { no { is { "scope.method", "overlay" } }, on "drip_edge.on_overlay_required" },
}

local is_due_at_eave = {
  is { "roof.edges[].kind", "eave", otherwise = "this edge is no eave" },
  plane_is_judged,
  on { "drip_edge.eave_required", otherwise = "no drip edge is asked for at a eave" },
}
local is_due_at_rake = {
  is { "roof.edges[].kind", "rake", otherwise = "this edge is no rake" },
  plane_is_judged,
  on { "drip_edge.rake_required", otherwise = "no drip edge is asked for at a rake" },
}

local not_read = {
  when = { is { "roof.edges[].drip_edge", false }, on "drip_edge.not_read" },
  says = "whether drip edge is asked for at all, or only where the maker does: the book that "
    .. "binds was not read",
  asks_place = true,
}
local variance = {
  when = { on "drip_edge.variance_allowed" },
  found = reads({
    facts = { "permit.variances" },
  }, function(job) return has(job.permit.variances, "drip_edge") end),
  shown = "drip edge, or a variance granted for it",
}

demand "drip_edge.eave" {
  title = "Drip edge at the eave",
  stage = "dry-in",
  per = "roof.edges",
  when = is_due_at_eave,
  open = { not_read },
  fact = "roof.edges[].drip_edge", shown = "drip edge",
  instead = { variance },
  mend = "Put metal drip edge along this eave.",
}

demand "drip_edge.rake" {
  title = "Drip edge at the rake",
  stage = "dry-in",
  per = "roof.edges",
  when = is_due_at_rake,
  open = { not_read },
  fact = "roof.edges[].drip_edge", shown = "drip edge",
  instead = { variance },
  mend = "Put metal drip edge along this rake.",
}

-- Metal that is there must lie right even where none is asked for.
local meets_a_sheet = reads({
  is_judged,
  facts = { "roof.edges[].drip_edge", "roof.edges[].slope" },
  figures = { "underlayment.on_overlay_required" },
}, function(job, figure, edge)
  local judged, why = is_judged(job, figure, edge.slope)
  if not judged then return false, why end
  if job.scope.method == "overlay" and not figure "underlayment.on_overlay_required" then
    return false, "an overlay lays no underlayment to put over or under the metal"
  end
  return edge.drip_edge, "there is no metal at this edge"
end)

-- A sheet that sticks may lie over metal that was primed for it.
local sticks_over_metal = all {
  is { "roof.edges[].underlayment_lies", "over_metal" },
  on "drip_edge.primed_flange_allowed",
  is { "roof.edges[].slope.underlayment.kind", "D1970" },
}
local PRIMED = "the flange primed where the self-adhered sheet lies over it"

local function mend_order(edges, orders)
  if has(orders, "over_metal") then
    return "At " .. edges .. " set the metal first and bring the underlayment down over it."
  end
  return "At " .. edges .. " lay the underlayment first and set the metal over it."
end

demand "drip_edge.order_eave" {
  title = "Underlayment and metal at the eave",
  stage = "dry-in",
  per = "roof.edges",
  when = {
    is { "roof.edges[].kind", "eave", otherwise = "this edge is no eave" },
    meets_a_sheet,
  },
  fact = "roof.edges[].underlayment_lies", meets = "drip_edge.orders_eave",
  instead = {
    { when = on "drip_edge.sealed_flange_allowed", fact = "roof.edges[].flange_sealed",
      shown = "the flange sealed down where it lies on the underlayment" },
    { when = { off "drip_edge.sealed_flange_allowed", sticks_over_metal },
      fact = "roof.edges[].flange_primed", shown = PRIMED },
  },
  mend = function(job, figure) return mend_order("eaves", figure "drip_edge.orders_eave") end,
}

demand "drip_edge.order_rake" {
  title = "Underlayment and metal at the rake",
  stage = "dry-in",
  per = "roof.edges",
  when = {
    is { "roof.edges[].kind", "rake", otherwise = "this edge is no rake" },
    meets_a_sheet,
  },
  fact = "roof.edges[].underlayment_lies", meets = "drip_edge.orders_rake",
  instead = {
    { when = sticks_over_metal, fact = "roof.edges[].flange_primed", shown = PRIMED },
  },
  mend = function(job, figure) return mend_order("rakes", figure "drip_edge.orders_rake") end,
}

-- One state wants every flange under a band of roof cement.
demand "drip_edge.cement" {
  title = "Roof cement over the drip edge's flange",
  stage = "dry-in",
  per = "roof.edges",
  when = {
    on { "drip_edge.cement_required", otherwise = "no cement is asked for over the flange" },
    is { "roof.edges[].kind", "eave", "rake", otherwise = "this edge is no eave" },
    meets_a_sheet,
  },
  fact = "roof.edges[].flange_cement_in", meets = "drip_edge.cement_width_least",
  mend = "Trowel a band of roof cement over the flange, or over the self-adhered sheet on it.",
}

local has_metal = reads({ is_judged, facts = { "roof.edges[].drip_edge" } }, function(job, figure)
  local judged, why = is_judged(job, figure)
  if not judged then return false, why end
  for _, edge in ipairs(job.roof.edges) do
    if edge.drip_edge then return true end
  end
  return false, "no edge gets drip edge"
end)

demand "drip_edge.lap" {
  title = "Lap of drip edge pieces",
  stage = "dry-in",
  when = { has_metal },
  fact = "drip_edge.lap_in", measured = "drip_edge.measured_lap_in",
  meets = "drip_edge.lap_least",
  mend = "Lap the pieces further.",
}

demand "drip_edge.down" {
  title = "Drip edge down below the deck",
  stage = "dry-in",
  when = { has_metal },
  fact = "drip_edge.down_in", meets = "drip_edge.down_least",
  mend = "Use a profile with a longer drop.",
}

demand "drip_edge.back" {
  title = "Drip edge back onto the deck",
  stage = "dry-in",
  when = { has_metal },
  fact = "drip_edge.back_in", meets = "drip_edge.back_least",
  mend = "Use a profile with a wider flange.",
}

-- Wind or height may call for closer fasteners; wind is looked at first, and
-- where it decides the height does not matter.
local spacing_most = reads({
  facts = { "house.mean_roof_height_ft", "site.wind_vult_mph" },
  figures = { "drip_edge.close_fastening", "drip_edge.close_height_over",
    "drip_edge.close_spacing_most", "drip_edge.close_wind_from", "drip_edge.close_wind_on_vasd",
    "drip_edge.fastener_spacing_most" },
}, function(job, figure)
  if figure "drip_edge.close_fastening" then
    local speed = job.site.wind_vult_mph
    if figure "drip_edge.close_wind_on_vasd" then speed = trade.vult_to_vasd(speed) end
    -- Sorted as it prints: 142 mph is 110 on the nominal scale, not 109.99.
    if math.floor(speed + 0.5) >= figure "drip_edge.close_wind_from"
      or job.house.mean_roof_height_ft > figure "drip_edge.close_height_over" then
      return figure "drip_edge.close_spacing_most"
    end
  end
  return figure "drip_edge.fastener_spacing_most"
end)

demand "drip_edge.fastener_spacing" {
  title = "Spacing of drip edge fasteners",
  stage = "dry-in",
  when = { has_metal },
  fact = "drip_edge.fastener_spacing_in", measured = "drip_edge.measured_fastener_spacing_in",
  meets = { "drip_edge.fastener_spacing_most", "drip_edge.close_spacing_most", unit = "in",
    limit = spacing_most },
  mend = "Add nails between those that are there.",
}
