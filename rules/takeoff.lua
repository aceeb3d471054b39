-- takeoff.lua - what a job takes: areas, materials, loads, days.
--
-- A quantity is declared like a rule, but compares nothing: its `amount`
-- returns amount { exact =, unit =, waste_percent =, each =, buy =, one =,
-- note = }, where `each` is what one bundle, roll or piece holds. The engine adds waste,
-- rounds up to whole ones and shows both. A fact the job lacks leaves the line
-- open. What a label says (a fact of the job) goes before the common figure.

-- What the quantities of this file ask for, beside facts of the job.
quantities_read {
  is_stormy, is_taped, barrier_reach, is_windy, ice_barrier_is_needed, is_iced_eave, vent_area,
  each_vent_area, underlayment_is_laid,
  figures = { "drip_edge.eave_required", "drip_edge.lap_least", "drip_edge.on_overlay_required",
    "drip_edge.rake_required", "fasteners.hurricane_zone_counts", "fasteners.kinds",
    "fasteners.per_shingle_least", "fasteners.per_shingle_least_hurricane_zone",
    "ice_barrier.inside_wall_least", "ice_barrier.rakes_required", "ice_barrier.valleys_required",
    "ice_barrier.wall_counts", "slope.double_below", "slope.double_plies_least",
    "takeoff.bundles_per_square", "takeoff.cap_run_per_bundle", "takeoff.caps_to_the_box",
    "takeoff.debris_density", "takeoff.drip_edge_piece", "takeoff.fan_boost_dark_or_steep",
    "takeoff.fan_cfm_per_intake_sqft", "takeoff.fan_cfm_per_sqft", "takeoff.nails_per_box",
    "takeoff.nails_to_the_pound.*", "takeoff.own_cap_run_per_bundle", "takeoff.roll_length.*",
    "takeoff.roll_width.*", "takeoff.sheet_lap", "takeoff.squares_per_day",
    "takeoff.starter_run_per_bundle", "takeoff.strips_per_bundle", "takeoff.trailer_bed_length",
    "takeoff.trailer_bed_width", "takeoff.trailer_payload", "takeoff.trailer_side",
    "takeoff.valley_lap", "takeoff.valley_roll", "underlayment.double_lap_by_roll",
    "underlayment.double_lap_past_half_least", "underlayment.field_spacing_wind_most",
    "underlayment.head_lap_double_least", "underlayment.head_lap_high_wind_least",
    "underlayment.head_lap_least", "underlayment.lap_spacing_wind_most",
    "underlayment.plies_high_wind_least", "underlayment.plies_least",
    "underlayment.starter_width_least", "ventilation.gross_times.*", "ventilation.ratio_default",
    "weight.board_inch", "weight.design_dead_load", "weight.live_load_mid_from",
    "weight.live_load_steep_from", "weight.panel_inch", "weight.roof_live_load.*",
    "weight.underlayment_ply" },
}

-- What the place has dropped altogether is not bought for its sake. With some of
-- the rules left, the thing is wanted still.
local function all_dropped(...)
  local why
  for _, rule in ipairs { ... } do
    why = dropped(rule)
    if not why then return nil end
  end
  return why
end

-- Areas ------------------------------------------------------------------------

local function whole_area(job)
  return area_of(job, function() return true end)
end

quantity "plane_area" {
  title = "Area along the slope",
  per = "roof.slopes",
  amount = function(job, figure, slope)
    return amount { exact = plane_sqft(slope), unit = "sqft" }
  end,
}

quantity "squares" {
  title = "Roof in squares",
  amount = function(job)
    return amount { exact = trade.squares { area_sqft = whole_area(job) }, unit = "squares",
      note = "Nothing is added for waste here." }
  end,
}

-- What the engine laid out, as arithmetic: planes, edges and lengths come from it.
quantity "by_plan" {
  title = "Roof by the plan of the house, seen from above",
  applies = function(job)
    return known(job.roof, "footprint"), "the job lists its planes one by one"
  end,
  amount = function(job)
    local plan = job.roof.footprint
    local eave = plan.eave_overhang_in / 12
    local roof = { form = plan.form, length_ft = plan.length_ft, width_ft = plan.width_ft,
      pitch = plan.pitch, eave_overhang_ft = eave }
    if plan.form ~= "hip" then roof.rake_overhang_ft = plan.rake_overhang_in / 12 end
    if plan.form == "gable_porch" then
      roof.porch_length_ft, roof.porch_depth_ft = plan.porch.length_ft, plan.porch.depth_ft
      roof.porch_pitch = plan.porch.pitch
    elseif plan.form == "cross_gable" then
      roof.wing_width_ft, roof.wing_out_ft = plan.wing.width_ft, plan.wing.out_ft
    end
    local measured = trade.footprint(roof)
    if plan.form == "hip" then
      trade.hip_length_ft { run_ft = math.min(plan.length_ft, plan.width_ft) / 2 + eave,
        pitch = plan.pitch }
    elseif plan.form == "cross_gable" then
      trade.hip_length_ft { run_ft = plan.wing.width_ft / 2 + eave, pitch = plan.pitch }
    end
    return amount { exact = measured.plan_sqft, unit = "sqft",
      note = "Eaves " .. number(measured.eave_ft, "ft") .. ", rakes "
        .. number(measured.rake_ft, "ft") .. ", ridge " .. number(measured.ridge_ft, "ft")
        .. ", hips " .. number(measured.hip_ft, "ft") .. ", valleys "
        .. number(measured.valley_ft, "ft") .. ", along the slope." }
  end,
}

-- Shingles ---------------------------------------------------------------------

local GRADES = { three_tab = "Three-tab shingles", laminated = "Laminated shingles" }

local function shingles_called(job)
  if not known(job.covering, "grade") then return "Shingles" end
  return GRADES[job.covering.grade] or "Shingles"
end

