-- deck.lua - the roof deck: what it is made of, what it spans, how it is nailed.
--
-- Once per deck of the job. A kept deck that nobody nails is not judged for
-- nailing, unless the place asks for it. Spacings are judged as planned until
-- the deck stage, and as measured from then on.

-- What the shingles end up on: new panels hide whatever is under them.
local is_panels = reads({ facts = { "decks[].kind", "decks[].work" } }, function(deck)
  return deck.kind == "panel" or deck.work == "paneled_over"
end)

-- The panel being nailed; with new panels over an old deck, the new one.
local panel_thickness = reads({
  facts = { "decks[].over_panel_thickness_in", "decks[].thickness_in", "decks[].work" },
}, function(deck)
  if deck.work == "paneled_over" then return deck.over_panel_thickness_in end
  return deck.thickness_in
end)

-- The row of the nailing table: thin, mid or thick; nil when it has none. A deck
-- written 0.469 is the 15/32 of the table.
local nail_row = reads({
  panel_thickness,
  figures = { "deck.nail_panel_least", "deck.nail_panel_mid_most", "deck.nail_panel_thick_most",
    "deck.nail_panel_thin_most" },
}, function(figure, deck)
  local inches = as_printed(panel_thickness(deck), "in")
  if inches < as_printed(figure "deck.nail_panel_least", "in") then return nil end
  if inches <= as_printed(figure "deck.nail_panel_thin_most", "in") then return "thin" end
  if inches <= as_printed(figure "deck.nail_panel_mid_most", "in") then return "mid" end
  if inches <= as_printed(figure "deck.nail_panel_thick_most", "in") then return "thick" end
  return nil
end)

-- Box nails are thinner than common ones: the table asks for more of them.
local board_nails_least = reads({
  facts = { "decks[].board_width_in" },
  figures = { "deck.board_nails_least.*", "deck.board_nails_least_box.*", "deck.board_wide_over",
    "deck.board_widest_over", "deck.nails_box" },
}, function(figure, deck, kind)
  local width = as_printed(deck.board_width_in, "in")
  local size = width > figure "deck.board_wide_over" and "wide" or "narrow"
  if not kind or not has(figure "deck.nails_box", kind) then
    return figure("deck.board_nails_least." .. size)
  end
  if width > figure "deck.board_widest_over" then size = "widest" end
  return figure("deck.board_nails_least_box." .. size)
end)

local function within(spacing, most)
  return as_printed(spacing, "in") <= as_printed(most, "in")
end

-- A place may ask for no new nails where the old ones are stout and close enough.
local old_nails_do = reads({
  board_nails_least,
  facts = { "decks[].kind", "decks[].old_nails.edge_spacing_in",
    "decks[].old_nails.field_spacing_in", "decks[].old_nails.kind", "decks[].old_nails.length_in",
    "decks[].old_nails.per_bearing", "decks[].old_nails.shank_in" },
  behind = { { "deck.renail_by_old_nails", "deck.old_nail_length_least",
    "deck.old_nail_shank_least", "deck.old_nail_spacing_most" } },
}, function(figure, deck)
  if not figure "deck.renail_by_old_nails" then return false end
  local old = deck.old_nails
  if old.kind ~= "nail_8d" then return false end
  if as_printed(old.shank_in, "in") < as_printed(figure "deck.old_nail_shank_least", "in")
    or as_printed(old.length_in, "in") < as_printed(figure "deck.old_nail_length_least", "in") then
    return false
  end
  if deck.kind ~= "panel" then return old.per_bearing >= board_nails_least(figure, deck) end
  local most = figure "deck.old_nail_spacing_most"
  return within(old.edge_spacing_in, most) and within(old.field_spacing_in, most)
end)

-- Some of the old deck is still there. With new panels over it, those are nailed.
local old_deck_stays = reads({
  facts = { "decks[].work" },
  figures = { "deck.renail_by_old_nails" },
}, function(figure, deck)
  if deck.work == "kept" then return true end
  return deck.work == "partly_replaced" and figure "deck.renail_by_old_nails"
end)

-- Some places want the old deck nailed again when the covering comes off.
local renail_reaches = reads({
  old_deck_stays,
  facts = { "house.kind", "house.year_built", "scope.method" },
  figures = { "deck.renail_built_before", "deck.renail_house_kinds", "deck.renail_required" },
}, function(job, figure, deck)
  if not figure "deck.renail_required" then return false end
  if not old_deck_stays(figure, deck) or job.scope.method ~= "tear-off" then return false end
  if not has(figure "deck.renail_house_kinds", job.house.kind) then return false end
  return job.house.year_built < figure "deck.renail_built_before"
end)

local renail_due = reads({ renail_reaches, old_nails_do }, function(job, figure, deck)
  return renail_reaches(job, figure, deck) and not old_nails_do(figure, deck)
end)

-- Nailed by the place's table for old decks, not by the one for new panels.
local is_renailed_old = reads({
  facts = { "decks[].work" },
  figures = { "deck.renail_by_old_nails" },
}, function(figure, deck)
  return deck.work == "kept" and figure "deck.renail_by_old_nails"
end)

local is_nailed = reads({
  renail_due,
  facts = { "decks[].renailed" },
}, function(job, figure, deck)
  if deck.work ~= "kept" then return true end
  if job.scope.method == "overlay" then
    return false, "the deck stays hidden under the old covering"
  end
  if deck.renailed or renail_due(job, figure, deck) then return true end
  return false, "this deck is kept and not nailed again"
end)

local panels_are_nailed = reads({ is_panels, is_nailed }, function(job, figure, deck)
  if not is_panels(deck) then return false, "boards are judged by nails at each rafter" end
  return is_nailed(job, figure, deck)
end)

local boards_are_nailed = reads({ is_panels, is_nailed }, function(job, figure, deck)
  if is_panels(deck) then return false, "panels are judged by the spacing of their nails" end
  return is_nailed(job, figure, deck)
end)

-- Past this speed, and wherever the map calls for a wind design, the table no longer
-- binds: someone has to design the roof.
local past_table = reads({
  facts = { "site.wind_design_required", "site.wind_vult_mph" },
  figures = { "deck.nail_wind_by_map", "deck.nail_wind_under" },
}, function(job, figure)
  if math.floor(job.site.wind_vult_mph + 0.5) >= figure "deck.nail_wind_under" then return true end
  return figure "deck.nail_wind_by_map" and job.site.wind_design_required
end)

