-- Florida: the Florida Building Code, Residential (FBC-R), 7th edition (2020)
-- and 8th (2023), with the deck duties of the Existing Building book (FBC-EB).
--
-- "parallel" here is a figure read in the code's text of 2004 and 2006, or in
-- the rule of 2007; "memory" one recalled, or read only on a page that restates
-- the code second-hand. The source says which.
--
-- Not carried, because their cells were not found in a form that can be read:
-- the deck nailing table R803.2.3.1, the panel thickness table R803.2.2 (told
-- beside the spans it may tighten), the re-nailing grid 706.7.1.2 for nails
-- already there, and the roof-to-wall table 706.8.1. So no figure here rests on them, and spacings are disputed.
-- The high-velocity zone (Miami-Dade and Broward) is carried only in its number
-- of nails; its own underlayment and deck rules are not.
--
-- Permits and papers: counties print the deck affidavit, the approval sheets and
-- the looks each in their own way; what is here is the pattern. The uplift that
-- roof-to-wall ties must hold is not carried either: Table 706.8.1 was not read.
-- The day in May 2022 on which the relief from the 25 percent rule began was not
-- read: it is taken from June on.
--
-- The 9th edition is planned for December 2026; its day, the 31st, is recalled. So
-- that month says that it may have begun, and after it this profile binds no more.

local OLD_TEXT = "officials' forum quoting the Florida text of 2004 and 2006; later ones recalled"
local COPY = "read second-hand on a page quoting R905.2.5 in its Florida form"
local FELTS = "read second-hand on a trade page about the sealed deck rule"
local SHEET = "a Florida county's reroof sheet"
local NOTICE = "the state's notice to building departments on the 2007 mitigation rule"
local NEW_PANELS = "new panels follow Table R803.2.3.1, whose cells were not read: in strong wind "
  .. "it asks for 4 in"
local THICKER = "from 140 mph the state's own table asks for panels up to 40/20 on rafters 24 in "
  .. "apart, as a weak copy has it: 24/16 at 140 in exposure B, 32/16 at 150, 40/20 at 160 and in C"
local YEAR_ONLY = "the state's cut-off is 1 March 2002, so a house of that year may be on either "
  .. "side of it"
local TWO_THOUSAND_SEVEN = "adjusters' pages quoting the rule of 2007 and of 2017"
local SECTION = "read second-hand on a page quoting the section"
local BILL = "the bill of 2022 (SB 4-D)"
local PACKETS = "two Florida counties' reroof pages"
local SHEETS = "Florida counties' reroof sheets"
-- The model code's spans stand, and say so.
local function thin_panel(span)
  return { span, cite = "R803.2.2", status = "memory", source = "recalled: the model code's table",
    disputed = THICKER }
end
local HEAVY_FELTS = { "D226_II", "D4869_III", "D4869_IV" }

-- The approved synthetics are accepted by their approval, which
-- underlayment.kind asks for; here they only count as a layer.
local LAYERS = { "D226_II", "D4869_III", "D4869_IV", "D8257", "other_synthetic" }