-- Laminated shingles are not cut for starter and caps: those come in bundles of their own.
local function own_pieces(job)
  return job.covering.grade ~= "three_tab"
end

quantity "shingle_bundles" {
  title = "Shingles",
  order = "Covering",
  habit = "the covering that the job names",
  applies = is_shingled,
  amount = function(job, figure)
    whole_planes(job)
    local bundles = label(job.covering, "bundles_per_square", figure, "takeoff.bundles_per_square")
    work(number(bundles) .. " bundles to the square of 100 sq ft")
    return amount { exact = covered_area(job), unit = "sqft", waste_percent = waste(job),
      each = 100 / bundles, buy = "bundles", one = "bundle",
      item = shingles_called(job) .. ", " .. number(bundles) .. " bundles to the square",
      goes_on = covered_places(job) }
  end,
}

-- Tape and paper differ by this much; as rules/drip_edge.lua has it.
local SLACK_FT = 0.5

-- Of each plane that gets the covering, by its name: feet of eaves listed, and how many of its
-- sides. The edges are gone over once, and not for each plane: there may be two hundred.
local function listed_by_plane(job)
  local eaves, sides = {}, {}
  for _, edge in ipairs(job.roof.edges) do
    local name = edge.slope.name
    if gets_covering(edge.slope) then
      if edge.kind == "eave" or edge.kind == "onto_roof" then
        eaves[name] = (eaves[name] or 0) + edge.length_ft
      else
        sides[name] = (sides[name] or 0) + 1
      end
    end
  end
  return eaves, sides
end

-- An edge that is not listed would be missing from the sum.
local function lists_edges(kind, slope, name, eaves, sides)
  if kind == "eave" and eaves < slope.eave_ft - SLACK_FT then
    cannot_tell("the eaves listed for " .. name .. " come to " .. number(eaves, "ft") .. " of "
      .. number(slope.eave_ft, "ft") .. " under roof.edges: list them all.")
  end
  if kind ~= "eave" and sides < 2 then
    cannot_tell("only " .. sides .. " of the sides of " .. name .. " is listed under roof.edges: "
      .. "say of both whether it is a rake, a sidewall, a hip or a valley.")
  end
end

local function all_listed(job, kind)
  local eaves, sides = listed_by_plane(job)
  for i, slope in ipairs(job.roof.slopes) do
    if gets_covering(slope) then
      local own = #job.roof.edges > 0 and slope.name or ""
      lists_edges(kind, slope, name_of(slope, "plane " .. i), eaves[own] or 0, sides[own] or 0)
    end
  end
end

-- Feet of edges of one kind, of planes that get the covering, that `counts` lets in; 0 when
-- there are none.
local function edges_ft(job, kind, counts)
  local parts = { unit = "ft" }
  whole_planes(job)
  all_listed(job, kind)
  for i, edge in ipairs(job.roof.edges) do
    if edge.kind == kind and gets_covering(edge.slope) and (not counts or counts(edge)) then
      table.insert(parts, { name_of(edge, kind .. " " .. i), edge.length_ft })
    end
  end
  if #parts == 0 then return 0 end
  return trade.sum(parts)
end

-- Feet that a bundle of starter makes: by its label, of its own kind, or cut from strips.
local function starter_run(job, figure)
  if known(job.covering, "starter_bundle_ft") then return job.covering.starter_bundle_ft end
  if own_pieces(job) then return figure "takeoff.starter_run_per_bundle" end
  local strips = figure "takeoff.strips_per_bundle"
  local length = job.covering.strip_length_in
  local run = strips * length / 12
  work("a bundle of " .. number(strips) .. " strips of " .. number(length, "in") .. " makes "
    .. number(run, "ft"))
  return run
end

-- Of all planes, or of those that get the covering.
local function edges_called(job, edges)
  if not planes_differ(job) then return edges end
  return edges .. " of " .. covered_places(job)
end

local function starter(job, figure, feet, edges)
  local item = own_pieces(job) and "Starter strip" or "Three-tab shingles, to cut for starter"
  return amount { exact = feet, unit = "ft", waste_percent = waste(job),
    each = starter_run(job, figure), buy = "bundles", one = "bundle", item = item,
    goes_on = edges_called(job, edges) }
end

quantity "starter" {
  title = "Starter strip along the eaves",
  order = "Covering",
  habit = "shingles begin on a starter, by their makers' instructions",
  applies = is_shingled,
  amount = function(job, figure)
    return starter(job, figure, edges_ft(job, "eave"), "eaves")
  end,
}

quantity "starter_rake" {
  title = "Starter strip up the rakes",
  order = "Covering",
  habit = "/takeoff/rake_starter",
  applies = function(job)
    local shingled, why = is_shingled(job)
    if not shingled then return false, why end
    if not known(job.takeoff, "rake_starter") then
      return false, "the job does not say that it is used (/takeoff/rake_starter)"
    end
    return job.takeoff.rake_starter, "none is used up the rakes"
  end,
  amount = function(job, figure)
    return starter(job, figure, edges_ft(job, "rake"), "rakes")
  end,
}

local function cap_run(job, figure)
  if known(job.covering, "cap_bundle_ft") then return job.covering.cap_bundle_ft end
  if own_pieces(job) then return figure "takeoff.own_cap_run_per_bundle" end
  return figure "takeoff.cap_run_per_bundle"
end

-- Each ridge and hip has a plane on either side, and is capped where one of them gets the
-- covering. Where planes differ, which of them meet is not said: it follows where all do, none,
-- or one along the whole ridge; else whoever saw the roof says how much is capped.
-- A porch's upper edge is no ridge.
local function planes_end_below(job)
  for _, wall in ipairs(job.roof.walls) do
    if wall.kind ~= "sidewall" then return true end
  end
  return false
end