-- Does the wind call for closer nails at gable ends and in the band? Editions
-- differ on whether the speed named is itself inside.
local is_close_nailed = reads({
  facts = { "site.exposure", "site.wind_vult_mph" },
  figures = { "deck.nail_close_at_named_speed", "deck.nail_close_mph.*" },
}, function(job, figure)
  local speed = job.site.wind_vult_mph
  local named = figure("deck.nail_close_mph." .. job.site.exposure)
  if speed > named then return true end
  return math.floor(speed + 0.5) >= named and figure "deck.nail_close_at_named_speed"
end)

local measured = reads({
  figures = { "deck.over_spacing_most", "deck.over_spacing_share_most" },
}, function(figure, spacings, most)
  return spacings_at_most(spacings, most, "in", {
    share = figure "deck.over_spacing_share_most", over = figure "deck.over_spacing_most" })
end)

local PAST_TABLE = "in this wind the nailing table no longer binds: "
  .. "the nailing needs a wind design, which is not judged here"
local NO_ROW = "the nailing table has no row for panels this thick"
local STAPLES = "staples follow a table of their own, which is not judged here"

-- A table by wind -------------------------------------------------------------
--
-- A state may have a table of its own for new panels, by wind speed, exposure and
-- the framing's wood: which of four patterns, from wide to closest, holds the roof's
-- outer zone. A row of it names some of the four, from a first to a last, and to which
-- speed each will do. Inside of the outer zone one spacing does.

local PATTERNS = { "wide", "even", "close", "closest" }

local too_far_apart = reads({
  facts = { "decks[].support_spacing_in" },
  behind = { { "deck.nails_by_wind", "deck.wind_table_framing_most" } },
}, function(figure, deck)
  return not within(deck.support_spacing_in, figure "deck.wind_table_framing_most")
end)

local pattern_for = reads({
  whole_mph,
  facts = { "site.exposure" },
  behind = { { "deck.nails_by_wind", "deck.wind_pattern_first.*", "deck.wind_pattern_last.*",
    "deck.wind_pattern_vult_most.*" } },
}, function(job, figure, wood)
  local row = job.site.exposure .. "." .. wood
  local speed = whole_mph(job)
  for i = figure("deck.wind_pattern_first." .. row), figure("deck.wind_pattern_last." .. row) do
    if speed <= figure("deck.wind_pattern_vult_most." .. row .. "." .. PATTERNS[i]) then
      return PATTERNS[i]
    end
  end
  return nil
end)

-- The pattern, or nil and why there is none. The wood is asked for only where it matters.
local wind_pattern = reads({
  too_far_apart, pattern_for,
  facts = { "decks[].framing_wood" },
  behind = { { "deck.nails_by_wind", "deck.wind_table_dense_woods",
    "deck.wind_table_light_woods" } },
}, function(job, figure, deck)
  if too_far_apart(figure, deck) then
    return nil, "the nailing table by wind ends at framing "
      .. number(figure "deck.wind_table_framing_most", "in") .. " apart"
  end
  local light, dense = pattern_for(job, figure, "light"), pattern_for(job, figure, "dense")
  local pattern = light
  if light ~= dense then
    local wood = deck.framing_wood
    if has(figure "deck.wind_table_dense_woods", wood) then
      pattern = dense
    elseif not has(figure "deck.wind_table_light_woods", wood) then
      return nil, "the nailing table by wind has no row for framing of this wood"
    end
  end
  if pattern then return pattern end
  return nil, "the nailing table by wind ends below this speed: the nailing needs a wind design, "
    .. "which is not judged here"
end)

local by_wind = reads({
  is_renailed_old,
  figures = { "deck.nails_by_wind" },
}, function(figure, deck)
  return figure "deck.nails_by_wind" and not is_renailed_old(figure, deck)
end)

-- Why no spacing can be judged, or nil when it can.
local no_spacing = reads({
  is_renailed_old, wind_pattern, past_table, nail_row,
  facts = { "decks[].nails.kind" },
  figures = { "deck.nails_by_wind" },
}, function(job, figure, deck)
  if deck.nails.kind == "staple" then return STAPLES end
  if is_renailed_old(figure, deck) then return nil end
  if figure "deck.nails_by_wind" then
    local pattern, why = wind_pattern(job, figure, deck)
    return why
  end
  if past_table(job, figure) then return PAST_TABLE end
  if not nail_row(figure, deck) then return NO_ROW end
  return nil
end)

-- In part an old deck, in part new panels: the closer of what each is asked.
local and_renailed = reads({
  renail_due,
  behind = { { "deck.renail_by_old_nails", "deck.renail_spacing_most" } },
}, function(job, figure, deck, most)
  if deck.work ~= "partly_replaced" or not figure "deck.renail_by_old_nails" then return most end
  local old = figure "deck.renail_spacing_most"
  if most <= old or not renail_due(job, figure, deck) then return most end
  return old
end)

local function is_loose(pattern)
  return pattern == "wide" or pattern == "even"
end

local edge_limit = reads({
  by_wind, wind_pattern, and_renailed,
  figures = { "deck.nail_edge_most" },
  behind = { { "deck.nails_by_wind", "deck.wind_inside_edge_most",
    "deck.wind_pattern_edge_most.*" } },
}, function(job, figure, deck)
  if is_renailed_old(figure, deck) then return figure "deck.renail_spacing_most" end
  if not by_wind(figure, deck) then return figure "deck.nail_edge_most" end
  local pattern = wind_pattern(job, figure, deck)
  local most = is_loose(pattern) and figure("deck.wind_pattern_edge_most." .. pattern)
    or figure "deck.wind_inside_edge_most"
  return and_renailed(job, figure, deck, most)
end)

