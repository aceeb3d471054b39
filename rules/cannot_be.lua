-- cannot_be.lua - facts of one job that contradict each other, and values that
-- can hardly be meant.
--
-- A slip here would not fail: it would make the roof smaller, the eave shorter, the
-- covering lighter, and what should be refused would pass. So it is refused, or
-- where a right job might look like that, asked back: `ask_back` lets the job say
-- under /as_meant that it is meant. A message names both places and, where there
-- is one, the likely reading.

-- How far apart two tellings of one thing may lie, and where a value begins to be
-- odd. None of these is a figure of a code: they are common practice.
local AREA_PERCENT = 25       -- squares ordered hold the waste; a tape and a sketch differ
local SHARE_PERCENT = 1       -- a share of the roof is told in whole percent
local RIDGE_PERCENT, RIDGE_FT = 5, 1
local ATTIC_LEAST_PERCENT = 50 -- of the roof seen from above: open porches and garages have none
local ATTIC_MOST_PERCENT = 110 -- of the roof along the slope
local STEEP = 24              -- rise in 12: past it only the lower part of a mansard is shingled
local OVERHANG_IN = 4         -- as many feet are a common eave; as many inches are a rare one
local LIGHT_LB = 140          -- a square of strip shingles weighs 190 lb and up, a bundle 60 to 100
local USUAL_BUNDLES = 3

local function plane_sqft(slope)
  return trade.slope_area_sqft {
    eave_ft = slope.eave_ft, ridge_ft = slope.ridge_ft, run_ft = slope.run_ft, pitch = slope.pitch,
    plan_sqft = known(slope, "plan_sqft") and slope.plan_sqft or nil }
end

local function roof_sqft(job)
  local sum = 0
  for _, slope in ipairs(job.roof.slopes) do sum = sum + plane_sqft(slope) end
  return sum
end

-- Does the job say that only a part of the roof is done? Then what it lists may be
-- that part or the whole, and nothing here can tell.
local function is_part(job)
  if known(job.scope, "extent") and job.scope.extent == "repair" then return true end
  if known(job.scope, "roof_share_percent") and job.scope.roof_share_percent < 100 then
    return true
  end
  for _, slope in ipairs(job.roof.slopes) do
    if known(slope, "replaced_percent") and slope.replaced_percent < 100 then return true end
  end
  return false
end

local function upper_edges_ft(job)
  local sum = 0
  for _, slope in ipairs(job.roof.slopes) do sum = sum + slope.ridge_ft end
  return sum
end

-- The roof against itself ----------------------------------------------------------

local function likely_area(area, planes, slack)
  if math.abs(area * 100 - planes) <= slack then
    return "Did you mean " .. number(area * 100, "sqft") .. " (" .. number(area)
      .. " squares)?"
  end
  if math.abs(area - 2 * planes) <= 2 * slack then
    return "Is half the roof left out? Each side of a ridge is a plane of its own."
  end
  if area > planes then return "Is a plane left out?" end
  return "Say the share of the roof that is done, where it is not the whole."
end

impossible "the planes come to the area of the job" {
  at = "scope.area_sqft",
  ask_back = true,
  when = function(job)
    local area, whole = job.scope.area_sqft, roof_sqft(job)
    local done, slack, share = whole, whole * AREA_PERCENT / 100, ""
    if known(job.scope, "roof_share_percent") then
      done = whole * job.scope.roof_share_percent / 100
      slack = done * AREA_PERCENT / 100 + whole * SHARE_PERCENT / 100
      if job.scope.roof_share_percent < 100 then
        share = number(job.scope.roof_share_percent, "percent") .. " of "
      end
    elseif is_part(job) and area < whole then
      return
    end
    if math.abs(area - done) <= slack then return end
    return number(area, "sqft") .. ", but " .. share .. "the planes under /roof/slopes come to "
      .. number(done, "sqft") .. " along the slope, and more than "
      .. number(AREA_PERCENT, "percent") .. " lies between them. "
      .. likely_area(area, done, slack)
  end,
}

impossible "a ridge has roof on both sides" {
  at = "roof.ridge_ft",
  ask_back = true,
  when = function(job)
    if known(job.roof, "form") and job.roof.form == "other" or is_part(job) then return end
    local sides, upper = 2 * job.roof.ridge_ft, upper_edges_ft(job)
    if upper >= sides - math.max(RIDGE_FT, sides * RIDGE_PERCENT / 100) then return end
    return number(job.roof.ridge_ft, "ft") .. " of ridge has as much roof on either side, "
      .. number(sides, "ft") .. " of upper edges, but those of the planes under /roof/slopes come "
      .. "to " .. number(upper, "ft") .. ". Is a plane left out? (a roof that slopes one way has "
      .. "no ridge: 0)"
  end,
}

