-- wind.lua - where the tables for ordinary wind end, what wind engineering asks
-- of the deck's nails, and the pressures that come into the takeoff.

-- A place may name speeds for parts of itself. Which part the house is in is a
-- field beside its profile, whose question says where each begins.
demand "wind.local_speed" {
  title = "Wind speed of this part of the place",
  stage = "permit",
  when = {
    on { "wind.local_zones_count", otherwise = "the map's speed is taken everywhere here" },
  },
  found = function(job, figure)
    local speed = job.site.wind_vult_mph
    return figure "wind.local_speed_on_vasd" and trade.vult_to_vasd(speed) or speed
  end,
  unit = "mph",
  meets = { sense = "at_least", unit = "mph", limit = function(job, figure)
    return figure("wind.local_speed." .. job.site.local_wind_zone)
  end, behind = { { "wind.local_zones_count", "wind.local_speed.*" } } },
  reads = {
    facts = { "site.wind_vult_mph" },
    facts_of_some_places = { "site.local_wind_zone" },
    figures = { "wind.local_speed_on_vasd" },
  },
  mend = "Choose covering and nails for the place's speed, and put it in the job.",
}

-- A place that states one speed for all of it is not talked down.
demand "wind.vult" {
  title = "Wind speed no lower than the place states",
  stage = "permit",
  when = { on { "wind.vult_counts", otherwise = "the place states no wind speed of its own" } },
  fact = "site.wind_vult_mph", meets = "wind.vult_least",
  mend = "Put the place's wind speed into the job: what else hangs on it is judged by it.",
}

-- Nor where it states another from some height on.
demand "wind.vult_high" {
  title = "Wind speed no lower than the place states for so high up",
  stage = "permit",
  when = {
    on { "wind.vult_by_elevation", otherwise = "the place states no wind speed by height" },
    reads({
      stands_from, figures = { "wind.vult_elevation_from" },
    }, function(job, figure)
      return stands_from(job, figure "wind.vult_elevation_from"),
        "the house stands lower than where the place states this speed"
    end),
  },
  fact = "site.wind_vult_mph", meets = "wind.vult_high_least",
  mend = "Put the place's wind speed into the job: what else hangs on it is judged by it.",
}

rule "wind.prescriptive_limit" {
  title = "Wind within the code's own tables for houses",
  stage = "permit",
  reads = {
    whole_mph,
    facts = { "site.wind_design_done", "site.wind_design_required" },
    figures = { "wind.prescriptive_under" },
  },
  judge = function(job, figure)
    local last = figure "wind.prescriptive_under" - 1
    local speed = whole_mph(job)
    if speed <= last and not job.site.wind_design_required then
      return at_most(speed, last, "mph")
    end
    return shown(job.site.wind_design_done, "a wind design of the roof: at "
      .. number(speed, "mph") .. " here the code's own tables for houses no longer do")
  end,
  mend = "Have the roof's nailing designed for this wind, or take it from a high-wind standard "
    .. "that the building department accepts.",
}

-- Pressure ---------------------------------------------------------------------

local velocity_pressure = reads({
  facts = { "house.mean_roof_height_ft", "site.exposure", "site.wind_topographic_coefficient",
    "site.wind_vult_mph" },
  figures = { "wind.alpha.*", "wind.directionality", "wind.elevation_factor",
    "wind.gradient_height.*", "wind.kz_factor", "wind.kz_floor.*", "wind.kz_least_height" },
}, function(job, figure)
  local ground = job.site.exposure
  local kz = trade.wind_kz {
    height_ft = job.house.mean_roof_height_ft,
    factor = figure "wind.kz_factor",
    alpha = figure("wind.alpha." .. ground),
    zg_ft = figure("wind.gradient_height." .. ground),
    least_ft = figure "wind.kz_least_height",
    floor = figure("wind.kz_floor." .. ground),
  }
  return trade.wind_q_psf {
    vult_mph = job.site.wind_vult_mph,
    kz = kz,
    kzt = job.site.wind_topographic_coefficient,
    kd = figure "wind.directionality",
    ke = figure "wind.elevation_factor",
  }
end)

local BANDS = { "low", "shallow", "mid", "steep" }