local function capped_ridge(job, feet)
  local along, longest = 0, 0
  for _, slope in ipairs(job.roof.slopes) do
    if gets_covering(slope) then
      along = along + slope.ridge_ft
      longest = math.max(longest, slope.ridge_ft)
    end
  end
  if along >= 2 * feet - SLACK_FT then return feet end
  if longest >= feet - SLACK_FT and not planes_end_below(job) then return feet end
  return along == 0 and 0 or nil
end

local function capped_hips(job, feet)
  local along = 0
  for _, edge in ipairs(job.roof.edges) do
    if edge.kind == "hip" and gets_covering(edge.slope) then along = along + edge.length_ft end
  end
  if along >= 2 * feet - SLACK_FT then return feet end
  return along == 0 and 0 or nil
end

local function capped_ft(job)
  local roof = job.roof
  local ridge, hips = roof.ridge_ft, roof.hip_ft
  if planes_differ(job) then
    if known(job.takeoff, "cap_ft") then return job.takeoff.cap_ft, "ridge and hips" end
    ridge = ridge == 0 and 0 or capped_ridge(job, ridge)
    hips = hips == 0 and 0 or capped_hips(job, hips)
    if not ridge or not hips then return job.takeoff.cap_ft, "ridge and hips" end
  end
  return trade.sum { { "ridge", ridge }, { "hips", hips }, unit = "ft" },
    hips > 0 and "ridge and hips" or "ridge"
end

quantity "ridge_cap" {
  title = "Caps of ridges and hips",
  order = "Covering",
  habit = "ridges and hips are capped, by the makers' instructions",
  applies = is_shingled,
  amount = function(job, figure)
    whole_planes(job)
    local run, along = capped_ft(job)
    return amount { exact = run, unit = "ft", waste_percent = waste(job),
      each = cap_run(job, figure), buy = "bundles", one = "bundle",
      item = own_pieces(job) and "Hip and ridge caps" or "Three-tab shingles, to cut for caps",
      goes_on = along }
  end,
}

-- Nails to a shingle: the place's number, the maker's, or what is planned,
-- whichever is most.
local function nails_asked(job, figure)
  local least = figure "fasteners.per_shingle_least"
  if figure "fasteners.hurricane_zone_counts" and job.site.high_velocity_hurricane_zone then
    least = math.max(least, figure "fasteners.per_shingle_least_hurricane_zone")
  end
  return least
end

local function nails_each(job, figure)
  local printed, why = job.covering.nails_printed, dropped "fasteners.count"
  local least = why and 0 or nails_asked(job, figure)
  local most = math.max(least, printed)
  if known(job.fasteners, "per_shingle") then most = math.max(most, job.fasteners.per_shingle) end
  work(number(most, "nails") .. " to the shingle; "
    .. (why or "the place asks for " .. number(least, "nails")) .. "; the maker asks for "
    .. number(printed, "nails"))
  return most
end

local function shingle_nails(job, figure)
  whole_planes(job)
  return trade.nails {
    squares = trade.squares { area_sqft = covered_area(job) },
    strips_per_square = trade.strips_per_square {
      length_in = job.covering.strip_length_in, exposure_in = job.covering.exposure_printed_in },
    per_strip = nails_each(job, figure),
  }
end

local function is_nailed(job, figure)
  local shingled, why = is_shingled(job)
  if not shingled then return false, why end
  if job.fasteners.kind == "nail" then return true end
  -- What the job names and the place refuses is not bought.
  if dropped "fasteners.kind" then return false, "the covering is not nailed" end
  return not has(figure "fasteners.kinds", job.fasteners.kind), "the covering is not nailed"
end

local NAIL_METALS = { galvanized = "galvanized", stainless = "stainless", aluminum = "aluminum",
  copper = "copper" }

local function roofing_nail(job)
  local metal = known(job.fasteners, "metal") and NAIL_METALS[job.fasteners.metal]
  local size = known(job.fasteners, "length_in") and number(job.fasteners.length_in, "in") .. " "
    or ""
  return "roofing nails, " .. size .. (metal or "of a metal that does not rust")
end

quantity "shingle_nails" {
  title = "Nails of the shingles",
  order = "Covering",
  serves = { "fasteners.count", "fasteners.kind" },
  applies = is_nailed,
  amount = function(job, figure)
    return amount { exact = shingle_nails(job, figure), unit = "nails", waste_percent = waste(job),
      each = figure "takeoff.nails_per_box", buy = "boxes", one = "box",
      item = "Coil " .. roofing_nail(job), goes_on = "shingles",
      note = "Starter and caps take some of the waste." }
  end,
}

-- The box's own count, or that of the nail's length.
local function nails_to_the_pound(job, figure)
  if known(job.fasteners, "nails_to_the_pound") then return job.fasteners.nails_to_the_pound end
  local length = number(job.fasteners.length_in)
  if not has(figure "takeoff.nails_to_the_pound.lengths", length) then
    cannot_tell("How many nails of this length go to the pound is not known here: the job can say "
      .. "it as /fasteners/nails_to_the_pound.")
  end
  return figure("takeoff.nails_to_the_pound." .. length)
end

quantity "shingle_nail_weight" {
  title = "Nails of the shingles by weight, where they are bought loose",
  applies = is_nailed,
  amount = function(job, figure)
    local nails, pound = shingle_nails(job, figure), nails_to_the_pound(job, figure)
    work(number(nails, "nails") .. " / " .. number(pound, "nails") .. " to the pound = "
      .. number(nails / pound, "lb"))
    return amount { exact = nails / pound, unit = "lb", waste_percent = waste(job),
      buy = "pounds", one = "pound" }
  end,
}

-- Underlayment -------------------------------------------------------------------

-- Which roll a kind comes in.
local ROLLS = {
  D226_I = "light_felt", D4869_I = "light_felt", D4869_II = "light_felt",
  D226_II = "heavy_felt", D4869_III = "heavy_felt", D4869_IV = "heavy_felt", D6757 = "heavy_felt",
  D1970 = "self_adhered", D8257 = "synthetic", other_synthetic = "synthetic",
}