-- What both editions share; eb is the Existing Building book's name.
local function common(eb)
  local deck = eb .. " 706.7"
  return {
    -- Layers.
    ["layers.most"] = { 2, cite = eb .. " 706.3", status = "memory", source = "recalled" },
    ["layers.peeled_counts"] = { true, cite = eb .. " 706.3", status = "memory",
      source = "recalled" },
    ["layers.bases_allowed"] = { { "sound" }, cite = eb .. " 706.3", status = "memory",
      source = "read second-hand on a page quoting the 2017 rule" },
    ["layers.not_over"] = { { "slate", "clay_tile", "concrete_tile", "asbestos_cement" },
      cite = eb .. " 706.3", status = "memory", source = "recalled" },

    ["slope.least.asphalt_shingle"] = { 2, cite = "R905.2.2", status = "seen",
      source = "a Florida city's reroof handout" },

    -- Fasteners.
    ["fasteners.metals"] = { { "galvanized", "stainless", "aluminum", "copper" },
      cite = "R905.2.5", status = "memory", source = COPY },
    ["fasteners.shank_least"] = { 0.105, cite = "R905.2.5", status = "memory", source = COPY },
    ["fasteners.head_least"] = { 0.375, cite = "R905.2.5", status = "memory", source = COPY },
    ["fasteners.penetration_least"] = { 0.75, cite = "R905.2.5", status = "memory",
      source = COPY },
    ["fasteners.per_shingle_least"] = { 4, cite = "R905.2.6", status = "memory",
      source = "recalled; the product approval may ask for more" },
    ["fasteners.hurricane_zone_counts"] = { true, cite = "FBC-B 1518, RAS 115",
      status = "memory", source = "recalled" },
    ["fasteners.per_shingle_least_hurricane_zone"] = { 6, cite = "FBC-B 1518, RAS 115",
      status = "memory", source = "recalled" },
    ["fasteners.steep_over"] = { 21, cite = "R905.2.6", status = "memory", source = "recalled" },

    -- Wind classes: the model code's grid, in a section of Florida's own.
    ["shingle.D7158_vult_most.D"] = { 116, cite = "R905.2.6.1", status = "memory",
      source = "recalled: the model code's grid" },
    ["shingle.D7158_vult_most.G"] = { 155, cite = "R905.2.6.1", status = "memory",
      source = "recalled: the model code's grid" },
    ["shingle.D7158_vult_most.H"] = { 194, cite = "R905.2.6.1", status = "memory",
      source = "recalled: the model code's grid" },
    ["shingle.D3161_vult_most.A"] = { 129, cite = "R905.2.6.1", status = "memory",
      source = "recalled: the model code's grid" },
    ["shingle.D3161_vult_most.D"] = { 129, cite = "R905.2.6.1", status = "memory",
      source = "recalled: the model code's grid" },
    ["shingle.D3161_vult_most.F"] = { 194, cite = "R905.2.6.1", status = "memory",
      source = "recalled: the model code's grid" },

    -- Drip edge: longer laps and drop than the model code, closer nails in wind.
    ["drip_edge.eave_required"] = { true, cite = "R905.2.8.5", status = "parallel",
      source = OLD_TEXT },
    ["drip_edge.rake_required"] = { true, cite = "R905.2.8.5", status = "parallel",
      source = OLD_TEXT },
    ["drip_edge.lap_least"] = { 3, cite = "R905.2.8.5", status = "parallel",
      source = OLD_TEXT .. "; a county's sheet agrees" },
    ["drip_edge.down_least"] = { 0.5, cite = "R905.2.8.5", status = "parallel",
      source = OLD_TEXT },
    ["drip_edge.back_least"] = { 2, cite = "R905.2.8.5", status = "parallel", source = OLD_TEXT },
    ["drip_edge.fastener_spacing_most"] = { 12, cite = "R905.2.8.5", status = "parallel",
      source = OLD_TEXT, disputed = "a county's sheet asks for 4 in whatever the wind" },
    ["drip_edge.close_fastening"] = { true, cite = "R905.2.8.5", status = "parallel",
      source = OLD_TEXT },
    ["drip_edge.close_spacing_most"] = { 4, cite = "R905.2.8.5", status = "parallel",
      source = OLD_TEXT .. "; a county's sheet agrees" },
    ["drip_edge.close_wind_from"] = { 110, cite = "R905.2.8.5", status = "parallel",
      source = OLD_TEXT },
    ["drip_edge.close_wind_on_vasd"] = { true, cite = "R905.2.8.5", status = "memory",
      source = "recalled; the old text says basic wind speed" },
    ["drip_edge.close_height_over"] = { 33, cite = "R905.2.8.5", status = "parallel",
      source = OLD_TEXT },
    -- At eaves the metal may lie either way; on top of the underlayment its
    -- flange is sealed with a band of roof cement 4 in wide.
    ["drip_edge.orders_eave"] = { { "over_metal" }, cite = "R905.2.8.5", status = "parallel",
      source = OLD_TEXT },
    ["drip_edge.sealed_flange_allowed"] = { true, cite = "R905.2.8.5", status = "parallel",
      source = OLD_TEXT },
    ["drip_edge.orders_rake"] = { cite = "R905.2.8.5",
      disputed = "the Florida text was not read on rakes; this is the model code's order" },

    -- Underlayment: a sealed deck, outside the high-velocity zone.
    ["underlayment.sealed_deck_required"] = { true, cite = "R905.1.1", status = "seen",
      source = "fact sheet of the state's code program, June 2020" },
    ["underlayment.sealed_deck_methods"] = { { "full_self_adhered", "taped_joints", "two_plies" },
      cite = "R905.1.1", status = "memory", source = FELTS,
      disputed = "in the high-velocity zone FBC-B 1518 binds instead, which is not carried" },
    ["underlayment.tape_kinds"] = { LAYERS, cite = "R905.1.1", status = "memory",
      source = FELTS },
    ["underlayment.two_ply_kinds"] = { LAYERS, cite = "R905.1.1", status = "memory",
      source = FELTS },
    ["underlayment.kinds_self_adhered"] = { { "D1970" }, cite = "R905.1.1", status = "memory",
      source = FELTS },
    ["underlayment.kinds_normal"] = { HEAVY_FELTS, cite = "R905.1.1", status = "memory",
      source = FELTS },
    ["underlayment.head_lap_least"] = { 4, cite = "R905.1.1", status = "memory",
      source = "recalled; older books had 2 in" },
    ["underlayment.head_lap_double_least"] = { 19, cite = "R905.1.1", status = "memory",
      source = "read second-hand: half the roll and 1 in; the 19 recalled",
      disputed = "the same page gives half the roll and 2 in for the second course" },
    ["underlayment.starter_width_least"] = { 19, cite = "R905.1.1", status = "memory",
      source = "read second-hand: half the roll; the 19 recalled",
      disputed = "half of a 36 in roll is 18" },
    ["underlayment.end_lap_least"] = { 6, cite = "R905.1.1", status = "memory",
      source = "recalled" },
    ["underlayment.end_lap_offset_least"] = { 6, cite = "R905.1.1", status = "memory",
      source = "recalled" },
    -- One list of kinds, one lap, and the nailing grid at any wind speed.
    ["underlayment.any_wind_counts"] = { true, cite = "R905.1.1", status = "memory",
      source = "recalled; a county's sheet gives the grid without a speed" },
    ["underlayment.lap_spacing_wind_most"] = { 6, cite = "R905.1.1", status = "seen",
      source = SHEET },
    ["underlayment.field_spacing_wind_most"] = { 12, cite = "R905.1.1", status = "seen",
      source = SHEET },
    ["underlayment.fasteners_wind"] = { { "cap_nail" }, cite = "R905.1.1", status = "memory",
      source = "recalled: cap nails, or nails with tin tags" },
    ["underlayment.cap_wind_least"] = { 1, cite = "R905.1.1", status = "memory",
      source = "recalled" },
    ["underlayment.cap_mils_least.metal"] = { cite = "R905.1.1", status = "memory",
      source = "recalled: 32 gage" },
    ["underlayment.cap_mils_least.power_driven_metal"] = { cite = "R905.1.1",
      status = "memory", source = "recalled" },
    ["underlayment.cap_mils_least.plastic"] = { cite = "R905.1.1", status = "memory",
      source = "recalled" },
    ["underlayment.shank_least.ringed"] = { cite = "R905.1.1", status = "memory",
      source = "recalled" },
    ["underlayment.shank_least.smooth"] = { cite = "R905.1.1", status = "memory",
      source = "recalled" },
    ["underlayment.bite_least"] = { cite = "R905.1.1", status = "memory", source = "recalled" },

    -- Valleys: narrower metal than the model code's.
    ["valley.metal_width_least"] = { 16, cite = "R905.2.8.2", status = "memory",
      source = "read second-hand on a page quoting R905.2.8.2 in its Florida form" },
    ["valley.roll_bottom_width_least"] = { 18, cite = "R905.2.8.2", status = "memory",
      source = "read second-hand on a page quoting R905.2.8.2 in its Florida form" },
    ["valley.roll_top_width_least"] = { 36, cite = "R905.2.8.2", status = "memory",
      source = "read second-hand on a page quoting R905.2.8.2 in its Florida form" },
    ["valley.smooth_width_least"] = { 36, cite = "R905.2.8.2", status = "memory",
      source = "read second-hand on a page quoting R905.2.8.2 in its Florida form" },

    -- Deck: an old one is nailed again when the covering comes off. A job says
    -- only the year a house was built, so the whole of 2002 counts as before.
    ["deck.renail_required"] = { true, cite = deck .. ", 706.7.1", status = "seen",
      source = NOTICE },
    ["deck.renail_built_before"] = { cite = deck .. " exception", status = "seen",
      source = "a Florida county's page: built in 2002 or before", disputed = YEAR_ONLY },
    ["deck.renail_house_kinds"] = { { "one_family" }, cite = deck .. ".1", status = "seen",
      source = NOTICE .. "; a county's page lets duplexes and townhouses off" },
    ["deck.nail_edge_most"] = { 6, cite = deck .. ".1.2", status = "memory",
      source = "read second-hand on an inspector's page", disputed = NEW_PANELS },
    ["deck.nail_field_most.thin"] = { 6, cite = deck .. ".1.2", status = "memory",
      source = "read second-hand on an inspector's page", disputed = NEW_PANELS },
    ["deck.nail_field_most.mid"] = { 6, cite = deck .. ".1.2", status = "memory",
      source = "read second-hand on an inspector's page", disputed = NEW_PANELS },
    ["deck.nail_field_most.thick"] = { 6, cite = deck .. ".1.2", status = "memory",
      source = "read second-hand on an inspector's page", disputed = NEW_PANELS },
    ["deck.panel_span_supported.24/16"] = thin_panel(24),
    ["deck.panel_span_unsupported.24/16"] = thin_panel(24),
    ["deck.panel_span_supported.32/16"] = thin_panel(32),
    ["deck.panel_span_unsupported.32/16"] = thin_panel(28),
    ["deck.nail_gable_most"] = { 4, cite = "R803.2.3.1", status = "memory",
      source = "recalled; the table itself was not found" },
    ["deck.nail_panel_thin_most"] = { 0.46875, cite = "R803.2.3.1", status = "memory",
      source = "recalled, and read on a weak copy" },
    ["deck.nail_kinds.thin"] = { { "RSRS_01", "RSRS_02", "RSRS_03", "RSRS_04", "RSRS_05" },
      cite = "R803.2.3.1", status = "memory", source = "recalled" },
    ["deck.nail_kinds.mid"] = { { "RSRS_03", "RSRS_04" }, cite = "R803.2.3.1",
      status = "memory", source = "read on a weak copy" },
    ["deck.nail_kinds.thick"] = { { "RSRS_03", "RSRS_04" }, cite = "R803.2.3.1",
      status = "memory", source = "read on a weak copy" },
    ["deck.board_nails_least.narrow"] = { 2, cite = deck .. ".1.1", status = "seen",
      source = SHEET },
    ["deck.board_nails_least.wide"] = { 2, cite = deck .. ".1.1", status = "seen",
      source = SHEET .. ", which names boards 1 x 12", disputed = "the model code's table asks "
        .. "for three in boards over 6 in wide" },
    ["deck.overdriven_allowed"] = { false, cite = deck .. ".1.1", status = "seen",
      source = SHEET },

    -- A quarter of the roof, or of a section of it, in 12 months.
    ["permit.rest_counts"] = { true, cite = eb .. " 706.1.1", status = "memory",
      source = TWO_THOUSAND_SEVEN },
    ["permit.rest_limit"] = { 25, cite = eb .. " 706.1.1", status = "memory",
      source = TWO_THOUSAND_SEVEN, disputed = "the rule counts a section of the roof by itself as "
        .. "well, which a job cannot say" },
    ["permit.rest_at_counts"] = { false, cite = eb .. " 706.1.1", status = "memory",
      source = TWO_THOUSAND_SEVEN .. ": no more than 25 percent" },
    ["permit.rest_months"] = { 12, cite = eb .. " 706.1.1", status = "memory",
      source = TWO_THOUSAND_SEVEN },

    -- Papers.
    ["papers.commencement_required"] = { true, cite = "s. 713.13 F.S.", status = "seen",
      source = PACKETS },
    ["papers.commencement_price_limit"] = { 2500, cite = "s. 713.13 F.S.", status = "seen",
      source = PACKETS, disputed = "5,000 since a change of 2023, as recalled" },
    ["papers.commencement_posted_required"] = { true, cite = "s. 713.13 F.S.", status = "seen",
      source = PACKETS .. ": posted before the first visit" },
    ["papers.approval_sheets_required"] = { true, cite = "FBC 107; rule 61G20-3",
      status = "seen", source = SHEETS },
    ["papers.approval_sheets_least"] = { 1, cite = "FBC 107; rule 61G20-3", status = "seen",
      source = SHEETS, disputed = "a county wants 2" },
    ["papers.approval_numbers_required"] = { true, cite = "FBC 107; rule 61G20-3",
      status = "seen", source = "a Florida city's reroof handout" },
    ["papers.affidavit_required"] = { true, cite = deck, status = "seen",
      source = "five Florida handouts", disputed = "counties differ: affidavit, photographs or "
        .. "a visit, and some want it before a notary" },
    ["papers.affidavit_by_age"] = { true, cite = deck, status = "seen",
      source = "a Florida county's page: built in 2002 or before" },
    ["papers.affidavit_built_most"] = { 2002, cite = deck, status = "seen",
      source = "a Florida county's page: built in 2002 or before", disputed = YEAR_ONLY },
    ["inspection.required.dry_in"] = { true, cite = "FBC-B 110.3", status = "seen",
      source = SHEET, disputed = "counties differ in what they look at, and when" },
    ["inspection.proofs.dry_in"] = { { "visit", "photos" }, cite = "FBC-B 110.3",
      status = "seen", source = SHEET, disputed = "not every county takes photographs" },

    -- Ties from roof to wall: strengthened with the reroof, up to a share of its price.
    ["papers.wall_ties_required"] = { true, sense = "equals", cite = eb .. " 706.8",
      status = "memory", source = SECTION },
    ["papers.wall_ties_house_kinds"] = { { "one_family" }, sense = "one_of",
      cite = eb .. " 706.8", status = "memory", source = SECTION },
    ["papers.wall_ties_value_from"] = { 300000, unit = "usd", sense = "from",
      cite = eb .. " 706.8", status = "memory", source = SECTION },
    ["papers.wall_ties_built_before"] = { 2003, unit = "year", sense = "under",
      cite = eb .. " 706.8 exception", status = "memory", source = SECTION,
      disputed = YEAR_ONLY },
    ["papers.wall_ties_share_over"] = { 15, unit = "percent", sense = "over",
      cite = eb .. " 706.8.1", status = "seen", source = "a building department's page; the "
        .. "state's text of the 2007 rule" },
    ["papers.wall_ties_ways"] = { { "improved", "sound_already", "done_to_share" },
      sense = "one_of", cite = eb .. " 706.8.1", status = "memory", source = SECTION },
  }
