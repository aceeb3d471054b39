-- ventilation.lua - vented attics: how much air, where it enters and leaves.
--
-- The smaller area (the larger ratio) is never taken on a missing fact: it is
-- looked at only when the full area is not there, and then every condition has
-- to be shown. Unvented attics are not judged; their rules must be confirmed.

-- Laid over, a roof keeps its vents. A vent that is new is judged all the same, and
-- with it the attic that it serves.
local may_stay = reads({
  facts = { "decks[].work", "scope.method" },
  figures = { "ventilation.on_overlay_required", "ventilation.with_new_deck_only" },
}, function(job, figure)
  if job.scope.method == "overlay" then return not figure "ventilation.on_overlay_required" end
  -- One state looks at vents only where the deck is new.
  if not figure "ventilation.with_new_deck_only" then return false end
  for _, deck in ipairs(job.decks) do
    if deck.work ~= "kept" then return false end
  end
  return true
end)

local stays_why = reads({ facts = { "scope.method" } }, function(job)
  if job.scope.method == "overlay" then return "an overlay leaves" end
  return "a job that replaces no deck leaves"
end)

-- Is the attic one that the work leaves as it was? Then why nothing is asked of it.
local is_left = reads({
  may_stay, stays_why,
  facts = { "attics[].vents[].left_as_is" },
}, function(job, figure, attic)
  if not may_stay(job, figure) then return false end
  for _, vent in ipairs(attic.vents) do
    if not vent.left_as_is then return false end
  end
  return true, stays_why(job) .. " the vents of this attic as they were"
end)

local is_touched = reads({ is_left }, function(job, figure, attic)
  local left, why = is_left(job, figure, attic)
  return not left, why
end)

local is_vented = reads({ is_left, facts = { "attics[].vented" } }, function(job, figure, attic)
  local left, why = is_left(job, figure, attic)
  if left then return false, why end
  return attic.vented, "this attic is unvented: the rules for unvented roofs are not judged here, "
    .. "so have the building department confirm them"
end)

local serves_vented = reads({ is_vented }, function(job, figure, vent, attic)
  if may_stay(job, figure) and vent.left_as_is then
    return false, stays_why(job) .. " this vent as it was"
  end
  return is_vented(job, figure, attic)
end)

-- Areas ------------------------------------------------------------------------

-- Labels give an area per foot of strip or per unit. What has no label is measured:
-- its opening and what covers it. When none is known the vent's kind says which
-- label to ask for.
local is_labeled = reads({
  facts = { "attics[].vents[].nfa_each_sqin", "attics[].vents[].nfa_sqin_per_ft" },
}, function(vent)
  return known(vent, "nfa_sqin_per_ft") or known(vent, "nfa_each_sqin")
end)

local is_measured = reads({
  is_labeled,
  facts = { "attics[].vents[].gross_each_sqin" },
}, function(vent)
  return not is_labeled(vent) and known(vent, "gross_each_sqin")
end)

-- A fan moves air, but has no area that the ratio counts.
local is_counted = reads({ facts = { "attics[].vents[].kind" } }, function(vent)
  return vent.kind ~= "powered"
end)

-- The area of the vents that `counts` lets in, shown as a sum.
local area_of = reads({
  is_counted, vent_area,
  facts = { "attics[].vents[].name" },
}, function(figure, attic, counts)
  local parts = { unit = "sqin" }
  for _, vent in ipairs(attic.vents) do
    if is_counted(vent) and counts(vent) then
      table.insert(parts, { vent.name, vent_area(figure, vent) })
    end
  end
  if #parts == 0 then return 0 end
  return trade.sum(parts)
end)

local function every_vent()
  return true
end

local is_high = reads({ facts = { "attics[].vents[].place" } }, function(vent)
  return vent.place == "high"
end)

local is_low = reads({ facts = { "attics[].vents[].place" } }, function(vent)
  return vent.place == "low"
end)

local area_needed = reads({ facts = { "attics[].area_sqft" } }, function(attic, ratio)
  return trade.vent_area_needed_sqin { area_sqft = attic.area_sqft, ratio = ratio }
end)

local measured_names = reads({
  is_counted, is_measured,
  facts = { "attics[].vents[].name" },
}, function(attic)
  local names = {}
  for _, vent in ipairs(attic.vents) do
    if is_counted(vent) and is_measured(vent) then table.insert(names, vent.name) end
  end
  return table.concat(names, ", ")
end)