local field_limit = reads({
  by_wind, nail_row, wind_pattern, and_renailed,
  figures = { "deck.nail_field_most.*" },
  behind = { { "deck.nails_by_wind", "deck.wind_inside_field_most",
    "deck.wind_pattern_field_most.*" } },
}, function(job, figure, deck)
  if is_renailed_old(figure, deck) then return figure "deck.renail_spacing_most" end
  if not by_wind(figure, deck) then
    return figure("deck.nail_field_most." .. nail_row(figure, deck))
  end
  local pattern = wind_pattern(job, figure, deck)
  local most = is_loose(pattern) and figure("deck.wind_pattern_field_most." .. pattern)
    or figure "deck.wind_inside_field_most"
  return and_renailed(job, figure, deck, most)
end)

local gable_limit = reads({
  by_wind, and_renailed, wind_pattern, is_close_nailed,
  figures = { "deck.nail_gable_close_most", "deck.nail_gable_most" },
  behind = { { "deck.nails_by_wind", "deck.wind_pattern_edge_most.*" } },
}, function(job, figure, deck)
  if is_renailed_old(figure, deck) then return figure "deck.renail_spacing_most" end
  if by_wind(figure, deck) then
    return and_renailed(job, figure, deck,
      figure("deck.wind_pattern_edge_most." .. wind_pattern(job, figure, deck)))
  end
  if is_close_nailed(job, figure) then return figure "deck.nail_gable_close_most" end
  return figure "deck.nail_gable_most"
end)

local band_limit = reads({
  by_wind, and_renailed, wind_pattern, is_close_nailed, nail_row,
  figures = { "deck.nail_band_close_most", "deck.nail_band_most.*" },
  behind = { { "deck.nails_by_wind", "deck.wind_pattern_field_most.*" } },
}, function(job, figure, deck)
  if is_renailed_old(figure, deck) then return figure "deck.renail_spacing_most" end
  if by_wind(figure, deck) then
    return and_renailed(job, figure, deck,
      figure("deck.wind_pattern_field_most." .. wind_pattern(job, figure, deck)))
  end
  if is_close_nailed(job, figure) then return figure "deck.nail_band_close_most" end
  return figure("deck.nail_band_most." .. nail_row(figure, deck))
end)

-- Framing closer than the table's may be nailed by a standard of its own, which is not
-- held here, up to the widest pattern.
local standard_may_do = reads({
  by_wind,
  facts = { "decks[].support_spacing_in" },
  behind = { { "deck.nails_by_wind", "deck.wind_pattern_edge_most.*",
    "deck.wind_pattern_field_most.*", "deck.wind_table_framing_most" } },
}, function(figure, deck, found, most, place)
  if not by_wind(figure, deck) or within(found, most) then return false end
  local framing = figure "deck.wind_table_framing_most"
  if as_printed(deck.support_spacing_in, "in") >= as_printed(framing, "in") then return false end
  return within(found, figure("deck.wind_pattern_" .. place .. "_most.wide"))
end)

local STANDARD = "the nailing table by wind is for framing 24 in apart; for closer framing the "
  .. "code takes a wood standard's spacing, which is not held here"

-- What the deck is -----------------------------------------------------------

-- Every covering may lie on a solid deck. What others than asphalt shingles ask of
-- spaced boards is held for wood only, in wood.lua.
demand "deck.solid" {
  title = "Solid deck under the covering",
  stage = "permit",
  per = "decks",
  when = {
    either {
      is { "covering.kind", "asphalt_shingle" },
      on "deck.solid_counts_for_all",
      all {
        no { is { "covering.kind", "coating" }, otherwise = "a coating lies on the old roof" },
        no { is { "covering.kind", "wood_shingle", "wood_shake" },
          otherwise = "spaced boards under wood are judged by wood.spaced_deck" },
        all { no { is { "decks[].work", "paneled_over" } }, is { "decks[].kind", "spaced_board" },
          otherwise = "a solid deck bears this covering" },
      },
    },
  },
  open = {
    { when = { no { is { "covering.kind", "asphalt_shingle" } }, off "deck.solid_counts_for_all" },
      says = NOT_JUDGED_HERE },
  },
  found = function(job, figure, deck) return is_panels(deck) and "panel" or deck.kind end,
  meets = "deck.kinds_solid",
  reads = { is_panels },
  mend = "Cover the spaced boards with panels, or fill between them with boards as thick.",
  caution = "Walking on spaced boards is walking on holes: lay walk boards first.",
}

demand "deck.sound" {
  title = "No rotted, soft or split deck left",
  stage = "deck",
  per = "decks",
  when = {
    no { is { "scope.method", "overlay" }, otherwise = "an overlay hides the deck; the old roof's "
      .. "condition is judged with the layers" },
  },
  -- Said both ways, the rules for new deck would pass it over; left out, nobody could tell.
  open = {
    { when = is { "decks[].work", "kept" }, says = function(job, figure, deck)
      return deck.replaced_sqft > 0 and "this deck is said to be kept as it is, yet "
        .. number(deck.replaced_sqft, "sqft") .. " of it replaced: say which" or nil
    end },
  },
  found = function(job, figure, deck)
    local left = math.max(0, deck.unsound_sqft - deck.replaced_sqft)
    work(number(deck.unsound_sqft, "sqft") .. " unsound, " .. number(deck.replaced_sqft, "sqft")
      .. " replaced: " .. number(left, "sqft") .. " left")
    return left
  end,
  unit = "sqft",
  measured = "decks[].measured_unsound_left_sqft", meets = "deck.unsound_left_most",
  reads = { facts = { "decks[].replaced_sqft", "decks[].unsound_sqft" } },
  mend = "Replace all of the unsound deck, back to the middle of a rafter on each side.",
  caution = "Rotted deck does not hold a person: probe it from a board or from below.",
}

-- Panels bought for this roof: over a deck, or in place of some of it.
local gets_panels = reads({ is_panels }, function(_, _, deck)
  if not is_panels(deck) then return false, "this deck is boards" end
  return deck.work ~= "kept", "this deck is kept: no new panel goes in"
end)

demand "deck.exposed_bond" {
  title = "Exposure grade of new panels seen from below",
  stage = "deck",
  per = "decks",
  when = {
    gets_panels,
    is { "decks[].seen_from_below", otherwise = "none of it is seen from below" },
  },
  fact = "decks[].bond", meets = "deck.exposed_bonds",
  mend = "Use panels stamped Exposure 1 or Exterior where they are seen from below.",
}

