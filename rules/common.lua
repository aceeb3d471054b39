-- common.lua - conditions and helpers that several rule files use: run before them
-- all, and changed by none.

-- Who and what is meant ----------------------------------------------------------

local shingles_only = reads({ facts = { "covering.kind" } }, function(job)
  return job.covering.kind == "asphalt_shingle", "only asphalt shingles are judged here"
end)

local NOT_JUDGED_HERE = "this covering is not judged here: the code's section on it and its "
  .. "maker's instructions say what it asks"

-- A plane may keep its old covering, or get another than the job names: what is asked of
-- the job's covering is not asked there.
local gets_covering = reads({ facts = { "roof.slopes[].gets" } }, function(slope)
  if not slope or not known(slope, "gets") or slope.gets == "new_covering" then return true end
  return false, slope.gets == "old_stays" and "the old covering of this plane stays"
    or "this plane gets another covering than the job's"
end)

-- Whoever holds the permit as a contractor does the work.
local by_contractor = no { is { "permit.holder", "owner" },
  otherwise = "the owner takes out the permit" }

-- "common_8d" is a word for the job file; people say "common 8d".
local function in_words(kind)
  local words = ""
  for i = 1, #kind do
    local letter = string.sub(kind, i, i)
    words = words .. (letter == "_" and " " or letter)
  end
  return words
end

local function is_wood_kind(kind)
  return kind == "wood_shingle" or kind == "wood_shake"
end

-- Days and speeds -----------------------------------------------------------------

-- "2019-07-31" as the number that date figures are written in.
local function as_date(text)
  return tonumber(string.sub(text, 1, 4) .. string.sub(text, 6, 7) .. string.sub(text, 9, 10))
end

-- Within the months before this application, on the calendar: the same day that
-- many months back still counts.
local function is_recent(earlier, today, months)
  local function day(date, back)
    local year, month = tonumber(string.sub(date, 1, 4)), tonumber(string.sub(date, 6, 7))
    return (year * 12 + month - back) * 31 + tonumber(string.sub(date, 9, 10))
  end
  return day(earlier, 0) >= day(today, months)
end

-- Speeds are whole miles an hour, as they print.
local whole_mph = reads({ facts = { "site.wind_vult_mph" } }, function(job)
  return math.floor(job.site.wind_vult_mph + 0.5)
end)

-- Underlayment and wind ------------------------------------------------------------

-- Some editions go by a speed, later ones by a map. Where any wind counts, what
-- windy places ask of fasteners binds everywhere, and kinds and laps do not
-- change with the wind.
local is_windy = reads({
  facts = { "site.hurricane_prone_region", "site.wind_design_required", "site.wind_vult_mph" },
  figures = { "underlayment.any_wind_counts", "underlayment.wind_by_map",
    "underlayment.wind_by_region", "underlayment.wind_counts", "underlayment.wind_from",
    "underlayment.wind_on_vasd" },
}, function(job, figure)
  if figure "underlayment.any_wind_counts" then return true end
  if not figure "underlayment.wind_counts" then return false end
  if figure "underlayment.wind_by_region" then return job.site.hurricane_prone_region end
  if figure "underlayment.wind_by_map" then return job.site.wind_design_required end
  local speed = job.site.wind_vult_mph
  if figure "underlayment.wind_on_vasd" then speed = trade.vult_to_vasd(speed) end
  return as_printed(speed, "mph") >= figure "underlayment.wind_from"
end)

-- Windy, where the kinds and laps of windy places are asked for.
local is_stormy = reads({ is_windy }, function(job, figure)
  return not figure "underlayment.any_wind_counts" and is_windy(job, figure)
end)

-- What a roll is; whether the code takes it is a figure.
local is_self_adhered = reads({ facts = { "underlayments[].kind" } }, function(sheet)
  return sheet.kind == "D1970"
end)

-- Strips of tape over the joints of the deck: some editions take them in place of what
-- windy places ask of plies and laps.
local is_taped = reads({
  facts = { "underlayments[].deck_joints_taped", "underlayments[].tape_width_in" },
  figures = { "underlayment.sealed_deck_methods", "underlayment.tape_width_least" },
}, function(figure, sheet)
  if not has(figure "underlayment.sealed_deck_methods", "taped_joints") then return false end
  return sheet.deck_joints_taped
    and as_printed(sheet.tape_width_in, "in") >= figure "underlayment.tape_width_least"
end)

-- Where a line is drawn by height: a house at the line itself is meant too.
local stands_from = reads({ facts = { "site.elevation_ft" } }, function(job, least)
  return as_printed(job.site.elevation_ft, "ft") >= least
end)

-- All over the place, or from some height on.
local sealed_deck_is_asked_for = reads({
  stands_from,
  figures = { "underlayment.sealed_deck_by_elevation", "underlayment.sealed_deck_elevation_from",
    "underlayment.sealed_deck_required" },
}, function(job, figure)
  if figure "underlayment.sealed_deck_required" then return true end
  return figure "underlayment.sealed_deck_by_elevation"
    and stands_from(job, figure "underlayment.sealed_deck_elevation_from")
end)