-- What the vents give and the two areas that may be asked for. `claims` is true
-- when the attic stands or falls with the smaller one; else `why` says why not.
local weigh = reads({
  area_of, area_needed,
  figures = { "ventilation.ratio_default", "ventilation.ratio_reduced" },
}, function(figure, attic)
  local given = area_of(figure, attic, every_vent)
  local full = area_needed(attic, figure "ventilation.ratio_default")
  if as_printed(given, "sqin") >= as_printed(full, "sqin") then
    return { given = given, full = full, claims = false,
      why = "the vents give the full area, so the smaller one is not claimed" }
  end
  local reduced = area_needed(attic, figure "ventilation.ratio_reduced")
  return { given = given, full = full, reduced = reduced,
    claims = as_printed(given, "sqin") >= as_printed(reduced, "sqin"),
    why = "the vents do not even give the smaller area" }
end)

local claims_reduced = reads({ is_vented, weigh }, function(job, figure, attic)
  local vented, why = is_vented(job, figure, attic)
  if not vented then return false, why end
  local areas = weigh(figure, attic)
  return areas.claims, areas.why
end)

-- Conditions of the smaller area -------------------------------------------------

-- A state may go by energy zones of its own, written "state_14"; it then
-- declares the field that says them beside its profile.
local zone_field = reads({ figures = { "ventilation.retarder_zones" } }, function(figure)
  for _, zone in ipairs(figure "ventilation.retarder_zones") do
    if string.sub(zone, 1, 6) == "state_" then return "state_climate_zone" end
  end
  return "climate_zone"
end)

local retarder_zone = reads({
  zone_field,
  facts = { "site.climate_zone" },
  facts_of_some_places = { "site.state_climate_zone" },
}, function(job, figure)
  return has(figure "ventilation.retarder_zones", job.site[zone_field(figure)])
end)

-- Upper vents count as such only near the ridge.
local upper_area = reads({
  area_of, is_high,
  facts = { "attics[].vents[].below_ridge_ft" },
  figures = { "ventilation.upper_band_most" },
}, function(figure, attic)
  local most = figure "ventilation.upper_band_most"
  return area_of(figure, attic, function(vent)
    return is_high(vent) and as_printed(vent.below_ridge_ft, "ft") <= most
  end)
end)

-- The split, read two ways: upper vents as a share of the area needed (as the
-- words go) and of the area given (as a bigger pair of vents would have it).
local split = reads({ upper_area, is_low }, function(figure, attic, needed)
  local upper, low = upper_area(figure, attic), area_of(figure, attic, is_low)
  local of_given = 0
  if upper + low > 0 then
    of_given = trade.share_percent { part = upper, whole = upper + low, unit = "sqin" }
  end
  return {
    of_needed = trade.share_percent { part = upper, whole = needed, unit = "sqin" },
    of_given = of_given,
    placed = upper + low,
    enough = as_printed(upper + low, "sqin") >= as_printed(needed, "sqin"),
  }
end)

local in_band = reads({
  figures = { "ventilation.high_share_least", "ventilation.high_share_most" },
}, function(figure, percent)
  local rounded = as_printed(percent, "percent")
  return rounded >= figure "ventilation.high_share_least"
    and rounded <= figure "ventilation.high_share_most"
end)

-- "needed" or "given", by the reading that finds the split in the band; else nil.
local balanced_by = reads({ in_band }, function(figure, shares)
  if not shares.enough then return nil end
  if in_band(figure, shares.of_needed) then return "needed" end
  if in_band(figure, shares.of_given) then return "given" end
  return nil
end)

local READ_TWO_WAYS = "The upper vents are within the band as a share of all vent area, but over "
  .. "it as a share of the area needed: ask which way the building department reads it."

-- Whether the retarder lets the smaller area be claimed. Where both conditions
-- are needed, outside the cold zones nothing is asked of the retarder; where
-- either will do, it only helps inside them.
local retarder_holds = reads({
  retarder_zone,
  facts = { "attics[].vapor_retarder" },
  figures = { "ventilation.reduced_needs_both", "ventilation.retarder_classes" },
}, function(job, figure, attic)
  if not retarder_zone(job, figure) then return figure "ventilation.reduced_needs_both" end
  return has(figure "ventilation.retarder_classes", attic.vapor_retarder)
end)