-- A slot left from an old ridge vent is a hole in the deck that shingles are nailed to.
demand "deck.ridge_slot" {
  title = "Old slot along the ridge closed",
  stage = "deck",
  when = {
    function(job)
      if job.scope.method == "overlay" then return false, "the deck stays covered" end
      return job.roof.ridge_ft > 0, "the roof has no ridge"
    end,
    said "roof.ridge_slot",
    is { "roof.ridge_slot", "closed", otherwise = "no slot is closed" },
  },
  fact = "roof.ridge_slot_filled", meets = "deck.slot_fills",
  reads = { facts = { "roof.ridge_ft", "scope.method" } },
  mend = "Fill the slot with panel or board as thick as the deck, nailed to the framing.",
  caution = "An open slot along the ridge catches a foot: mark it, and close it first.",
}

-- What panels span -----------------------------------------------------------

-- How far panels of the rating may span as they are held at their edges.
local span_allowed = reads({
  support_spacing, panel_thickness,
  facts = { "decks[].edge_support", "decks[].span_rating" },
  figures = { "deck.panel_span_supported.*", "deck.panel_span_thick_from",
    "deck.panel_span_thick_ratings", "deck.panel_span_unsupported.*",
    "deck.panel_span_unsupported_thick" },
}, function(job, figure, deck)
  local spacing = support_spacing(deck)
  local rating = deck.span_rating
  if deck.edge_support ~= "none" then return figure("deck.panel_span_supported." .. rating) end
  local span = figure("deck.panel_span_unsupported." .. rating)
  if spacing <= span then return span end
  -- A footnote lets one rating span further when the panel is thick.
  if not has(figure "deck.panel_span_thick_ratings", rating) then return span end
  local thick = as_printed(figure "deck.panel_span_thick_from", "in")
  if as_printed(panel_thickness(deck), "in") < thick then return span end
  return figure "deck.panel_span_unsupported_thick"
end)

-- The tables are for new panels. Whether sound old ones may stay that would
-- not meet them is the place's to say.
local may_stay = reads({
  facts = { "decks[].work" },
  figures = { "deck.kept_held_to_tables" },
}, function(figure, deck)
  return deck.work == "kept" and not figure "deck.kept_held_to_tables"
end)

local MAY_STAY = "a new deck like this would not meet the table; whether a sound one "
  .. "that stays may keep it is for the building department to say"

local stays_perhaps = {
  when = { is { "decks[].work", "kept" }, off "deck.kept_held_to_tables" }, open = MAY_STAY,
}

local PANELS_END = "the table of panels by wind ends at framing 24 in apart: wider framing needs a "
  .. "design"

local spans_as_panels = reads({
  facts = { "decks[].kind", "decks[].work" },
}, function(job, figure, deck)
  if deck.kind == "panel" then return true end
  if deck.work ~= "paneled_over" then return false, "this deck is boards" end
  return deck.kind == "spaced_board", "the tight boards under the new panels carry them"
end)

demand "deck.panel_span" {
  title = "Panel span rating for the supports",
  stage = "permit",
  per = "decks",
  when = { spans_as_panels },
  found = function(job, figure, deck) return support_spacing(deck) end, unit = "in",
  meets = { "deck.panel_span_supported.*", "deck.panel_span_unsupported.*",
    "deck.panel_span_unsupported_thick", limit = span_allowed, unit = "in" },
  instead = { stays_perhaps },
  reads = { support_spacing },
  mend = function(job, figure, deck)
    local held = figure("deck.panel_span_supported." .. deck.span_rating)
    if deck.edge_support == "none" and support_spacing(deck) <= held then
      return "Hold the edges with clips, blocking or tongue and groove: a " .. deck.span_rating
        .. " panel then spans " .. number(held, "in") .. "."
    end
    return "Use panels rated for " .. number(support_spacing(deck), "in") .. " on center."
  end,
  caution = "Panels that span too far bounce underfoot and lift their nails.",
}

demand "deck.panel_thickness" {
  title = "Panel thickness for its span rating",
  stage = "permit",
  per = "decks",
  when = { spans_as_panels },
  -- A kept panel is measured itself, not the one laid over it.
  found = function(job, figure, deck)
    return deck.kind == "panel" and deck.thickness_in or panel_thickness(deck)
  end,
  unit = "in",
  meets = { "deck.panel_thickness_least.*", unit = "in", limit = function(job, figure, deck)
    return figure("deck.panel_thickness_least." .. deck.span_rating)
  end },
  instead = { stays_perhaps },
  reads = { panel_thickness, facts = { "decks[].span_rating" } },
  mend = "Read the stamp and measure again: panels of this rating are not made so thin.",
}

-- A state's table of new panels by wind. What it names for a panel does for a
-- stronger one.
rule "deck.panel_wind" {
  title = "New panels strong enough for the wind",
  stage = "permit",
  per = "decks",
  reads = {
    spans_as_panels, support_spacing, whole_mph,
    facts = { "decks[].span_rating", "site.exposure" },
    behind = { { "deck.panels_by_wind", "deck.panel_vult_most.*", "deck.panel_wind_ratings.*",
      "deck.wind_table_framing_most" } },
  },
  applies = function(job, figure, deck)
    if not figure "deck.panels_by_wind" then return false, "no table of panels by wind here" end
    if deck.work == "kept" then return false, "the table is for new panels; this deck stays" end
    return spans_as_panels(job, figure, deck)
  end,
  judge = function(job, figure, deck)
    local framing = figure "deck.wind_table_framing_most"
    local spacing = as_printed(support_spacing(deck), "in")
    if spacing > framing then return cannot_tell(PANELS_END) end
    local rating = deck.span_rating == "60/32" and "48/24" or deck.span_rating
    local ground = job.site.exposure
    local named = figure("deck.panel_wind_ratings." .. ground)
    local speed = whole_mph(job)
    local met = has(named, rating) and speed <= figure("deck.panel_vult_most." .. ground .. "."
      .. rating)
    if not met and spacing < framing then
      return cannot_tell("the table of panels by wind is for framing " .. number(framing, "in")
        .. " apart; what closer framing may carry is not held here")
    end
    if not has(named, rating) then return one_of(rating, named) end
    return at_most(speed, figure("deck.panel_vult_most." .. ground .. "." .. rating), "mph")
  end,
  mend = "Use thicker panels of a higher span rating.",
}