local slope_band = reads({ figures = { "wind.band_most.*" } }, function(figure, pitch)
  local degrees = as_printed(trade.pitch_degrees(pitch), "degrees")
  for _, band in ipairs(BANDS) do
    if degrees <= figure("wind.band_most." .. band) then return band end
  end
  return cannot_tell("the wind standard's coefficients end at "
    .. number(figure "wind.band_most.steep") .. " degrees; a plane here is steeper")
end)

-- The bands in which the planes over this deck lie.
local bands_over = reads({
  slope_band,
  facts = { "decks[].name", "roof.slopes[].deck", "roof.slopes[].pitch" },
}, function(job, figure, deck)
  local found, before = {}, nil
  for _, slope in ipairs(job.roof.slopes) do
    if slope.deck.name == deck.name then
      local pitch = slope.pitch
      if pitch ~= before then -- mostly all planes have one pitch
        local band = slope_band(figure, pitch)
        if not has(found, band) then table.insert(found, band) end
        before = pitch
      end
    end
  end
  if #found == 0 then cannot_tell("no plane of the roof is said to lie on this deck") end
  return found
end)

-- The standard's names for the field, the strips along edges, and the corners.
local THREE = { field = { "zone1" }, strip = { "zone2" }, corner = { "zone3" } }
local GABLE = { field = { "zone1" }, strip = { "zone2e", "zone2n", "zone2r" },
  corner = { "zone3e", "zone3r" } }
local HIP = { field = { "zone1" }, strip = { "zone2e", "zone2r" }, corner = { "zone3" } }

-- Zones of a band, and how their coefficients' names begin.
local zones_of = reads({
  facts = { "roof.form" },
  figures = { "wind.asce_year" },
}, function(job, figure, band)
  local form, year = job.roof.form, figure "wind.asce_year"
  if form == "other" then
    cannot_tell("wind zones are held here for gable and hip roofs only")
  end
  if year == 2010 then
    -- That edition has one band from flat to 27 degrees.
    return THREE, "wind.gcp_7_10." .. (band == "shallow" and "mid" or band) .. "."
  end
  -- The newest has three zones for gables and hips alike, each form with its own.
  if year == 2022 then
    return THREE, "wind.gcp_7_22." .. (band == "low" and "" or form .. ".") .. band .. "."
  end
  if year ~= 2016 then
    cannot_tell("no coefficients of the wind standard's edition of " .. number(year, "year")
      .. " are held here")
  end
  if band == "low" then return THREE, "wind.gcp_7_16.low." end
  if form == "hip" and band == "steep" then
    cannot_tell("the coefficients of hip roofs this steep are not held here")
  end
  return form == "hip" and HIP or GABLE, "wind.gcp_7_16." .. form .. "." .. band .. "."
end)

-- Pressure on a small piece of roof; suction is negative.
local pressure_psf = reads({
  figures = { "wind.gcpi", "wind.load_factor", "wind.pressure_least" },
}, function(figure, q, gcp)
  return trade.cladding_psf {
    q_psf = q,
    gcp = gcp,
    gcpi = figure "wind.gcpi",
    load_factor = figure "wind.load_factor",
    least_psf = figure "wind.pressure_least",
  }
end)

-- Worst suction on a place over the bands, psf. found: the zones of each band that
-- was looked at for another place before.
local suction = reads({
  zones_of, pressure_psf,
  figures = { "wind.gcp_7_10.*", "wind.gcp_7_16.*", "wind.gcp_7_22.*" },
}, function(job, figure, bands, place, q, found)
  local worst = 0
  for _, band in ipairs(bands) do
    if not found[band] then
      local zones, prefix = zones_of(job, figure, band)
      found[band] = { zones = zones, prefix = prefix }
    end
    local zones, prefix = found[band].zones, found[band].prefix
    local gcp = 0
    for _, zone in ipairs(zones[place]) do gcp = math.min(gcp, figure(prefix .. zone)) end
    worst = math.min(worst, pressure_psf(figure, q, gcp))
  end
  return -worst
end)