-- Why the smaller area cannot be claimed, or nil and the reading that lets it.
local reduced_refused = reads({
  retarder_holds, balanced_by, split,
}, function(job, figure, attic, needed)
  if not figure "ventilation.reduced_needs_both" and retarder_holds(job, figure, attic) then
    return nil, "retarder"
  end
  local reading = balanced_by(figure, split(figure, attic, needed))
  if not reading then
    return "the smaller area needs the vents split between high, near the ridge, and low"
  end
  if figure "ventilation.reduced_needs_both" and not retarder_holds(job, figure, attic) then
    return "the smaller area needs a vapor retarder of another class in this climate zone"
  end
  return nil, reading
end)

-- Is a split between high and low vents what the smaller area hangs on?
local split_is_asked = reads({ claims_reduced, retarder_holds }, function(job, figure, attic)
  local claims, why = claims_reduced(job, figure, attic)
  if not claims then return false, why end
  if not figure "ventilation.reduced_needs_both" and retarder_holds(job, figure, attic) then
    return false, "the vapor retarder alone allows the smaller area here"
  end
  return true
end)

-- The rules ----------------------------------------------------------------------

-- What mends a shortage ------------------------------------------------------------
-- Each way that is named must be met when it is followed: the area, the split that the
-- smaller area hangs on, and as much low area as high.

-- A vent of which more can be had: what one foot or one piece of it gives. Ridge vent
-- ends where the ridge does; strips are left to the eye.
local source_of = reads({
  is_counted, sold_by_foot, each_vent_area,
  facts = { "attics[].vents[].length_ft", "roof.ridge_ft" },
}, function(job, figure, vent)
  if not is_counted(vent) then return nil end
  local foot = sold_by_foot(vent)
  local each = foot and vent.nfa_sqin_per_ft or each_vent_area(figure, vent)
  if each <= 0 then return nil end
  local most
  if vent.kind == "ridge" and foot then most = job.roof.ridge_ft - vent.length_ft end
  return { vent = vent, each = each, foot = foot, most = most }
end)

local sources = reads({
  source_of,
  facts = { "attics[].vents" },
}, function(job, figure, attic, counts)
  local list = {}
  for _, vent in ipairs(attic.vents) do
    local source = counts(vent) and source_of(job, figure, vent) or nil
    if source then table.insert(list, source) end
  end
  return list
end)

-- How much more of it gives that many sq in, and its words; nil where there is no room.
local more_of = reads({ facts = { "attics[].vents[].name" } }, function(source, sqin)
  local count
  if source.foot then
    count = trade.vent_more { short_sqin = sqin, sqin_per_ft = source.each }
  else
    count = trade.vent_more { short_sqin = sqin, each_sqin = source.each }
  end
  if source.most and count > source.most then return nil end
  local name = " more of " .. source.vent.name .. " at "
  if source.foot then
    return count * source.each, number(count, "ft") .. name .. "its "
      .. number(source.each, "sqin_per_ft")
  end
  return count * source.each, number(count, "count") .. name .. number(source.each, "sqin")
    .. " each"
end)

-- Likewise of the low vents; where there are none yet, of new ones.
local more_low = reads({ more_of }, function(lows, sqin)
  if lows[1] then return more_of(lows[1], sqin) end
  local whole = math.ceil(sqin)
  return whole, number(whole, "sqin") .. " more of new vents at the eaves"
end)

local low_for = reads({ figures = { "ventilation.intake_share_least" } }, function(figure, high)
  return high * figure "ventilation.intake_share_least" / 100
end)

-- Ways to the full area: low vents of any kind, or high ones while the low ones keep up.
local ways_to_full = reads({
  area_of, is_low, is_high, low_for, sources, more_low,
}, function(job, figure, attic, areas)
  local ways, low = {}, area_of(figure, attic, is_low)
  local high, short = area_of(figure, attic, is_high), areas.full - areas.given
  local wanted = math.max(short, low_for(figure, high) - low)
  local lows = sources(job, figure, attic, is_low)
  for _, source in ipairs(lows) do
    local gives, says = more_low({ source }, wanted)
    table.insert(ways, says)
  end
  if #lows == 0 then
    local gives, says = more_low(lows, wanted)
    table.insert(ways, says)
  end
  for _, source in ipairs(sources(job, figure, attic, is_high)) do
    local gives, says = more_of(source, short)
    if gives and low >= low_for(figure, high + gives) then table.insert(ways, says) end
  end
  return ways
end)