-- A place's own least thickness, of decks of the kinds it names.
demand "deck.thickness" {
  title = "Least thickness of deck that the place asks for",
  stage = "permit",
  per = "decks",
  when = {
    on { "deck.thickness_counts", otherwise = "the place sets no thickness beyond the tables" },
    meant { "decks[].kind", "deck.thickness_kinds",
      otherwise = "no thickness is set for this kind of deck" },
    no { all { on "deck.thickness_new_only", is { "decks[].work", "kept" } },
      otherwise = "this deck stays as it is" },
    no { all { on "deck.thickness_over_only", no { is { "decks[].work", "paneled_over" } } },
      otherwise = "no panels are laid over this deck" },
  },
  found = function(job, figure, deck) return panel_thickness(deck) end, unit = "in",
  meets = "deck.thickness_least",
  instead = {
    stays_perhaps,
    { when = on "deck.shear_listing_allowed", fact = "decks[].shear_listed",
      shown = "panels listed as equal in shear" },
  },
  reads = { panel_thickness },
  mend = "Use panels of that thickness.",
}

demand "deck.panel_edges" {
  title = "No bare panel edge at eaves and rakes",
  stage = "deck",
  per = "decks",
  when = {
    on { "deck.panel_edges_hidden_required",
      otherwise = "nothing is said about the edges of new panels" },
    is { "decks[].work", "paneled_over", otherwise = "no panels are laid over this deck" },
  },
  fact = "decks[].panel_edges_bare",
  wants = false,
  shown = "panel edges covered at eaves and rakes",
  mend = "Cover the edges with metal or trim.",
}

demand "deck.panel_joints" {
  title = "Joints of new panels over spaced boards",
  stage = "deck",
  per = "decks",
  when = {
    on { "deck.panel_joints_count",
      otherwise = "nothing is said about the joints of new panels" },
    all { is { "decks[].kind", "spaced_board" }, is { "decks[].work", "paneled_over" },
      otherwise = "no panels are laid over spaced boards" },
  },
  fact = "decks[].joints_staggered", shown = "panel joints that are staggered",
  also = {
    { fact = "decks[].joints_on_supports", shown = "end joints on rafters or trusses" },
    { fact = "decks[].joints_filled", shown = "solid wood under the joints between supports" },
  },
  mend = "Lay the panels over again, with fill between the boards under their long joints.",
}

demand "deck.panel_gap" {
  title = "Gap between new panels",
  stage = "deck",
  per = "decks",
  when = {
    function(job, figure, deck) return is_panels(deck), "this deck is boards" end,
    no { is { "decks[].work", "kept" }, otherwise = "no new panels are laid" },
  },
  fact = "decks[].panel_gap_in", meets = { "deck.panel_gap_least", "deck.panel_gap_most" },
  reads = { is_panels },
  mend = "Space panels with a nail shank while laying; cut back tight edges, recut wide ones.",
  caution = "Panels laid tight swell and buckle the shingles.",
}

-- Boards ---------------------------------------------------------------------

rule "deck.board_thickness" {
  title = "Board thickness for the support spacing",
  stage = "permit",
  per = "decks",
  reads = {
    may_stay,
    facts = { "decks[].kind", "decks[].support_spacing_in", "decks[].thickness_in" },
    figures = { "deck.board_spacing_most", "deck.board_thickness_least",
      "deck.board_thickness_least_wide" },
  },
  applies = function(job, figure, deck)
    return deck.kind == "board", "this deck is not tight boards"
  end,
  judge = function(job, figure, deck)
    local spacing, inches = deck.support_spacing_in, deck.thickness_in
    local near = spacing <= figure "deck.board_spacing_most"
    local least = figure(near and "deck.board_thickness_least" or "deck.board_thickness_least_wide")
    if as_printed(inches, "in") < as_printed(least, "in") then
      if may_stay(figure, deck) then return cannot_tell(MAY_STAY) end
      return at_least(inches, least, "in")
    end
    if not near then
      return cannot_tell("rafters " .. number(spacing, "in") .. " apart need tongue-and-groove "
        .. "boards of a strength that is not judged here")
    end
    return at_least(inches, least, "in")
  end,
  mend = "Lay panels rated for the rafter spacing over the boards, nailed into the rafters.",
}

demand "deck.board_gap" {
  title = "Gaps between boards",
  stage = "permit",
  per = "decks",
  when = {
    is { "decks[].kind", "board", otherwise = "this deck is not tight boards" },
    no { is { "decks[].work", "paneled_over" }, otherwise = "new panels cover the gaps" },
  },
  fact = "decks[].board_gap_in", meets = "deck.board_gap_most",
  say = "The code says solid and gives no gap; shingle makers often give one.",
  mend = "Fill the gaps, or lay panels over the boards.",
  caution = "A nail in a gap holds nothing, and a foot may go through a knot beside it.",
}

demand "deck.board_nails" {
  title = "Nails in each board at each rafter",
  stage = "deck",
  per = "decks",
  when = { boards_are_nailed },
  fact = "decks[].nails.per_bearing", measured = "decks[].nails.measured_per_bearing",
  meets = { "deck.board_nails_least.*", "deck.board_nails_least_box.*", unit = "nails",
    limit = function(job, figure, deck)
      return board_nails_least(figure, deck, not is_renailed_old(figure, deck) and deck.nails.kind)
    end },
  reads = { board_nails_least, is_renailed_old, facts = { "decks[].nails.kind" } },
  mend = "Add nails until every board has that many at every rafter it crosses.",
}

-- Which nail -----------------------------------------------------------------

-- A nail the table does not name, yet no smaller than one it does, is for the
-- department to judge. A smooth nail never stands in for a ringed one.
local stands_in_for = reads({
  figures = { "deck.nail_length.*", "deck.nail_shank.*", "deck.nails_ringed" },
}, function(figure, kind, named)
  local ringed = figure "deck.nails_ringed"
  for _, one in ipairs(named) do
    if figure("deck.nail_length." .. kind) >= figure("deck.nail_length." .. one)
      and figure("deck.nail_shank." .. kind) >= figure("deck.nail_shank." .. one)
      and (has(ringed, kind) or not has(ringed, one)) then
      return one
    end
  end
  return nil
end)