-- Deck, ice barrier, vents ----------------------------------------------------------

-- The members that carry the panels: spaced boards under new panels, else rafters.
local support_spacing = reads({
  facts = { "decks[].board_gap_in", "decks[].board_width_in", "decks[].kind",
    "decks[].support_spacing_in" },
}, function(deck)
  if deck.kind == "spaced_board" then return deck.board_gap_in + deck.board_width_in end
  return deck.support_spacing_in
end)

-- A place may ask for it outright, or leave it to its climate table, which the
-- job has to quote.
local ice_barrier_is_asked_for = reads({
  stands_from,
  facts = { "site.ice_barrier_in_table", "site.ice_history", "site.january_mean_F" },
  facts_of_some_places = { "site.local_ice_zone" },
  figures = { "ice_barrier.by_elevation", "ice_barrier.by_history", "ice_barrier.by_local_zone",
    "ice_barrier.by_table", "ice_barrier.elevation_from", "ice_barrier.required" },
  behind = { { "ice_barrier.by_january_mean", "ice_barrier.january_mean_most" },
    { "ice_barrier.by_local_zone", "ice_barrier.local_zones" } },
}, function(job, figure)
  if figure "ice_barrier.required" then return true end
  -- Or by how cold January is, or by a history of ice where one is known.
  if figure "ice_barrier.by_january_mean"
    and as_printed(job.site.january_mean_F, "F") <= figure "ice_barrier.january_mean_most" then
    return true
  end
  if figure "ice_barrier.by_history" and job.site.ice_history then return true end
  -- Or by how high the house stands, or in which part of the place's own map.
  if figure "ice_barrier.by_elevation"
    and stands_from(job, figure "ice_barrier.elevation_from") then
    return true
  end
  if figure "ice_barrier.by_local_zone"
    and has(figure "ice_barrier.local_zones", job.site.local_ice_zone) then
    return true
  end
  return figure "ice_barrier.by_table" and job.site.ice_barrier_in_table
end)

local ice_barrier_is_needed = reads({
  ice_barrier_is_asked_for,
  facts = { "covering.kind", "house.kind", "scope.method" },
  figures = { "ice_barrier.coverings", "ice_barrier.on_overlay_required",
    "ice_barrier.one_family_exempt" },
}, function(job, figure)
  if not ice_barrier_is_asked_for(job, figure) then
    return false, "no ice barrier is asked for here"
  end
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
end)

-- Is it asked for at this edge?
local is_iced_eave = reads({
  ice_barrier_is_needed, gets_covering,
  facts = { "roof.edges[].kind", "roof.edges[].over_heated_space", "roof.edges[].slope",
    "roof.slopes[].ends_at_wall" },
  figures = { "ice_barrier.unheated_at_wall_exempt", "ice_barrier.unheated_exempt" },
}, function(job, figure, edge)
  if edge.kind ~= "eave" then return false, "ice barrier is laid from eaves" end
  local needed, why = ice_barrier_is_needed(job, figure)
  if not needed then return false, why end
  local gets, other = gets_covering(edge.slope)
  if not gets then return false, other end
  if figure "ice_barrier.unheated_exempt" then
    return edge.over_heated_space, "there is no heated space behind this eave"
  end
  -- Such as a porch's roof that ends at the house.
  if figure "ice_barrier.unheated_at_wall_exempt" and not edge.over_heated_space then
    return not edge.slope.ends_at_wall,
      "there is no heated space behind this eave, and its plane ends at a wall"
  end
  return true
end)

-- A short plane, such as a porch roof, cannot carry more than itself.
local shorter_plane = reads({
  facts = { "roof.slopes[].pitch", "roof.slopes[].run_ft" },
}, function(slope, needed)
  if known(slope, "run_ft") and slope.run_ft * 12 < needed then
    local whole = 12 * trade.sloped_length_ft { run_ft = slope.run_ft, pitch = slope.pitch }
    if whole < needed then
      work("the plane is only " .. number(whole, "in") .. " long up the slope: the whole of it")
      return whole
    end
  end
  return needed
end)

-- How far it must reach along the slope, in inches: past the wall by so much, or as wide
-- as a strip.
local barrier_reach = reads({
  shorter_plane,
  facts = { "roof.edges[].overhang_in", "roof.edges[].slope", "roof.edges[].wall_thickness_in" },
  figures = { "ice_barrier.inside_along_slope", "ice_barrier.inside_wall_least",
    "ice_barrier.steep_applies", "ice_barrier.steep_from", "ice_barrier.steep_reach_least",
    "ice_barrier.strip_allowed", "ice_barrier.strip_least", "ice_barrier.strip_required",
    "ice_barrier.wall_counts" },
}, function(figure, edge)
  if figure "ice_barrier.strip_allowed" then
    work("a strip along the eave, whatever lies under it")
    return shorter_plane(edge.slope, figure "ice_barrier.strip_least")
  end
  local slope = edge.slope
  local wall = 0
  if figure "ice_barrier.wall_counts" then wall = edge.wall_thickness_in end
  local inside = figure "ice_barrier.inside_wall_least"
  local along = figure "ice_barrier.inside_along_slope"
  local needed = trade.ice_barrier_reach_in {
    overhang_in = edge.overhang_in,
    wall_in = wall,
    inside_in = along and 0 or inside,
    pitch = slope.pitch,
  }
  if along then
    work("and " .. number(inside, "in") .. " more, measured along the slope")
    needed = needed + inside
  end
  -- 33.69 degrees is 8:12.
  local pitch = as_printed(slope.pitch, "rise_in_12")
  if figure "ice_barrier.steep_applies" and pitch >= figure "ice_barrier.steep_from" then
    local steep = figure "ice_barrier.steep_reach_least"
    work("on a slope this steep at least " .. number(steep, "in") .. " up the slope")
    needed = math.max(needed, steep)
  end
  if figure "ice_barrier.strip_required" then
    local strip = figure "ice_barrier.strip_least"
    work("and no narrower a strip than " .. number(strip, "in"))
    needed = math.max(needed, strip)
  end
  return shorter_plane(slope, needed)
end)