impossible "a gable or hip roof has more than one plane" {
  at = "roof.slopes",
  when = function(job)
    if known(job.roof, "ridge_ft") or is_part(job) then return end
    local least = job.roof.form == "gable" and 2 or job.roof.form == "hip" and 3 or 1
    if #job.roof.slopes < least then
      return "lists " .. #job.roof.slopes .. ", but a " .. job.roof.form
        .. " roof (/roof/form) has " .. least .. " planes at least"
    end
  end,
}

-- By its plan a porch's roof ends at the house; listed, an upper edge that is no
-- ridge does, unless it ends in the air.
impossible "a porch roof meets the house" {
  at = "roof.walls",
  when = function(job)
    if job.roof.footprint.form == "gable_porch" and #job.roof.walls == 0 then
      return "lists none, but /roof/footprint has a porch, whose roof meets the house: list it as "
        .. "a headwall, or as a slope_change where it runs on from the main roof"
    end
  end,
}

impossible "a plane that ends at a wall has one" {
  at = "ends_at_wall", per = "roof.slopes",
  when = function(job, slope)
    if slope.ends_at_wall and #job.roof.walls == 0 then
      return "says that this plane ends at a wall, but /roof/walls lists none"
    end
  end,
}

impossible "upper edges that are no ridge meet something" {
  at = "roof.walls",
  ask_back = true,
  when = function(job)
    if known(job.roof, "footprint") or job.roof.form == "other" or is_part(job)
      or #job.roof.walls > 0 then
      return
    end
    local sides, upper = 2 * job.roof.ridge_ft, upper_edges_ft(job)
    if upper <= sides + math.max(RIDGE_FT, sides * RIDGE_PERCENT / 100) then return end
    return "lists none, but the upper edges of the planes under /roof/slopes come to "
      .. number(upper, "ft") .. " and both sides of the ridge only to " .. number(sides, "ft")
      .. ": list where the rest meets a wall, or where the slope changes"
  end,
}

-- What lies under the roof ------------------------------------------------------------

-- Of each plane's eaves what they overhang, seen from above, and whether there is a heated
-- room under it. Gathered edge by edge: a roof may have sixty planes and two hundred edges.
local function eaves_by_plane(job)
  local over, unheated = {}, {}
  for _, edge in ipairs(job.roof.edges) do
    if edge.kind == "eave" then
      local name = edge.slope.name
      if known(edge, "over_heated_space") then unheated[name] = not edge.over_heated_space end
      if known(edge, "overhang_in") then
        over[name] = (over[name] or 0) + edge.overhang_in / 12 * edge.length_ft
      end
    end
  end
  return over, unheated
end

-- Seen from above, with the eaves' overhangs.
local function covered_sqft(slope)
  if known(slope, "plan_sqft") then return slope.plan_sqft end
  return (slope.eave_ft + slope.ridge_ft) / 2 * slope.run_ft
end

local function all_covered_sqft(job)
  local sum = 0
  for _, slope in ipairs(job.roof.slopes) do sum = sum + covered_sqft(slope) end
  return sum
end

-- The same without the eaves' overhangs, and without planes said to cover no heated room.
local function housed_sqft(job)
  local sum = 0
  local over, unheated = eaves_by_plane(job)
  for _, slope in ipairs(job.roof.slopes) do
    local name = known(slope, "name") and slope.name or ""
    if not unheated[name] then
      sum = sum + math.max(0, covered_sqft(slope) - (over[name] or 0))
    end
  end
  return sum
end

impossible "the attics fit under the roof" {
  at = "attics",
  ask_back = true,
  when = function(job)
    if is_part(job) then return end
    local attics, roof = 0, roof_sqft(job)
    for _, attic in ipairs(job.attics) do attics = attics + attic.area_sqft end
    if attics > roof * ATTIC_MOST_PERCENT / 100 then
      return "come to " .. number(attics, "sqft") .. ", but the whole roof (/roof/slopes) only to "
        .. number(roof, "sqft") .. " along the slope"
    end
    -- Where there is enough for all that is covered, no eave has to be looked at.
    if attics >= all_covered_sqft(job) * ATTIC_LEAST_PERCENT / 100 then return end
    local housed = housed_sqft(job)
    if attics < housed * ATTIC_LEAST_PERCENT / 100 then
      return "come to " .. number(attics, "sqft") .. ", but the roof (/roof/slopes) covers "
        .. number(housed, "sqft") .. " inside its eaves, and less than "
        .. number(ATTIC_LEAST_PERCENT, "percent") .. " of it would have an attic: list every "
        .. "attic and rafter space, and of a porch say that its eave is over no heated space"
    end
  end,
}