-- Can the smaller area be had by vents alone, and must they then be split? Nothing is
-- told of it while what it hangs on is not known.
local smaller_hangs_on = reads({ retarder_holds }, function(job, figure, attic)
  local both = figure "ventilation.reduced_needs_both"
  local zone_known = known(job.site, zone_field(figure))
  if not zone_known or not known(attic, "vapor_retarder") then
    return not both and "split" or nil
  end
  local holds = retarder_holds(job, figure, attic)
  if both then return holds and "split" or nil end
  return holds and "nothing" or "split"
end)

-- Upper vents brought into the band, then low ones until both readings of it, or where
-- there is too much upper area already the one that can still be met, are met.
local way_to_split = reads({
  sources, upper_area, is_low, low_for, more_low, in_band,
}, function(job, figure, attic, areas)
  for _, vent in ipairs(attic.vents) do
    if is_high(vent) and is_counted(vent) and not known(vent, "below_ridge_ft") then return nil end
  end
  local band = figure "ventilation.upper_band_most"
  local uppers = sources(job, figure, attic, function(vent)
    return is_high(vent) and as_printed(vent.below_ridge_ft, "ft") <= band
  end)
  local upper, low = upper_area(figure, attic), area_of(figure, attic, is_low)
  local high, parts = area_of(figure, attic, is_high), {}
  local least = areas.reduced * figure "ventilation.high_share_least" / 100
  local most = areas.reduced * figure "ventilation.high_share_most" / 100
  if upper < least then
    if not uppers[1] then return nil end
    local gives, says = more_of(uppers[1], least - upper)
    if not gives then return nil end
    table.insert(parts, says)
    upper, high = upper + gives, high + gives
  end
  local wanted = math.max(areas.reduced - upper, low_for(figure, high))
  if upper > most then
    wanted = math.max(wanted, upper * (100 / figure "ventilation.high_share_most" - 1))
  end
  if wanted > low then
    local gives, says = more_low(sources(job, figure, attic, is_low), wanted - low)
    table.insert(parts, says)
    low = low + gives
  end
  -- Whole feet and pieces may overshoot a narrow band; and so many vents that they would
  -- do for the full area are no way to the smaller one.
  local balanced = in_band(figure, 100 * upper / areas.reduced)
    or in_band(figure, 100 * upper / (upper + low))
  if #parts == 0 or not balanced or high + low >= areas.full then return nil end
  return table.concat(parts, " and ")
end)

local way_to_smaller = reads({
  smaller_hangs_on, way_to_split,
}, function(job, figure, attic, areas)
  local hangs_on = smaller_hangs_on(job, figure, attic)
  if hangs_on == "split" then return way_to_split(job, figure, attic, areas) end
  if hangs_on ~= "nothing" then return nil end
  local low, high = area_of(figure, attic, is_low), area_of(figure, attic, is_high)
  local gives, says = more_low(sources(job, figure, attic, is_low),
    math.max(areas.reduced - areas.given, low_for(figure, high) - low))
  return says
end)

rule "ventilation.net_free_area" {
  title = "Net free vent area of the attic",
  stage = "permit",
  cause = "vent openings",
  per = "attics",
  reads = {
    is_vented, weigh, reduced_refused, measured_names, ways_to_full, way_to_smaller,
    facts = { "attics[].area_basis" },
  },
  applies = is_touched,
  judge = function(job, figure, attic)
    -- The one rule that says so, so that silence is never taken for a pass.
    local vented, why = is_vented(job, figure, attic)
    if not vented then cannot_tell(why) end
    local basis, areas = attic.area_basis, weigh(figure, attic)
    local needed, refused, reading = areas.full, nil, nil
    if areas.claims then
      refused, reading = reduced_refused(job, figure, attic, areas.reduced)
      if not refused then needed = areas.reduced end
    end
    local found = at_least(areas.given, needed, "sqin")
    if refused then
      found = found:say("They would do for the smaller area, but " .. refused .. ".")
    end
    if reading == "given" then found = found:warn(READ_TWO_WAYS) end
    local measured = measured_names(attic)
    if measured ~= "" then
      found = found:warn("No label gives the free area of " .. measured .. ": it is reckoned from "
        .. "opening and cover by a trade table, and the inspector may go by another.")
    end
    if basis == "ceiling" then
      found = found:warn("Sources disagree on which area counts. A ceiling's leaves out garages, "
        .. "porches and eaves open to the attic: count them too.")
    end
    return found
  end,
  mend = function(job, figure, attic)
    local areas = weigh(figure, attic)
    if not areas.reduced then return "Keep the labels of the vents for the inspector." end
    local says = "The full area is " .. number(areas.full - areas.given, "sqin") .. " short of "
      .. number(areas.full, "sqin") .. ": "
      .. table.concat(ways_to_full(job, figure, attic, areas), "; or ")
    local smaller = way_to_smaller(job, figure, attic, areas)
    if not smaller then return says .. "." end
    return says .. ". For the smaller area of " .. number(areas.reduced, "sqin") .. ": " .. smaller
      .. "."
  end,
  caution = "Blow-in insulation over the soffits shuts vents that the label still counts.",
}