-- The code has one width for its own zones. Worked out by the standard it goes by the
-- house, and flat roofs of the newer editions have strips of another width.
local zone_width_in = reads({
  facts = { "house.least_width_ft", "house.mean_roof_height_ft" },
  figures = { "wind.asce_year", "wind.engineered_nailing_binds", "wind.zone_flat_from",
    "wind.zone_flat_height_share", "wind.zone_height_share", "wind.zone_least",
    "wind.zone_least_share", "wind.zone_width", "wind.zone_width_share" },
}, function(job, figure, bands)
  if not figure "wind.engineered_nailing_binds" then return 12 * figure "wind.zone_width" end
  local height = job.house.mean_roof_height_ft
  local width = trade.zone_width_ft {
    least_width_ft = job.house.least_width_ft,
    height_ft = height,
    width_share = figure "wind.zone_width_share",
    height_share = figure "wind.zone_height_share",
    least_share = figure "wind.zone_least_share",
    least_ft = figure "wind.zone_least",
  }
  if has(bands, "low") and figure "wind.asce_year" >= figure "wind.zone_flat_from" then
    width = math.max(width, figure "wind.zone_flat_height_share" * height)
  end
  return 12 * width
end)

-- For the takeoff: what a designer or a maker of panels asks for. Zones go by the
-- standard's own names: 1 the field, 2 along edges, 3 at corners; e at eaves, n at
-- rakes, r at the ridge.
quantities_read {
  slope_band, zones_of, velocity_pressure, pressure_psf, zone_width_in,
  figures = { "wind.gcp_7_10.*", "wind.gcp_7_16.*", "wind.gcp_7_22.*" },
}

quantity "wind_suction" {
  title = "Wind suction on the plane, by zone",
  per = "roof.slopes",
  amount = function(job, figure, slope)
    local band = slope_band(figure, slope.pitch)
    local zones, prefix = zones_of(job, figure, band)
    local q, worst, said = velocity_pressure(job, figure), 0, ""
    for _, place in ipairs { "field", "strip", "corner" } do
      for _, zone in ipairs(zones[place]) do
        local psf = -pressure_psf(figure, q, figure(prefix .. zone))
        worst = math.max(worst, psf)
        said = said .. (said == "" and "" or ", ") .. "zone " .. string.sub(zone, 5) .. " "
          .. number(psf, "psf")
      end
    end
    return amount { exact = worst, unit = "psf",
      note = "On a piece of 10 sq ft or less, as working load: " .. said .. "; zones along edges "
        .. "are " .. number(zone_width_in(job, figure, { band }) / 12, "ft") .. " wide. Overhangs "
        .. "and porches open below are pulled harder." }
  end,
}

-- Nails ------------------------------------------------------------------------

local nail_capacity = reads({
  facts = { "decks[].framing_wet", "decks[].framing_wood", "decks[].nails.kind",
    "decks[].nails.length_in", "decks[].nails.shank_in", "decks[].panel_wood",
    "decks[].thickness_in" },
  figures = { "wind.gravity.*", "wind.nail_duration", "wind.nail_head.*", "wind.nail_ring_length",
    "wind.nail_wet_factor.*", "wind.nails_ringed" },
}, function(figure, deck)
  local nails = deck.nails
  local kind, panel = nails.kind, deck.thickness_in
  if kind == "staple" then cannot_tell("how staples hold is not worked out here") end
  local head = figure("wind.nail_head." .. kind)
  local length = nails.length_in
  if length <= panel or nails.shank_in >= head then
    cannot_tell("a nail of these sizes does not hold a panel: measure it again")
  end
  local ringed = has(figure "wind.nails_ringed", kind)
  local wet = 1
  if deck.framing_wet then
    wet = figure("wind.nail_wet_factor." .. (ringed and "ringed" or "smooth"))
  end
  return trade.nail_capacity_lb {
    length_in = length,
    shank_in = nails.shank_in,
    head_in = head,
    ring_in = ringed and math.min(figure "wind.nail_ring_length", length) or 0,
    framing_gravity = figure("wind.gravity." .. deck.framing_wood),
    panel_gravity = figure("wind.gravity." .. deck.panel_wood),
    panel_in = panel,
    duration = figure "wind.nail_duration",
    wet_withdrawal = wet,
    wet_pull_through = 1,
  }
end)

