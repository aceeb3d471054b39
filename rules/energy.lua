-- energy.lua - cool roofs at replacement, and insulation where the roof is
-- opened. All off in the model code; a state's energy code turns it on.
--
-- A covering passes by reflectance and emittance together, or by solar
-- reflectance index alone, all of them aged. They are alternatives: neither is
-- ever worked out from the other. Any one exception excuses the plane, so a
-- covering that falls short fails only once every exception is known not to hold.

-- A place lists zones of the model code ("4A") or of its own state ("state_12").
local in_zones = reads({
  facts = { "site.climate_zone" },
  facts_of_some_places = { "site.state_climate_zone" },
}, function(job, zones)
  for _, zone in ipairs(zones) do
    if string.sub(zone, 1, 6) == "state_" then return has(zones, job.site.state_climate_zone) end
  end
  return has(zones, job.site.climate_zone)
end)

-- Steep or low; exactly the named slope is steep only where the place says so.
local is_steep = reads({
  facts = { "roof.slopes[].pitch" },
  figures = { "energy.steep_at_named_slope", "energy.steep_from" },
}, function(figure, slope)
  local pitch, from = as_printed(slope.pitch, "rise_in_12"), figure "energy.steep_from"
  if pitch == from then return figure "energy.steep_at_named_slope" end
  return pitch > from
end)

local enough_renewed = reads({
  facts = { "scope.roof_share_percent" },
  figures = { "energy.trigger_over" },
}, function(job, figure)
  return as_printed(job.scope.roof_share_percent, "percent") >= figure "energy.trigger_over",
    "too little of the roof is renewed"
end)

-- Sources differ on a job exactly at a named share or slope. So it is judged, not
-- passed over: the finding cites the figure that sorts it, and who disagrees.

local exactly_the_share = reads({
  facts = { "scope.roof_share_percent" },
  figures = { "energy.trigger_at_named_share", "energy.trigger_over" },
}, function(job, figure)
  local share = as_printed(job.scope.roof_share_percent, "percent")
  local over = figure "energy.trigger_over"
  if share ~= over or figure "energy.trigger_at_named_share" then return nil end
  return at_most(share, over, "percent"):say("Exactly that share of the roof is not more than it.")
end)

local is_exactly_the_slope = reads({
  facts = { "roof.slopes[].pitch" },
  figures = { "energy.steep_from" },
}, function(figure, slope)
  return as_printed(slope.pitch, "rise_in_12") == figure "energy.steep_from"
end)

-- Of a plane exactly at the slope, where only the other kind is asked for.
local exactly_the_slope = reads({ is_steep }, function(figure, slope)
  local from = figure "energy.steep_from"
  if is_steep(figure, slope) then
    return at_least(slope.pitch, from, "rise_in_12")
      :say("Exactly that slope counts as steep, of which this is not asked here.")
  end
  return at_most(slope.pitch, from, "rise_in_12")
    :say("Exactly that slope counts as low, of which this is not asked here.")
end)

local is_asked = reads({
  enough_renewed,
  figures = { "energy.cool_roof_required" },
}, function(job, figure)
  if not figure "energy.cool_roof_required" then return false, "no cool roof is asked for here" end
  return enough_renewed(job, figure)
end)

-- The covering's own figures -----------------------------------------------------

-- Met by what is known of the covering, or nil.
local met_by_covering = reads({
  facts = { "covering.aged_SRI", "covering.aged_emittance", "covering.aged_reflectance" },
  figures = { "energy.low_SRI_least", "energy.low_emittance_least",
    "energy.low_reflectance_least", "energy.steep_SRI_least", "energy.steep_emittance_least",
    "energy.steep_reflectance_least" },
}, function(covering, figure, slope_class)
  local name = "energy." .. slope_class
  if known(covering, "aged_reflectance") and known(covering, "aged_emittance") then
    local reflectance, emittance =
      figure(name .. "_reflectance_least"), figure(name .. "_emittance_least")
    if as_printed(covering.aged_reflectance, "reflectance") >= reflectance
      and as_printed(covering.aged_emittance, "emittance") >= emittance then
      return all_of(at_least(covering.aged_reflectance, reflectance, "reflectance"),
        at_least(covering.aged_emittance, emittance, "emittance"))
    end
  end
  if known(covering, "aged_SRI") then
    local index = figure(name .. "_SRI_least")
    if as_printed(covering.aged_SRI, "SRI") >= index then
      return at_least(covering.aged_SRI, index, "SRI")
    end
  end
  return nil
end)