-- Framing too light for the table's own nails.
local is_light_framing = reads({
  is_panels,
  facts = { "decks[].framing_wood" },
  figures = { "deck.nail_gravity_counts", "deck.nail_gravity_least", "wind.gravity.*" },
}, function(figure, deck)
  return figure "deck.nail_gravity_counts" and is_panels(deck)
    and figure("wind.gravity." .. deck.framing_wood) < figure "deck.nail_gravity_least"
end)

local named_nails = reads({
  is_renailed_old, nail_row, is_light_framing,
  figures = { "deck.nail_kinds.*", "deck.nail_kinds_light" },
  behind = { { "deck.renail_by_old_nails", "deck.renail_kinds", "deck.renail_kinds_board" } },
}, function(figure, deck)
  if is_renailed_old(figure, deck) then
    return figure(is_panels(deck) and "deck.renail_kinds" or "deck.renail_kinds_board")
  end
  if not is_panels(deck) then return figure "deck.nail_kinds.board" end
  local row = nail_row(figure, deck)
  if row and is_light_framing(figure, deck) then return figure "deck.nail_kinds_light" end
  return row and figure("deck.nail_kinds." .. row)
end)

-- On the roof the name on paper no longer does: someone has to read the box.
local is_as_labelled = reads({
  facts = { "decks[].nails.measured_label_matches" },
}, function(job, figure, deck)
  if inspecting() and not deck.nails.measured_label_matches then
    cannot_tell("the label on the nail box does not show the nail this job names: "
      .. "say which nail is in the deck")
  end
  return true
end)

rule "deck.nail_kind" {
  title = "Kind of deck nail",
  stage = "deck",
  per = "decks",
  reads = {
    is_as_labelled, whole_mph, named_nails, stands_in_for,
    facts = { "decks[].nails.kind" },
    figures = { "deck.fasteners_barred", "deck.staple_mph_most" },
  },
  applies = is_nailed,
  judge = function(job, figure, deck)
    local kind = deck.nails.kind
    is_as_labelled(job, figure, deck)
    if kind == "staple" then
      local most = figure "deck.staple_mph_most"
      if whole_mph(job) > most then return at_most(job.site.wind_vult_mph, most, "mph") end
      local barred = figure "deck.fasteners_barred"
      if has(barred, kind) then return none_of(kind, barred) end
      return cannot_tell(STAPLES)
    end
    local named = named_nails(figure, deck)
    if not named then return cannot_tell(NO_ROW) end
    local instead = not has(named, kind) and stands_in_for(figure, kind, named)
    if instead then
      return cannot_tell("the table does not name this nail, but one no larger ("
        .. in_words(instead) .. "): ask the building department whether it will do")
    end
    return one_of(kind, named)
  end,
  mend = function(job, figure, deck)
    local named = named_nails(figure, deck)
    if not named then return "Ask for a nailing schedule for this deck." end
    local said = {}
    for _, kind in ipairs(named) do table.insert(said, in_words(kind)) end
    return "Nail with one of: " .. table.concat(said, ", ") .. "."
  end,
  caution = "Gun nails sold as 8d are usually thinner than 8d common: read the box.",
}

local nail_has_a_size = reads({
  is_nailed,
  facts = { "decks[].nails.kind" },
}, function(job, figure, deck)
  local nailed, why = is_nailed(job, figure, deck)
  if not nailed then return false, why end
  return deck.nails.kind ~= "staple", "staples have no nail size"
end)

demand "deck.nail_length" {
  title = "Deck nail as long as its name says",
  stage = "deck",
  per = "decks",
  when = { nail_has_a_size, is_as_labelled },
  fact = "decks[].nails.length_in",
  meets = { "deck.nail_length.*", unit = "in", sense = "at_least",
    behind = { { "deck.renail_by_old_nails", "deck.renail_length_least" } },
    limit = function(job, figure, deck)
      local kind = deck.nails.kind
      if is_renailed_old(figure, deck) and has(figure "deck.renail_kinds", kind) then
        return figure "deck.renail_length_least"
      end
      return figure("deck.nail_length." .. kind)
    end },
  reads = { is_renailed_old, behind = { { "deck.renail_by_old_nails", "deck.renail_kinds" } } },
  mend = "Use nails of the full length; the name on the gun's magazine is not a size.",
}

demand "deck.nail_shank" {
  title = "Deck nail as thick as its name says",
  stage = "deck",
  per = "decks",
  when = { nail_has_a_size, is_as_labelled },
  fact = "decks[].nails.shank_in", meets = "deck.nail_shank", by = "decks[].nails.kind",
  mend = "Use nails of the full shank, read from the box label.",
  caution = "Keep the box label or a picture of it for the inspector.",
}

-- Spacings -------------------------------------------------------------------

-- The widest spacing planned, or measured once the deck is looked at.
local widest_of = reads({
  facts = { "decks[].nails.edge_spacing_in", "decks[].nails.field_spacing_in",
    "decks[].nails.gable_spacing_in", "decks[].nails.measured_edge_spacing_in",
    "decks[].nails.measured_field_spacing_in", "decks[].nails.measured_gable_spacing_in" },
}, function(nails, place)
  if not inspecting() then return nails[place .. "_spacing_in"] end
  local most = 0
  for _, spacing in ipairs(nails["measured_" .. place .. "_spacing_in"]) do
    most = math.max(most, spacing)
  end
  return most
end)

local RENAILED = { "deck.renail_by_old_nails", "deck.renail_spacing_most" }

-- Why a spacing too wide for the table may still do; or nil.
local function by_standard(place, table_of, limit)
  return reads({ standard_may_do, widest_of, limit }, function(job, figure, deck)
    local most = limit(job, figure, deck)
    return standard_may_do(figure, deck, widest_of(deck.nails, place), most, table_of)
      and STANDARD or nil
  end)
end