impossible "a wood fire has a chimney" {
  at = "roof.chimneys",
  ask_back = true,
  when = function(job)
    if #job.roof.chimneys > 0 then return end
    local house = job.house
    local told = known(house, "solid_fuel_chimney")
    if told and house.solid_fuel_chimney then
      return "lists none, but /house/solid_fuel_chimney says that there is one: list it, of brick "
        .. "or of metal (one that stands clear of the roof is meant)"
    end
    if not told and has(house.co_sources, "fireplace") then
      return "lists none, but /house/co_sources has a fireplace: list its chimney, of brick or of "
        .. "metal (where none goes through the roof, /house/solid_fuel_chimney says false)"
    end
  end,
}

local function lists_skylight(job)
  for _, hole in ipairs(job.roof.penetrations) do
    if hole.kind == "skylight" then return true end
  end
  return false
end

-- What is not listed is flashed by nobody's word.
impossible "a skylight that is changed goes through the roof" {
  at = "roof.penetrations",
  ask_back = true,
  when = function(job)
    if job.scope.skylights_changed and not lists_skylight(job) then
      return "lists no skylight, but /scope/skylights_changed says that one is put in or changed: "
        .. "list it, with its flashing (one that is taken out for good is meant)"
    end
  end,
}

impossible "a stripped plane with an underlayment gets it" {
  at = "scope.new_underlayment",
  ask_back = true,
  when = function(job)
    if job.scope.new_underlayment or job.scope.method ~= "tear-off" then return end
    for i, slope in ipairs(job.roof.slopes) do
      if known(slope, "underlayment") and slope.underlayment.plies > 0 then
        return "says that none is laid, but the old covering is torn off and /roof/slopes/"
          .. i - 1 .. "/underlayment says what is laid there (old felt that stays is meant)"
      end
    end
  end,
}

-- Values that can hardly be meant ------------------------------------------------------

-- "12:3" for 3:12; "30:12" for 3:12; "70 deg" for 70 %.
local function likely_slope(written, pitch)
  local ending = string.sub(written, -3)
  if ending == "deg" or ending == "ees" then
    return number(trade.pitch_degrees(pitch), "percent")
  end
  if ending == ":12" or ending == "/12" or ending == " 12" then
    return number(pitch / 10, "rise_in_12")
  end
  if ending == "%" then return nil end
  return number(144 / pitch, "rise_in_12")
end

local function too_steep(part)
  local pitch = part.pitch
  if as_printed(pitch, "rise_in_12") <= STEEP then return end
  local written = as_written(part, "pitch")
  local likely = likely_slope(written, pitch)
  return written .. " is " .. number(pitch, "rise_in_12") .. ", steeper than "
    .. number(STEEP, "rise_in_12") .. ", which few roofs but the lower part of a mansard are."
    .. (likely and " Did you mean " .. likely .. "?" or "")
end

impossible "a plane is not as steep as a wall" {
  at = "pitch", per = "roof.slopes",
  ask_back = true,
  when = function(job, slope)
    if not known(job.roof, "footprint") then return too_steep(slope) end
  end,
}

impossible "a roof by its plan is not as steep as a wall" {
  at = "roof.footprint.pitch",
  ask_back = true,
  when = function(job) return too_steep(job.roof.footprint) end,
}

impossible "a porch by its plan is not as steep as a wall" {
  at = "roof.footprint.porch.pitch",
  ask_back = true,
  when = function(job) return too_steep(job.roof.footprint.porch) end,
}

local function too_short(inches)
  if inches <= 0 or inches > OVERHANG_IN then return end
  return number(inches, "in") .. " is a very short eave. Did you mean " .. number(inches, "ft")
    .. ", " .. number(inches * 12, "in") .. "?"
end

impossible "an eave overhangs by more than a few inches" {
  at = "overhang_in", per = "roof.edges",
  ask_back = true,
  when = function(job, edge)
    if edge.kind ~= "eave" then return end
    if known(job.roof, "footprint") and edge.overhang_in == job.roof.footprint.eave_overhang_in then
      return
    end
    return too_short(edge.overhang_in)
  end,
}

impossible "eaves by the plan overhang by more than a few inches" {
  at = "roof.footprint.eave_overhang_in",
  ask_back = true,
  when = function(job) return too_short(job.roof.footprint.eave_overhang_in) end,
}

local function too_light(covering, bundles)
  local weight = covering.weight_lb_per_square
  if covering.kind ~= "asphalt_shingle" or weight >= LIGHT_LB then return end
  return number(weight, "lb") .. " to the square is too light for asphalt shingles, and looks like "
    .. "a bundle's weight. Did you mean " .. number(weight * bundles, "lb") .. " ("
    .. number(bundles) .. " bundles of " .. number(weight, "lb") .. ")?"