-- The widest spacings that hold, in the field and at the edges, corners included.
local spacings_needed = reads({
  nail_capacity, velocity_pressure, suction,
  facts = { "decks[].support_spacing_in" },
}, function(job, figure, deck, bands)
  local capacity = nail_capacity(figure, deck)
  local q = velocity_pressure(job, figure)
  local function spacing(psf)
    return trade.nail_spacing_in {
      capacity_lb = capacity, support_spacing_in = deck.support_spacing_in, psf = psf }
  end
  local zones = {}
  local edges = math.max(suction(job, figure, bands, "strip", q, zones),
    suction(job, figure, bands, "corner", q, zones))
  return { field = spacing(suction(job, figure, bands, "field", q, zones)), edge = spacing(edges) }
end)

-- What the nailing table asks for, read as deck.lua does; nil where it ends.
local table_spacings = reads({
  whole_mph,
  facts = { "decks[].thickness_in", "decks[].work", "site.exposure",
    "site.wind_design_required" },
  figures = { "deck.nail_band_close_most", "deck.nail_band_most.*",
    "deck.nail_close_at_named_speed", "deck.nail_close_mph.*", "deck.nail_field_most.*",
    "deck.nail_panel_least", "deck.nail_panel_mid_most", "deck.nail_panel_thick_most",
    "deck.nail_panel_thin_most", "deck.nail_wind_by_map", "deck.nail_wind_under" },
  behind = { { "deck.renail_by_old_nails", "deck.renail_spacing_most" } },
}, function(job, figure, deck)
  -- An old deck may have a table of its own, by how it was nailed before.
  if deck.work == "kept" and figure "deck.renail_by_old_nails" then
    local most = figure "deck.renail_spacing_most"
    return { field = most, edge = most }
  end
  local inches, mph = as_printed(deck.thickness_in, "in"), whole_mph(job)
  if mph >= figure "deck.nail_wind_under" then return nil end
  if figure "deck.nail_wind_by_map" and job.site.wind_design_required then return nil end
  if inches < as_printed(figure "deck.nail_panel_least", "in") then return nil end
  local row
  for _, name in ipairs { "thin", "mid", "thick" } do
    if not row and inches <= as_printed(figure("deck.nail_panel_" .. name .. "_most"), "in") then
      row = name
    end
  end
  if not row then return nil end
  local named = figure("deck.nail_close_mph." .. job.site.exposure)
  local close = job.site.wind_vult_mph > named
    or (mph >= named and figure "deck.nail_close_at_named_speed")
  local field = figure("deck.nail_field_most." .. row)
  local band = figure(close and "deck.nail_band_close_most" or "deck.nail_band_most." .. row)
  return { field = field, edge = math.min(band, field) }
end)

local function widest(spacings)
  local most = 0
  for _, spacing in ipairs(spacings) do most = math.max(most, spacing) end
  if most == 0 then cannot_tell("nothing was measured: the list is empty") end
  return most
end

local field_spacing = reads({
  facts = { "decks[].nails.field_spacing_in", "decks[].nails.measured_field_spacing_in" },
}, function(nails)
  if inspecting() then return widest(nails.measured_field_spacing_in) end
  return nails.field_spacing_in
end)

-- Near the edges the band's spacing counts. Only in a plan, where the field is nailed
-- close enough for them too, may the band be left unsaid.
local edge_spacing = reads({
  facts = { "decks[].nails.band_spacing_in", "decks[].nails.measured_band_spacing_in" },
}, function(nails, field, most)
  if inspecting() then return widest(nails.measured_band_spacing_in) end
  if not known(nails, "band_spacing_in") and field <= most then return field end
  return nails.band_spacing_in
end)

local band_width = reads({
  facts = { "decks[].nails.band_width_in", "decks[].nails.measured_band_width_in" },
}, function(nails)
  if not inspecting() then return nails.band_width_in end
  local least = math.huge
  for _, width in ipairs(nails.measured_band_width_in) do least = math.min(least, width) end
  return least
end)

-- Down to a tenth: what holds at 10.9 need not hold at 11.
local function inches(value)
  return number(math.floor(value * 10 + 0.001) / 10, "in")