local function roll_of(figure, underlayment)
  local both = known(underlayment, "roll_width_in") and known(underlayment, "roll_length_ft")
  if both then return underlayment.roll_width_in, underlayment.roll_length_ft end
  local roll = ROLLS[underlayment.kind]
  if not roll then
    cannot_tell("Rolls of this kind have no common size: the job can say roll_width_in and "
      .. "roll_length_ft of the underlayment.")
  end
  local width = roll
  if roll == "light_felt" or roll == "heavy_felt" then width = "felt" end
  return label(underlayment, "roll_width_in", figure, "takeoff.roll_width." .. width),
    label(underlayment, "roll_length_ft", figure, "takeoff.roll_length." .. roll)
end

-- A sheet that shows less than this beyond its lap is measured wrong.
local LEAST_SHOWING_IN = 1

local function lapped_sheet(area, width, lap)
  if width - lap < LEAST_SHOWING_IN then
    cannot_tell("A sheet of " .. number(width, "in") .. " lapped " .. number(lap, "in")
      .. " hardly covers anything: measure the lap again, or say the roll's width.")
  end
  return trade.lapped_sqft { net_sqft = area, width_in = width, lap_in = lap }
end

-- Two plies are laid by lapping each sheet over half of the one below, and a
-- strip under the first. Rolls of another width lap by as much more than half.
local function double_sheet(figure, slope, area, width)
  local lap, start
  if figure "underlayment.double_lap_by_roll" then
    lap, start = width / 2 + figure "underlayment.double_lap_past_half_least", width / 2
  else
    local wide = figure "takeoff.roll_width.felt"
    lap = width / 2 + figure "underlayment.head_lap_double_least" - wide / 2
    start = figure "underlayment.starter_width_least"
  end
  local strip = slope.eave_ft * start / 12
  local sheet = lapped_sheet(area, width, lap)
  return trade.sum { { "sheet", sheet }, { "strip along the eave", strip }, unit = "sqft" }
end

-- Two plies for the wind, where the edition asks for them.
local function is_doubled_by_wind(job, figure, underlayment)
  if dropped "underlayment.plies" then return false end
  if figure "underlayment.plies_high_wind_least" < figure "slope.double_plies_least" then
    return false
  end
  return is_stormy(job, figure) and not is_taped(figure, underlayment)
end

-- Sheets lapped by more than any wind asks for are bought alike in any wind. Under other
-- coverings than shingles the job's word is all there is.
local function lap_of(job, figure, underlayment)
  if dropped "underlayment.head_lap" or not is_shingled(job) then
    return underlayment.head_lap_in
  end
  local lap = figure "underlayment.head_lap_least"
  if known(underlayment, "head_lap_in") then lap = math.max(lap, underlayment.head_lap_in) end
  local in_wind = figure "underlayment.head_lap_high_wind_least"
  if lap >= in_wind or not is_stormy(job, figure) or is_taped(figure, underlayment) then
    return lap
  end
  return in_wind
end

local function single_sheet(job, figure, underlayment, area, width)
  local lap
  if is_self_adhered(underlayment) then
    lap = label(underlayment, "head_lap_in", figure, "takeoff.sheet_lap")
  else
    lap = lap_of(job, figure, underlayment)
  end
  local sheet = lapped_sheet(area, width, lap)
  local plies = underlayment.plies
  if is_shingled(job) and not dropped "underlayment.plies" then
    plies = math.max(figure "underlayment.plies_least", plies)
  end
  -- A lap of half the sheet and more lays the plies by itself.
  if plies < 2 or (width - lap) * plies <= width then return sheet end
  work(number(plies, "plies") .. " everywhere: " .. number(sheet * plies, "sqft"))
  return sheet * plies
end

-- Square feet of roll for one plane. Only a plane below the figure for double
-- underlayment gets two plies of its own accord, and any where the wind asks for them.
local function sheet_on(job, figure, underlayment, slope, width)
  local area, below = plane_sqft(slope), figure "slope.double_below"
  if is_self_adhered(underlayment) or not is_shingled(job) then
    return single_sheet(job, figure, underlayment, area, width)
  end
  if as_printed(slope.pitch, "rise_in_12") >= below or dropped "slope.double_underlayment" then
    if not is_doubled_by_wind(job, figure, underlayment) then
      return single_sheet(job, figure, underlayment, area, width)
    end
    work("the wind asks for " .. number(figure "underlayment.plies_high_wind_least", "plies"))
    return double_sheet(figure, slope, area, width)
  end
  work(number(slope.pitch, "rise_in_12") .. " is under " .. number(below, "rise_in_12")
    .. ": " .. number(figure "slope.double_plies_least", "plies") .. " on this plane")
  return double_sheet(figure, slope, area, width)
end

local function takes(slope, underlayment)
  return gets_covering(slope) and slope.underlayment.name == underlayment.name
end

-- What the check demands; where the place drops that, nobody knows.
local function known_reach(figure, edge)
  local why = dropped "ice_barrier.reach"
  if why then
    cannot_tell("How far the barrier reaches here was not worked out: " .. why .. ". Take it "
      .. "from the check.")
  end
  return barrier_reach(figure, edge)
end

-- The names that rolls go by, for the counter.
local CALLED = {
  D226_I = "No. 15 felt, ASTM D226 type I", D226_II = "No. 30 felt, ASTM D226 type II",
  D4869_I = "No. 8 felt, ASTM D4869 type I", D4869_II = "No. 15 felt, ASTM D4869 type II",
  D4869_III = "No. 20 felt, ASTM D4869 type III", D4869_IV = "No. 30 felt, ASTM D4869 type IV",
  D6757 = "Underlayment, ASTM D6757", D1970 = "Self-adhered underlayment, ASTM D1970",
  D8257 = "Synthetic underlayment, ASTM D8257", other_synthetic = "Synthetic underlayment",
}