-- Not met, once every figure of the covering is known: asks for what is not.
local not_met_by_covering = reads({
  facts = { "covering.aged_SRI", "covering.aged_emittance", "covering.aged_reflectance" },
  figures = { "energy.low_SRI_least", "energy.low_emittance_least",
    "energy.low_reflectance_least", "energy.steep_SRI_least", "energy.steep_emittance_least",
    "energy.steep_reflectance_least" },
}, function(covering, figure, slope_class)
  local name = "energy." .. slope_class
  return any_of(
    all_of(
      at_least(covering.aged_reflectance, figure(name .. "_reflectance_least"), "reflectance"),
      at_least(covering.aged_emittance, figure(name .. "_emittance_least"), "emittance")),
    at_least(covering.aged_SRI, figure(name .. "_SRI_least"), "SRI"))
end)

-- Exceptions -----------------------------------------------------------------------

-- Each: the figure that says the place has it, the facts it goes by, whether
-- it holds, and how it reads. `low` ones excuse low slopes too.
local EXCEPTIONS = {
  { flag = "energy.exempt_ceiling_R", facts = { "ceiling_R" },
    says = "ceiling or roof insulation that excuses the roof",
    holds = function(energy, figure)
      return as_printed(energy.ceiling_R, "R") >= figure "energy.exempt_ceiling_R_least"
    end },
  { flag = "energy.exempt_radiant_barrier", facts = { "radiant_barrier" },
    says = "a radiant barrier that excuses the roof",
    holds = function(energy, figure)
      if not energy.radiant_barrier then return false end
      return not figure "energy.radiant_barrier_not_on_spaced"
        or not energy.radiant_barrier_on_spaced
    end },
  { flag = "energy.exempt_no_ducts", facts = { "ducts_in_attic" },
    says = "an attic without ducts, which excuses the roof",
    holds = function(energy, figure, job)
      if energy.ducts_in_attic then return false end
      return not figure "energy.no_ducts_by_zone"
        or in_zones(job, figure "energy.no_ducts_zones")
    end },
  { flag = "energy.exempt_deck_R", facts = { "deck_R" },
    says = "continuous insulation at the deck that excuses the roof",
    holds = function(energy, figure)
      return as_printed(energy.deck_R, "R") >= figure "energy.exempt_deck_R_least"
    end },
  { flag = "energy.exempt_air_space", facts = { "air_space_in" },
    says = "an air space under the covering that excuses the roof",
    holds = function(energy, figure)
      return as_printed(energy.air_space_in, "in") >= figure "energy.exempt_air_space_least"
    end },
  { flag = "energy.exempt_profile", facts = { "profile_ratio", "profile_share_percent" },
    says = "a profile deep enough to excuse the roof",
    holds = function(energy, figure)
      return as_printed(energy.profile_ratio, "rise_per_width")
          >= figure "energy.exempt_profile_rise_least"
        and as_printed(energy.profile_share_percent, "percent")
          >= figure "energy.exempt_profile_share_least"
    end },
  { flag = "energy.exempt_sealed_ducts", facts = { "ducts_insulated_and_sealed" },
    says = "attic ducts insulated and sealed, which excuses the roof",
    holds = function(energy) return energy.ducts_insulated_and_sealed end },
  { flag = "energy.exempt_mass", facts = { "mass_psf" }, low = true,
    says = "a roof heavy enough to be excused",
    holds = function(energy, figure)
      return as_printed(energy.mass_psf, "psf") >= figure "energy.exempt_mass_least"
    end },
}