end

-- Everything that is compared: spacings as nailed, as needed and of the table,
-- and the width of the zones where the edges' spacing must hold.
local compared = reads({
  bands_over, spacings_needed, table_spacings, field_spacing, edge_spacing, zone_width_in,
  band_width,
}, function(job, figure, deck)
  local bands = bands_over(job, figure, deck)
  local it = { needed = spacings_needed(job, figure, deck, bands),
    tabled = table_spacings(job, figure, deck) }
  it.field = field_spacing(deck.nails)
  local most = it.needed.edge
  if it.tabled then most = math.min(most, it.tabled.edge) end
  it.edge = edge_spacing(deck.nails, it.field, most)
  -- A band is only needed where the field's own spacing would not hold the edges.
  if as_printed(it.field, "in") > as_printed(it.needed.edge, "in") then
    it.zone_in = zone_width_in(job, figure, bands)
    it.band_in = band_width(deck.nails)
  end
  return it
end)

local function engineered(it)
  return "wind engineering asks for a nail each " .. inches(it.needed.field)
    .. " in the field and each " .. inches(it.needed.edge) .. " near eaves, ridges and rakes"
end

-- What falls short of the engineering, in words; nil when nothing does.
local function shortfall(it)
  local said
  if as_printed(it.field, "in") > as_printed(it.needed.field, "in")
    or as_printed(it.edge, "in") > as_printed(it.needed.edge, "in") then
    said = "But " .. engineered(it) .. "; nails are " .. inches(it.field) .. " and "
      .. inches(it.edge) .. " apart. The code's table does not ask for it."
  elseif it.zone_in and as_printed(it.band_in, "in") < as_printed(it.zone_in, "in") then
    said = "But the closer nails should reach " .. inches(it.zone_in)
      .. " in from the edges, not " .. inches(it.band_in) .. "."
  end
  return said
end

local function least(a, tabled, place)
  if tabled then return math.min(a, tabled[place]) end
  return a
end

rule "wind.nail_spacing" {
  title = "Deck nails against wind, worked out",
  stage = "deck",
  per = "decks",
  reads = {
    compared,
    facts = { "decks[].kind", "decks[].renailed", "scope.method" },
    figures = { "deck.nails_by_wind" },
  },
  applies = function(job, figure, deck)
    if job.scope.method == "overlay" then
      return false, "the deck stays hidden under the old covering"
    end
    if deck.work == "kept" and not deck.renailed then
      return false, "this deck is kept and not nailed again"
    end
    if deck.work ~= "kept" and figure "deck.nails_by_wind" then
      return false, "the nailing table here goes by wind, exposure and wood itself"
    end
    if deck.kind == "panel" and deck.work ~= "paneled_over" then return true end
    return figure "wind.engineered_nailing_binds",
      "worked out only for panels nailed straight into rafters"
  end,
  judge = function(job, figure, deck)
    local binds = figure "wind.engineered_nailing_binds"
    if deck.kind ~= "panel" or deck.work == "paneled_over" then
      cannot_tell("how nails hold here is worked out only for panels nailed straight into rafters")
    end
    local it = compared(job, figure, deck)
    if binds then
      local zone = at_most(it.edge, least(it.needed.edge, it.tabled, "edge"), "in")
      local field = at_most(it.field, least(it.needed.field, it.tabled, "field"), "in")
      if not it.zone_in then return all_of(zone, field) end
      return all_of(zone, field, at_least(it.band_in, it.zone_in, "in"))
    end
    if not it.tabled then
      cannot_tell("the nailing table does not reach this far and the roof needs a design; by "
        .. "figures that are only recalled, " .. engineered(it))
    end
    local judged = all_of(at_most(it.edge, it.tabled.edge, "in"),
      at_most(it.field, it.tabled.field, "in"))
    local advice = shortfall(it)
    if advice then return judged:warn(advice) end
    return judged:say("These nails hold: " .. engineered(it) .. ".")
  end,
  mend = "Nail closer, or use longer or ring-shank nails; the work shown here gives the spacing.",
  caution = "Wind lifts corners and ridges first: nail those closest.",
}
