-- Florida: the Florida Building Code, Residential (FBC-R), 7th edition (2020)
-- and 8th (2023), with the Building (FBC-B) and Existing Building (FBC-EB) books.
--
-- The 8th edition's text was read: chapters 3, 8 and 9 of the residential book,
-- chapters 1, 15 and 23 of the building one, chapter 7 of the existing one. Of the
-- 7th only pages that restate it were: what is taken from the text of 2023, or from
-- one of 2004 and 2006, is "parallel" there.
--
-- Wind: R301.2.1.1 wants a design method for houses from 115 mph, but sends roof
-- sheathing to R803 and coverings to chapter 9, whose tables end by themselves. So
-- no speed as such stands in the way of a reroof here.
--
-- The residential book names no day for its relief of newer houses, only that they
-- were permitted under the Florida Building Code, whose first day was 1 March 2002.
-- The high-velocity zone (Miami-Dade and Broward) goes by sections 1512 to 1525 of
-- the building book instead of chapter 9 here: only its number of nails is carried, and
-- what else they bear on is left open; of the 8th edition us-fl/high-velocity-zone has
-- more.
--
-- The 9th edition was to begin on 31 December 2026 (an engineers' page and a permit
-- service's; that it was adopted was not read). So that month says that it may have begun,
-- and after it this profile binds no more.

local OLD_TEXT = "officials' forum quoting the Florida text of 2004 and 2006; later ones recalled"
local FELTS = "read second-hand on a trade page about the sealed deck rule"
local YEAR_ONLY = "the state's cut-off is 1 March 2002, so a house of that year may be on either "
  .. "side of it"
local ONE_FAMILY = "the rule of 2007 and the statute behind it (s. 553.844) speak of site-built "
  .. "one-family houses, the code of no kind of house"
local BILL = "the bill of 2022 (SB 4-D), in force on its signing, 26 May 2022"
local STATUTES = "Florida Statutes"
local PACKETS = "two Florida counties' reroof pages"
local SHEETS = "Florida counties' reroof sheets"
local FORMS = "no line of the code: counties' reroof forms"
local EXEMPT = "since 1 July 2026 the owner of a one-family house needs none below 7,500 dollars, "
  .. "save for structural work, which a city takes roofing to be: ask yours"

local ALL_KINDS = { "one_family", "two_family", "townhouse" }
local EIGHT_PENNY = { "common_8d", "box_8d", "sinker_8d", "deformed_8d", "common_10d", "RSRS_01",
  "RSRS_02", "RSRS_03", "RSRS_04", "RSRS_05" }
local METALS = { "copper", "aluminum", "stainless", "galvanized", "aluminum_zinc", "zinc", "lead",
  "painted_terne" }

-- Table R803.2.3.1, framing 24 in apart: the last speed at which a pattern of nails
-- holds the outer zone, by exposure, and by wood of gravity 0.42 and of 0.49.
local NAILS = {
  B = { light = { even = 150, close = 180 }, dense = { wide = 120, even = 180 } },
  C = { light = { even = 130, close = 160, closest = 180 }, dense = { even = 160, close = 180 } },
  D = { light = { even = 120, close = 150, closest = 180 }, dense = { even = 140, close = 180 } },
}
local PATTERNS = { wide = { 6, 12 }, even = { 6, 6 }, close = { 4, 4 }, closest = { 3, 3 } }
local ORDER = { "wide", "even", "close", "closest" } -- as rules/deck.lua counts them

-- Table R803.2.2, framing 24 in apart: the last speed for panels of a span rating.
local PANELS = {
  B = { ["24/16"] = 140, ["32/16"] = 150, ["40/20"] = 180, ["48/24"] = 180 },
  C = { ["24/16"] = 120, ["32/16"] = 130, ["40/20"] = 170, ["48/24"] = 180 },
  D = { ["32/16"] = 115, ["40/20"] = 160, ["48/24"] = 180 },
}
local RATINGS = { "24/16", "32/16", "40/20", "48/24" }
local THICKNESS = { ["24/16"] = 0.4375, ["32/16"] = 0.46875, ["40/20"] = 0.59375,
  ["48/24"] = 0.71875 }

-- How a figure of the text is known: `read` makes one of a value, or, without a value,
-- says of one that is inherited that it stands here too.
local function reader(status, source)
  return function(value, cite, more)
    local figure = {}
    for name, said in pairs(more or {}) do figure[name] = said end
    figure[1], figure.cite, figure.status, figure.source = value, cite, status, source
    return figure
  end
end

local function in_unit(unit, sense, more)
  local figure = more or {}
  figure.unit, figure.sense = unit, sense
  return figure
end

local function deck_tables(read)
  local it = {}
  local nails, panels = "Table R803.2.3.1", "Table R803.2.2"
  for ground, woods in pairs(NAILS) do
    for wood, speeds in pairs(woods) do
      local row, first, last = ground .. "." .. wood, nil, nil
      for i, pattern in ipairs(ORDER) do
        if speeds[pattern] then
          first, last = first or i, i
          it["deck.wind_pattern_vult_most." .. row .. "." .. pattern] =
            read(speeds[pattern], nails, in_unit("mph", "at_most"))
        end
      end
      it["deck.wind_pattern_first." .. row] = read(first, nails, in_unit("count", "equals"))
      it["deck.wind_pattern_last." .. row] = read(last, nails, in_unit("count", "equals"))
    end
  end
  for pattern, spacings in pairs(PATTERNS) do
    it["deck.wind_pattern_edge_most." .. pattern] =
      read(spacings[1], nails, in_unit("in", "at_most"))
    it["deck.wind_pattern_field_most." .. pattern] =
      read(spacings[2], nails, in_unit("in", "at_most"))
  end
  for ground, speeds in pairs(PANELS) do
    local named = {}
    for _, rating in ipairs(RATINGS) do
      if speeds[rating] then
        table.insert(named, rating)
        it["deck.panel_vult_most." .. ground .. "." .. rating] =
          read(speeds[rating], panels, in_unit("mph", "at_most"))
      end
    end
    it["deck.panel_wind_ratings." .. ground] = read(named, panels, { sense = "one_of" })
  end
  for rating, least in pairs(THICKNESS) do
    it["deck.panel_thickness_least." .. rating] = read(least, panels)
  end
  -- The model code's table of spans is reserved here: its figures stand only as what a
  -- stamped rating means, and deck.panel_wind says what wind leaves of them.
  it["deck.panel_span_supported.24/16"] = read(24, panels)
  it["deck.panel_span_unsupported.24/16"] = read(24, panels)
  -- The book has no line on overdriven nails: they are no nails of its table.
  it["deck.overdriven_allowed"] = { cite = nails, status = "seen",
    source = "federal coastal construction manual, volume II, on nails that miss or break through" }
  it["deck.panels_by_wind"] = read(true, panels)
  it["deck.nails_by_wind"] = read(true, nails)
  it["deck.wind_table_framing_most"] = read(24, nails, in_unit("in", "at_most"))
  -- The rows are for wood of gravity 0.42 and of 0.49: 0.42 and 0.43, 0.50 and 0.55 by the
  -- wood standard's table.
  it["deck.wind_table_light_woods"] = read({ "spruce_pine_fir", "hem_fir" }, nails,
    { sense = "among" })
  it["deck.wind_table_dense_woods"] = read({ "douglas_fir_larch", "southern_pine" }, nails,
    { sense = "among" })
  -- Inside of the outer 4 ft one spacing does (note a).
  it["deck.wind_inside_edge_most"] = read(6, nails .. " note a", in_unit("in", "at_most"))
  it["deck.wind_inside_field_most"] = read(6, nails .. " note a", in_unit("in", "at_most"))
  it["deck.nail_band_width_least"] = read(48, nails .. " note a")
  it["deck.nail_panel_thin_most"] = read(0.46875, "R803.2.3.1")
  it["deck.nail_kinds.thin"] = read({ "RSRS_01", "RSRS_03", "RSRS_04" }, "R803.2.3.1")
  it["deck.nail_kinds.mid"] = read({ "RSRS_03" }, "R803.2.3.1", { instead = true })
  it["deck.nail_kinds.thick"] = read({ "RSRS_03" }, "R803.2.3.1", { instead = true })
  for kind, size in pairs { RSRS_01 = { 2.375, 0.113 }, RSRS_03 = { 2.5, 0.131 },
    RSRS_04 = { 3, 0.12 } } do
    it["deck.nail_length." .. kind] = read(size[1], "R803.2.3.1")
    it["deck.nail_shank." .. kind] = read(size[2], "R803.2.3.1")
  end

  -- An old deck, when its covering comes off. A job says only the year a house was
  -- built, so the whole of 2002 counts as before.
  it["deck.renail_required"] = read(true, "R908.7, R908.7.1")
  it["deck.renail_built_before"] = read(2003, "R908.7 exception", { disputed = YEAR_ONLY })
  it["deck.renail_house_kinds"] = read(ALL_KINDS, "R908.7", { disputed = ONE_FAMILY })
  it["deck.renail_by_old_nails"] = read(true, "Table R908.7.1.2")
  it["deck.old_nail_shank_least"] = read(0.113, "R908.7.1", in_unit("in", "at_least"))
  it["deck.old_nail_length_least"] = read(2.25, "R908.7.1", in_unit("in", "at_least"))
  it["deck.old_nail_spacing_most"] = read(6, "Table R908.7.1.2", in_unit("in", "at_most"))
  it["deck.renail_spacing_most"] = read(6, "Table R908.7.1.2", in_unit("in", "at_most"))
  it["deck.renail_kinds"] = read({ "RSRS_01" }, "R908.7.1.2", { sense = "one_of" })
  it["deck.renail_kinds_board"] = read(EIGHT_PENNY, "R908.7.1.1", { sense = "one_of" })
  it["deck.renail_length_least"] = read(2.25, "R908.7.1.2", in_unit("in", "at_least",
    { disputed = "the existing building book (706.7.1.2) prints 2-3/8 in for the same nail",
      rival = 2.375 }))
  it["deck.board_nails_least.narrow"] = read(2, "R908.7.1.1")
  it["deck.board_nails_least.wide"] = read(2, "R908.7.1.1")
  it["deck.board_spacing_most"] = read(24, "Table R803.1")
  it["deck.board_thickness_least"] = read(0.625, "Table R803.1")
  it["deck.board_thickness_least_wide"] = read(1.5, "Table R803.1")
  return it
end

-- What both editions share, as the text of 2023 has it.
local function shared(read, year)
  local it = deck_tables(read)
  local building, existing = { book = "FBC-B " .. year }, { book = "FBC-EB " .. year }
  local function add(figures) for name, figure in pairs(figures) do it[name] = figure end end

  add {
    ["layers.most"] = read(2, "R908.3 item 3"),
    ["layers.bases_allowed"] = read({ "sound" }, "R908.3 item 1"),
    ["layers.not_over"] = read({ "wood_shingle", "wood_shake", "slate", "clay_tile",
      "concrete_tile", "asbestos_cement" }, "R908.3 item 2"),
    ["layers.over_wood_shake_allowed"] = read(false, "R908.3 item 2"),
    ["layers.wood_hollow_needs_cover"] = read(true, "706.4", existing),
    -- Asphalt shingles where their maker takes the coating, which layers.maker asks.
    ["layers.coating_over"] = read({ "spray_foam", "asphalt_shingle" }, "R908.3 exc. 3 and 5"),
    ["layers.overlay_needs_maker"] = read(true, "R905.1"),
    ["layers.blisters_ways"] = read({ "none", "cut_and_fastened" }, "R908.3 item 4",
      { sense = "one_of" }),

    ["slope.least.asphalt_shingle"] = read(2, "R905.2.2"),
    ["slope.least.roll_roofing"] = read(1, "R905.5.2"),
    ["slope.least.metal_panel_lapped"] = read(3, "R905.10.2 item 1"),
    -- The sections on wood shingles and shakes are reserved.
    ["slope.least.wood_shingle"] = { cite = "R905.7, reserved", status = "parallel",
      source = "the model code" },
    ["slope.least.wood_shake"] = { cite = "R905.8, reserved", status = "parallel",
      source = "the model code" },
    ["slope.double_below"] = read(4, "Table R905.1.1.1"),
    ["slope.double_plies_least"] = read(2, "Table R905.1.1.1"),

    ["fasteners.metals"] = read({ "galvanized", "stainless", "aluminum", "copper" }, "R905.2.5"),
    ["fasteners.shank_least"] = read(0.105, "R905.2.5"),
    ["fasteners.head_least"] = read(0.375, "R905.2.5"),
    ["fasteners.penetration_least"] = read(0.75, "R905.2.5"),
    ["fasteners.per_shingle_least"] = read(4, "R905.2.6"),
    ["fasteners.hurricane_zone_counts"] = read(true, "1518.7.3.2", building),
    ["fasteners.per_shingle_least_hurricane_zone"] = read(6, "1518.7.3.2", building),
    ["fasteners.steep_over"] = read(21, "R905.2.6"),

    ["shingle.standards"] = read({ "D3462" }, "R905.2.4"),
    ["shingle.D7158_vult_most.D"] = read(116, "Table R905.2.6.1"),
    ["shingle.D7158_vult_most.G"] = read(155, "Table R905.2.6.1"),
    ["shingle.D7158_vult_most.H"] = read(194, "Table R905.2.6.1"),
    ["shingle.D7158_classes"] = read({ "D", "G", "H" }, "Table R905.2.6.1"),
    ["shingle.D3161_classes"] = read({ "D", "F" }, "Table R905.2.6.1"),
    ["shingle.D3161_vult_most.D"] = read(129, "Table R905.2.6.1"),
    ["shingle.D3161_vult_most.F"] = read(194, "Table R905.2.6.1"),
    ["shingle.wind_exposures"] = { cite = "no note to Table R905.2.6.1", status = "parallel",
      source = "the model code's note to its like table" },
    ["shingle.wind_height_most"] = { cite = "no note to Table R905.2.6.1", status = "parallel",
      source = "the model code's note to its like table" },

    ["drip_edge.eave_required"] = read(true, "R905.2.8.5"),
    ["drip_edge.rake_required"] = read(true, "R905.2.8.5"),
    ["drip_edge.lap_least"] = read(3, "R905.2.8.5"),
    ["drip_edge.down_least"] = read(0.5, "R905.2.8.5"),
    ["drip_edge.back_least"] = read(2, "R905.2.8.5"),
    ["drip_edge.fastener_spacing_most"] = read(12, "R905.2.8.5"),
    ["drip_edge.close_fastening"] = read(true, "R905.2.8.5"),
    ["drip_edge.close_spacing_most"] = read(4, "R905.2.8.5"),
    ["drip_edge.close_wind_from"] = read(110, "R905.2.8.5"),
    ["drip_edge.close_wind_on_vasd"] = read(true, "R905.2.8.5, R301.2.1.3"),
    ["drip_edge.close_height_over"] = read(33, "R905.2.8.5"),

    -- A sealed deck, one list of kinds, one lap and one nailing grid at any wind.
    ["underlayment.sealed_deck_required"] = read(true, "R905.1.1, R905.1.1.1"),
    ["underlayment.sealed_deck_methods"] = read({ "full_self_adhered", "taped_joints",
      "two_plies" }, "R905.1.1.1 items 1 to 3"),
    ["underlayment.kinds_self_adhered"] = read({ "D1970" }, "R905.1.1.1 item 1"),
    ["underlayment.plies_least"] = read(1, "R905.1.1.1"),
    ["underlayment.head_lap_least"] = read(4, "Table R905.1.1.1"),
    ["underlayment.end_lap_least"] = read(6, "R905.1.1.1 item 3"),
    ["underlayment.end_lap_offset_least"] = read(6, "R905.1.1.1 item 3"),
    -- By the roll: 19 and 18 in are those of a 36 in roll.
    ["underlayment.double_lap_by_roll"] = read(true, "R905.1.1.1 item 3"),
    ["underlayment.double_lap_past_half_least"] = read(1, "R905.1.1.1 item 3",
      in_unit("in", "at_least")),
    ["underlayment.head_lap_double_least"] = read(19, "R905.1.1.1 item 3"),
    ["underlayment.starter_width_least"] = read(18, "R905.1.1.1 item 3"),
    ["underlayment.third_course_counts"] = read(true, "R905.1.1.1 item 3"),
    ["underlayment.third_course_past_half_least"] = read(2, "R905.1.1.1 item 3",
      in_unit("in", "at_least")),
    ["underlayment.third_course_lap_least"] = read(20, "R905.1.1.1 item 3",
      in_unit("in", "at_least")),
    ["underlayment.any_wind_counts"] = read(true, "R905.1.1.1"),
    ["underlayment.lap_spacing_wind_most"] = read(6, "R905.1.1.1"),
    ["underlayment.field_spacing_wind_most"] = read(12, "R905.1.1.1"),
    ["underlayment.fasteners_wind"] = read({ "cap_nail" }, "R905.1.1.1"),
    ["underlayment.shanks"] = read({ "ringed" }, "R905.1.1.1"),
    ["underlayment.shank_least.ringed"] = read(0.083, "R905.1.1.1"),
    ["underlayment.cap_wind_least"] = read(1, "R905.1.1.1"),
    -- 32 gage, which the building book prints as this many inches.
    ["underlayment.cap_mils_least.metal"] = read(10, "R905.1.1.1, FBC-B 1517.5.2",
      { disputed = "sheet metal of 32 gage that is galvanized is 0.0134 in", rival = 13.4 }),
    ["underlayment.cap_mils_least.power_driven_metal"] = read(10, "Table R905.1.1.1"),
    ["underlayment.cap_mils_least.plastic"] = read(35, "R905.1.1.1"),
    ["underlayment.bite_least"] = read(0.75, "R905.1.1.1"),
    ["underlayment.metal_caps_count"] = read(true, "R905.1.1.1"),
    ["underlayment.metal_caps_from"] = read(170, "R905.1.1.1", in_unit("mph", "from")),
    ["underlayment.caps_metal"] = read({ "metal", "power_driven_metal" }, "R905.1.1.1",
      { sense = "one_of" }),

    ["ice_barrier.by_table"] = read(false, "R905.1.2, Table R301.2(1)"),
    ["ice_barrier.required"] = read(false, "R905.1.2, Table R301.2(1)"),

    ["valley.metal_width_least"] = read(16, "R905.2.8.2 item 1"),
    ["valley.roll_bottom_width_least"] = read(18, "R905.2.8.2 item 2"),
    ["valley.roll_top_width_least"] = read(36, "R905.2.8.2 item 2"),
    ["valley.smooth_width_least"] = read(36, "R905.2.8.2 item 3"),
    ["valley.self_adhered_width_least"] = read(36, "R905.2.8.2 item 3"),
    ["valley.metals"] = read(METALS, "Table R903.2.1"),
    ["valley.metal_mils_least.aluminum_zinc"] = read(17.9, "Table R903.2.1",
      in_unit("mil", "at_least")),

    -- Flashing: a table by metal; no size for step flashing, no kick-out.
    ["flashing.by_metal"] = read(true, "Table R903.2.1"),
    ["flashing.metals"] = read(METALS, "Table R903.2.1", { sense = "one_of" }),
    ["flashing.metals_by_gage"] = read({ "stainless" }, "Table R903.2.1", { sense = "among" }),
    ["flashing.metals_by_weight"] = read({ "lead", "painted_terne" }, "Table R903.2.1",
      { sense = "among" }),
    ["flashing.metal_gage_most.stainless"] = read(28, "Table R903.2.1",
      in_unit("gage", "at_most")),
    ["flashing.metal_weight_least.lead"] = read(2.5, "Table R903.2.1", in_unit("lb", "at_least")),
    ["flashing.metal_weight_least.painted_terne"] = read(20, "Table R903.2.1",
      in_unit("lb", "at_least")),
    ["flashing.step_has_size"] = read(false, "R905.2.8.3"),
    ["flashing.kickout_required"] = read(false, "R903.2.1"),
    ["flashing.sidewall_methods"] = read({ "step", "continuous" }, "R905.2.8.3"),
    ["flashing.sidewall_up_least"] = read(4, "R905.2.8.1 item 3"),
    ["flashing.sidewall_out_least"] = read(4, "R905.2.8.1 item 3"),
    ["flashing.base_kinds"] = read({ "metal", "mineral_roll" }, "R905.2.8.1"),
    ["flashing.base_roll_least"] = read(77, "R905.2.8.1"),
    ["flashing.reuse_barred"] = read({ "rusted", "damaged", "decayed" }, "R908.5"),
    ["flashing.cricket_required"] = read(true, "R903.2.2"),
    ["flashing.cricket_over"] = read(30, "R903.2.2"),
    ["flashing.cricket_skylight_exempt"] = read(true, "R903.2.2 exception"),
    ["flashing.cricket_by_table"] = read(true, "Table R1003.20"),

    ["fire.deemed_A_any_deck"] = read({}, "R902.1 exc. 1 to 3"),
    ["fire.lot_line_under"] = read(3, "R902.1"),

    ["ventilation.ratio_default"] = read(150, "R806.2"),
    ["ventilation.ratio_reduced"] = read(300, "R806.2 exception"),
    ["ventilation.high_share_least"] = read(40, "R806.2 exception"),
    ["ventilation.high_share_most"] = read(50, "R806.2 exception"),
    ["ventilation.upper_band_most"] = read(3, "R806.2 exception"),
    ["ventilation.opening_least"] = read(0.0625, "R806.1"),
    ["ventilation.opening_most"] = read(0.25, "R806.1"),
    -- The split alone: no zone asks for a retarder here.
    ["ventilation.reduced_needs_both"] = read(true, "R806.2 exception"),
    ["ventilation.retarder_zones"] = read({}, "R806.2 exception"),

    ["alarms.exterior_exempt"] = read(true, "R314.2.2 exc. 1, R315.1 exc."),
    ["permit.every"] = read(true, "105.1, 105.2", building),
    ["permit.life_days"] = read(180, "105.4.1", building),
    ["permit.early_start_counts"] = read(true, "105.12",
      { book = building.book, sense = "equals", stricter = true }),
    ["papers.approval_uplift_counts"] = read(true, "R905.4.5, R905.6.5",
      { sense = "equals", stricter = true }),
    ["papers.approval_uplift_coverings"] = read({ "metal_shingle", "slate" },
      "R905.4.5, R905.6.5", { sense = "among", behind = "papers.approval_uplift_counts" }),

    -- A quarter of the roof, or of a section of it, in 12 months.
    ["permit.rest_counts"] = read(true, "R908.1.1"),
    ["permit.rest_limit"] = read(25, "R908.1.1"),
    ["permit.rest_by_section"] = read(true, "R908.1.1"),
    ["permit.rest_at_counts"] = read(false, "R908.1.1"),
    ["permit.rest_months"] = read(12, "R908.1.1"),

    -- Ties from roof to wall: strengthened with the reroof, up to a share of its price.
    ["papers.wall_ties_required"] = read(true, "R908.8", { sense = "equals", stricter = true }),
    ["papers.wall_ties_house_kinds"] = read(ALL_KINDS, "R908.8",
      { sense = "one_of", disputed = ONE_FAMILY }),
    ["papers.wall_ties_value_from"] = read(300000, "R908.8", in_unit("usd", "from")),
    ["papers.wall_ties_built_before"] = read(2003, "R908.8 exception", in_unit("year", "under",
      { disputed = YEAR_ONLY })),
    ["papers.wall_ties_share_over"] = read(15, "R908.8 item 2, R908.8.1 exc. 2",
      in_unit("percent", "over")),
    ["papers.wall_tie_strap_least"] = read(500, "R908.8.1", in_unit("lb", "at_least")),
    ["papers.wall_tie_nails_least"] = read(4, "R908.8.1", in_unit("nails", "at_least")),
    ["papers.wall_ties_ways"] = read({ "improved", "sound_already", "done_to_share",
      "due_when_built" }, "R908.8.1 and its exceptions", { sense = "one_of" }),

    ["inspection.required.dry_in"] = read(true, "110.3", building),
  }
  local function of_existing(value, cite, more)
    more.book = existing.book
    return read(value, cite, more)
  end
  add {
    -- Deck and ties, where more than this much of the deck comes off.
    ["papers.diaphragm_counts"] = of_existing(true, "707.3.2",
      { sense = "equals", stricter = true }),
    ["papers.diaphragm_wind_over"] = of_existing(115, "707.3.2", in_unit("mph", "over")),
    ["papers.diaphragm_share_over"] = of_existing(30, "707.3.2", in_unit("percent", "over")),
    ["papers.diaphragm_built_before"] = of_existing(2003, "707.3.2 exception",
      in_unit("year", "under", { disputed = YEAR_ONLY })),
    -- More weight: so much of what lies there now, or one light second layer.
    ["layers.added_load_counts"] = of_existing(true, "707.2", { sense = "equals",
      stricter = true }),
    ["layers.added_load_most"] = of_existing(5, "707.2 exceptions 1 and 2",
      in_unit("percent", "at_most")),
    ["layers.second_layer_most"] = of_existing(3, "707.2 exception 3",
      in_unit("psf", "at_most")),
    -- A continuous flashing along a wall.
    ["flashing.one_piece_cement_required"] = read(true, "R905.2.8.1 item 3",
      { sense = "equals", stricter = true }),
    ["flashing.one_piece_spacing_most"] = read(6, "R905.2.8.1 item 3", in_unit("in", "at_most")),
    ["flashing.one_piece_lap_least"] = read(4, "R905.2.8.1 item 3", in_unit("in", "at_least")),
  }
  for metal, mils in pairs { copper = 24, aluminum = 24, galvanized = 17.9, aluminum_zinc = 17.9,
    zinc = 27 } do
    it["flashing.metal_mils_least." .. metal] = read(mils, "Table R903.2.1",
      in_unit("mil", "at_least"))
  end
  it["valley.metal_mils_least.copper"] = read(24, "Table R903.2.1")
  for _, one in ipairs { "mils_least.aluminum", "mils_least.galvanized", "mils_least.zinc",
    "gage_most.stainless", "weight_least.lead", "weight_least.painted_terne" } do
    it["valley.metal_" .. one] = read(nil, "Table R903.2.1")
  end

  -- Papers, as counties and the statutes have them.
  add {
    ["papers.commencement_required"] = { true, book = STATUTES, cite = "713.13", status = "seen",
      source = PACKETS },
    ["papers.commencement_posted_required"] = { true, book = STATUTES, cite = "713.13",
      status = "seen", source = PACKETS .. ": posted before the first visit" },
    ["papers.approval_sheets_required"] = { true, cite = "FBC 107; rule 61G20-3",
      status = "seen", source = SHEETS },
    ["papers.approval_sheets_least"] = { 1, cite = "county sheets; no number in the code",
      status = "practice", source = SHEETS, disputed = "a county wants 2", rival = 2 },
    ["papers.approval_numbers_required"] = { true, cite = "FBC 107; rule 61G20-3",
      status = "seen", source = "a Florida city's reroof handout" },
    ["papers.affidavit_required"] = { true, cite = FORMS, status = "practice",
      source = "five Florida handouts, which differ: affidavit, photographs or a visit, and "
        .. "some want it before a notary" },
    ["papers.affidavit_by_age"] = { true, cite = FORMS, status = "practice",
      source = "a Florida county's page: built in 2002 or before" },
    ["papers.affidavit_built_most"] = { 2002, cite = FORMS, status = "practice",
      source = "a Florida county's page: built in 2002 or before", disputed = YEAR_ONLY },
    ["inspection.proofs.dry_in"] = { { "visit", "photos" }, book = building.book, cite = "110.3",
      status = "seen", source = "a Florida county's reroof sheet",
      disputed = "not every county takes photographs", rival = { "visit" } },
  }
  return it
end

-- The notice of commencement by the price of the job.
local function commencement(it, dollars, source)
  it["papers.commencement_price_limit"] = { dollars, book = STATUTES, cite = "713.13",
    status = "seen", source = source }
end

local function with_old_notice(it)
  commencement(it, 2500, PACKETS)
  return it
end

local function with_new_notice(it)
  commencement(it, 5000, "notices of the change of law of October 2023")
  return it
end

-- A roof built to the code of 2007 or later may stay beside the new part.
local function with_relief(it)
  it["permit.rest_relief"] = { true, book = STATUTES, cite = "553.844(5)", status = "seen",
    source = BILL }
  it["permit.rest_relief_from"] = { 20090301, book = STATUTES, cite = "553.844(5)",
    status = "seen", source = "the commission's own page: the day the code of 2007 took effect" }
  return it
end

local LAYERS = { "D226_II", "D4869_III", "D4869_IV", "D8257", "other_synthetic" }

-- The 7th edition: the drip edge lies either way, the tape is wider, and synthetics
-- count as a layer by their approval, which underlayment.kind asks for.
local function of_2020()
  local it = shared(reader("parallel", "the state's code text of 2023"), "2020")
  local function put(name, value, status, source, more)
    local figure = more or {}
    figure[1], figure.status, figure.source = value, status, source
    figure.cite = string.sub(name, 1, 4) == "drip" and "R905.2.8.5" or "R905.1.1"
    it[name] = figure
  end
  put("drip_edge.orders_eave", { "over_metal" }, "parallel", OLD_TEXT)
  put("drip_edge.sealed_flange_allowed", true, "parallel", OLD_TEXT)
  it["drip_edge.orders_rake"] = { cite = "R905.2.8.5", status = "memory", source = "recalled",
    disputed = "the text of this edition was not read on rakes; this is the model code's order" }
  put("underlayment.tape_width_least", 4, "parallel", "trade magazine on the rule of 2007")
  put("underlayment.kinds_normal", { "D226_II", "D4869_III", "D4869_IV" }, "memory", FELTS)
  put("underlayment.tape_kinds", LAYERS, "memory", FELTS)
  put("underlayment.two_ply_kinds", LAYERS, "memory", FELTS)
  it["fasteners.past_thin_deck_least"] = { cite = "R905.2.5", status = "practice",
    source = "trade association bulletin", disputed = "in the high-velocity zone nail tips went "
      .. "3/16 in through before the 8th edition, read second-hand" }
  it["wind.asce_year"] = { 2016, cite = "R301.2.1", status = "parallel",
    source = "an engineer's newsletter and trade magazines on the editions" }
  return it
end

-- The standard of 2022. In exposure B its heights give the factors of the table but at
-- 35 ft (1.03 for 1.05); those of C and D are the model code's of 2024.
local function wind_of_2022(it, read)
  local function heights(value, status, source)
    return { value, cite = "Table R301.2.1(2)", status = status, source = source }
  end
  local worked_back = "worked back from the height factors of this edition"
  local sister = "gives the height factors of the model code, which this table shares"
  it["wind.asce_year"] = read(2022, "Table R301.2(2)")
  it["wind.kz_factor"] = heights(2.41, "seen", worked_back)
  it["wind.alpha.B"] = heights(7.5, "seen", worked_back)
  it["wind.gradient_height.B"] = heights(3280, "seen", worked_back)
  it["wind.alpha.C"] = heights(9.8, "parallel", sister)
  it["wind.gradient_height.C"] = heights(2460, "parallel", sister)
  it["wind.gradient_height.D"] = heights(1935, "parallel", sister)
  it["wind.kz_floor.B"] = read(0, "Table R301.2.1(2)")
  for roof, bands in pairs { low = { "" }, gable = { ".shallow", ".mid", ".steep" },
    hip = { ".shallow", ".mid", ".steep" } } do
    for _, band in ipairs(bands) do
      for zone = 1, 3 do
        local name = "wind.gcp_7_22." .. roof .. band .. ".zone" .. zone
        it[name] = read(nil, "Table R301.2(2), worked back")
      end
    end
  end
end

local function of_2023()
  local read = reader("seen", "state code text on this edition")
  local it = shared(read, "2023")
  wind_of_2022(it, read)
  it["drip_edge.orders_eave"] = read({ "under_metal" }, "R905.2.8.5", { instead = true })
  it["drip_edge.orders_rake"] = read({ "under_metal" }, "R905.2.8.5")
  it["drip_edge.sealed_flange_allowed"] = read(false, "R905.2.8.5")
  it["drip_edge.primed_flange_allowed"] = read(true, "R905.2.8.5")
  it["drip_edge.cement_required"] = read(true, "R905.2.8.5")
  it["drip_edge.cement_width_least"] = read(4, "R905.2.8.5", in_unit("in", "at_least"))
  it["underlayment.tape_width_least"] = read(3.75, "R905.1.1.1 item 2")
  it["underlayment.tape_kinds_count"] = read(true, "R905.1.1.1 item 2")
  it["underlayment.tapes"] = read({ "D1970", "AAMA_711_3" }, "R905.1.1.1 item 2",
    { sense = "one_of" })
  -- D6757 only over taped joints, which underlayment.sealed_deck looks at.
  it["underlayment.kinds_normal"] = read({ "D226_II", "D4869_III", "D4869_IV", "D6757",
    "D8257" }, "Table R905.1.1.1")
  it["underlayment.tape_kinds"] = read({ "D226_II", "D4869_III", "D4869_IV", "D6757", "D8257" },
    "Table R905.1.1.1")
  it["underlayment.two_ply_kinds"] = read({ "D226_II", "D4869_III", "D4869_IV", "D8257" },
    "R905.1.1.1 item 3")
  it["underlayment.old_may_stay"] = read({ "ice_barrier", "underlayment" },
    "R905.1.1.1 item 1 exc. 2, R908.1 exc. 2")
  it["underlayment.old_needs_nails_shown"] = read(true, "R905.1.1.1 item 1 exc. 2")
  -- The edition of the model code that this one rests on says the same.
  it["underlayment.fasteners_wind"] = read(nil, "R905.1.1.1")
  it["underlayment.shanks"] = read(nil, "R905.1.1.1")
  it["ventilation.reduced_needs_both"] = nil
  return with_new_notice(with_relief(it))
end

local NO_GATE = "R301.2.1.1 sends roof sheathing to R803 and coverings to chapter 9, whose tables "
  .. "end by themselves"

-- Decks there go by section 2322 of the building book.
local NOT_IN_THE_ZONE = {
  rules = { "deck", "drip_edge", "fasteners", "fire", "flashing", "layers", "shingle", "slope",
    "underlayment", "valley" },
  but = { "fasteners.count" },
  orders = { "underlayment_rolls", "drip_edge_eave", "drip_edge_rake", "valley_lining",
    "deck_nails", "starter" },
  why = "in the high-velocity zone FBC-B 1512 to 1525 and 2322 bind instead, of which only the "
    .. "number of nails is carried; more of them stands under us-fl/high-velocity-zone",
}

local ENERGY = "the model code's line; the state has an energy code of its own, not read for it"

local function block(edition, base, unsure, from, to, figures)
  figures["energy.bare_rafters_count"] = { true, cite = base == "2018" and "N1109.1.1"
    or "N1111.1.1", status = "parallel", source = ENERGY }
  local names = { ["2020"] = "7th", ["2023"] = "8th" }
  jurisdiction "us-fl" {
    title = "Florida",
    follows = "model/irc-" .. base,
    unsure = unsure,
    from = from,
    to = to,
    code = "FBC-R " .. edition,
    edition = "Florida " .. names[edition] .. " edition, " .. edition .. " (on IRC " .. base .. ")",
    as_seen = "2026-11-28",
    rules = "us-fl.rules.lua",
    figures = figures,
    drop = { ["wind.prescriptive_limit"] = NO_GATE },
    not_carried = { ["site.high_velocity_hurricane_zone"] = NOT_IN_THE_ZONE },
  }
end

local SEVENTH = "that the 7th edition rests on IRC 2018 is recalled, and its text was not read: "
  .. "most of what is held of it is that of 2023"
block("2020", "2018", SEVENTH, "2020-12-31", "2022-05-26", with_old_notice(of_2020()))
block("2020", "2018", SEVENTH, "2022-05-26", "2023-10-01",
  with_relief(with_old_notice(of_2020())))
block("2020", "2018", SEVENTH, "2023-10-01", "2023-12-31",
  with_relief(with_new_notice(of_2020())))

block("2023", "2021", nil, "2023-12-31", "2026-07-01", of_2023())

local function since_july()
  local it = of_2023()
  it["permit.every"].disputed = EXEMPT
  it["permit.every"].rival = false
  return it
end
block("2023", "2021", nil, "2026-07-01", "2026-12-01", since_july())
block("2023", "2021", "the 9th edition is planned for this month: ask whether it has begun",
  "2026-12-01", "2026-12-31", since_july())