local is_known = reads({
  facts = { "energy.air_space_in", "energy.ceiling_R", "energy.deck_R", "energy.ducts_in_attic",
    "energy.ducts_insulated_and_sealed", "energy.mass_psf", "energy.profile_ratio",
    "energy.profile_share_percent", "energy.radiant_barrier" },
}, function(energy, exception)
  for _, fact in ipairs(exception.facts) do
    if not known(energy, fact) then return false end
  end
  return true
end)

-- The exceptions of this place for such a slope, those known apart from those not.
local exceptions_of = reads({
  is_known, in_zones,
  facts = { "energy", "energy.radiant_barrier_on_spaced" },
  figures = { "energy.exempt_air_space", "energy.exempt_air_space_least",
    "energy.exempt_ceiling_R", "energy.exempt_ceiling_R_least", "energy.exempt_deck_R",
    "energy.exempt_deck_R_least", "energy.exempt_mass", "energy.exempt_mass_least",
    "energy.exempt_no_ducts", "energy.exempt_profile", "energy.exempt_profile_rise_least",
    "energy.exempt_profile_share_least", "energy.exempt_radiant_barrier",
    "energy.exempt_sealed_ducts", "energy.no_ducts_by_zone", "energy.no_ducts_zones",
    "energy.radiant_barrier_not_on_spaced" },
}, function(job, figure, slope_class)
  local told, untold = {}, {}
  for _, exception in ipairs(EXCEPTIONS) do
    if (slope_class == "steep" or exception.low) and figure(exception.flag) then
      local known_one = known(job, "energy") and is_known(job.energy, exception)
      table.insert(known_one and told or untold, exception)
    end
  end
  return told, untold
end)

local cool_zone = reads({
  in_zones,
  figures = { "energy.low_zones", "energy.steep_zones" },
}, function(job, figure, steep)
  return in_zones(job, figure(steep and "energy.steep_zones" or "energy.low_zones"))
end)

rule "energy.cool_roof" {
  title = "Cool roof at replacement",
  stage = "permit",
  per = "roof.slopes",
  reads = {
    is_asked, gets_covering, cool_zone, is_exactly_the_slope, exactly_the_share,
    exactly_the_slope, met_by_covering, exceptions_of, not_met_by_covering,
    facts = { "roof.slopes[].under_integrated_solar" },
    figures = { "energy.exempt_integrated_pv", "energy.low_trade_for_insulation" },
  },
  applies = function(job, figure, slope)
    local asked, why = is_asked(job, figure)
    if not asked then return false, why end
    local gets, other = gets_covering(slope)
    if not gets then return false, other end
    if not cool_zone(job, figure, is_steep(figure, slope))
      and not (is_exactly_the_slope(figure, slope)
        and cool_zone(job, figure, not is_steep(figure, slope))) then
      return false, "no cool roof is asked for on such a slope in this zone"
    end
    if not figure "energy.exempt_integrated_pv" then return true end
    return not slope.under_integrated_solar, "roof under building-integrated solar does not count"
  end,
  judge = function(job, figure, slope)
    local exact = exactly_the_share(job, figure)
    if exact then return exact end
    if not cool_zone(job, figure, is_steep(figure, slope)) then
      return exactly_the_slope(figure, slope)
    end
    local slope_class = is_steep(figure, slope) and "steep" or "low"
    local met = met_by_covering(job.covering, figure, slope_class)
    if met then return met end
    local told, untold = exceptions_of(job, figure, slope_class)
    for _, exception in ipairs(told) do
      if exception.holds(job.energy, figure, job) then return shown(true, exception.says) end
    end
    local unmet = not_met_by_covering(job.covering, figure, slope_class)
    -- A fact that is lacking here might excuse the plane: reading it asks for it.
    for _, exception in ipairs(untold) do
      if exception.holds(job.energy, figure, job) then return shown(true, exception.says) end
    end
    if slope_class == "low" and figure "energy.low_trade_for_insulation" then
      cannot_tell("the covering falls short, but a table that is not carried here trades "
        .. "reflectance for insulation above the deck: ask the building department")
    end
    return unmet
  end,
  mend = "Choose a covering rated higher, aged, in reflectance and emittance or in SRI, "
    .. "or show one of the exceptions.",
}