end

-- A roof built to the code of 2007 or later may stay beside the new part.
local function with_relief(figures)
  figures["permit.rest_relief"] = { true, cite = "s. 553.844(5) F.S.", status = "seen",
    source = BILL }
  figures["permit.rest_relief_from"] = { 20090301, cite = "s. 553.844(5) F.S.", status = "seen",
    source = "lawyers' page: the day the code of 2007 took effect, as the working test" }
  return figures
end

local function of_2020()
  local figures = common("FBC-EB 2020")
  figures["underlayment.tape_width_least"] = { 4, cite = "R905.1.1", status = "parallel",
    source = "trade magazine on the rule of 2007" }
  figures["fasteners.past_thin_deck_least"] = { cite = "R905.2.5", status = "practice",
    source = "trade association bulletin", disputed = "in the high-velocity zone nail tips went "
      .. "3/16 in through before the 8th edition, read second-hand" }
  return figures
end

-- The 8th edition takes a narrower tape, and names a standard for synthetics.
local function of_2023()
  local figures = common("FBC-EB 2023")
  local kinds = { "D226_II", "D4869_III", "D4869_IV", "D8257" }
  local named = "read second-hand on a trade page, which speaks of the high-velocity zone"
  figures["underlayment.tape_width_least"] = { 3.75, cite = "R905.1.1", status = "memory",
    source = "read second-hand on a trade page: 3-3/4 in, 95 mm" }
  figures["underlayment.kinds_normal"] = { kinds, cite = "R905.1.1", status = "memory",
    source = named }
  figures["underlayment.plies_least"] = { 1, cite = "R905.1.1", status = "memory",
    source = "recalled", disputed = "in the high-velocity zone FBC-B 1518.2.1 asks for two layers, "
      .. "half-lapped, read second-hand" }
  return with_relief(figures)
end

local function seventh(from, to, figures)
  jurisdiction "us-fl" {
    title = "Florida",
    follows = "model/irc-2018",
    unsure = "that the 7th edition rests on IRC 2018 is recalled, not read",
    from = from,
    to = to,
    code = "FBC-R 2020",
    edition = "Florida 7th edition, 2020 (on IRC 2018)",
    as_seen = "2026-11-25",
    rules = "us-fl.rules.lua",
    figures = figures,
  }
end

seventh("2020-12-31", "2022-06-01", of_2020())
seventh("2022-06-01", "2023-12-31", with_relief(of_2020()))

local function eighth(from, to, more)
  jurisdiction "us-fl" {
    title = "Florida",
    follows = "model/irc-2021",
    unsure = "that the 8th edition rests on IRC 2021 was read second-hand" .. (more or ""),
    from = from,
    to = to,
    code = "FBC-R 2023",
    edition = "Florida 8th edition, 2023 (on IRC 2021)",
    as_seen = "2026-11-25",
    rules = "us-fl.rules.lua",
    figures = of_2023(),
  }
end

eighth("2023-12-31", "2026-12-01")
eighth("2026-12-01", "2026-12-31",
  ", and the 9th is planned for this month: ask whether it has begun")