end

impossible "a square of shingles weighs more than a bundle" {
  at = "covering.weight_lb_per_square",
  ask_back = true,
  when = function(job)
    local bundles = USUAL_BUNDLES
    if known(job.covering, "bundles_per_square") then bundles = job.covering.bundles_per_square end
    return too_light(job.covering, bundles)
  end,
}

impossible "a square of old shingles weighs more than a bundle" {
  at = "weight_lb_per_square", per = "existing.coverings",
  ask_back = true,
  when = function(job, layer) return too_light(layer, USUAL_BUNDLES) end,
}

impossible "a house is built before its roof is renewed" {
  at = "house.year_built",
  when = function(job)
    if job.house.year_built > tonumber(string.sub(job.date, 1, 4)) then
      return string.format("%d", job.house.year_built) .. " is after the day of the application, "
        .. job.date .. " (/date)"
    end
  end,
}

impossible "a tear-off takes something off" {
  at = "existing.layers",
  when = function(job)
    if job.scope.method == "tear-off" and job.existing.layers == 0 then
      return "0 layers leave a tear-off (/scope/method) nothing to take off. Did you mean 1? (a "
        .. "roof that a storm laid bare counts the layers it had)"
    end
  end,
}

impossible "a plane whose old covering stays is not renewed" {
  at = "gets", per = "roof.slopes",
  when = function(job, slope)
    if slope.gets == "old_stays" and slope.replaced_percent > 0 then
      return "the old covering stays, but " .. number(slope.replaced_percent, "percent")
        .. " of it is said to be replaced"
    end
  end,
}

impossible "the whole roof is not renewed where an old covering stays" {
  at = "gets", per = "roof.slopes",
  when = function(job, slope)
    if slope.gets == "old_stays" and job.scope.roof_share_percent >= 100 then
      return "the old covering stays, but /scope/roof_share_percent says that the whole roof is "
        .. "renewed"
    end
  end,
}

-- Called another, it would be judged nowhere: not here, and not in a job of its own.
impossible "another covering than the job's" {
  at = "gets", per = "roof.slopes",
  when = function(job, slope)
    if slope.gets == job.covering.kind then
      return "another covering than the job's is asked for, and this says " .. slope.gets
        .. ", which is what the job puts on: leave it out, or say new_covering"
    end
  end,
}

impossible "some plane gets the covering that the job names" {
  at = "roof.slopes",
  when = function(job)
    for _, slope in ipairs(job.roof.slopes) do
      if gets_covering(slope) then return end
    end
    return "no plane gets the covering that the job names"
  end,
}

-- Slots and eaves --------------------------------------------------------------------

impossible "a ridge vent needs its slot" {
  at = "kind", per = "attics[].vents",
  when = function(job, vent)
    if vent.kind ~= "ridge" then return end
    local slot = job.roof.ridge_slot
    if slot == "none" then
      return "a ridge vent over a deck that has no slot along the ridge (/roof/ridge_slot)"
    end
    if slot == "closed" and job.roof.ridge_slot_ft + vent.length_ft > job.roof.ridge_ft + 0.5 then
      return number(vent.length_ft, "ft") .. " of ridge vent and "
        .. number(job.roof.ridge_slot_ft, "ft") .. " of closed slot (/roof/ridge_slot_ft) on "
        .. number(job.roof.ridge_ft, "ft") .. " of ridge"
    end
  end,
}

impossible "an open slot lies under a ridge vent" {
  at = "roof.ridge_slot",
  when = function(job)
    if job.roof.ridge_slot ~= "open" then return end
    for _, attic in ipairs(job.attics) do
      for _, vent in ipairs(attic.vents) do
        if vent.kind == "ridge" then return end
      end
    end
    return "the slot stays open, but no attic lists a ridge vent over it: "
      .. "the roof would have a hole"
  end,
}

impossible "a deck along an edge reaches no further than its plane" {
  at = "deck_in", per = "roof.edges",
  when = function(job, edge)
    local reach, far = edge.deck_in, edge.slope.run_ft
    if edge.kind == "eave" then
      far = trade.sloped_length_ft { run_ft = far, pitch = edge.slope.pitch }
    elseif edge.kind == "rake" then
      far = math.max(edge.slope.eave_ft, edge.slope.ridge_ft)
    else
      return "a " .. edge.kind .. " is not open below"
    end
    if reach > far * 12 then
      return number(reach, "in") .. " in from this edge, on a plane of " .. number(far, "ft")
    end
  end,
}