demand "deck.nail_edges" {
  title = "Nail spacing along panel edges",
  stage = "deck",
  per = "decks",
  when = { panels_are_nailed },
  open = { { says = no_spacing } },
  fact = "decks[].nails.edge_spacing_in", measured = "decks[].nails.measured_edge_spacing_in",
  share = "deck.over_spacing_share_most", over = "deck.over_spacing_most",
  meets = { "deck.nail_edge_most", limit = edge_limit, unit = "in", behind = {
    RENAILED, { "deck.nails_by_wind", "deck.wind_pattern_edge_most.*",
      "deck.wind_inside_edge_most" } } },
  mend = "Add nails between those that are too far apart.",
}

demand "deck.nail_field" {
  title = "Nail spacing on rafters inside panels",
  stage = "deck",
  per = "decks",
  when = { panels_are_nailed },
  open = { { says = no_spacing }, { says = by_standard("field", "field", field_limit) } },
  fact = "decks[].nails.field_spacing_in", measured = "decks[].nails.measured_field_spacing_in",
  share = "deck.over_spacing_share_most", over = "deck.over_spacing_most",
  meets = { "deck.nail_field_most.*", limit = field_limit, unit = "in", behind = {
    RENAILED, { "deck.nails_by_wind", "deck.wind_pattern_field_most.*",
      "deck.wind_inside_field_most" } } },
  mend = "Add nails between those that are too far apart.",
}

-- A rake is where a gable end is.
local has_gable = reads({
  facts = { "decks[].name", "roof.edges[].kind", "roof.edges[].slope", "roof.slopes[].deck" },
}, function(job, deck)
  for _, edge in ipairs(job.roof.edges) do
    if edge.kind == "rake" and edge.slope.deck.name == deck.name then return true end
  end
  return false
end)

-- The first plane over this deck of which a side is not listed, or nil.
local unlisted_sides = reads({
  facts = { "decks[].name", "roof.edges[].kind", "roof.edges[].slope", "roof.slopes[].deck",
    "roof.slopes[].name" },
}, function(job, deck)
  for _, slope in ipairs(job.roof.slopes) do
    if slope.deck.name == deck.name then
      local sides = 0
      for _, edge in ipairs(job.roof.edges) do
        if edge.slope.name == slope.name and edge.kind ~= "eave" and edge.kind ~= "onto_roof" then
          sides = sides + 1
        end
      end
      if sides < 2 then return slope.name end
    end
  end
  return nil
end)

-- New panels reach past the wall by themselves for so far only; what framing carries may
-- reach further.
demand "deck.past_gable" {
  title = "Panels past the gable wall",
  stage = "deck",
  per = "roof.edges",
  when = {
    on { "deck.past_gable_counts",
      otherwise = "how far panels may reach past a gable wall is not judged here" },
    is { "roof.edges[].kind", "rake", otherwise = "no gable wall stands under this edge" },
    function(job, figure, edge) return is_panels(edge.slope.deck), "this deck is of boards" end,
    no { is { "roof.edges[].slope.deck.work", "kept" },
      otherwise = "no panel of this deck is laid anew" },
  },
  fact = "roof.edges[].overhang_in", meets = "deck.past_gable_most",
  instead = {
    { when = is "roof.edges[].framed_past_wall", fact = "roof.edges[].framed_past_wall",
      shown = "framing of its own under what passes the wall" },
    { when = is { "roof.edges[].slope.deck.work", "partly_replaced" },
      open = "old panels that stay may reach past the wall by more than that: whether a new one "
        .. "does here is not said" },
  },
  reads = { is_panels, facts = { "roof.edges[].slope", "roof.slopes[].deck" } },
  mend = "Let framing of its own carry the deck past the wall, or cut the panels back.",
  caution = "Deck that hangs free past a gable bears nobody: stay off it.",
}

demand "deck.nail_gable" {
  title = "Nail spacing into gable-end framing",
  stage = "deck",
  per = "decks",
  when = { function(job, figure, deck)
    local nailed, why = panels_are_nailed(job, figure, deck)
    if not nailed then return false, why end
    if has_gable(job, deck) or unlisted_sides(job, deck) then return true end
    return false, "no rake is listed over this deck, so it has no gable end"
  end },
  open = {
    { says = no_spacing },
    { says = function(job, figure, deck)
      return not has_gable(job, deck) and "not both sides of " .. unlisted_sides(job, deck)
        .. " are listed under roof.edges, so whether this deck has a gable end is not known" or nil
    end },
    { says = by_standard("gable", "edge", gable_limit) },
  },
  fact = "decks[].nails.gable_spacing_in", measured = "decks[].nails.measured_gable_spacing_in",
  share = "deck.over_spacing_share_most", over = "deck.over_spacing_most",
  meets = { "deck.nail_gable_most", "deck.nail_gable_close_most", limit = gable_limit,
    unit = "in", behind = { RENAILED, { "deck.nails_by_wind", "deck.wind_pattern_edge_most.*" } } },
  reads = { panels_are_nailed, has_gable, unlisted_sides },
  mend = "Add nails into the gable-end truss or rafter.",
  caution = "Gable ends are where decks begin to peel; work there tied off.",
}

-- Only where the band is to be nailed closer than the field around it.
local band_is_closer = reads({
  panels_are_nailed, no_spacing, band_limit, field_limit,
}, function(job, figure, deck)
  local nailed, why = panels_are_nailed(job, figure, deck)
  if not nailed then return false, why end
  if no_spacing(job, figure, deck) then return true end -- judge says why it cannot
  if band_limit(job, figure, deck) < field_limit(job, figure, deck) then return true end
  return false, "no closer nailing than in the field is asked for here"
end)

-- A field nailed as close as the band needs no band: by what was measured, once
-- the deck is looked at. A table by wind holds the panels' edges in the band too.
local field_does = reads({ by_wind, widest_of }, function(figure, deck, most)
  if by_wind(figure, deck) and widest_of(deck.nails, "edge") > most then return false end
  return widest_of(deck.nails, "field") <= most
end)