rule "ventilation.high_share" {
  title = "Share of the vents that is high",
  stage = "permit",
  cause = "vent openings",
  per = "attics",
  reads = { area_needed, split, balanced_by },
  applies = split_is_asked,
  judge = function(job, figure, attic)
    local needed = area_needed(attic, figure "ventilation.ratio_reduced")
    local shares = split(figure, attic, needed)
    if not shares.enough then
      return at_least(shares.placed, needed, "sqin")
        :say("Vents neither near the ridge nor at the eave do not count toward the smaller area.")
    end
    local reading = balanced_by(figure, shares)
    local share = reading == "needed" and shares.of_needed or shares.of_given
    local found = all_of(at_least(share, figure "ventilation.high_share_least", "percent"),
      at_most(share, figure "ventilation.high_share_most", "percent"))
    if reading == "given" then return found:warn(READ_TWO_WAYS) end
    return found
  end,
  mend = function(job, figure, attic)
    local needed = area_needed(attic, figure "ventilation.ratio_reduced")
    local least = needed * figure "ventilation.high_share_least" / 100
    local most = needed * figure "ventilation.high_share_most" / 100
    return "Bring the upper vents between " .. number(least, "sqin") .. " and "
      .. number(most, "sqin") .. ", and the rest of " .. number(needed, "sqin") .. " to the eaves."
  end,
  caution = "More high vents than low draw house air, and rain or snow, into the attic.",
}

demand "ventilation.retarder" {
  title = "Vapor retarder for the smaller vent area",
  stage = "permit",
  per = "attics",
  when = { function(job, figure, attic)
    local claims, why = claims_reduced(job, figure, attic)
    if not claims then return false, why end
    if not retarder_zone(job, figure) then
      return false, "no retarder is asked for in this climate zone"
    end
    local needed = area_needed(attic, figure "ventilation.ratio_reduced")
    if not figure "ventilation.reduced_needs_both"
      and balanced_by(figure, split(figure, attic, needed)) then
      return false, "the split of the vents alone allows the smaller area here"
    end
    return true
  end },
  fact = "attics[].vapor_retarder", meets = "ventilation.retarder_classes",
  reads = {
    claims_reduced, retarder_zone, balanced_by, split,
    figures = { "ventilation.reduced_needs_both" },
  },
  mend = "Give the attic its full vent area; a retarder is hard to add from above.",
}

demand "ventilation.upper_band" {
  title = "High vents near the ridge",
  stage = "permit",
  cause = "vent openings",
  per = "attics[].vents",
  when = { function(job, figure, vent, attic)
    local asked, why = split_is_asked(job, figure, attic)
    if not asked then return false, why end
    if not is_high(vent) then return false, "this vent is low" end
    if not is_counted(vent) then return false, "a fan's area is not counted" end
    -- One more vent lower down does no harm where the others make the split.
    local below = as_printed(vent.below_ridge_ft, "ft")
    if below <= figure "ventilation.upper_band_most" then return true end
    local needed = area_needed(attic, figure "ventilation.ratio_reduced")
    local without = balanced_by(figure, split(figure, attic, needed))
    return not without, "it is not counted as high, and the others suffice without it"
  end },
  fact = "attics[].vents[].below_ridge_ft", meets = "ventilation.upper_band_most",
  reads = { split_is_asked, balanced_by, split },
  mend = "Move the vent up; if framing is in the way, ask whether it may sit lower.",
}

-- Each opening -------------------------------------------------------------------