-- Insulation ---------------------------------------------------------------------------

rule "energy.low_insulation" {
  title = "Insulation above the deck of a low slope",
  stage = "permit",
  per = "roof.slopes",
  reads = {
    gets_covering, enough_renewed, is_exactly_the_slope, in_zones, exactly_the_share,
    exactly_the_slope,
    facts = { "energy", "energy.deck_R", "energy.deck_before_R" },
    figures = { "energy.low_deck_R_existing_least", "energy.low_deck_R_least",
      "energy.low_deck_R_required", "energy.low_deck_R_zones" },
  },
  applies = function(job, figure, slope)
    if not figure "energy.low_deck_R_required" then
      return false, "no insulation above the deck is asked for here"
    end
    local gets, other = gets_covering(slope)
    if not gets then return false, other end
    local enough, why = enough_renewed(job, figure)
    if not enough then return false, why end
    if is_steep(figure, slope) and not is_exactly_the_slope(figure, slope) then
      return false, "the plane is steep"
    end
    return in_zones(job, figure "energy.low_deck_R_zones"), "not asked for in this zone"
  end,
  judge = function(job, figure, slope)
    local exact = exactly_the_share(job, figure)
    if exact then return exact end
    if is_steep(figure, slope) then return exactly_the_slope(figure, slope) end
    local wanted = figure "energy.low_deck_R_least"
    if known(job, "energy") and known(job.energy, "deck_R")
      and as_printed(job.energy.deck_R, "R") >= wanted then
      return at_least(job.energy.deck_R, wanted, "R")
    end
    -- What was there before the work may be enough to be let off.
    local enough = figure "energy.low_deck_R_existing_least"
    if as_printed(job.energy.deck_before_R, "R") >= enough then
      return at_least(job.energy.deck_before_R, enough, "R")
        :say("What was there before is enough to be left as it is.")
    end
    return at_least(job.energy.deck_R, wanted, "R")
  end,
  mend = "Lay continuous insulation on the deck before the covering.",
}

local opens_rafters = reads({
  facts = { "energy.cavity_opened" },
  figures = { "energy.opened_R_required" },
}, function(job, figure)
  if not figure "energy.opened_R_required" then
    return false, "opened rafter spaces need no new insulation here"
  end
  return job.energy.cavity_opened, "no rafter space that encloses heated rooms is opened"
end)

demand "energy.opened_cavity" {
  title = "Insulation in rafter spaces that the work opens",
  stage = "deck",
  when = { opens_rafters },
  fact = "energy.cavity_R", meets = "energy.opened_R_least",
  mend = "Fill the opened spaces before the deck goes back on.",
}

demand "energy.opened_airspace" {
  title = "Air left over insulation in opened rafter spaces",
  stage = "deck",
  when = { opens_rafters },
  fact = "energy.cavity_air_gap_in", meets = "energy.opened_air_gap_least",
  mend = "Leave clear air from eave to ridge between insulation and deck.",
}

-- Over a vented attic the insulation lies on the ceiling: its rafter spaces enclose no rooms.
local may_be_bare = reads({ facts = { "attics[].area_basis", "attics[].vented" } }, function(job)
  for _, attic in ipairs(job.attics) do
    if not attic.vented or attic.area_basis == "roof" then return true end
  end
  return false, "every attic is vented, over an insulated ceiling"
end)

demand "energy.bare_rafters" {
  title = "Insulation for rafter spaces that hold none",
  stage = "deck",
  when = {
    on { "energy.bare_rafters_count", otherwise = "bare rafter spaces may stay so here" },
    is { "scope.method", "tear-off", otherwise = "an overlay lays no rafter space bare" },
    may_be_bare,
    is { "energy.cavity_bare", otherwise = "no rafter space without insulation is laid bare" },
  },
  fact = "energy.bare_insulated", shown = "insulation above or below the deck",
  mend = "Insulate while the roof is open: in the rafter spaces, or in boards on the deck.",
}