local sold_by_foot = reads({
  facts = { "attics[].vents[].gross_each_sqin", "attics[].vents[].kind",
    "attics[].vents[].nfa_each_sqin", "attics[].vents[].nfa_sqin_per_ft" },
}, function(vent)
  if known(vent, "nfa_sqin_per_ft") then return true end
  if known(vent, "nfa_each_sqin") or known(vent, "gross_each_sqin") then return false end
  return vent.kind == "ridge" or vent.kind == "soffit_strip"
end)

-- The free area of one vent: by its label, or by its opening and what covers it.
local each_vent_area = reads({
  facts = { "attics[].vents[].cover", "attics[].vents[].gross_each_sqin",
    "attics[].vents[].nfa_each_sqin" },
  figures = { "ventilation.gross_times.*" },
}, function(figure, vent)
  if known(vent, "nfa_each_sqin") or not known(vent, "gross_each_sqin") then
    return vent.nfa_each_sqin
  end
  return trade.vent_net_sqin { gross_sqin = vent.gross_each_sqin,
    multiplier = figure("ventilation.gross_times." .. vent.cover) }
end)

local vent_area = reads({
  sold_by_foot, each_vent_area,
  facts = { "attics[].vents[].count", "attics[].vents[].length_ft" },
}, function(figure, vent)
  if sold_by_foot(vent) then
    return trade.vent_area_sqin { length_ft = vent.length_ft, sqin_per_ft = vent.nfa_sqin_per_ft }
  end
  return trade.vent_area_sqin { count = vent.count, each_sqin = each_vent_area(figure, vent) }
end)

-- What calls for a permit -----------------------------------------------------------

local function percent_of(part, whole)
  return trade.share_percent { part = part, whole = whole, unit = "sqft" }
end

local plane_sqft = reads({
  facts = { "roof.slopes[].eave_ft", "roof.slopes[].pitch", "roof.slopes[].plan_sqft",
    "roof.slopes[].ridge_ft", "roof.slopes[].run_ft" },
}, function(slope)
  return trade.slope_area_sqft {
    eave_ft = slope.eave_ft, ridge_ft = slope.ridge_ft, run_ft = slope.run_ft, pitch = slope.pitch,
    plan_sqft = known(slope, "plan_sqft") and slope.plan_sqft or nil }
end)

local roof_sqft = reads({ plane_sqft, facts = { "roof.slopes" } }, function(job)
  local sum = 0
  for _, slope in ipairs(job.roof.slopes) do sum = sum + plane_sqft(slope) end
  return sum
end)

-- Strips along open edges that are of the deck, less those of another on its planes; of the
-- planes that `counts` lets in.
local strips_sqft = reads({
  facts = { "decks[].name", "roof.edges[].deck", "roof.edges[].deck_in", "roof.edges[].length_ft",
    "roof.edges[].slope", "roof.slopes[].deck" },
}, function(job, deck, counts)
  local sum = 0
  if not known(job.roof, "edges") then return 0 end
  for _, edge in ipairs(job.roof.edges) do
    if known(edge, "deck") and counts(edge.slope) and edge.deck.name ~= edge.slope.deck.name then
      local strip = edge.length_ft * edge.deck_in / 12
      if edge.deck.name == deck.name then sum = sum + strip end
      if edge.slope.deck.name == deck.name then sum = sum - strip end
    end
  end
  return sum
end)

local function every() return true end

local deck_sqft = reads({
  plane_sqft, strips_sqft,
  facts = { "decks[].name", "roof.slopes[].deck" },
}, function(job, deck)
  local sum = 0
  for _, slope in ipairs(job.roof.slopes) do
    if slope.deck.name == deck.name then sum = sum + plane_sqft(slope) end
  end
  return math.max(0, sum + strips_sqft(job, deck, every))
end)

-- A size by which the job would be free must be that of the planes, or of the share
-- of them that is done: 30 squares typed as 30 sq ft would need no permit. How far
-- the two may lie apart: as rules/cannot_be.lua has it.
local AREA_PERCENT, SHARE_PERCENT = 25, 1