demand "ventilation.opening" {
  title = "Least width of vent openings",
  stage = "permit",
  per = "attics[].vents",
  when = { serves_vented },
  fact = "attics[].vents[].opening_in", meets = "ventilation.opening_least",
  mend = "Use a vent with wider openings; paint and dust close narrow ones.",
}

-- Wider than the figure by more than prints: the engine's comparison decides the
-- same way, so that no opening falls between this rule and the last.
local needs_screen = reads({
  facts = { "attics[].vents[].opening_in" },
  figures = { "ventilation.opening_most" },
}, function(figure, vent)
  return math.floor(vent.opening_in * 1000 + 0.5)
    > math.floor(figure "ventilation.opening_most" * 1000 + 0.5)
end)

demand "ventilation.screen" {
  title = "Screen over wide vent openings",
  stage = "permit",
  per = "attics[].vents",
  when = { serves_vented, function(job, figure, vent)
    return needs_screen(figure, vent), "openings this narrow need no screen"
  end },
  choose = {
    { when = no { is "attics[].vents[].screened" }, fact = "attics[].vents[].opening_in",
      meets = "ventilation.opening_most", say = "It has no screen." },
    { fact = "attics[].vents[].screen_opening_in",
      meets = { "ventilation.opening_least", "ventilation.opening_most" } },
  },
  reads = { needs_screen },
  mend = "Cover the opening with corrosion-resistant mesh, and count the area it leaves free.",
  caution = "Look for bats, birds and wasps before closing an open vent.",
}

demand "ventilation.opens_outdoors" {
  title = "Vents open to outside air",
  stage = "permit",
  per = "attics[].vents",
  when = { serves_vented },
  fact = "attics[].vents[].opens_outdoors", meets = "ventilation.outdoors_required",
  mend = "Lead the vent to outside air; one that opens into another space is not counted.",
}

-- The attic ----------------------------------------------------------------------

demand "ventilation.airspace" {
  title = "Air between insulation and deck",
  stage = "permit",
  per = "attics",
  when = { is_vented },
  fact = "attics[].airspace_in", meets = "ventilation.airspace_least",
  mend = "Set baffles at the eaves that hold the insulation down.",
  caution = "Step only on framing in an attic; old insulation may hold asbestos.",
}

demand "ventilation.fans_outdoors" {
  title = "Bath and kitchen fans end outdoors",
  stage = "permit",
  per = "attics",
  when = {
    is_touched,
    on { "ventilation.fans_outdoors_required", otherwise = "the place does not ask for it" },
  },
  fact = "attics[].fans_end_outdoors", meets = "ventilation.fans_outdoors_required",
  mend = "Run each fan's duct through the roof or wall to its own hood while the roof is open.",
}

demand "ventilation.exhaust_kinds" {
  title = "One kind of high vent in an attic",
  stage = "permit",
  per = "attics",
  when = { is_vented },
  found = function(job, figure, attic)
    local seen, kinds = {}, 0
    for _, vent in ipairs(attic.vents) do
      if is_high(vent) and not seen[vent.kind] then
        seen[vent.kind] = true
        kinds = kinds + 1
      end
    end
    return kinds
  end,
  unit = "count", meets = "ventilation.exhaust_kinds_most",
  reads = { is_high, facts = { "attics[].vents[].kind" } },
  mend = "Close the other kinds when the new one goes in, if the area still suffices.",
}

rule "ventilation.intake" {
  title = "As much low vent area as high",
  stage = "permit",
  cause = "vent openings",
  per = "attics",
  reads = { area_of, is_low, is_high, figures = { "ventilation.intake_share_least" } },
  applies = is_vented,
  judge = function(job, figure, attic)
    local low, high = area_of(figure, attic, is_low), area_of(figure, attic, is_high)
    local share = figure "ventilation.intake_share_least"
    work("low vents at least " .. number(share, "percent") .. " of the " .. number(high, "sqin")
      .. " of high vents")
    return at_least(low, high * share / 100, "sqin")
  end,
  mend = function(job, figure, attic)
    local low, high = area_of(figure, attic, is_low), area_of(figure, attic, is_high)
    local short = high * figure "ventilation.intake_share_least" / 100 - low
    if short <= 0 then return "Keep the eaves clear of insulation." end
    return "Add " .. number(short, "sqin") .. " of vent area at the eaves."
  end,
}