local function rolls_called(kind, width, length)
  return (CALLED[kind] or "Underlayment") .. ", " .. number(width, "in") .. " by "
    .. number(length, "ft")
end

quantity "underlayment_rolls" {
  title = "Underlayment",
  order = "Underlayment and ice barrier",
  serves = { "underlayment.kind", "underlayment.plies", "underlayment.head_lap",
    "slope.double_underlayment" },
  habit = "the underlayment that the job names",
  per = "underlayments",
  applies = function(job, figure, underlayment)
    local laid, why = underlayment_is_laid(job, figure)
    if not laid then return false, why end
    for _, slope in ipairs(job.roof.slopes) do
      if takes(slope, underlayment) then return true end
    end
    return false, "no plane takes it"
  end,
  amount = function(job, figure, underlayment)
    whole_planes(job)
    local width, length = roll_of(figure, underlayment)
    local parts = { unit = "sqft" }
    for i, slope in ipairs(job.roof.slopes) do
      if takes(slope, underlayment) then
        table.insert(parts, { name_of(slope, "plane " .. i),
          sheet_on(job, figure, underlayment, slope, width) })
      end
    end
    work("a roll of " .. number(width, "in") .. " by " .. number(length, "ft"))
    return amount { exact = trade.sum(parts), unit = "sqft",
      waste_percent = waste(job, "sheet_waste_percent"), each = width / 12 * length,
      buy = "rolls", one = "roll", item = rolls_called(underlayment.kind, width, length),
      goes_on = places(parts, #job.roof.slopes, "all planes"),
      note = "End laps are part of the waste. Nothing is taken off where an ice barrier lies." }
  end,
}

-- What holds it: one line along each lap, and as many lines between as the spacing asks.
local function caps_on(sheet_ft, width, lap, along, between)
  local lines = math.max(0, math.ceil((width - lap) / between) - 1)
  local caps = sheet_ft * 12 / along + lines * sheet_ft * 12 / between
  work(number(sheet_ft, "ft") .. " of roll x 12 / " .. number(along, "in") .. " along the laps, + "
    .. number(lines, "count") .. " lines between x " .. number(sheet_ft, "ft") .. " x 12 / "
    .. number(between, "in") .. " = " .. number(caps, "nails"))
  return caps
end

local HELD_BY = { cap_nail = "Cap nails", cap_staple = "Cap staples", nail = "Roofing nails",
  staple = "Staples" }
local CAPPED = { cap_nail = true, cap_staple = true }

-- Caps come in boxes; nails and staples are counted, to be had with those of the shingles.
local function bought_to_hold(figure, underlayment, all)
  local kind = underlayment.fastener
  all.item, all.buy, all.one = HELD_BY[kind] .. ", for the underlayment", "nails", "nail"
  if kind == "staple" then all.buy, all.one = "staples", "staple" end
  if CAPPED[kind] then
    all.each = label(underlayment, "caps_to_the_box", figure, "takeoff.caps_to_the_box")
    all.buy, all.one = "boxes", "box"
  end
  return amount(all)
end

quantity "underlayment_caps" {
  title = "What holds the underlayment",
  order = "Underlayment and ice barrier",
  serves = { "underlayment.fasteners", "underlayment.cap", "underlayment.lap_spacing",
    "underlayment.field_spacing" },
  habit = "the fastener that the job names",
  per = "underlayments",
  applies = function(job, figure, underlayment)
    local laid, why = underlayment_is_laid(job, figure)
    if not laid then return false, why end
    if is_self_adhered(underlayment) then return false, "it sticks by itself" end
    if not HELD_BY[underlayment.fastener] then return false, "it sticks by itself" end
    if not CAPPED[underlayment.fastener] and not known(underlayment, "lap_spacing_in") then
      return false, "plain nails and staples are counted by their spacing, which is not said"
    end
    for _, slope in ipairs(job.roof.slopes) do
      if takes(slope, underlayment) then return true end
    end
    return false, "no plane takes it"
  end,
  amount = function(job, figure, underlayment)
    whole_planes(job)
    local width, parts = roll_of(figure, underlayment), { unit = "nails" }
    local along, between = underlayment.lap_spacing_in, underlayment.field_spacing_in
    if is_windy(job, figure) then
      along = math.min(along, figure "underlayment.lap_spacing_wind_most")
      between = math.min(between, figure "underlayment.field_spacing_wind_most")
    end
    for i, slope in ipairs(job.roof.slopes) do
      if takes(slope, underlayment) then
        local sheet = sheet_on(job, figure, underlayment, slope, width)
        table.insert(parts, { name_of(slope, "plane " .. i),
          caps_on(sheet / (width / 12), width, underlayment.head_lap_in, along, between) })
      end
    end
    return bought_to_hold(figure, underlayment, { exact = trade.sum(parts), unit = "nails",
      waste_percent = waste(job, "sheet_waste_percent"),
      goes_on = places(parts, #job.roof.slopes, "all planes") })
  end,
}

-- Ice barrier --------------------------------------------------------------------

local function has_ice_barrier(job, figure)
  local why = all_dropped("ice_barrier.kind", "ice_barrier.reach")
  if why then return false, why end
  return ice_barrier_is_needed(job, figure)
end

local function is_iced(job, figure, edge)
  local why = all_dropped("ice_barrier.kind", "ice_barrier.reach")
  if why then return false, why end
  return is_iced_eave(job, figure, edge)
end

local function courses_over(job, figure, reach)
  local width = label(job.ice_barrier, "roll_width_in", figure, "takeoff.roll_width.self_adhered")
  local lap = label(job.ice_barrier, "lap_in", figure, "takeoff.sheet_lap")
  if width - lap < LEAST_SHOWING_IN then
    cannot_tell("Courses of " .. number(width, "in") .. " lapped " .. number(lap, "in")
      .. " hardly climb: measure the lap again, or say the roll's width.")
  end
  return trade.ice_barrier_courses { reach_in = reach, width_in = width, lap_in = lap }
end

local function courses_needed(job, figure, edge)
  return courses_over(job, figure, known_reach(figure, edge))
end

-- Across the slope there is no pitch to count.
local function rake_courses(job, figure, edge)
  local wall = 0
  if figure "ice_barrier.wall_counts" then wall = edge.wall_thickness_in end
  return courses_over(job, figure, trade.sum { { "overhang", edge.overhang_in }, { "wall", wall },
    { "inside it", figure "ice_barrier.inside_wall_least" }, unit = "in" })
end

-- Feet of roll over all eaves, and over rakes and valleys where the place asks.
local function ice_barrier_ft(job, figure)
  local parts = { unit = "ft" }
  local rakes, valleys = figure "ice_barrier.rakes_required", figure "ice_barrier.valleys_required"
  whole_planes(job)
  all_listed(job, "eave")
  if rakes then all_listed(job, "rake") end
  for i, edge in ipairs(job.roof.edges) do
    local courses
    if is_iced(job, figure, edge) then
      courses = courses_needed(job, figure, edge)
    elseif rakes and edge.kind == "rake" and gets_covering(edge.slope) then
      courses = rake_courses(job, figure, edge)
    end
    if courses then
      table.insert(parts, { name_of(edge, edge.kind .. " " .. i) .. ", "
        .. number(courses, "count") .. " x " .. number(edge.length_ft, "ft") .. " =",
        courses * edge.length_ft })
    end
  end
  if valleys then table.insert(parts, { "valleys", job.roof.valley_ft }) end
  if #parts == 0 then return 0 end
  return trade.sum(parts)
end

quantity "ice_barrier_courses" {
  title = "Courses of ice barrier",
  per = "roof.edges",
  applies = is_iced,
  amount = function(job, figure, edge)
    return amount { exact = courses_needed(job, figure, edge), unit = "courses" }
  end,
}

quantity "ice_barrier_area" {
  title = "Ice barrier in all",
  applies = has_ice_barrier,
  amount = function(job, figure)
    local width = label(job.ice_barrier, "roll_width_in", figure, "takeoff.roll_width.self_adhered")
    local feet = ice_barrier_ft(job, figure)
    work(number(feet, "ft") .. " of roll x " .. number(width, "in") .. " / 12 = "
      .. number(feet * width / 12, "sqft"))
    return amount { exact = feet * width / 12, unit = "sqft" }
  end,
}

local ICE_SERVES = { "ice_barrier.kind", "ice_barrier.reach", "ice_barrier.rakes",
  "ice_barrier.valleys" }

-- What the job names none of, the place asks for all the same.
quantity "ice_barrier_rolls" {
  title = "Rolls of ice barrier",
  order = "Underlayment and ice barrier",
  serves = ICE_SERVES,
  applies = function(job, figure)
    local has, why = has_ice_barrier(job, figure)
    if not has then return false, why end
    return job.ice_barrier.kind ~= "two_cemented_plies", "it is two plies of felt, cemented"
  end,
  amount = function(job, figure)
    local width = label(job.ice_barrier, "roll_width_in", figure, "takeoff.roll_width.self_adhered")
    local length = label(job.ice_barrier, "roll_length_ft", figure,
      "takeoff.roll_length.self_adhered")
    local note
    if job.ice_barrier.kind == "none" then note = "The job names none; the place asks for it." end
    return amount { exact = ice_barrier_ft(job, figure), unit = "ft",
      waste_percent = waste(job, "sheet_waste_percent"), each = length,
      buy = "rolls", one = "roll", item = "Ice barrier, self-adhered, ASTM D1970, "
        .. number(width, "in") .. " by " .. number(length, "ft"),
      goes_on = edges_called(job, "eaves"), note = note }
  end,
}

quantity "ice_barrier_plies" {
  title = "Felt and cement of an ice barrier of two plies",
  order = "Underlayment and ice barrier",
  serves = ICE_SERVES,
  applies = function(job, figure)
    local has, why = has_ice_barrier(job, figure)
    if not has then return false, why end
    return job.ice_barrier.kind == "two_cemented_plies", "it is no ice barrier of cemented plies"
  end,
  amount = function(job, figure)
    local width = label(job.ice_barrier, "roll_width_in", figure, "takeoff.roll_width.felt")
    local length = label(job.ice_barrier, "roll_length_ft", figure,
      "takeoff.roll_length.light_felt")
    local feet = ice_barrier_ft(job, figure)
    work("two plies: 2 x " .. number(feet, "ft") .. " = " .. number(2 * feet, "ft"))
    return amount { exact = 2 * feet, unit = "ft",
      waste_percent = waste(job, "sheet_waste_percent"), each = length, buy = "rolls", one = "roll",
      item = "Felt for an ice barrier of two plies, " .. number(width, "in") .. " by "
        .. number(length, "ft") .. ", and lap cement between them",
      goes_on = edges_called(job, "eaves") }
  end,
}

-- Metal --------------------------------------------------------------------------

local function drip_edge(kind)
  local required = "drip_edge." .. kind .. "_required"
  return {
    title = "Drip edge at the " .. kind .. "s",
    order = "Metal and flashing",
    serves = { "drip_edge." .. kind },
    habit = "edges that the job gives metal",
    applies = function(job, figure)
      if job.scope.method == "overlay" and not figure "drip_edge.on_overlay_required" then
        return false, "an overlay keeps the old edges"
      end
      return true
    end,
    amount = function(job, figure)
      local why = dropped("drip_edge." .. kind)
      if not is_shingled(job) then why = "not judged for this covering" end
      local all = not why and figure(required)
      if not all then
        work((why or "not asked for here") .. ": only the edges that get it")
      end
      local feet = edges_ft(job, kind, function(edge) return all or edge.drip_edge end)
      local lap = dropped "drip_edge.lap" and 0 or figure "drip_edge.lap_least"
      if known(job.drip_edge, "lap_in") then lap = math.max(lap, job.drip_edge.lap_in) end
      local long = figure "takeoff.drip_edge_piece"
      local piece = trade.lapped_piece_ft { length_ft = long, lap_in = lap }
      return amount { exact = feet, unit = "ft",
        waste_percent = waste(job, "metal_waste_percent"), each = piece,
        buy = "pieces", one = "piece", item = "Drip edge, " .. number(long, "ft") .. " pieces",
        goes_on = edges_called(job, kind .. "s") }
    end,
  }
end

quantity "drip_edge_eave" (drip_edge "eave")
quantity "drip_edge_rake" (drip_edge "rake")

local LININGS = { metal = "Valley metal", two_ply_roll = "Mineral-surfaced roll, for valleys",
  smooth_roll = "Smooth roll roofing, for valleys",
  self_adhered = "Self-adhered sheet, ASTM D1970, for valleys" }

quantity "valley_lining" {
  title = "Lining of the valleys",
  order = "Metal and flashing",
  serves = { "valley.lining" },
  habit = "valleys that the job lines",
  applies = function(job)
    if job.roof.valley_ft == 0 then return false, "the roof has no valley" end
    local why = dropped "valley.lining"
    if not why then return true end
    for _, valley in ipairs(job.roof.valleys) do
      if valley.lining ~= "none" then return true end
    end
    return false, why
  end,
  amount = function(job, figure)
    whole_planes(job)
    local roll = trade.lapped_piece_ft {
      length_ft = figure "takeoff.valley_roll", lap_in = figure "takeoff.valley_lap" }
    local first = job.roof.valleys[1]
    local item = first and known(first, "lining") and LININGS[first.lining] or "Valley lining"
    return amount { exact = job.roof.valley_ft, unit = "ft",
      waste_percent = waste(job, "metal_waste_percent"), each = roll, buy = "rolls", one = "roll",
      item = item .. ", rolls of " .. number(figure "takeoff.valley_roll", "ft"),
      goes_on = "valleys" }
  end,
}

-- Vents ----------------------------------------------------------------------------

local function vents_short(figure, attic)
  local parts = { unit = "sqin" }
  for i, vent in ipairs(attic.vents) do
    if vent.kind ~= "powered" then
      table.insert(parts, { name_of(vent, "vent " .. i), vent_area(figure, vent) })
    end
  end
  local given = 0
  if #parts > 0 then given = trade.sum(parts) end
  local needed = trade.vent_area_needed_sqin {
    area_sqft = attic.area_sqft, ratio = figure "ventilation.ratio_default" }
  work(number(needed, "sqin") .. " - " .. number(given, "sqin") .. " = "
    .. number(needed - given, "sqin"))
  return math.max(0, needed - given)
end

local function is_vented(job, figure, attic)
  local why = dropped "ventilation.net_free_area"
  if why then return false, why end
  return attic.vented, "an unvented attic is not reckoned here"
end

quantity "vents_short" {
  title = "Vent area short of the full area",
  per = "attics",
  applies = is_vented,
  amount = function(job, figure, attic)
    local short = vents_short(figure, attic)
    if short == 0 then return amount { exact = 0, unit = "sqin" } end
    if known(job.takeoff, "vent_cover") then
      local times = figure("ventilation.gross_times." .. job.takeoff.vent_cover)
      local gross = trade.vent_gross_sqin { net_sqin = short, multiplier = times }
      work("as one opening behind its cover: " .. number(short, "sqin") .. " x " .. number(times)
        .. " = " .. number(gross, "sqin"))
    end
    return amount { exact = short, unit = "sqin",
      note = "A smaller area may do: see ventilation.net_free_area of a check." }
  end,
}

quantity "vents_more" {
  title = "How much more of this vent alone would do",
  per = "attics[].vents",
  applies = function(job, figure, vent, attic)
    local vented, why = is_vented(job, figure, attic)
    if not vented then return false, why end
    if vent.kind == "powered" then return false, "a fan has no area that is counted" end
    return vents_short(figure, attic) > 0, "nothing is short"
  end,
  amount = function(job, figure, vent, attic)
    local short = vents_short(figure, attic)
    if sold_by_foot(vent) then
      local each = vent.nfa_sqin_per_ft
      if each <= 0 then cannot_tell("This vent has no free area.") end
      return amount { exact = short, unit = "sqin", each = each, buy = "feet", one = "foot",
        note = "Share it out between high and low vents." }
    end
    local each = each_vent_area(figure, vent)
    if each <= 0 then cannot_tell("This vent has no free area.") end
    return amount { exact = short, unit = "sqin", each = each, buy = "vents", one = "vent",
      note = "Share it out between high and low vents." }
  end,
}

quantity "attic_fan" {
  title = "Air that a powered fan should move",
  per = "attics",
  applies = function(job, figure, attic)
    for _, vent in ipairs(attic.vents) do
      if vent.kind == "powered" then return true end
    end
    return false, "it has no fan"
  end,
  amount = function(job, figure, attic)
    local cfm = trade.fan_cfm { area_sqft = attic.area_sqft,
      cfm_per_sqft = figure "takeoff.fan_cfm_per_sqft" }
    local boosted = trade.fan_cfm { area_sqft = attic.area_sqft,
      cfm_per_sqft = figure "takeoff.fan_cfm_per_sqft",
      boost = figure "takeoff.fan_boost_dark_or_steep" }
    trade.fan_intake_sqin { cfm = boosted,
      cfm_per_intake_sqft = figure "takeoff.fan_cfm_per_intake_sqft" }
    return amount { exact = cfm, unit = "cfm",
      note = number(boosted, "cfm") .. " under a dark or steep roof, with the intake shown." }
  end,
}

-- Loads ----------------------------------------------------------------------------

-- The layers that a plane carries after the work; as rules/layers.lua has it.
local function layers_on(job, figure, slope)
  local parts = { unit = "psf" }
  local function layer(what, weight)
    table.insert(parts, { what, trade.layer_psf { lb_per_square = weight } })
  end
  layer("new covering", job.covering.weight_lb_per_square)
  local here, off = old_layers_on(job, slope)
  if here > off then
    for i, old in ipairs(job.existing.coverings) do
      local there, removed = old_layer_told(job, slope, i)
      if there and not removed then layer("old layer " .. i, old.weight_lb_per_square) end
    end
  end
  local underlayment = slope.underlayment
  layer("underlayment", underlayment.plies
    * label(underlayment, "weight_lb_per_square", figure, "weight.underlayment_ply"))
  local deck = slope.deck
  local inch = figure "weight.board_inch"
  if deck.kind == "panel" then inch = figure "weight.panel_inch" end
  table.insert(parts, { "deck",
    trade.deck_psf { thickness_in = deck.thickness_in, psf_per_in = inch } })
  if deck.work == "paneled_over" then
    table.insert(parts, { "panels over it", trade.deck_psf {
      thickness_in = deck.over_panel_thickness_in, psf_per_in = figure "weight.panel_inch" } })
  end
  return trade.sum(parts)
end

quantity "dead_load" {
  title = "Weight on the rafters after the work",
  per = "roof.slopes",
  applies = function(job, figure, slope) return gets_covering(slope) end,
  amount = function(job, figure, slope)
    local load = trade.plan_load_psf {
      slope_psf = layers_on(job, figure, slope), pitch = slope.pitch }
    return amount { exact = load, unit = "psf",
      note = "For each level sq ft. Roofs of this kind are commonly framed for "
        .. number(figure "weight.design_dead_load", "psf")
        .. "; the rafters themselves, and a ceiling hung from them, come on top." }
  end,
}

local function tear_off_lb(job)
  whole_planes(job)
  local parts = { unit = "lb" }
  for i, old in ipairs(job.existing.coverings) do
    local area = area_of(job, function(slope)
      if not gets_covering(slope) then return false end
      local there, off = old_layer_told(job, slope, i)
      return there and off
    end)
    if area > 0 then
      table.insert(parts, { "layer " .. i,
        trade.layer_lb { area_sqft = area, lb_per_square = old.weight_lb_per_square } })
    end
  end
  if #parts == 0 then return 0 end
  return trade.sum(parts)
end

quantity "tear_off_weight" {
  title = "Weight of what is torn off",
  applies = old_covering_comes_off,
  amount = function(job)
    return amount { exact = tear_off_lb(job), unit = "lb",
      note = "Old underlayment, metal and rotted deck come on top." }
  end,
}

quantity "tear_off_loads" {
  title = "Loads to haul away",
  applies = old_covering_comes_off,
  amount = function(job, figure)
    local bed
    if known(job.takeoff, "trailer_cuyd") then
      bed = job.takeoff.trailer_cuyd
    else
      local length, width = figure "takeoff.trailer_bed_length", figure "takeoff.trailer_bed_width"
      local side = figure "takeoff.trailer_side"
      bed = length * width * side / 27
      work("the job names no trailer: taken as a bed of " .. number(length, "ft") .. " by "
        .. number(width, "ft") .. " with sides of " .. number(side, "ft") .. ", "
        .. number(bed, "cuyd"))
    end
    return amount { exact = trade.haul { weight_lb = tear_off_lb(job), bed_cuyd = bed,
      lb_per_cuyd = figure "takeoff.debris_density",
      payload_lb = label(job.takeoff, "payload_lb", figure, "takeoff.trailer_payload") },
      unit = "loads" }
  end,
}

-- The steeper the roof, the less of passing load its rafters are framed for.
local function live_band(job, figure)
  local steepest = 0
  for _, slope in ipairs(job.roof.slopes) do steepest = math.max(steepest, slope.pitch) end
  steepest = as_printed(steepest, "rise_in_12")
  if steepest < figure "weight.live_load_mid_from" then return "low" end
  return steepest < figure "weight.live_load_steep_from" and "mid" or "steep"
end

quantity "stack_load" {
  title = "Load under a stack of bundles",
  applies = is_shingled,
  amount = function(job, figure)
    local bundles = label(job.covering, "bundles_per_square", figure, "takeoff.bundles_per_square")
    local each, area = job.covering.weight_lb_per_square / bundles, job.takeoff.stack_sqft
    local load = trade.stack_psf {
      bundles = job.takeoff.bundles_per_stack, bundle_lb = each, area_sqft = area }
    local live = figure("weight.roof_live_load." .. live_band(job, figure))
    local most = trade.stack_most { bundle_lb = each, area_sqft = area, limit_psf = live }
    return amount { exact = load, unit = "psf",
      note = "Rafters of the steepest plane are framed for " .. number(live, "psf")
        .. " of passing load or less, beams under much roof for less: "
        .. number(most, "count") .. " such bundles at most on so much deck." }
  end,
}

quantity "crew_days" {
  title = "Days of a crew, for tear-off, wood repair and shingling",
  applies = function(job)
    return job.scope.method == "tear-off", "the rule of thumb is for tear-offs"
  end,
  amount = function(job, figure)
    whole_planes(job)
    -- Measured and counted alike only to the square: a hundredth of one is no day.
    local squares = trade.squares { area_sqft = covered_area(job) }
    local counted = math.max(1, math.floor(squares + 0.5))
    work(number(squares, "squares") .. ", counted as " .. number(counted, "squares"))
    return amount { exact = counted, unit = "squares",
      each = figure "takeoff.squares_per_day", buy = "working days", one = "working day" }
  end,
}