rule "deck.nail_band" {
  title = "Closer nails near eaves, ridges and gables",
  stage = "deck",
  per = "decks",
  reads = {
    no_spacing, band_limit, measured, field_does, standard_may_do,
    facts = { "decks[].nails.band_spacing_in", "decks[].nails.measured_band_spacing_in" },
  },
  applies = band_is_closer,
  judge = function(job, figure, deck)
    local why = no_spacing(job, figure, deck)
    if why then return cannot_tell(why) end
    local nails, most = deck.nails, band_limit(job, figure, deck)
    -- What was measured elsewhere in the field says nothing of the band.
    if inspecting() then return measured(figure, nails.measured_band_spacing_in, most) end
    if not known(nails, "band_spacing_in") and field_does(figure, deck, most) then
      return at_most(nails.field_spacing_in, most, "in")
        :say("The whole field is nailed that close.")
    end
    if standard_may_do(figure, deck, nails.band_spacing_in, most, "field") then
      return cannot_tell(STANDARD)
    end
    return at_most(nails.band_spacing_in, most, "in")
  end,
  mend = "Add nails on every rafter within the band.",
}

demand "deck.nail_band_width" {
  title = "Width of the closer-nailed band",
  stage = "deck",
  per = "decks",
  when = { function(job, figure, deck)
    local closer, why = band_is_closer(job, figure, deck)
    if not closer then return false, why end
    if no_spacing(job, figure, deck) then return true end
    return not field_does(figure, deck, band_limit(job, figure, deck)),
      "the whole field is nailed as close as the band"
  end },
  open = { { says = no_spacing } },
  fact = "decks[].nails.band_width_in", measured = "decks[].nails.measured_band_width_in",
  meets = "deck.nail_band_width_least",
  reads = { band_is_closer, field_does },
  mend = "Carry the closer nailing further in from the eaves, ridges and gable ends.",
}

-- The closest of all spacings planned, or of all measured. Gable ends and a band
-- count where the job has them.
local closest_nails = reads({
  has_gable,
  facts = { "decks[].nails.band_spacing_in", "decks[].nails.edge_spacing_in",
    "decks[].nails.field_spacing_in", "decks[].nails.gable_spacing_in",
    "decks[].nails.measured_band_spacing_in", "decks[].nails.measured_edge_spacing_in",
    "decks[].nails.measured_field_spacing_in", "decks[].nails.measured_gable_spacing_in" },
}, function(job, figure, deck)
  local nails, gable = deck.nails, has_gable(job, deck)
  if not inspecting() then
    local closest = math.min(nails.edge_spacing_in, nails.field_spacing_in)
    if gable then closest = math.min(closest, nails.gable_spacing_in) end
    -- Left out, there is no band; nailed close, the band is for deck.nail_band to ask.
    if known(nails, "band_spacing_in") then closest = math.min(closest, nails.band_spacing_in) end
    return closest
  end
  local lists = { nails.measured_edge_spacing_in, nails.measured_field_spacing_in }
  if gable then table.insert(lists, nails.measured_gable_spacing_in) end
  if known(nails, "measured_band_spacing_in") then
    table.insert(lists, nails.measured_band_spacing_in)
  end
  local closest = math.huge
  for _, list in ipairs(lists) do
    for _, spacing in ipairs(list) do closest = math.min(closest, spacing) end
  end
  return closest
end)

demand "deck.nail_closest" {
  title = "Nails far enough not to split rafters",
  stage = "deck",
  per = "decks",
  when = { panels_are_nailed },
  found = closest_nails, unit = "in", meets = "deck.nail_spacing_least",
  mend = "Stagger the nails, or double the framing where they must be closer.",
}

demand "deck.nail_edge_distance" {
  title = "Nails kept from the panel edge",
  stage = "deck",
  per = "decks",
  when = { panels_are_nailed },
  fact = "decks[].nails.edge_distance_in", measured = "decks[].nails.measured_edge_distance_in",
  meets = "deck.nail_edge_distance_least",
  mend = "Nail further in; where the rafter is too narrow for both panels, add a strip to it.",
}

-- On the roof ----------------------------------------------------------------

demand "deck.nails_driven" {
  title = "Deck nails flush and in the rafter",
  stage = "deck",
  per = "decks",
  when = {
    is_nailed,
    inspected {
      otherwise = "looked at when the deck is nailed: heads flush, none beside the rafter" },
  },
  fact = "decks[].nails.overdriven_or_missed", meets = "deck.overdriven_allowed",
  mend = "Drive another nail beside each one that broke the face or missed; turn the gun down.",
  caution = "Pull or bend over the points that missed before anyone works in the attic.",
}

rule "deck.renailed" {
  title = "Kept deck nailed again",
  stage = "permit",
  per = "decks",
  reads = {
    renail_reaches, board_nails_least,
    facts = { "decks[].kind", "decks[].old_nails.edge_spacing_in",
      "decks[].old_nails.field_spacing_in", "decks[].old_nails.kind",
      "decks[].old_nails.length_in", "decks[].old_nails.per_bearing",
      "decks[].old_nails.shank_in", "decks[].renailed" },
    behind = { { "deck.renail_by_old_nails", "deck.old_nail_length_least",
      "deck.old_nail_shank_least", "deck.old_nail_spacing_most" } },
  },
  applies = function(job, figure, deck)
    if not old_deck_stays(figure, deck) then return false, "this deck gets new nails anyway" end
    if renail_reaches(job, figure, deck) then return true end
    return false, "the place does not ask for this house's kept deck to be nailed again"
  end,
  judge = function(job, figure, deck)
    local again = known(deck, "renailed") and deck.renailed
    if again or not figure "deck.renail_by_old_nails" or deck.old_nails.kind ~= "nail_8d" then
      return equals(deck.renailed, figure "deck.renail_required")
    end
    local old = deck.old_nails
    local stout = all_of(
      at_least(old.shank_in, figure "deck.old_nail_shank_least", "in"),
      at_least(old.length_in, figure "deck.old_nail_length_least", "in"))
    if deck.kind ~= "panel" then
      return all_of(stout, at_least(old.per_bearing, board_nails_least(figure, deck), "nails"))
    end
    local most = figure "deck.old_nail_spacing_most"
    return all_of(stout, at_most(old.edge_spacing_in, most, "in"),
      at_most(old.field_spacing_in, most, "in"))
      :say("The old nails are judged: as stout and close as this, they need no new ones.")
  end,
  mend = function(job, figure, deck)
    if not figure "deck.renail_by_old_nails" then
      return "Plan to nail the bare deck again before the underlayment goes on."
    end
    return "Plan to nail the bare deck again: beside staples or 6d nails the new ones alone must "
      .. "be close enough, beside 8d nails the old and the new together."
  end,
}
