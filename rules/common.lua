-- common.lua - conditions and helpers that several rule files use: run before them
-- all, and changed by none.

-- Who and what is meant ----------------------------------------------------------

local function shingles_only(job)
  return job.covering.kind == "asphalt_shingle", "only asphalt shingles are judged here"
end

-- Whoever holds the permit as a contractor does the work.
local by_contractor = no { is { "permit.holder", "owner" },
  otherwise = "the owner takes out the permit" }

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
local function whole_mph(job)
  return math.floor(job.site.wind_vult_mph + 0.5)
end

-- Underlayment and wind ------------------------------------------------------------

-- Some editions go by a speed, later ones by a map. Where any wind counts, what
-- windy places ask of fasteners binds everywhere, and kinds and laps do not
-- change with the wind.
local function is_windy(job, figure)
  if figure "underlayment.any_wind_counts" then return true end
  if not figure "underlayment.wind_counts" then return false end
  if figure "underlayment.wind_by_region" then return job.site.hurricane_prone_region end
  if figure "underlayment.wind_by_map" then return job.site.wind_design_required end
  local speed = job.site.wind_vult_mph
  if figure "underlayment.wind_on_vasd" then speed = trade.vult_to_vasd(speed) end
  return as_printed(speed, "mph") >= figure "underlayment.wind_from"
end

-- Windy, where the kinds and laps of windy places are asked for.
local function is_stormy(job, figure)
  return not figure "underlayment.any_wind_counts" and is_windy(job, figure)
end

-- What a roll is; whether the code takes it is a figure.
local function is_self_adhered(sheet)
  return sheet.kind == "D1970"
end

-- Strips of tape over the joints of the deck: some editions take them in place of what
-- windy places ask of plies and laps.
local function is_taped(figure, sheet)
  if not has(figure "underlayment.sealed_deck_methods", "taped_joints") then return false end
  return sheet.deck_joints_taped
    and as_printed(sheet.tape_width_in, "in") >= figure "underlayment.tape_width_least"
end

-- Deck, ice barrier, vents ----------------------------------------------------------

-- The members that carry the panels: spaced boards under new panels, else rafters.
local function support_spacing(deck)
  if deck.kind == "spaced_board" then return deck.board_gap_in + deck.board_width_in end
  return deck.support_spacing_in
end

-- How far it must reach along the slope, in inches.
local function barrier_reach(figure, edge)
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
  -- A short plane, such as a porch roof, cannot carry more than itself.
  if known(slope, "run_ft") and slope.run_ft * 12 < needed then
    local whole = 12 * trade.sloped_length_ft { run_ft = slope.run_ft, pitch = slope.pitch }
    if whole < needed then
      work("the plane is only " .. number(whole, "in") .. " long up the slope: the whole of it")
      needed = whole
    end
  end
  return needed
end

local function sold_by_foot(vent)
  if known(vent, "nfa_sqin_per_ft") then return true end
  if known(vent, "nfa_each_sqin") or known(vent, "gross_each_sqin") then return false end
  return vent.kind == "ridge" or vent.kind == "soffit_strip"
end

-- The free area of one vent: by its label, or by its opening and what covers it.
local function each_vent_area(figure, vent)
  if known(vent, "nfa_each_sqin") or not known(vent, "gross_each_sqin") then
    return vent.nfa_each_sqin
  end
  return trade.vent_net_sqin { gross_sqin = vent.gross_each_sqin,
    multiplier = figure("ventilation.gross_times." .. vent.cover) }
end

local function vent_area(figure, vent)
  if sold_by_foot(vent) then
    return trade.vent_area_sqin { length_ft = vent.length_ft, sqin_per_ft = vent.nfa_sqin_per_ft }
  end
  return trade.vent_area_sqin { count = vent.count, each_sqin = each_vent_area(figure, vent) }
end

common {
  shingles_only = shingles_only,
  by_contractor = by_contractor,
  is_wood_kind = is_wood_kind,
  as_date = as_date,
  is_recent = is_recent,
  whole_mph = whole_mph,
  is_windy = is_windy,
  is_stormy = is_stormy,
  is_self_adhered = is_self_adhered,
  is_taped = is_taped,
  support_spacing = support_spacing,
  barrier_reach = barrier_reach,
  sold_by_foot = sold_by_foot,
  each_vent_area = each_vent_area,
  vent_area = vent_area,
}