local agreed_area = reads({
  roof_sqft,
  facts = { "scope.area_sqft", "scope.extent", "scope.roof_share_percent" },
}, function(job)
  local area, whole, share = job.scope.area_sqft, roof_sqft(job), 100
  if known(job.scope, "roof_share_percent") or job.scope.extent == "repair" then
    share = job.scope.roof_share_percent
  end
  local done = whole * share / 100
  if area < done * (1 - AREA_PERCENT / 100) - whole * SHARE_PERCENT / 100 then
    cannot_tell("the job is said to be of " .. number(area, "sqft") .. ", but "
      .. number(share, "percent") .. " of the planes are " .. number(done, "sqft")
      .. ": which holds? (30 squares are 3,000 sq ft)")
  end
  return area
end)

-- Is a share or a size inside? `step` is the last digit that reports print: what
-- prints as the figure is taken as the figure.
local function is_inside(found, limit, at_counts, step)
  local apart = math.floor(math.abs(found - limit) / step + 0.5)
  if apart == 0 then return at_counts end
  return found > limit
end

-- What counts together: this job, and what was renewed in the months before.
local share_renewed = reads({
  facts = { "date", "scope.earlier_roofing[].done_on",
    "scope.earlier_roofing[].roof_share_percent", "scope.roof_share_percent" },
}, function(job, months)
  local parts = { unit = "percent", { "this job", job.scope.roof_share_percent } }
  for _, done in ipairs(job.scope.earlier_roofing) do
    if is_recent(done.done_on, job.date, months) then
      table.insert(parts, { "done " .. done.done_on, done.roof_share_percent })
    end
  end
  return trade.sum(parts)
end)

-- New deck counts whether it takes the old one's place or lies over it.
local new_deck_sqft = reads({
  deck_sqft,
  facts = { "decks[].replaced_sqft", "decks[].work" },
}, function(job, deck)
  if deck.work == "kept" then return 0 end
  if deck.work == "partly_replaced" then return deck.replaced_sqft end
  return deck_sqft(job, deck)
end)

-- Of all decks together: sheets spread over several are no fewer.
local all_new_deck_sqft = reads({ new_deck_sqft, facts = { "decks" } }, function(job)
  local parts = { unit = "sqft" }
  for _, deck in ipairs(job.decks) do
    table.insert(parts, { deck.name, new_deck_sqft(job, deck) })
  end
  return trade.sum(parts)
end)

-- Planes may differ in what lies on them. The list has the layers of the plane that has
-- most, the top first: where there are fewer, the lowest of them lie. A plane may be
-- stripped further than the list says, so a plane that says nothing is the worst there is.
local old_layers_on = reads({
  facts = { "existing.coverings[].removed", "existing.layers", "existing.layers_removed",
    "roof.slopes[].old_layers", "roof.slopes[].old_layers_removed" },
}, function(job, slope)
  local here = job.existing.layers
  if not slope or not (known(slope, "old_layers") or known(slope, "old_layers_removed")) then
    return here, job.existing.layers_removed
  end
  if known(slope, "old_layers") then here = slope.old_layers end
  if known(slope, "old_layers_removed") then return here, slope.old_layers_removed end
  local coverings, off = job.existing.coverings, 0
  for i = math.max(1, #coverings - here + 1), #coverings do
    if coverings[i].removed then off = off + 1 end
  end
  return here, off
end)

-- Does the i-th of the list lie there, and does it come off?
local old_layer_at = reads({ old_layers_on }, function(job, slope, i)
  local coverings = job.existing.coverings
  if not slope or not (known(slope, "old_layers") or known(slope, "old_layers_removed")) then
    return true, coverings[i].removed
  end
  local here, off = old_layers_on(job, slope)
  local above = #coverings - here
  return i > above, i <= above + off
end)

-- The same, where it matters which layer it is: of several kinds, the fewer that lie on a
-- plane need not be the lowest.
local old_layer_told = reads({
  old_layer_at,
  facts = { "existing.coverings[].kind" },
}, function(job, slope, i)
  local there, off = old_layer_at(job, slope, i)
  local coverings = job.existing.coverings
  if slope and old_layers_on(job, slope) < #coverings then
    for _, layer in ipairs(coverings) do
      if layer.kind ~= coverings[1].kind then
        cannot_tell("which of the layers lie on each plane is not said, and they are not of one "
          .. "kind")
      end
    end
  end
  return there, off
end)

-- The planes that get the covering, or any new one where others count; one that stands for
-- all where none is told apart.
local planes_covered = reads({
  gets_covering,
  facts = { "roof.slopes[].old_layers", "roof.slopes[].old_layers_removed" },
}, function(job, others)
  local planes = {}
  if known(job.roof, "slopes") then
    for _, slope in ipairs(job.roof.slopes) do
      if gets_covering(slope) or others and slope.gets ~= "old_stays" then
        if known(slope, "old_layers") or known(slope, "old_layers_removed") then
          planes.told = true
        end
        table.insert(planes, slope)
      end
    end
  end
  if not planes.told then return { false } end
  return planes
end)

local old_covering_comes_off = reads({ planes_covered, old_layers_on }, function(job)
  for _, slope in ipairs(planes_covered(job, true)) do
    local _, off = old_layers_on(job, slope)
    if off > 0 then return true end
  end
  return false, "nothing is torn off"
end)

local weights_on = reads({
  old_layer_told,
  facts = { "covering.weight_lb_per_square", "existing.coverings[].weight_lb_per_square" },
}, function(job, slope)
  local before, after = 0, job.covering.weight_lb_per_square
  for i, layer in ipairs(job.existing.coverings) do
    local there, off = old_layer_told(job, slope, i)
    if there then before = before + layer.weight_lb_per_square end
    if there and not off then after = after + layer.weight_lb_per_square end
  end
  return before, after
end)

-- What weighs on the deck now, and after the work, on the plane where it rises most: in
-- pounds, or by its share where "share" is said.
local weights = reads({ planes_covered, weights_on }, function(job, by)
  local before, after, most
  for _, slope in ipairs(planes_covered(job)) do
    local was, is = weights_on(job, slope)
    local rise = is - was
    if by == "share" and was > 0 then rise = rise / was end
    if by == "share" and was == 0 then return was, is end
    if not most or rise > most then before, after, most = was, is, rise end
  end
  return before, after
end)

-- Does it call for a permit, and where a measure decides: what was found, and up to
-- what a job is free.
local permit_triggers = {}

permit_triggers.method = reads({
  facts = { "scope.method" },
  figures = { "permit.overlay_counts", "permit.tear_off_counts" },
}, function(job, figure)
  local overlay = job.scope.method == "overlay"
  return figure(overlay and "permit.overlay_counts" or "permit.tear_off_counts")
end)

permit_triggers.area = reads({
  agreed_area,
  figures = { "permit.area_at_counts", "permit.area_limit" },
}, function(job, figure)
  local area, limit = job.scope.area_sqft, figure "permit.area_limit"
  local inside = is_inside(area, limit, figure "permit.area_at_counts", 0.1)
  return inside, inside and area or agreed_area(job), limit
end)

permit_triggers.share = reads({
  share_renewed,
  figures = { "permit.share_at_counts", "permit.share_limit", "permit.share_months" },
}, function(job, figure)
  local limit = figure "permit.share_limit"
  local share = share_renewed(job, figure "permit.share_months")
  return is_inside(share, limit, figure "permit.share_at_counts", 0.1), share, limit
end)

permit_triggers.plane_share = reads({
  facts = { "roof.slopes[].replaced_percent" },
  figures = { "permit.plane_share_at_counts", "permit.plane_share_limit" },
}, function(job, figure, slope)
  local limit, share = figure "permit.plane_share_limit", slope.replaced_percent
  return is_inside(share, limit, figure "permit.plane_share_at_counts", 0.1), share, limit
end)

permit_triggers.deck = reads({
  all_new_deck_sqft,
  figures = { "permit.deck_any_free" },
}, function(job, figure)
  local new, free = all_new_deck_sqft(job), figure "permit.deck_any_free"
  return is_inside(new, free, false, 0.1), new, free
end)

permit_triggers.deck_share = reads({
  all_new_deck_sqft, roof_sqft,
  figures = { "permit.deck_share_at_counts", "permit.deck_share_limit" },
}, function(job, figure)
  local new, limit = all_new_deck_sqft(job), figure "permit.deck_share_limit"
  local share = percent_of(new, roof_sqft(job))
  return is_inside(share, limit, figure "permit.deck_share_at_counts", 0.1), share, limit
end)

permit_triggers.price = reads({
  facts = { "scope.price_usd" },
  figures = { "permit.price_at_counts", "permit.price_limit" },
}, function(job, figure)
  local price, limit = job.scope.price_usd, figure "permit.price_limit"
  return is_inside(price, limit, figure "permit.price_at_counts", 0.01), price, limit
end)

permit_triggers.pitch = reads({ facts = { "scope.pitch_change" } }, function(job)
  return job.scope.pitch_change
end)

permit_triggers.material = reads({ facts = { "scope.material_change" } }, function(job)
  return job.scope.material_change
end)

permit_triggers.structure = reads({ facts = { "scope.structure_altered" } }, function(job)
  return job.scope.structure_altered
end)

permit_triggers.history = reads({ facts = { "site.historic" } }, function(job)
  return job.site.historic
end)

permit_triggers.spaced_deck = reads({ facts = { "decks[].kind", "decks[].work" } }, function(job)
  for _, deck in ipairs(job.decks) do
    if deck.kind == "spaced_board" and deck.work == "replaced" then return true end
  end
  return false
end)

permit_triggers.weight_rise = reads({
  weights,
  figures = { "permit.weight_rise_at_counts", "permit.weight_rise_limit" },
}, function(job, figure)
  local before, after = weights(job, "share")
  local limit = figure "permit.weight_rise_limit"
  if before == 0 then return cannot_tell("nothing lies on the roof now to compare with") end
  work(number(before, "lb_per_square") .. " now, " .. number(after, "lb_per_square")
    .. " after the work")
  local rise = 100 * (after - before) / before
  return is_inside(rise, limit, figure "permit.weight_rise_at_counts", 0.1), rise, limit
end)

permit_triggers.heavy_covering = reads({
  facts = { "covering.weight_lb_per_square" },
  figures = { "permit.heavy_at_counts", "permit.heavy_limit" },
}, function(job, figure)
  local weight, limit = job.covering.weight_lb_per_square, figure "permit.heavy_limit"
  return is_inside(weight, limit, figure "permit.heavy_at_counts", 0.1), weight, limit
end)

permit_triggers.skylight = reads({ facts = { "scope.skylights_changed" } }, function(job)
  return job.scope.skylights_changed
end)

permit_triggers.units = reads({ facts = { "scope.units_moved" } }, function(job)
  return job.scope.units_moved
end)

permit_triggers.underlayment = reads({ facts = { "scope.new_underlayment" } }, function(job)
  return job.scope.new_underlayment
end)

permit_triggers.stories = reads({
  facts = { "house.stories" },
  figures = { "permit.stories_limit" },
}, function(job, figure)
  local stories, limit = job.house.stories, figure "permit.stories_limit"
  return stories > limit, stories, limit
end)

permit_triggers.wildfire_zone = reads({ facts = { "site.wildfire_hazard_zone" } }, function(job)
  return job.site.wildfire_hazard_zone
end)

permit_triggers.solar_roof = reads({ facts = { "covering.integrated_solar" } }, function(job)
  return job.covering.integrated_solar
end)

-- The kind of house is asked only where some kind counts.
permit_triggers.house_kind = reads({
  facts = { "house.kind" },
  figures = { "permit.house_kinds_counted" },
}, function(job, figure)
  local kinds = figure "permit.house_kinds_counted"
  return #kinds > 0 and has(kinds, job.house.kind)
end)

-- In pounds to the square foot of slope: a rise in percent says little of a light roof.
permit_triggers.weight_added = reads({
  weights,
  figures = { "permit.weight_added_limit" },
}, function(job, figure)
  local before, after = weights(job)
  local limit = figure "permit.weight_added_limit"
  work(number(before, "lb_per_square") .. " now, " .. number(after, "lb_per_square")
    .. " after the work")
  local added = trade.layer_psf { lb_per_square = after - before }
  return as_printed(added, "psf") > limit, added, limit
end)

-- New roofing and new sheathing, pounds to the level square foot.
local new_weight = reads({
  facts = { "covering.weight_lb_per_square", "decks[].kind", "decks[].over_panel_thickness_in",
    "decks[].thickness_in", "decks[].work", "roof.slopes[].deck", "roof.slopes[].pitch",
    "roof.slopes[].underlayment", "underlayments[].plies",
    "underlayments[].weight_lb_per_square" },
  figures = { "weight.board_inch", "weight.panel_inch", "weight.underlayment_ply" },
}, function(job, figure, slope)
  local sheet, deck, ply = slope.underlayment, slope.deck, figure "weight.underlayment_ply"
  if known(sheet, "weight_lb_per_square") then ply = sheet.weight_lb_per_square end
  local parts = { unit = "psf",
    { "new covering", trade.layer_psf { lb_per_square = job.covering.weight_lb_per_square } },
    { "underlayment", trade.layer_psf { lb_per_square = sheet.plies * ply } } }
  local inch = figure(deck.kind == "panel" and "weight.panel_inch" or "weight.board_inch")
  if deck.work == "replaced" or deck.work == "partly_replaced" then
    table.insert(parts, { "new deck", trade.deck_psf { thickness_in = deck.thickness_in,
      psf_per_in = inch } })
  elseif deck.work == "paneled_over" then
    table.insert(parts, { "panels over it", trade.deck_psf {
      thickness_in = deck.over_panel_thickness_in, psf_per_in = figure "weight.panel_inch" } })
  end
  return trade.plan_load_psf { slope_psf = trade.sum(parts), pitch = slope.pitch }
end)

-- What the table says a roof carries beside its own weight, by slope.
local live_load = reads({
  figures = { "weight.live_load_mid_from", "weight.live_load_steep_from",
    "weight.roof_live_load.low", "weight.roof_live_load.mid", "weight.roof_live_load.steep" },
}, function(figure, pitch)
  local rise = as_printed(pitch, "rise_in_12")
  if rise >= figure "weight.live_load_steep_from" then
    return figure "weight.roof_live_load.steep"
  end
  if rise >= figure "weight.live_load_mid_from" then
    return figure "weight.roof_live_load.mid"
  end
  return figure "weight.roof_live_load.low"
end)

permit_triggers.load_share = reads({
  new_weight, live_load,
  figures = { "permit.load_share_limit" },
}, function(job, figure, slope)
  local limit = figure "permit.load_share_limit"
  local share = trade.share_percent { part = new_weight(job, figure, slope),
    whole = live_load(figure, slope.pitch), unit = "psf" }
  return as_printed(share, "percent") > limit, share, limit
end)

-- Those that a switch of the place turns on for the whole job.
local SWITCHED = {
  { "permit.structure_counts", permit_triggers.structure },
  { "permit.pitch_change_counts", permit_triggers.pitch },
  { "permit.material_change_counts", permit_triggers.material },
  { "permit.historic_counts", permit_triggers.history },
  { "permit.spaced_deck_counts", permit_triggers.spaced_deck },
  { "permit.skylight_counts", permit_triggers.skylight },
  { "permit.units_counts", permit_triggers.units },
  { "permit.underlayment_counts", permit_triggers.underlayment },
  { "permit.stories_counts", permit_triggers.stories },
  { "permit.wildfire_zone_counts", permit_triggers.wildfire_zone },
  { "permit.solar_roof_counts", permit_triggers.solar_roof },
  { "permit.area_counts", permit_triggers.area },
  { "permit.share_counts", permit_triggers.share },
  { "permit.deck_any_counts", permit_triggers.deck },
  { "permit.deck_share_counts", permit_triggers.deck_share },
  { "permit.price_counts", permit_triggers.price },
  { "permit.weight_rise_counts", permit_triggers.weight_rise },
  { "permit.weight_added_counts", permit_triggers.weight_added },
  { "permit.heavy_counts", permit_triggers.heavy_covering },
}

-- Those that are looked at plane by plane.
local BY_PLANE = {
  { "permit.plane_share_counts", permit_triggers.plane_share },
  { "permit.load_share_counts", permit_triggers.load_share },
}

local is_exempt_repair = reads({
  facts = { "scope.extent", "scope.structure_altered" },
  figures = { "permit.repair_exempt" },
}, function(job, figure)
  return figure "permit.repair_exempt" and job.scope.extent == "repair"
    and not job.scope.structure_altered
end)

local permit_is_needed = reads({
  is_exempt_repair, permit_triggers.method, permit_triggers.house_kind,
  permit_triggers.structure, permit_triggers.pitch, permit_triggers.material,
  permit_triggers.history, permit_triggers.spaced_deck, permit_triggers.skylight,
  permit_triggers.units, permit_triggers.underlayment, permit_triggers.stories,
  permit_triggers.wildfire_zone, permit_triggers.solar_roof, permit_triggers.area,
  permit_triggers.share, permit_triggers.deck, permit_triggers.deck_share, permit_triggers.price,
  permit_triggers.weight_rise, permit_triggers.weight_added, permit_triggers.heavy_covering,
  permit_triggers.plane_share, permit_triggers.load_share,
  figures = { "permit.area_counts", "permit.deck_any_counts", "permit.deck_share_counts",
    "permit.every", "permit.heavy_counts", "permit.historic_counts", "permit.load_share_counts",
    "permit.material_change_counts", "permit.pitch_change_counts", "permit.plane_share_counts",
    "permit.price_counts", "permit.share_counts", "permit.skylight_counts",
    "permit.solar_roof_counts", "permit.spaced_deck_counts", "permit.stories_counts",
    "permit.structure_counts", "permit.underlayment_counts", "permit.units_counts",
    "permit.weight_added_counts", "permit.weight_rise_counts", "permit.wildfire_zone_counts" },
}, function(job, figure)
  if figure "permit.every" then return not is_exempt_repair(job, figure) end
  if permit_triggers.method(job, figure) then return true end
  if permit_triggers.house_kind(job, figure) then return true end
  for _, trigger in ipairs(SWITCHED) do
    if figure(trigger[1]) and trigger[2](job, figure) then return true end
  end
  for _, trigger in ipairs(BY_PLANE) do
    if figure(trigger[1]) then
      for _, slope in ipairs(job.roof.slopes) do
        if trigger[2](job, figure, slope) then return true end
      end
    end
  end
  return false
end)

-- Visits and lapsing go with a permit: one that was taken out, needed or not, or one
-- that is needed. Whether one is needed is asked only where none was taken out.
local permit_counts = reads({
  permit_is_needed,
  facts = { "permit.status" },
}, function(job, figure)
  if known(job.permit, "status") and job.permit.status ~= "none" then return true end
  if permit_is_needed(job, figure) then return true end
  return job.permit.status ~= "none", "no permit is needed, and none is taken out"
end)

-- Takeoff ------------------------------------------------------------------------

-- What a label says (a fact of the job), or the common figure.
local function label(part, field, figure, name)
  if known(part, field) then return part[field] end
  return figure(name)
end

-- One waste for all, unless the job has another for this kind of thing.
local function waste(job, special)
  if special and known(job.takeoff, special) then return job.takeoff[special] end
  return job.takeoff.waste_percent
end

local function name_of(item, otherwise)
  if known(item, "name") then return item.name end
  return otherwise
end

local function is_shingled(job)
  return job.covering.kind == "asphalt_shingle", "only asphalt shingles are counted here"
end

-- Is any underlayment laid at all?
local underlayment_is_laid = reads({
  facts = { "covering.kind", "scope.method" },
  figures = { "underlayment.on_overlay_required" },
}, function(job, figure)
  if job.covering.kind == "coating" then return false, "no underlayment lies under a coating" end
  if job.scope.method == "overlay" and not figure "underlayment.on_overlay_required" then
    return false, "an overlay strips nothing, so no underlayment is laid"
  end
  return true
end)

-- Planes, for the takeoff ------------------------------------------------------------

-- The planes that `counts` lets in, as one sum; 0 when it lets in none.
local function area_of(job, counts)
  local parts = { unit = "sqft" }
  for i, slope in ipairs(job.roof.slopes) do
    if counts(slope) then
      table.insert(parts, { name_of(slope, "plane " .. i), plane_sqft(slope) })
    end
  end
  if #parts == 0 then return 0 end
  return trade.sum(parts)
end

-- The planes that get the job's covering: the order is theirs.
local function covered_area(job)
  return area_of(job, gets_covering)
end

local function planes_differ(job)
  for _, slope in ipairs(job.roof.slopes) do
    if not gets_covering(slope) then return true end
  end
  return false
end

-- A deck under nothing but planes that get another covering, or keep theirs, is not this order's.
local function deck_is_covered(job, deck)
  if not planes_differ(job) then return true end
  for _, slope in ipairs(job.roof.slopes) do
    if gets_covering(slope) and slope.deck.name == deck.name then return true end
  end
  for _, edge in ipairs(job.roof.edges) do
    if known(edge, "deck") and edge.deck.name == deck.name and gets_covering(edge.slope) then
      return true
    end
  end
  return false, "no plane that gets the covering lies on it"
end

-- The planes or edges a line is for, by name; all of them are not listed.
local function places(parts, all, every)
  if #parts == 0 or #parts == all then return every end
  local names = {}
  for i, part in ipairs(parts) do names[i] = part[1] end
  return table.concat(names, ", ")
end

local function covered_places(job)
  local parts = {}
  for i, slope in ipairs(job.roof.slopes) do
    if gets_covering(slope) then table.insert(parts, { name_of(slope, "plane " .. i) }) end
  end
  return places(parts, #job.roof.slopes, "all planes")
end

local function part_of_planes()
  cannot_tell("only a part of the roof is renewed, and the planes are listed whole. For a "
    .. "takeoff list just what is renewed, as a reroof and without /scope/roof_share_percent.")
end

local function keeps_old(slope)
  return known(slope, "gets") and slope.gets == "old_stays"
end

-- How far a share of the roof may be from what the planes come to: it is told in whole numbers.
local SHARE_SLACK = 2.5

-- What is bought is reckoned over planes, each whole. Where some keep their old covering the
-- share renewed is that of the rest, or it is a part of those.
local function whole_planes(job)
  local kept, planes = false, job.roof.slopes
  for _, slope in ipairs(planes) do
    if keeps_old(slope) then kept = true end
  end
  local share = known(job.scope, "roof_share_percent") and job.scope.roof_share_percent or nil
  if not kept then
    if job.scope.extent == "repair" or share and share < 100 then part_of_planes() end
    return
  end
  local renewed, whole = 0, 0
  for _, slope in ipairs(planes) do
    local area = plane_sqft(slope)
    whole = whole + area
    if not keeps_old(slope) then
      renewed = renewed + area
      if known(slope, "replaced_percent") and slope.replaced_percent < 100 then part_of_planes() end
    end
  end
  if share and math.abs(share - 100 * renewed / whole) > SHARE_SLACK then part_of_planes() end
end

common {
  label = label,
  waste = waste,
  name_of = name_of,
  is_shingled = is_shingled,
  underlayment_is_laid = underlayment_is_laid,
  plane_sqft = plane_sqft,
  area_of = area_of,
  covered_area = covered_area,
  planes_differ = planes_differ,
  deck_is_covered = deck_is_covered,
  places = places,
  covered_places = covered_places,
  whole_planes = whole_planes,
  shingles_only = shingles_only,
  NOT_JUDGED_HERE = NOT_JUDGED_HERE,
  gets_covering = gets_covering,
  by_contractor = by_contractor,
  in_words = in_words,
  is_wood_kind = is_wood_kind,
  as_date = as_date,
  is_recent = is_recent,
  whole_mph = whole_mph,
  is_windy = is_windy,
  is_stormy = is_stormy,
  is_self_adhered = is_self_adhered,
  is_taped = is_taped,
  support_spacing = support_spacing,
  stands_from = stands_from,
  sealed_deck_is_asked_for = sealed_deck_is_asked_for,
  ice_barrier_is_needed = ice_barrier_is_needed,
  is_iced_eave = is_iced_eave,
  barrier_reach = barrier_reach,
  sold_by_foot = sold_by_foot,
  each_vent_area = each_vent_area,
  vent_area = vent_area,
  is_inside = is_inside,
  agreed_area = agreed_area,
  roof_sqft = roof_sqft,
  deck_sqft = deck_sqft,
  strips_sqft = strips_sqft,
  new_deck_sqft = new_deck_sqft,
  weights = weights,
  old_layers_on = old_layers_on,
  old_layer_at = old_layer_at,
  old_layer_told = old_layer_told,
  old_covering_comes_off = old_covering_comes_off,
  planes_covered = planes_covered,
  share_renewed = share_renewed,
  permit_triggers = permit_triggers,
  is_exempt_repair = is_exempt_repair,
  permit_counts = permit_counts,
}
