-- Cases of Florida: what differs from the model code, and between the 7th
-- edition (2020-12-31) and the 8th (2023-12-31). The 8th is held against its own
-- text (chapters 3, 8 and 9), the 7th mostly against that of the 8th, so that
-- what is met under it only warns.

local EIGHTH, SEVENTH = "2023-12-31", "2023-12-30"

-- The dates.
cases "drip_edge.lap" {
  under = "us-fl",
  { "on the first day of the 7th edition", date = "2020-12-31", expect = "fail", required = 3,
    found = 2 },
  { "the day before, no edition is carried", date = "2020-12-30", expect = "refused",
    says = "from 2020-12-31" },
  { "the 9th is not carried", date = "2026-12-31", expect = "refused",
    says = "to 2026-12-31" },
}

-- In December 2026 the 9th may have begun.
cases "fasteners.kind" {
  under = "us-fl",
  { "nails on the last day of November", date = "2026-11-30", expect = "pass" },
  { "nails on the first of December", date = "2026-12-01", expect = "pass",
    says = "the 9th edition is planned for this month" },
}

cases "drip_edge.lap" {
  under = "us-fl", date = EIGHTH,
  { "2 in, which the model code takes", expect = "fail", required = 3, found = 2 },
  { "3 in, exactly", with = { ["drip_edge.lap_in"] = 3 }, expect = "pass", required = 3 },
  { "not known", without = { "drip_edge.lap_in" }, expect = "open" },
}

cases "drip_edge.down" {
  under = "us-fl", date = EIGHTH,
  { "1/4 in, which the model code takes", expect = "fail", required = 0.5, found = 0.25 },
  { "1/2 in, exactly", with = { ["drip_edge.down_in"] = 0.5 }, expect = "pass",
    required = 0.5 },
}

-- 110 mph on the old scale is 142 on the new: 142 x 0.7746 = 110.0.
cases "drip_edge.fastener_spacing" {
  under = "us-fl", date = EIGHTH,
  { "12 in at 115 mph on a low house", expect = "pass", required = 12 },
  { "at 142 mph, exactly", with = { ["site.wind_vult_mph"] = 142 }, expect = "fail",
    required = 4, found = 12 },
  { "at 141 mph", with = { ["site.wind_vult_mph"] = 141 }, expect = "pass", required = 12 },
  { "over 33 ft high", with = { ["house.mean_roof_height_ft"] = 34 }, expect = "fail",
    required = 4 },
  { "33 ft high, exactly", with = { ["house.mean_roof_height_ft"] = 33 }, expect = "pass",
    required = 12 },
  { "4 in at 160 mph", with = { ["site.wind_vult_mph"] = 160,
    ["drip_edge.fastener_spacing_in"] = 4 }, expect = "pass", required = 4 },
  { "height not known", without = { "house.mean_roof_height_ft" }, expect = "open" },
}

-- Metal over the underlayment at eaves and gables, its flange under 4 in of cement;
-- only a sheet that sticks may lie over a primed flange (R905.2.8.5).
local OVER = { ["roof.edges[1].underlayment_lies"] = "over_metal" }
local UNDER = { ["roof.edges[1].underlayment_lies"] = "under_metal" }
local function edge(n, facts)
  local with = {}
  for name, value in pairs(facts) do with["roof.edges[" .. n .. "]." .. name] = value end
  return with
end

cases "drip_edge.order_eave" {
  under = "us-fl", date = EIGHTH,
  { "felt over the metal", with = OVER, expect = "fail", where = "front eave" },
  { "metal over the felt", with = UNDER, expect = "pass", where = "front eave" },
  { "a self-adhered sheet over a primed flange", with = {
    ["underlayments[1].kind"] = "D1970", ["roof.edges[1].flange_primed"] = true },
    expect = "pass", where = "front eave" },
  { "over a bare one", with = { ["underlayments[1].kind"] = "D1970",
    ["roof.edges[1].flange_primed"] = false }, expect = "fail", where = "front eave" },
  { "primer not known", with = { ["underlayments[1].kind"] = "D1970" }, expect = "open",
    where = "front eave" },
}
cases "drip_edge.order_eave" {
  under = "us-fl", date = SEVENTH,
  { "the 7th takes either: underlayment over the metal", expect = "warn",
    where = "front eave" },
  { "metal over it, flange sealed", with = edge(1, { underlayment_lies = "under_metal",
    flange_sealed = true }), expect = "warn", where = "front eave" },
  { "metal over it, flange open", with = UNDER, expect = "fail", where = "front eave" },
  { "the model code does not take the sealed flange", under = "model/irc-2021", with =
    edge(1, { underlayment_lies = "under_metal", flange_sealed = true }),
    expect = "fail", where = "front eave" },
}

cases "drip_edge.order_rake" {
  under = "us-fl",
  { "metal over the underlayment", date = EIGHTH, expect = "pass", where = "front left rake" },
  { "under it", date = EIGHTH, with = edge(4, { underlayment_lies = "over_metal" }),
    expect = "fail", where = "front left rake" },
  { "not read on rakes in the 7th", date = SEVENTH, expect = "warn", where = "front left rake",
    says = "not read on rakes" },
}

cases "drip_edge.cement" {
  under = "us-fl", date = EIGHTH,
  { "4 in at an eave, exactly", with = edge(1, { flange_cement_in = 4 }), expect = "pass",
    where = "front eave", required = 4 },
  { "a hair less", with = edge(1, { flange_cement_in = 3.999 }), expect = "fail",
    where = "front eave", required = 4 },
  { "4 in at a rake", with = edge(4, { flange_cement_in = 4 }), expect = "pass",
    where = "front left rake" },
  { "none at a rake", with = edge(4, { flange_cement_in = 0 }), expect = "fail",
    where = "front left rake", found = 0 },
  { "not known", expect = "open", where = "front eave" },
  { "no metal there", with = edge(1, { drip_edge = false }), expect = "not_applicable",
    where = "front eave" },
  { "not asked for by the 7th", date = SEVENTH, expect = "not_applicable",
    where = "front eave" },
  { "nor by the model code", under = "model/irc-2021", expect = "not_applicable",
    where = "front eave" },
}

-- The sealed deck, and the tape's width by edition.
local function taped(width, kind)
  return { ["underlayments[1].kind"] = kind or "D226_II",
    ["underlayments[1].deck_joints_taped"] = true, ["underlayments[1].tape_width_in"] = width }
end

cases "underlayment.sealed_deck" {
  under = "us-fl", date = SEVENTH,
  { "3-3/4 in tape on the last day of the 7th", with = taped(3.75), expect = "fail",
    where = "main front", required = 4, found = 3.75 },
  { "4 in tape, exactly", with = taped(4), expect = "warn", where = "main front" },
}

cases "underlayment.sealed_deck" {
  under = "us-fl", date = EIGHTH,
  { "3-3/4 in tape on the first day of the 8th", with = taped(3.75), expect = "pass",
    where = "main front" },
  { "3-1/2 in tape", with = taped(3.5), expect = "fail", where = "main front",
    required = 3.75, found = 3.5 },
  { "the light felt over tape", with = taped(4, "D226_I"), expect = "fail",
    where = "main front", found = "D226_I" },
  { "a synthetic over tape", with = taped(4, "D8257"), expect = "pass", where = "main front" },
  { "one ply and no tape", expect = "fail", where = "main front", says = "not taped" },
  { "self-adhered all over", with = { ["underlayments[1].kind"] = "D1970" }, expect = "pass",
    where = "main front" },
  { "two plies half-lapped", with = { ["underlayments[1].kind"] = "D226_II",
    ["underlayments[1].plies"] = 2, ["underlayments[1].head_lap_in"] = 19 }, expect = "pass",
    where = "main front" },
  { "18.999 in", with = { ["underlayments[1].kind"] = "D226_II",
    ["underlayments[1].plies"] = 2, ["underlayments[1].head_lap_in"] = 18.999 },
    expect = "fail", where = "main front", required = 19 },
  { "of a roll 48 in wide 25", with = { ["underlayments[1].kind"] = "D8257",
    ["underlayments[1].roll_width_in"] = 48, ["underlayments[1].plies"] = 2,
    ["underlayments[1].head_lap_in"] = 25 }, expect = "pass", where = "main front",
    required = 25 },
  { "a hair less", with = { ["underlayments[1].kind"] = "D8257",
    ["underlayments[1].roll_width_in"] = 48, ["underlayments[1].plies"] = 2,
    ["underlayments[1].head_lap_in"] = 24.999 }, expect = "fail", where = "main front" },
  { "D6757 over tape", with = taped(3.75, "D6757"), expect = "pass", where = "main front" },
  { "D6757 with no tape", with = { ["underlayments[1].kind"] = "D6757" }, expect = "fail",
    where = "main front" },
  { "not known whether taped", without = { "underlayments[1].deck_joints_taped" },
    expect = "open", where = "main front" },
  { "not asked for by the model code", under = "model/irc-2021", expect = "not_applicable",
    where = "main front" },
}

cases "underlayment.kind" {
  under = "us-fl",
  { "the light felt no longer counts", date = EIGHTH, expect = "fail", where = "main front" },
  { "the heavy one", date = EIGHTH, with = { ["underlayments[1].kind"] = "D4869_III" },
    expect = "pass", where = "main front" },
  { "a synthetic by its standard alone, on the last day of the 7th", date = SEVENTH,
    with = { ["underlayments[1].kind"] = "D8257" }, expect = "fail", where = "main front" },
  { "and on the first day of the 8th", date = EIGHTH,
    with = { ["underlayments[1].kind"] = "D8257" }, expect = "pass", where = "main front" },
}

cases "underlayment.end_lap" {
  under = "us-fl", date = EIGHTH,
  { "4 in, which the model code takes", expect = "fail", where = "main front", required = 6,
    found = 4 },
  { "6 in, exactly", with = { ["underlayments[1].end_lap_in"] = 6 }, expect = "pass",
    where = "main front", required = 6 },
}

cases "underlayment.head_lap" {
  under = "us-fl", date = EIGHTH,
  { "2 in, which the model code takes", expect = "fail", where = "main front", required = 4 },
  { "4 in, exactly", with = { ["underlayments[1].head_lap_in"] = 4 }, expect = "pass",
    where = "main front", required = 4 },
}

cases "underlayment.fasteners" {
  under = "us-fl", date = EIGHTH,
  { "cap nails, at any wind speed", expect = "pass", where = "main front" },
  { "cap staples", with = { ["underlayments[1].fastener"] = "cap_staple" }, expect = "fail",
    where = "main front" },
  { "not asked for by the model code in so little wind", under = "model/irc-2021",
    expect = "not_applicable", where = "main front" },
}

cases "underlayment.lap_spacing" {
  under = "us-fl", date = EIGHTH,
  { "6 in, exactly", expect = "pass", where = "main front", required = 6 },
  { "8 in", with = { ["underlayments[1].lap_spacing_in"] = 8 }, expect = "fail",
    where = "main front", required = 6, found = 8 },
}

cases "underlayment.field_spacing" {
  under = "us-fl", date = EIGHTH,
  { "12 in, exactly", expect = "pass", where = "main front", required = 12 },
  { "14 in", with = { ["underlayments[1].field_spacing_in"] = 14 }, expect = "fail",
    where = "main front", required = 12 },
}

-- What the tape is, what the caps are, and the third course (R905.1.1.1).
local function tape(kind)
  local with = taped(4)
  with["underlayments[1].tape_is"] = kind
  return with
end
cases "underlayment.tape" {
  under = "us-fl", date = EIGHTH,
  { "of the self-adhered sheet", with = tape "D1970", expect = "pass", where = "main front" },
  { "flashing tape of level 3", with = tape "AAMA_711_3", expect = "pass",
    where = "main front" },
  { "another", with = tape "other", expect = "fail", where = "main front" },
  { "not known", with = taped(4), expect = "open", where = "main front" },
  { "no tape", expect = "not_applicable", where = "main front" },
  { "not judged in the 7th", date = SEVENTH, with = taped(4), expect = "not_applicable",
    where = "main front" },
  { "nor by the model code", under = "model/irc-2021", with = taped(4),
    expect = "not_applicable", where = "main front" },
}

local function caps(mph, kind)
  return { ["site.wind_vult_mph"] = mph, ["underlayments[1].cap_made_of"] = kind }
end
cases "underlayment.cap_metal" {
  under = "us-fl", date = EIGHTH,
  { "plastic at 169 mph", with = caps(169, "plastic"), expect = "not_applicable",
    where = "main front" },
  { "plastic at 170, exactly", with = caps(170, "plastic"), expect = "fail",
    where = "main front" },
  { "metal", with = caps(170, "metal"), expect = "pass", where = "main front" },
  { "metal for a power tool", with = caps(170, "power_driven_metal"), expect = "pass",
    where = "main front" },
  { "not known", with = { ["site.wind_vult_mph"] = 170 }, expect = "open",
    where = "main front" },
  { "not asked for by the model code", under = "model/irc-2018", with = caps(170, "plastic"),
    expect = "not_applicable", where = "main front" },
}
local function cap(kind, thickness)
  return { ["underlayments[1].cap_made_of"] = kind,
    ["underlayments[1].cap_thickness_in"] = thickness }
end
cases "underlayment.cap_thickness" {
  under = "us-fl", date = EIGHTH,
  { "32 gage as the building book prints it", with = cap("metal", 0.01), expect = "warn",
    where = "main front", required = 10, says = "0.0134" },
  { "thinner", with = cap("metal", 0.0099), expect = "fail", where = "main front" },
  { "power-driven, exactly", with = cap("power_driven_metal", 0.01), expect = "pass",
    where = "main front", required = 10 },
  { "thinner, power-driven", with = cap("power_driven_metal", 0.0099), expect = "fail",
    where = "main front" },
  { "plastic, exactly", with = cap("plastic", 0.035), expect = "pass", where = "main front",
    required = 35 },
  { "thinner plastic", with = cap("plastic", 0.0349), expect = "fail", where = "main front" },
}
cases "underlayment.cap" {
  under = "us-fl", date = EIGHTH,
  { "1 in, exactly", expect = "pass", where = "main front", required = 1 },
  { "a hair less", with = { ["underlayments[1].cap_in"] = 0.999 }, expect = "fail",
    where = "main front" },
}
local function shank(inches, ringed)
  return { ["underlayments[1].fastener_shank_in"] = inches,
    ["underlayments[1].fastener_ringed"] = ringed }
end
cases "underlayment.shank" {
  under = "us-fl", date = EIGHTH,
  { "ringed, exactly", with = shank(0.083, true), expect = "pass", where = "main front",
    required = 0.083 },
  { "ringed, thinner", with = shank(0.082, true), expect = "fail", where = "main front" },
  { "smooth, however thick", with = shank(0.12, false), expect = "fail",
    where = "main front" },
  { "smooth under the model code of 2018", under = "model/irc-2018", with = {
    ["site.wind_vult_mph"] = 150, ["underlayments[1].fastener_shank_in"] = 0.12,
    ["underlayments[1].fastener_ringed"] = false }, expect = "pass", where = "main front" },
}
cases "underlayment.bite" {
  under = "us-fl", date = EIGHTH,
  { "3/4 in, exactly", with = { ["underlayments[1].fastener_through_deck"] = false,
    ["underlayments[1].fastener_into_deck_in"] = 0.75 }, expect = "pass",
    where = "main front", required = 0.75 },
  { "a hair less", with = { ["underlayments[1].fastener_through_deck"] = false,
    ["underlayments[1].fastener_into_deck_in"] = 0.749 }, expect = "fail",
    where = "main front" },
}

local function third(lap, width)
  return { ["underlayments[1].kind"] = "D226_II", ["underlayments[1].plies"] = 2,
    ["underlayments[1].third_course_lap_in"] = lap, ["underlayments[1].roll_width_in"] = width }
end
cases "underlayment.third_course" {
  under = "us-fl", date = EIGHTH,
  { "20 in, exactly", with = third(20), expect = "pass", where = "main front", required = 20 },
  { "a hair less", with = third(19.999), expect = "fail", where = "main front" },
  { "20 in of a roll said to be 36", with = third(20, 36), expect = "pass",
    where = "main front", required = 20 },
  { "26 in of one of 48", with = third(26, 48), expect = "pass", where = "main front",
    required = 26 },
  { "a hair less of it", with = third(25.999, 48), expect = "fail", where = "main front" },
  { "not known", with = third(nil), expect = "open", where = "main front" },
  { "one ply", expect = "not_applicable", where = "main front" },
  { "alike under the model code", under = "model/irc-2021", with = third(19),
    expect = "not_applicable", where = "main front" },
}

-- The model code of 2021 laps 19 in, whatever the roll.
cases "underlayment.head_lap" {
  under = "model/irc-2021", with = { ["roof.slopes[1].pitch"] = "3:12",
    ["underlayments[1].kind"] = "D226_II", ["underlayments[1].plies"] = 2,
    ["underlayments[1].roll_width_in"] = 48, ["underlayments[1].head_lap_in"] = 19 },
  { "19 in of a roll of 48", expect = "pass", where = "main front", required = 19 },
}

local function starter(width, roll)
  return { ["roof.slopes[1].pitch"] = "3:12", ["underlayments[1].kind"] = "D226_II",
    ["underlayments[1].plies"] = 2, ["underlayments[1].starter_width_in"] = width,
    ["underlayments[1].roll_width_in"] = roll }
end
cases "underlayment.starter" {
  under = "us-fl", date = EIGHTH,
  { "18 in, half of 36, exactly", with = starter(18), expect = "pass", where = "main front",
    required = 18 },
  { "a hair less", with = starter(17.999), expect = "fail", where = "main front" },
  { "24 of a roll of 48", with = starter(24, 48), expect = "pass", where = "main front",
    required = 24 },
}

-- Old sheets that stick may stay where the deck's nailing can be shown.
local function old_sheet(covered, shown)
  return { ["existing.adhered_left"] = "underlayment",
    ["existing.adhered_left_covered"] = covered,
    ["existing.adhered_left_nails_shown"] = shown }
end
cases "underlayment.old_left" {
  under = "us-fl", date = EIGHTH,
  { "covered, nails shown", with = old_sheet(true, true), expect = "pass" },
  { "covered, nails not", with = old_sheet(true, false), expect = "fail" },
  { "covered, not known", with = old_sheet(true), expect = "open" },
  { "not covered", with = old_sheet(false, true), expect = "fail" },
  { "nothing is said of it by the 7th's model", date = SEVENTH,
    with = old_sheet(true, true), expect = "open" },
}

-- The ice barrier and the kick-out are in no Florida section.
cases "ice_barrier.kind" {
  under = "us-fl", date = EIGHTH,
  { "not known, and not asked", without = { "ice_barrier.kind", "site.ice_barrier_in_table" },
    expect = "not_applicable" },
}
cases "flashing.kickout" {
  under = "us-fl", date = EIGHTH,
  { "not asked for", with = { ["roof.walls"] = { { name = "side", kind = "sidewall",
    eave_ends_here = true, kickout = false } } }, expect = "not_applicable", where = "side" },
}

-- Flashing by metal (Table R903.2.1): just as thick, and a tenth of a mil less.
local function base(metal, facts)
  local with = { ["flashing.base_metal"] = metal }
  for name, value in pairs(facts) do with["flashing." .. name] = value end
  return with
end
for metal, inches in pairs { copper = 0.024, aluminum = 0.024, galvanized = 0.0179,
  aluminum_zinc = 0.0179, zinc = 0.027 } do
  cases "flashing.base" {
    under = "us-fl", date = EIGHTH,
    { metal .. ", exactly", with = base(metal, { base_thickness_in = inches }),
      expect = "pass" },
    { metal .. ", thinner", with = base(metal, { base_thickness_in = inches - 0.0001 }),
      expect = "fail" },
  }
  cases "flashing.cap" {
    under = "us-fl", date = EIGHTH, with = { ["roof.walls"] = { { name = "side",
      kind = "sidewall", eave_ends_here = false, top_covered_by = "counterflashing" } } },
    { metal .. ", exactly", with = { ["flashing.cap_metal"] = metal,
      ["flashing.cap_thickness_in"] = inches }, expect = "pass" },
    { metal .. ", thinner", with = { ["flashing.cap_metal"] = metal,
      ["flashing.cap_thickness_in"] = inches - 0.0001 }, expect = "fail" },
  }
end
cases "flashing.base" {
  under = "us-fl", date = EIGHTH,
  { "stainless of 28 gage, exactly", with = base("stainless", { base_gage = 28 }),
    expect = "pass" },
  { "of 29", with = base("stainless", { base_gage = 29 }), expect = "fail" },
  { "lead of 2.5 lb, exactly", with = base("lead", { base_weight_lb = 2.5 }), expect = "pass" },
  { "of 2.4", with = base("lead", { base_weight_lb = 2.4 }), expect = "fail" },
  { "terne of 20, exactly", with = base("painted_terne", { base_weight_lb = 20 }),
    expect = "pass" },
  { "of 19.9", with = base("painted_terne", { base_weight_lb = 19.9 }), expect = "fail" },
  { "plain steel", with = base("plain_steel", {}), expect = "fail" },
  { "metal not known", expect = "open" },
  { "mineral roll of 77 lb, exactly", with = { ["flashing.base"] = "mineral_roll",
    ["flashing.base_lb_per_square"] = 77 }, expect = "pass" },
  { "of 76", with = { ["flashing.base"] = "mineral_roll",
    ["flashing.base_lb_per_square"] = 76 }, expect = "fail" },
}
cases "flashing.sidewall_size" {
  under = "us-fl", date = EIGHTH,
  { "step flashing has no size", with = { ["roof.walls"] = { { name = "side",
    kind = "sidewall", flashing_is = "new", flashing = "step", up_in = 2, out_in = 2 } } },
    expect = "not_applicable", where = "side" },
  { "a continuous piece 4 by 4, exactly", with = { ["roof.walls"] = { { name = "side",
    kind = "sidewall", flashing_is = "new", flashing = "continuous", up_in = 4, out_in = 4 } } },
    expect = "pass", where = "side" },
  { "3.9 up", with = { ["roof.walls"] = { { name = "side", kind = "sidewall",
    flashing_is = "new", flashing = "continuous", up_in = 3.9, out_in = 4 } } },
    expect = "fail", where = "side" },
  { "3.9 out", with = { ["roof.walls"] = { { name = "side", kind = "sidewall",
    flashing_is = "new", flashing = "continuous", up_in = 4, out_in = 3.9 } } },
    expect = "fail", where = "side" },
}

-- Old wood, and what a coating may lie over (R908.3).
local function over(kind)
  return { ["scope.method"] = "overlay", ["existing.layers_removed"] = 0,
    ["existing.coverings"] = { { kind = kind, thickness_in = 0.25, removed = false } } }
end
for kind, outcome in pairs { asphalt_shingle = "pass", wood_shingle = "fail",
  wood_shake = "fail", slate = "fail", clay_tile = "fail", concrete_tile = "fail",
  asbestos_cement = "fail", metal_panel = "pass" } do
  cases "layers.base_kind" {
    under = "us-fl", date = EIGHTH,
    { "laid over " .. kind, with = over(kind), expect = outcome },
  }
end
local function coated(kind)
  local with = over(kind)
  with["covering.kind"] = "coating"
  return with
end
for kind, outcome in pairs { spray_foam = "pass", asphalt_shingle = "pass",
  metal_panel = "fail" } do
  cases "layers.coating" {
    under = "us-fl", date = EIGHTH,
    { "a coating over " .. kind, with = coated(kind), expect = outcome },
  }
end

-- Wind classes: class A of the older test is in no row (Table R905.2.6.1).
local function label(mph, new, old)
  return { ["site.wind_vult_mph"] = mph, ["covering.D7158_class"] = new,
    ["covering.D3161_class"] = old }
end
cases "shingle.wind_class" {
  under = "us-fl", date = EIGHTH,
  { "D at 116, exactly", with = label(116, "D", "none"), expect = "pass" },
  { "D at 117", with = label(117, "D", "none"), expect = "fail", required = 116 },
  { "G at 155, exactly", with = label(155, "G", "none"), expect = "pass" },
  { "G at 156", with = label(156, "G", "none"), expect = "fail", required = 155 },
  { "H at 194, exactly", with = label(194, "H", "none"), expect = "pass" },
  { "H at 195", with = label(195, "H", "none"), expect = "fail", required = 194 },
  { "D of the older test at 129, exactly", with = label(129, "none", "D"), expect = "pass" },
  { "at 130", with = label(130, "none", "D"), expect = "fail", required = 129 },
  { "F of it at 194, exactly", with = label(194, "none", "F"), expect = "pass" },
  { "at 195", with = label(195, "none", "F"), expect = "fail", required = 194 },
  { "A of it at 115", with = label(115, "none", "A"), expect = "fail" },
  { "A of it under the model code", under = "model/irc-2021", with = label(115, "none", "A"),
    expect = "pass" },
}

-- New panels: which span rating for the wind (Table R803.2.2, framing at 24 in).
local function panel(rating, mph, ground, spacing)
  return { ["decks[1].span_rating"] = rating, ["decks[1].support_spacing_in"] = spacing or 24,
    ["decks[1].edge_support"] = "clips", ["decks[1].work"] = "replaced",
    ["site.wind_vult_mph"] = mph, ["site.exposure"] = ground }
end
local LAST = {
  B = { ["24/16"] = 140, ["32/16"] = 150, ["40/20"] = 180, ["48/24"] = 180, ["60/32"] = 180 },
  C = { ["24/16"] = 120, ["32/16"] = 130, ["40/20"] = 170, ["48/24"] = 180, ["60/32"] = 180 },
  D = { ["32/16"] = 115, ["40/20"] = 160, ["48/24"] = 180, ["60/32"] = 180 },
}
for ground, speeds in pairs(LAST) do
  for rating, mph in pairs(speeds) do
    cases "deck.panel_wind" {
      under = "us-fl", date = EIGHTH,
      { rating .. " in " .. ground .. " at " .. mph .. ", exactly",
        with = panel(rating, mph, ground), expect = "pass", required = mph },
      { rating .. " in " .. ground .. " a mile past it", with = panel(rating, mph + 1, ground),
        expect = "fail", required = mph },
    }
  end
end
cases "deck.panel_wind" {
  under = "us-fl", date = EIGHTH,
  { "24/16 is in no row of D", with = panel("24/16", 115, "D"), expect = "fail" },
  { "24/0 in none at all", with = panel("24/0", 115, "B"), expect = "fail" },
  { "framing 16 in apart may carry less", with = panel("24/16", 150, "C", 16), expect = "open" },
  { "and more than enough does", with = panel("40/20", 150, "C", 16), expect = "pass" },
  { "framing over 24 in apart", with = panel("48/24", 115, "B", 24.001), expect = "open" },
  { "a deck that stays", with = { ["decks[1].work"] = "kept" }, expect = "not_applicable" },
  { "boards", with = { ["decks[1].kind"] = "board" }, expect = "not_applicable" },
  { "rating not known", without = { "decks[1].span_rating" }, expect = "open" },
  { "the 7th, by the text of the 8th", date = SEVENTH, with = panel("24/16", 140, "B"),
    expect = "warn", required = 140 },
  { "no such table in the model code", under = "model/irc-2021", expect = "not_applicable" },
}
for rating, inches in pairs { ["24/16"] = 0.4375, ["32/16"] = 0.46875, ["40/20"] = 0.59375,
  ["48/24"] = 0.71875 } do
  cases "deck.panel_thickness" {
    under = "us-fl", date = EIGHTH, with = { ["decks[1].work"] = "replaced",
      ["decks[1].span_rating"] = rating },
    { rating .. ", exactly", with = { ["decks[1].thickness_in"] = inches }, expect = "pass" },
    { rating .. ", thinner", with = { ["decks[1].thickness_in"] = inches - 0.01 },
      expect = "fail" },
  }
end
cases "deck.panel_span" {
  under = "us-fl", date = EIGHTH, with = { ["decks[1].work"] = "replaced" },
  { "24/16 on 24 in, edges held", expect = "pass", required = 24 },
  { "on more", with = { ["decks[1].support_spacing_in"] = 24.001 }, expect = "fail" },
  { "edges free", with = { ["decks[1].edge_support"] = "none" }, expect = "pass",
    required = 24 },
  { "free, on more", with = { ["decks[1].edge_support"] = "none",
    ["decks[1].support_spacing_in"] = 24.001 }, expect = "fail" },
}

-- New panels: nails by wind, exposure and wood (Table R803.2.3.1). Each row at the last
-- speed of each pattern, and a mile past it; wood of 0.42 is spruce, of 0.49 and more fir.
local MET = "pass"
local SPACINGS = { wide = { 6, 12 }, even = { 6, 6 }, close = { 4, 4 }, closest = { 3, 3 } }
local function nailed(mph, ground, wood, edges, field, outer)
  return { ["decks[1].work"] = "replaced", ["decks[1].framing_wood"] = wood,
    ["decks[1].nails.edge_spacing_in"] = edges, ["decks[1].nails.field_spacing_in"] = field,
    ["decks[1].nails.band_spacing_in"] = outer, ["decks[1].nails.gable_spacing_in"] = outer,
    ["site.wind_vult_mph"] = mph, ["site.exposure"] = ground }
end
local ROWS = {
  { "B", "spruce_pine_fir", "even", 150, "close", 180 },
  { "C", "spruce_pine_fir", "even", 130, "close", 160, "closest", 180 },
  { "D", "spruce_pine_fir", "even", 120, "close", 150, "closest", 180 },
  { "C", "douglas_fir_larch", "even", 160, "close", 180 },
  { "D", "douglas_fir_larch", "even", 140, "close", 180 },
}
for _, row in ipairs(ROWS) do
  local ground, wood = row[1], row[2]
  for i = 3, #row, 2 do
    local pattern, last = row[i], row[i + 1]
    local most = SPACINGS[pattern][2]
    local name = pattern .. " in " .. ground .. ", " .. wood .. ", at " .. last
    cases "deck.nail_gable" {
      under = "us-fl", date = EIGHTH,
      { name, with = nailed(last, ground, wood, 6, 6, most), expect = MET, required = most },
      { name .. ", a hair wider", with = nailed(last, ground, wood, 6, 6, most + 0.001),
        expect = "fail", required = most },
    }
    local past = row[i + 2] and SPACINGS[row[i + 2]][2]
    cases "deck.nail_gable" {
      under = "us-fl", date = EIGHTH,
      { name .. " and a mile more", with = nailed(last + 1, ground, wood, 6, 6, most),
        expect = past and "fail" or "open", required = past },
    }
    if pattern ~= "even" then
      cases "deck.nail_band" {
        under = "us-fl", date = EIGHTH,
        { name .. ", on the rafters", with = nailed(last, ground, wood, 6, 6, most),
          expect = MET, required = most },
        { name .. ", a hair wider on them", with = nailed(last, ground, wood, 6, 6,
          most + 0.001), expect = "fail", required = most },
      }
      cases "deck.nail_field" {
        under = "us-fl", date = EIGHTH,
        { name .. ", inside", with = nailed(last, ground, wood, 6, 6, most), expect = MET,
          required = 6 },
        { name .. ", inside, a hair wider", with = nailed(last, ground, wood, 6, 6.001, most),
          expect = "fail", required = 6 },
      }
      cases "deck.nail_edges" {
        under = "us-fl", date = EIGHTH,
        { name .. ", inside", with = nailed(last, ground, wood, 6, 6, most), expect = MET,
          required = 6 },
        { name .. ", inside, a hair wider", with = nailed(last, ground, wood, 6.001, 6, most),
          expect = "fail", required = 6 },
      }
    end
  end
end
-- Built under the code, so that no old nails come into it.
local function dense_b(mph, field, year)
  local with = nailed(mph, "B", "southern_pine", 6, field, 6)
  with["house.year_built"] = year or 2010
  return with
end
cases "deck.nail_field" {
  under = "us-fl", date = EIGHTH,
  { "dense wood in B at 120: 12, exactly", with = dense_b(120, 12), expect = MET,
    required = 12 },
  { "a hair wider", with = dense_b(120, 12.001), expect = "fail", required = 12 },
  { "at 121: 6", with = dense_b(121, 6), expect = MET, required = 6 },
  { "12 at 121", with = dense_b(121, 12), expect = "fail", required = 6 },
  { "at 180: 6", with = dense_b(180, 6), expect = MET, required = 6 },
  { "past the table", with = dense_b(181, 6), expect = "open" },
  { "hem-fir counts as 0.42", with = nailed(120, "B", "hem_fir", 6, 12, 6), expect = "fail",
    required = 6 },
  { "and does as such", with = nailed(120, "B", "hem_fir", 6, 6, 6), expect = "pass",
    required = 6 },
  { "so does spruce", with = nailed(120, "B", "spruce_pine_fir", 6, 6, 6), expect = "pass",
    required = 6 },
  { "Douglas fir counts as 0.49", with = nailed(120, "B", "douglas_fir_larch", 6, 12, 6),
    expect = "pass", required = 12 },
  { "the wood does not matter where both rows agree", with = nailed(115, "C", nil, 6, 6, 6),
    without = { "decks[1].framing_wood" }, expect = MET, required = 6 },
  { "it is asked for where they do not", with = nailed(140, "C", nil, 6, 6, 6),
    without = { "decks[1].framing_wood" }, expect = "open" },
  { "framing over 24 in apart", with = { ["decks[1].support_spacing_in"] = 24.001 },
    expect = "open" },
  { "closer framing may do with more", with = { ["decks[1].work"] = "replaced",
    ["decks[1].support_spacing_in"] = 16, ["decks[1].nails.field_spacing_in"] = 12 },
    expect = "open" },
  { "but not with over 12", with = { ["decks[1].work"] = "replaced",
    ["decks[1].support_spacing_in"] = 16, ["decks[1].nails.field_spacing_in"] = 12.001 },
    expect = "fail" },
  { "the 7th, by the text of the 8th", date = SEVENTH,
    with = { ["decks[1].nails.field_spacing_in"] = 12 }, expect = "fail", required = 6 },
}
cases "deck.nail_edges" {
  under = "us-fl", date = EIGHTH,
  { "the wide pattern's edges: 6, exactly", with = dense_b(120, 12), expect = MET,
    required = 6 },
  { "a hair wider", with = nailed(120, "B", "southern_pine", 6.001, 12, 6), expect = "fail" },
  { "a deck nailed at 12 in at 150 mph fails", with = nailed(150, "B", "spruce_pine_fir", 12,
    12, 12), expect = "fail", required = 6 },
  { "a right one passes", with = nailed(150, "B", "spruce_pine_fir", 6, 6, 6),
    expect = MET, required = 6 },
}
cases "deck.nail_gable" {
  under = "us-fl", date = EIGHTH,
  { "the wide pattern's gable: 6, exactly", with = dense_b(120, 12), expect = MET,
    required = 6 },
  { "framing 16 in apart: up to 6 by another standard", with = { ["decks[1].work"] = "replaced",
    ["decks[1].support_spacing_in"] = 16, ["decks[1].nails.gable_spacing_in"] = 6,
    ["site.wind_vult_mph"] = 170 }, expect = "open" },
  { "but not more", with = { ["decks[1].work"] = "replaced",
    ["decks[1].support_spacing_in"] = 16, ["decks[1].nails.gable_spacing_in"] = 6.001,
    ["site.wind_vult_mph"] = 170 }, expect = "fail" },
}
-- The outer zone counts panel edges too: a field nailed closer does not stand in alone.
cases "deck.nail_band" {
  under = "us-fl", date = EIGHTH,
  { "all of it at 4", with = nailed(150, "C", "spruce_pine_fir", 4, 4, nil),
    without = { "decks[1].nails.band_spacing_in" }, expect = MET, required = 4 },
  { "the edges at 6", with = nailed(150, "C", "spruce_pine_fir", 6, 4, nil),
    without = { "decks[1].nails.band_spacing_in" }, expect = "open" },
  { "closer framing", with = { ["decks[1].work"] = "replaced", ["site.exposure"] = "C",
    ["decks[1].support_spacing_in"] = 16, ["decks[1].nails.band_spacing_in"] = 6,
    ["site.wind_vult_mph"] = 150 }, expect = "open" },
}
cases "deck.nail_band_width" {
  under = "us-fl", date = EIGHTH, with = nailed(150, "C", "spruce_pine_fir", 6, 6, 4),
  { "4 ft, exactly", with = { ["decks[1].nails.band_width_in"] = 48 }, expect = MET,
    required = 48 },
  { "a hair less", with = { ["decks[1].nails.band_width_in"] = 47.999 }, expect = "fail" },
  { "all of it laid as close", stage = "deck",
    with = { ["decks[1].nails.measured_edge_spacing_in"] = { 4, 3.75 },
      ["decks[1].nails.measured_field_spacing_in"] = { 4 } }, expect = "not_applicable" },
  { "but the edges of panels", stage = "deck",
    with = { ["decks[1].nails.measured_edge_spacing_in"] = { 4, 6 },
      ["decks[1].nails.measured_field_spacing_in"] = { 4 },
      ["decks[1].nails.measured_band_width_in"] = { 50, 47.9 } }, expect = "fail",
    found = 47.9 },
}

cases "deck.nail_kind" {
  under = "us-fl", date = EIGHTH, with = { ["decks[1].work"] = "replaced" },
  { "smooth shank", expect = "fail", found = "common_8d" },
}
for _, row in ipairs { { "RSRS_01", MET, "fail" }, { "RSRS_02", "open", "fail" },
  { "RSRS_03", MET, MET }, { "RSRS_04", MET, "fail" }, { "RSRS_05", "open", "open" } } do
  cases "deck.nail_kind" {
    under = "us-fl", date = EIGHTH, with = { ["decks[1].work"] = "replaced",
      ["decks[1].nails.kind"] = row[1] },
    { row[1] .. " in 15/32", with = { ["decks[1].thickness_in"] = 0.46875 }, expect = row[2] },
    { row[1] .. " in 1/2", with = { ["decks[1].thickness_in"] = 0.5 }, expect = row[3] },
    { row[1] .. " in 7/8", with = { ["decks[1].thickness_in"] = 0.875 }, expect = row[3] },
  }
end
for kind, size in pairs { RSRS_01 = { 2.375, 0.113 }, RSRS_03 = { 2.5, 0.131 },
  RSRS_04 = { 3, 0.12 } } do
  cases "deck.nail_length" {
    under = "us-fl", date = EIGHTH, with = { ["decks[1].work"] = "replaced",
      ["decks[1].nails.kind"] = kind },
    { kind .. ", exactly", with = { ["decks[1].nails.length_in"] = size[1] }, expect = "pass" },
    { kind .. ", shorter", with = { ["decks[1].nails.length_in"] = size[1] - 0.001 },
      expect = "fail" },
  }
  cases "deck.nail_shank" {
    under = "us-fl", date = EIGHTH, with = { ["decks[1].work"] = "replaced",
      ["decks[1].nails.kind"] = kind },
    { kind .. ", exactly", with = { ["decks[1].nails.shank_in"] = size[2] }, expect = "pass" },
    { kind .. ", thinner", with = { ["decks[1].nails.shank_in"] = size[2] - 0.001 },
      expect = "fail" },
  }
end

-- A deck that stays (R908.7.1): whether it is nailed again goes by what held it. A job
-- says only the year, so all of 2002 counts as before 1 March 2002.
local function kept(year, renailed, old, edges, field)
  return { ["decks[1].work"] = "kept", ["decks[1].renailed"] = renailed,
    ["house.year_built"] = year, ["decks[1].old_nails"] = { kind = old, length_in = 2.5,
      shank_in = 0.131, edge_spacing_in = edges, field_spacing_in = field, per_bearing = 2 } }
end
local function old_8d(length, diameter, edges, field)
  local with = kept(1994, false, "nail_8d", edges, field)
  with["decks[1].old_nails"].length_in = length
  with["decks[1].old_nails"].shank_in = diameter
  return with
end
cases "deck.renailed" {
  under = "us-fl", date = EIGHTH,
  { "staples, planned", with = kept(1994, true, "staple"), expect = MET },
  { "staples, not planned", with = kept(1994, false, "staple"), expect = "fail" },
  { "6d, not planned", with = kept(1994, false, "nail_6d", 6, 6), expect = "fail" },
  { "8d at 6 and 6, exactly", with = kept(1994, false, "nail_8d", 6, 6), expect = MET,
    required = 6 },
  { "8d at 6 and a hair over", with = kept(1994, false, "nail_8d", 6, 6.001), expect = "fail",
    required = 6 },
  { "8d at a hair over and 6", with = kept(1994, false, "nail_8d", 6.001, 6), expect = "fail",
    required = 6 },
  { "8d at 6 and 12, planned", with = kept(1994, true, "nail_8d", 6, 12), expect = MET },
  { "the least old 8d", with = old_8d(2.25, 0.113, 6, 6), expect = MET },
  { "shorter", with = old_8d(2.249, 0.113, 6, 6), expect = "fail" },
  { "thinner", with = old_8d(2.25, 0.112, 6, 6), expect = "fail" },
  { "a house of 2002, staples, not planned", with = kept(2002, false, "staple"),
    expect = "fail", says = "1 March 2002" },
  { "a house of 2003", with = kept(2003, false, "staple"), expect = "not_applicable" },
  { "year not known", with = { ["decks[1].work"] = "kept" }, without = { "house.year_built" },
    expect = "open" },
  { "what held it not known", with = { ["decks[1].work"] = "kept",
    ["decks[1].renailed"] = false }, expect = "open" },
  { "in part new: the old part too", with = { ["decks[1].renailed"] = false,
    ["decks[1].old_nails"] = { kind = "staple" } }, expect = "fail" },
  { "an overlay strips nothing", with = { ["scope.method"] = "overlay",
    ["existing.layers_removed"] = 0, ["existing.coverings[1].removed"] = false,
    ["decks[1].work"] = "kept", ["decks[1].renailed"] = false }, expect = "not_applicable" },
  { "not asked for by the model code", under = "model/irc-2021",
    with = kept(1994, false, "staple"), expect = "not_applicable" },
  { "nor of a deck in part new", under = "model/irc-2021",
    with = { ["decks[1].renailed"] = false }, expect = "not_applicable" },
}
for _, kind in ipairs { "two_family", "townhouse" } do
  cases "deck.renailed" {
    under = "us-fl", date = EIGHTH,
    { kind .. ": the code names no kind of house", with = { ["house.kind"] = kind,
      ["decks[1].work"] = "kept", ["decks[1].renailed"] = false,
      ["decks[1].old_nails"] = { kind = "staple" } }, expect = "fail",
      says = "one-family houses" },
  }
end

-- Boards that stay: two 8d nails in each rafter, old or added (R908.7.1.1).
local function boards(work, nails, kind, renailed, old)
  return { decks = { { name = "panels", kind = "board", work = work, thickness_in = 0.75,
    support_spacing_in = 24, board_gap_in = 0.125, board_width_in = 11.25, renailed = renailed,
    old_nails = { kind = "nail_8d", length_in = 2.5, shank_in = 0.131, per_bearing = old },
    nails = { kind = kind, length_in = 2.5, shank_in = 0.131, per_bearing = nails } } } }
end
cases "deck.renailed" {
  under = "us-fl", date = EIGHTH,
  { "boards held by two 8d", with = boards("kept", nil, nil, false, 2), expect = MET,
    required = 2 },
  { "by one", with = boards("kept", nil, nil, false, 1), expect = "fail", required = 2 },
}
cases "deck.board_nails" {
  under = "us-fl", date = EIGHTH,
  { "two in a wide board, nailed again", with = boards("kept", 2, "box_8d", true, 1),
    expect = MET, required = 2 },
  { "one", with = boards("kept", 1, "box_8d", true, 1), expect = "fail", required = 2 },
  { "held by two already", with = boards("kept", nil, nil, false, 2),
    expect = "not_applicable" },
  { "two under the model code", under = "model/irc-2021",
    with = boards("replaced", 2, "common_8d"), expect = "fail", required = 3 },
}
for _, kind in ipairs { "common_8d", "box_8d", "sinker_8d", "deformed_8d", "common_10d",
  "RSRS_01", "RSRS_02", "RSRS_03", "RSRS_04", "RSRS_05" } do
  cases "deck.nail_kind" {
    under = "us-fl", date = EIGHTH,
    { kind .. " in boards that stay", with = boards("kept", 2, kind, true, 1),
      expect = "pass" },
  }
end
cases "deck.nail_kind" {
  under = "us-fl", date = EIGHTH,
  { "6d in boards that stay", with = boards("kept", 2, "common_6d", true, 1),
    expect = "fail" },
}

-- The new nails in panels that stay, whatever their thickness: RSRS-01 at 6 in.
local function again(facts)
  local with = kept(1994, true, "staple")
  with["decks[1].nails.kind"] = "RSRS_01"
  for name, value in pairs(facts) do with["decks[1]." .. name] = value end
  return with
end
cases "deck.nail_kind" {
  under = "us-fl", date = EIGHTH,
  { "RSRS-01 in a kept 19/32 deck", with = again { thickness_in = 0.59375 }, expect = "pass" },
  { "a stouter ringed nail is the department's to take", with = again {
    ["nails.kind"] = "RSRS_03" }, expect = "open" },
  { "common 8d", with = again { ["nails.kind"] = "common_8d" }, expect = "fail" },
}
cases "deck.nail_length" {
  under = "us-fl", date = EIGHTH,
  { "2-1/4 in, exactly", with = again { ["nails.length_in"] = 2.25 }, expect = "warn",
    required = 2.25, says = "2-3/8" },
  { "shorter", with = again { ["nails.length_in"] = 2.249 }, expect = "fail" },
}
local AT_SIX = { edges = "edge", field = "field", gable = "gable" }
for rule_name, place in pairs(AT_SIX) do
  local function spaced(inches)
    return again { ["nails." .. place .. "_spacing_in"] = inches }
  end
  local at_150 = spaced(6)
  at_150["site.wind_vult_mph"] = 150
  local wide = spaced(12)
  wide["site.wind_vult_mph"] = 150
  cases("deck.nail_" .. rule_name) {
    under = "us-fl", date = EIGHTH,
    { "6 in in a deck that stays, exactly", with = spaced(6), expect = "pass", required = 6 },
    { "a hair wider", with = spaced(6.001), expect = "fail", required = 6 },
    { "6 in at 150 mph", with = at_150, expect = "pass", required = 6 },
    { "12 in at 150 mph", with = wide, expect = "fail", required = 6, found = 12 },
  }
end
cases "deck.nail_band" {
  under = "us-fl", date = EIGHTH,
  { "no closer band in a deck that stays", with = again {}, expect = "not_applicable" },
}
-- In part new in dense wood: the old part's 6 in bind where its nails are poor.
cases "deck.nail_field" {
  under = "us-fl", date = EIGHTH, with = { ["decks[1].framing_wood"] = "southern_pine",
    ["decks[1].nails.field_spacing_in"] = 12 },
  { "over old staples", with = { ["decks[1].old_nails"] = { kind = "staple" } },
    expect = "fail", required = 6 },
  { "beside old 8d at 6", with = { ["decks[1].old_nails"] = { kind = "nail_8d",
    length_in = 2.5, shank_in = 0.131, edge_spacing_in = 6, field_spacing_in = 6 } },
    expect = MET, required = 12 },
}

-- What the wind asks of a deck that stays is told beside its table; of new panels the
-- table tells it.
cases "wind.nail_spacing" {
  under = "us-fl", date = EIGHTH,
  { "new panels", with = { ["decks[1].work"] = "replaced" }, expect = "not_applicable" },
  { "a deck that stays", with = again {}, expect = "pass", says = "These nails hold" },
  { "in the 7th", date = SEVENTH, with = again {}, expect = "warn" },
}
-- By ASCE 7-16 in the 7th edition, by ASCE 7-22 in the 8th: a house 15 ft high, 6:12.
-- 0.00256 x 0.573 x 0.85 x 150^2 = 28.05 psf; 86.1 lb / (2 ft x 63.61 psf) = 8.12 in.
local windy = again { ["nails.kind"] = "RSRS_01", ["nails.length_in"] = 2.375,
  ["nails.shank_in"] = 0.113 }
windy["site.wind_vult_mph"] = 150
cases "wind.nail_spacing" {
  under = "us-fl", with = windy,
  { "8th edition", date = EIGHTH, expect = "pass",
    says = "each 14 in in the field and each 8.1 in near eaves" },
  { "7th edition", date = SEVENTH, expect = "warn",
    says = "each 11 1/2 in in the field and each 6.6 in near eaves" },
}

-- Slate is class A on decks that do not burn, on no others (R902.1 exceptions).
cases "fire.class" {
  under = "us-fl", date = EIGHTH, with = { ["site.lot_line_ft"] = 2.9,
    ["covering.kind"] = "slate", ["covering.fire_class"] = "none" },
  { "slate on plywood", with = { ["covering.over_noncombustible_deck"] = false }, expect = "fail" },
}
-- No zone asks for a retarder: 40 to 50 percent high is enough (R806.2).
cases "ventilation.net_free_area" {
  under = "us-fl", date = EIGHTH, with = { ["site.climate_zone"] = "6A",
    as_meant = { { at = "/attics" } }, -- larger than the base job's roof
    ["attics[1].area_sqft"] = 1500, ["attics[1].vapor_retarder"] = "none" },
  { "the split alone", expect = "warn", required = 720 },
}
-- A sheet that sticks may not lie over metal at a rake of the model code, primed or not.
cases "drip_edge.order_rake" {
  under = "model/irc-2021",
  { "primed", with = { ["underlayments[1].kind"] = "D1970",
    ["roof.edges[4].underlayment_lies"] = "over_metal", ["roof.edges[4].flange_primed"] = true },
    expect = "fail", where = "front left rake" },
}

-- No speed as such stands in the way (R301.2.1.1 exceptions).
cases "shingle.wind_class" {
  under = "us-fl", date = EIGHTH,
  { "150 mph where the map wants a design", with = { ["site.wind_vult_mph"] = 150,
    ["site.wind_design_required"] = true }, expect = "pass", required = 194 },
}

-- Six nails in the high-velocity zone.
cases "fasteners.count" {
  under = "us-fl", date = EIGHTH,
  { "four outside the zone", expect = "pass", required = 4 },
  { "four inside it", with = { ["site.high_velocity_hurricane_zone"] = true },
    expect = "fail", required = 6, found = 4 },
  { "six inside it", with = { ["site.high_velocity_hurricane_zone"] = true,
    ["fasteners.per_shingle"] = 6 }, expect = "pass", required = 6 },
  { "not known whether inside", without = { "site.high_velocity_hurricane_zone" },
    expect = "open" },
  { "the model code knows no such zone", under = "model/irc-2018",
    with = { ["site.high_velocity_hurricane_zone"] = true }, expect = "pass", required = 4 },
}

-- In that zone other sections bind, of which only the number of nails is carried: what
-- they bear on is neither met nor failed here.
local INSIDE = { ["site.high_velocity_hurricane_zone"] = true }
for _, id in ipairs { "deck.nail_edges", "deck.nail_kind", "deck.solid", "drip_edge.lap",
  "fasteners.penetration", "flashing.penetrations", "fire.class", "layers.total",
  "shingle.wind_class", "slope.least", "underlayment.kind", "underlayment.sealed_deck" } do
  for _, day in ipairs { "2021-06-01", EIGHTH } do
    cases(id) {
      under = "us-fl", date = day, with = { ["underlayments[1].kind"] = "D226_II" },
      { "inside the zone", with = INSIDE, expect = "open", says = "Not carried here: in the "
        .. "high-velocity zone" },
      { "not known whether inside", without = { "site.high_velocity_hurricane_zone" },
        expect = "open", says = "/site/high_velocity_hurricane_zone" },
    }
  end
end
cases "slope.least" {
  under = "us-fl", date = EIGHTH,
  { "a fail inside the zone is not told either", with = {
    ["site.high_velocity_hurricane_zone"] = true, ["roof.slopes[1].pitch"] = "1:12" },
    expect = "open", where = "main front" },
  { "outside it", with = { ["roof.slopes[1].pitch"] = "1:12" }, expect = "fail",
    where = "main front" },
  { "the model code knows no such zone", under = "model/irc-2021", with = INSIDE,
    expect = "pass" },
}
cases "ventilation.net_free_area" {
  under = "us-fl", date = EIGHTH,
  { "chapter 8 binds inside the zone too", with = INSIDE, expect = "pass" },
}
cases "valley.lining" {
  under = "us-fl", date = EIGHTH,
  { "no valley, inside the zone or not", with = INSIDE, expect = "not_applicable" },
}

-- The 25 percent rule (its rule of 2017 as quoted), and the relief of 2022 for
-- roofs built to the code of 2007 or later (SB 4-D).
local QUARTER = { ["scope.roof_share_percent"] = 26, ["scope.earlier_roofing"] = {},
  ["scope.section_share_percent"] = 20, ["scope.rest_to_code"] = false,
  ["scope.rest_under_relief"] = false }
local function relieved(day)
  return { ["scope.rest_under_relief"] = true, ["scope.old_roof_permitted_on"] = day }
end
cases "permit.share_trigger" {
  under = "us-fl", date = EIGHTH, with = QUARTER,
  { "26 percent of an older roof", expect = "fail" },
  { "25, exactly", with = { ["scope.roof_share_percent"] = 25 }, expect = "pass",
    required = 25 },
  { "10 of the roof, 25 of a section, exactly", with = { ["scope.roof_share_percent"] = 10,
    ["scope.section_share_percent"] = 25 }, expect = "pass", found = 25 },
  { "10 of the roof, 26 of a section", with = { ["scope.roof_share_percent"] = 10,
    ["scope.section_share_percent"] = 26 }, expect = "fail" },
  { "the section not known", with = { ["scope.roof_share_percent"] = 10 },
    without = { "scope.section_share_percent" }, expect = "open" },
  { "all of the roof", with = { ["scope.roof_share_percent"] = 100 },
    without = { "scope.section_share_percent" }, expect = "pass" },
  { "26 with the rest brought along", with = { ["scope.rest_to_code"] = true },
    expect = "pass" },
  { "12 after 14 in the same year", with = { ["scope.roof_share_percent"] = 12,
    ["scope.earlier_roofing"] = { { done_on = "2023-06-01", roof_share_percent = 14 } } },
    expect = "fail" },
  { "the rest built to the code of 2007", with = relieved "2009-03-01",
    expect = "not_applicable" },
  { "permitted the day before that code", with = relieved "2009-02-28", expect = "fail" },
  { "said to be, but not when", with = { ["scope.rest_under_relief"] = true },
    expect = "open", says = "/scope/old_roof_permitted_on" },
  { "the same before the relief", date = "2022-05-25", with = relieved "2009-03-01",
    expect = "fail" },
  { "on its first day", date = "2022-05-26", with = relieved "2009-03-01",
    expect = "not_applicable" },
  { "and permitted too early", date = "2022-05-26", with = relieved "2009-02-28",
    expect = "fail" },
  { "not known under which code", without = { "scope.rest_under_relief" }, expect = "open" },
}

-- The notice of commencement: over 2,500 on counties' forms, over 5,000 since a change
-- of law of October 2023.
local function priced(dollars, recorded)
  return { ["scope.price_usd"] = dollars, ["papers.commencement_recorded"] = recorded or false }
end
cases "papers.commencement" {
  under = "us-fl",
  { "2,500, exactly, before the change", date = "2023-09-30", with = priced(2500),
    expect = "not_applicable" },
  { "a dollar more", date = "2023-09-30", with = priced(2501), expect = "fail" },
  { "the same on the day of the change", date = "2023-10-01", with = priced(2501),
    expect = "not_applicable" },
  { "5,000, exactly", date = EIGHTH, with = priced(5000), expect = "not_applicable" },
  { "a dollar over it", date = EIGHTH, with = priced(5001), expect = "fail" },
  { "over it in the 7th", date = "2023-10-01", with = priced(5001), expect = "fail" },
  { "recorded", date = EIGHTH, with = priced(18000, true), expect = "pass" },
  { "price not known", date = EIGHTH, expect = "open" },
}
cases "papers.commencement_posted" {
  under = "us-fl", date = EIGHTH, with = { ["scope.price_usd"] = 18000 },
  { "posted", with = { ["papers.commencement_posted"] = true }, expect = "pass" },
  { "not posted", with = { ["papers.commencement_posted"] = false }, expect = "fail" },
}

cases "papers.product_approval" {
  under = "us-fl", date = EIGHTH,
  { "one sheet, exactly", with = { ["papers.approval_sheets"] = 1 }, expect = "warn",
    says = "wants 2" },
  { "none", with = { ["papers.approval_sheets"] = 0 }, expect = "fail" },
  { "not known", expect = "open" },
}
cases "papers.approval_numbers" {
  under = "us-fl", date = EIGHTH,
  { "not given", with = { ["papers.approval_numbers"] = false }, expect = "fail" },
  { "given", with = { ["papers.approval_numbers"] = true }, expect = "pass" },
}

-- Counties want an affidavit, the code does not: practice.
cases "papers.affidavit" {
  under = "us-fl", date = EIGHTH,
  { "a house of 1994, signed for the nailing", with = {
    ["papers.affidavit.covers"] = { "deck_nailing" } }, expect = "pass" },
  { "none", with = { ["papers.affidavit.covers"] = { "none" } }, expect = "warn" },
  { "a house of 2002", with = { ["house.year_built"] = 2002,
    ["papers.affidavit.covers"] = { "none" } }, expect = "warn", says = "1 March 2002" },
  { "a house of 2003", with = { ["house.year_built"] = 2003 }, expect = "not_applicable" },
}

cases "inspection.dry_in" {
  under = "us-fl", date = EIGHTH,
  { "a visit", with = { ["inspection.dry_in.proof"] = "visit" }, expect = "pass" },
  { "photographs", with = { ["inspection.dry_in.proof"] = "photos" }, expect = "warn",
    says = "not every county" },
  { "nothing", with = { ["inspection.dry_in.proof"] = "none" }, expect = "fail" },
}

-- Roof-to-wall ties, 706.8 as quoted.
local TIES = { ["site.wind_borne_debris"] = true, ["house.insured_value_usd"] = 300000,
  ["papers.wall_ties"] = "improved" }
cases "papers.wall_ties" {
  under = "us-fl", date = EIGHTH, with = TIES,
  { "300,000, exactly, and improved", expect = "pass" },
  { "nothing done", with = { ["papers.wall_ties"] = "none" }, expect = "fail" },
  { "a dollar less", with = { ["house.insured_value_usd"] = 299999,
    ["papers.wall_ties"] = "none" }, expect = "not_applicable" },
  { "outside the debris region", with = { ["site.wind_borne_debris"] = false,
    ["papers.wall_ties"] = "none" }, expect = "not_applicable" },
  { "built in 2002", with = { ["house.year_built"] = 2002, ["papers.wall_ties"] = "none" },
    expect = "fail", says = "1 March 2002" },
  { "built in 2003", with = { ["house.year_built"] = 2003, ["papers.wall_ties"] = "none" },
    expect = "not_applicable" },
  { "two families: the code names no kind of house", with = { ["house.kind"] = "two_family",
    ["papers.wall_ties"] = "none" }, expect = "fail", says = "one-family houses" },
  { "a townhouse", with = { ["house.kind"] = "townhouse", ["papers.wall_ties"] = "none" },
    expect = "fail" },
  { "due by the code it was built to", with = { ["papers.wall_ties"] = "due_when_built" },
    expect = "pass" },
  { "the first step takes 16 percent", with = { ["papers.wall_ties"] = "beyond_share",
    ["papers.wall_ties_first_step_percent"] = 16 }, expect = "pass" },
  { "15 percent, exactly: it fits", with = { ["papers.wall_ties"] = "beyond_share",
    ["papers.wall_ties_first_step_percent"] = 15 }, expect = "fail", says = "15" },
  { "value not known", without = { "house.insured_value_usd" }, expect = "open" },
}

-- That the 7th's base was recalled stands in the head, not on each line.
cases "flashing.penetrations" {
  under = "us-fl",
  { "in the 7th edition", date = SEVENTH, expect = "pass", where = "soil pipe",
    says = "is recalled" },
  { "in the 8th", date = EIGHTH, expect = "pass", where = "soil pipe" },
}

-- Valleys: narrower metal than the model code's (R905.2.8.2), and metal by the same
-- table as flashing.
local function valley(kind, lining, width, bottom)
  return { ["roof.valleys"] = { { name = "valley", kind = kind, lining = lining,
    metal = "galvanized", thickness_in = 0.0179, width_in = width, bottom_width_in = bottom } } }
end
for day, met in pairs { [SEVENTH] = "warn", [EIGHTH] = "pass" } do
  cases "valley.width" {
    under = "us-fl", date = day,
    { "metal 16 in, exactly", with = valley("open", "metal", 16), expect = met,
      required = 16 },
    { "metal a hair less", with = valley("open", "metal", 15.999), expect = "fail",
      required = 16 },
  }
end
for metal, inches in pairs { copper = 0.024, aluminum = 0.024, galvanized = 0.0179,
  aluminum_zinc = 0.0179, zinc = 0.027 } do
  local function of(thick)
    return { ["roof.valleys"] = { { name = "valley", kind = "open", lining = "metal",
      metal = metal, thickness_in = thick } } }
  end
  cases "valley.metal" {
    under = "us-fl", date = EIGHTH,
    { metal .. ", exactly", with = of(inches), expect = MET },
    { metal .. ", thinner", with = of(inches - 0.0001), expect = "fail" },
  }
end
cases "valley.metal" {
  under = "us-fl", date = EIGHTH,
  { "high-yield copper is not in the table", with = { ["roof.valleys"] = { { name = "valley",
    kind = "open", lining = "metal", metal = "high_yield_copper", thickness_in = 0.05 } } },
    expect = "fail" },
}
cases "valley.width" {
  under = "us-fl", date = EIGHTH,
  { "16 in under the model code", under = "model/irc-2021", with = valley("open", "metal", 16),
    expect = "fail", required = 24 },
  { "roll 18 and 36 in, exactly", with = valley("open", "two_ply_roll", 36, 18),
    expect = "pass", required = 18 },
  { "bottom ply 17.5 in", with = valley("open", "two_ply_roll", 36, 17.5), expect = "fail",
    required = 18 },
  { "top ply 35.5 in", with = valley("open", "two_ply_roll", 35.5, 18), expect = "fail",
    required = 36 },
  { "smooth roll 36 in, exactly", with = valley("closed", "smooth_roll", 36), expect = "pass",
    required = 36 },
  { "smooth roll 35.5 in", with = valley("closed", "smooth_roll", 35.5), expect = "fail",
    required = 36 },
  { "self-adhered 36 in, exactly", with = valley("closed", "self_adhered", 36),
    expect = "pass", required = 36 },
  { "self-adhered 35.5 in", with = valley("closed", "self_adhered", 35.5), expect = "fail",
    required = 36 },
}

cases "papers.wall_ties" {
  under = "us-fl", date = EIGHTH, with = TIES,
  { "found strong already", with = { ["papers.wall_ties"] = "sound_already" },
    expect = "pass" },
  { "done up to the share", with = { ["papers.wall_ties"] = "done_to_share" },
    expect = "pass" },
  { "the first step takes 15.1 percent", with = { ["papers.wall_ties"] = "beyond_share",
    ["papers.wall_ties_first_step_percent"] = 15.1 }, expect = "pass" },
}

-- The wind does not matter: not even when nobody knows it.
cases "underlayment.kind" {
  under = "us-fl", date = EIGHTH, with = { ["underlayments[1].kind"] = "D226_II" },
  { "wind not known", without = { "site.wind_vult_mph", "site.wind_design_required" },
    expect = "pass", where = "main front" },
}
cases "underlayment.lap_spacing" {
  under = "us-fl", date = EIGHTH, with = { ["underlayments[1].lap_spacing_in"] = 8 },
  { "wind not known", without = { "site.wind_vult_mph", "site.wind_design_required" },
    expect = "fail", where = "main front" },
}
cases "underlayment.head_lap" {
  under = "us-fl", date = SEVENTH,
  { "wind not known, 2 in", without = { "site.wind_vult_mph" }, expect = "fail",
    where = "main front", required = 4, found = 2 },
}

-- Every kind that an edition's lists name, and the light felt on none of them: alone,
-- over taped joints, and in two plies.
local function each_kind(date, list)
  for _, row in ipairs(list) do
    local kind, one, layer, double = row[1], row[2], row[3], row[4]
    local with = { ["underlayments[1].kind"] = kind,
      ["underlayments[1].evaluation_report"] = false }
    local two = { ["underlayments[1].kind"] = kind, ["underlayments[1].plies"] = 2,
      ["underlayments[1].roll_width_in"] = 36, ["underlayments[1].head_lap_in"] = 19 }
    cases "underlayment.kind" {
      under = "us-fl", date = date,
      { kind .. ", " .. date, with = with, expect = one, where = "main front" },
    }
    cases "underlayment.sealed_deck" {
      under = "us-fl", date = date,
      { kind .. " over taped joints, " .. date, with = taped(4, kind), expect = layer,
        where = "main front" },
      { "two plies of " .. kind .. ", " .. date, with = two, expect = double,
        where = "main front" },
    }
  end
end
each_kind(SEVENTH, {
  { "D226_I", "fail", "fail", "fail" }, { "D226_II", "warn", "warn", "warn" },
  { "D4869_III", "warn", "warn", "warn" }, { "D4869_IV", "warn", "warn", "warn" },
  { "D8257", "fail", "warn", "warn" }, { "other_synthetic", "fail", "warn", "warn" },
})
each_kind(EIGHTH, {
  { "D226_I", "fail", "fail", "fail" }, { "D226_II", "pass", "pass", "pass" },
  { "D4869_III", "pass", "pass", "pass" }, { "D4869_IV", "pass", "pass", "pass" },
  { "D6757", "pass", "pass", "fail" }, { "D8257", "pass", "pass", "pass" },
  { "other_synthetic", "fail", "fail", "fail" },
})

-- A thousandth short.
cases "underlayment.sealed_deck" {
  under = "us-fl",
  { "3.999 in tape in the 7th", date = SEVENTH, with = taped(3.999), expect = "fail",
    where = "main front", required = 4 },
  { "3.749 in tape in the 8th", date = EIGHTH, with = taped(3.749), expect = "fail",
    where = "main front", required = 3.75 },
}
cases "underlayment.end_lap" {
  under = "us-fl", date = EIGHTH,
  { "5.999 in", with = { ["underlayments[1].end_lap_in"] = 5.999 }, expect = "fail",
    where = "main front", required = 6 },
}

cases "underlayment.plies" {
  under = "us-fl", date = EIGHTH,
  { "one ply", expect = "pass", where = "main front" },
  { "none", with = { ["underlayments[1].plies"] = 0 }, expect = "fail", where = "main front" },
}
cases "fasteners.past_thin_deck" {
  under = "us-fl",
  { "1/8 in past in the 7th", date = SEVENTH, with = { ["fasteners.length_in"] = 0.8425 },
    expect = "warn", says = "3/16 in through" },
  { "and in the 8th", date = EIGHTH, with = { ["fasteners.length_in"] = 0.8425 },
    expect = "pass" },
}

-- Since July 2026 some houses may need no permit: it is no doubt about one that is held.
cases "permit.every" {
  under = "us-fl", date = "2026-07-01",
  { "a permit", expect = "pass" },
  { "none", with = { ["permit.status"] = "none" }, expect = "fail", says = "7,500 dollars" },
  { "none, the day before", date = "2026-06-30", with = { ["permit.status"] = "none" },
    expect = "fail" },
  { "not known", without = { "permit.status" }, expect = "open" },
}

-- Deck and ties where more than 30 percent of the deck comes off (FBC-EB 707.3.2). The
-- base roof has 1,289.2 sq ft along the slope, of which that is 386.8.
local function off(sqft, more)
  local facts = { ["site.wind_vult_mph"] = 116, ["house.year_built"] = 1990,
    ["decks[1].work"] = "partly_replaced", ["decks[1].replaced_sqft"] = sqft,
    ["decks[1].unsound_sqft"] = 0, ["papers.diaphragm_evaluated"] = false }
  for name, value in pairs(more or {}) do facts[name] = value end
  return facts
end
cases "papers.diaphragm" {
  under = "us-fl", date = EIGHTH,
  { "half of the deck off, evaluated", with = off(600, { ["papers.diaphragm_evaluated"] = true }),
    expect = "pass" },
  { "half of it off, not evaluated", with = off(600), expect = "fail" },
  { "30 percent, exactly", with = off(386.8), expect = "not_applicable" },
  { "30.1 percent", with = off(388.1), expect = "fail" },
  { "in wind of 115 mph", with = off(600, { ["site.wind_vult_mph"] = 115 }),
    expect = "not_applicable" },
  { "built in 2002", with = off(600, { ["house.year_built"] = 2002 }), expect = "fail",
    says = "1 March 2002" },
  { "built in 2003", with = off(600, { ["house.year_built"] = 2003 }),
    expect = "not_applicable" },
  { "not known whether it was evaluated", with = { ["site.wind_vult_mph"] = 130,
    ["house.year_built"] = 1990, ["decks[1].work"] = "replaced" }, expect = "open" },
  { "new panels over old boards take none off", with = off(0, { ["decks[1].work"] = "paneled_over",
    ["decks[1].kind"] = "spaced_board", ["decks[1].over_panel_thickness_in"] = 0.5,
    ["decks[1].board_gap_in"] = 4, ["decks[1].board_width_in"] = 3.5 }),
    expect = "not_applicable" },
}

-- Weight that is added (FBC-EB 707.2): by 5 percent, or one second layer of 3 psf.
local function heavier(now, after, more)
  local facts = { ["existing.coverings[1].weight_lb_per_square"] = now,
    ["covering.weight_lb_per_square"] = after, ["papers.engineer_report"] = false }
  for name, value in pairs(more or {}) do facts[name] = value end
  return facts
end
local LAID_OVER = { ["scope.method"] = "overlay", ["existing.layers_removed"] = 0,
  ["existing.coverings[1].removed"] = false }
cases "layers.added_load" {
  under = "us-fl", date = EIGHTH,
  { "5 percent, exactly", with = heavier(200, 210), expect = "pass", required = 5, found = 5 },
  { "5.5 percent", with = heavier(200, 211), expect = "fail", says = "5.5 %" },
  { "5.5 percent, with an engineer's word", with = heavier(200, 211,
    { ["papers.engineer_report"] = true }), expect = "pass" },
  { "no heavier", with = heavier(210, 210), expect = "not_applicable" },
  { "a second layer of 3 psf", with = heavier(200, 300, LAID_OVER), expect = "pass",
    required = 3, found = 3 },
  { "a second layer of 3.1 psf", with = heavier(200, 310, LAID_OVER), expect = "fail" },
  { "weight not known", with = { ["covering.weight_lb_per_square"] = 210 }, expect = "open" },
}

-- Flashing along a wall in one piece (R905.2.8.1 item 3).
local function along(facts)
  local wall = { name = "wall", kind = "sidewall", flashing_is = "new", flashing = "continuous",
    flashing_condition = "sound", up_in = 4, out_in = 4, eave_ends_here = false,
    top_covered_by = "siding", flange_in_cement = true, flange_spacing_in = 6,
    flashing_lap_in = 4 }
  for name, value in pairs(facts or {}) do wall[name] = value end
  if facts and facts.lacks then wall[facts.lacks], wall.lacks = nil, nil end
  return { ["roof.walls"] = { wall } }
end
cases "flashing.one_piece_cement" {
  under = "us-fl", date = EIGHTH,
  { "set in cement", with = along(), expect = "pass" },
  { "not", with = along { flange_in_cement = false }, expect = "fail" },
  { "not known", with = along { lacks = "flange_in_cement" }, expect = "open" },
  { "step flashing", with = along { flashing = "step" }, expect = "not_applicable" },
  { "old flashing", with = along { flashing_is = "reused" }, expect = "not_applicable" },
  { "a wall above the plane", with = along { kind = "headwall" }, expect = "not_applicable" },
}
cases "flashing.one_piece_spacing" {
  under = "us-fl", date = EIGHTH,
  { "6 in, exactly", with = along(), expect = "pass", required = 6, found = 6 },
  { "6.1 in", with = along { flange_spacing_in = 6.1 }, expect = "fail" },
  { "not known", with = along { lacks = "flange_spacing_in" }, expect = "open" },
}
cases "flashing.one_piece_lap" {
  under = "us-fl", date = EIGHTH,
  { "4 in, exactly", with = along(), expect = "pass", required = 4, found = 4 },
  { "3.9 in", with = along { flashing_lap_in = 3.9 }, expect = "fail" },
  { "not known", with = along { lacks = "flashing_lap_in" }, expect = "open" },
}

-- Straps from roof to wall (R908.8.1): 500 lb, four nails an end.
local function strapped(pounds, nails, more)
  local with = { ["site.wind_borne_debris"] = true, ["house.insured_value_usd"] = 300000,
    ["house.year_built"] = 1990, ["papers.wall_ties"] = "improved",
    ["papers.wall_tie_strap_lb"] = pounds, ["papers.wall_tie_nails"] = nails }
  for name, value in pairs(more or {}) do with[name] = value end
  return with
end
local function found(pounds, more)
  local with = strapped(pounds, 2, { ["papers.wall_ties"] = "sound_already",
    ["papers.wall_tie_uplift_lb"] = 800 })
  for name, value in pairs(more or {}) do with[name] = value end
  return with
end
cases "papers.wall_tie_uplift" {
  under = "us-fl", date = "2026-03-02",
  { "ties found there hold 800 lb, exactly", with = found(800), expect = "pass", required = 800 },
  { "799 lb", with = found(799), expect = "fail", found = 799 },
  { "what the table asks is not said", with = found(900),
    without = { "papers.wall_tie_uplift_lb" }, expect = "open", says = "wall_tie_uplift_lb" },
  { "rating not known", with = found(nil), expect = "open" },
  { "new straps have a rule of their own", with = strapped(400, 2), expect = "not_applicable" },
  { "a cheap house", with = found(500, { ["house.insured_value_usd"] = 200000 }),
    expect = "not_applicable" },
}

local DESIGNED = { ["papers.wall_ties_designed"] = true, ["papers.wall_tie_uplift_lb"] = 300 }
local USUAL = { ["papers.wall_ties_designed"] = false }
cases "papers.wall_tie_straps" {
  under = "us-fl", date = "2026-03-02",
  { "500 lb and four nails, exactly", with = strapped(500, 4), expect = "pass" },
  { "499 lb", with = strapped(499, 4, USUAL), expect = "fail", required = 500 },
  { "three nails", with = strapped(500, 3, USUAL), expect = "fail", required = 4 },
  { "499 lb, and nobody says by whose design", with = strapped(499, 4), expect = "open" },
  { "300 lb by a design that asks so much", with = strapped(300, 2, DESIGNED), expect = "pass",
    required = 300 },
  { "299 lb by it", with = strapped(299, 2, DESIGNED), expect = "fail" },
  { "a design whose uplift is not said", with = strapped(300, 2, DESIGNED),
    without = { "papers.wall_tie_uplift_lb" }, expect = "open" },
  { "done up to the share", with = strapped(400, 4, { ["papers.wall_ties"] = "done_to_share",
    ["papers.wall_ties_designed"] = false }), expect = "fail" },
  { "found strong already", with = strapped(400, 2, { ["papers.wall_ties"] = "sound_already" }),
    expect = "not_applicable" },
  { "rating not known", with = strapped(nil, 4), expect = "open" },
  { "built in 2003", with = strapped(400, 2, { ["house.year_built"] = 2003 }),
    expect = "not_applicable" },
}

-- R908.3 item 4: blisters are opened and fastened down before anything lies over them.
local BLISTERED = { ["scope.method"] = "overlay", ["existing.layers_removed"] = 0,
  ["existing.coverings[1].removed"] = false, ["existing.blisters"] = "none" }
for _, day in ipairs { "2021-03-01", "2026-03-02" } do
  local met = day < "2023" and "warn" or "pass"
  cases "layers.blisters" {
    under = "us-fl", date = day, with = BLISTERED,
    { "none, on " .. day, expect = met },
    { "cut open and fastened, on " .. day, with = { ["existing.blisters"] = "cut_and_fastened" },
      expect = met },
    { "left, on " .. day, with = { ["existing.blisters"] = "left" }, expect = "fail" },
    { "a tear-off, on " .. day, with = { ["scope.method"] = "tear-off",
      ["existing.layers_removed"] = 1, ["existing.coverings[1].removed"] = true,
      ["existing.blisters"] = "left" }, expect = "not_applicable" },
    { "not known, on " .. day, without = { "existing.blisters" }, expect = "open" },
  }

  -- FBC-B 105.12: an early start by leave, at one's own risk.
  cases "permit.early_start" {
    under = "us-fl", date = day, from = "paperwork",
    with = { ["permit.status"] = "applied", ["permit.begun_before"] = true,
      ["permit.early_start_allowed"] = true },
    { "begun by leave, on " .. day, expect = met },
    { "begun without, on " .. day, with = { ["permit.early_start_allowed"] = false },
      expect = "fail" },
    { "begun without any permit, on " .. day, with = { ["permit.status"] = "none",
      ["permit.early_start_allowed"] = false }, expect = "fail" },
    { "not begun, on " .. day, with = { ["permit.begun_before"] = false },
      expect = "not_applicable" },
    { "the permit is issued, on " .. day, with = { ["permit.status"] = "issued",
      ["permit.early_start_allowed"] = false }, expect = "not_applicable" },
    { "leave not known, on " .. day, without = { "permit.early_start_allowed" }, expect = "open" },
    { "not said whether any work has begun, on " .. day, without = { "permit.begun_before" },
      expect = "open" },
  }

  -- R905.4.5 and R905.6.5: the approval's uplift is the roof's at least.
  for _, kind in ipairs { "metal_shingle", "slate" } do
    cases "papers.approval_uplift" {
      under = "us-fl", date = day,
      with = { ["covering.kind"] = kind, ["papers.approval_uplift_holds"] = true },
      { kind .. " whose approval holds it, on " .. day, expect = met },
      { kind .. " whose approval holds less, on " .. day,
        with = { ["papers.approval_uplift_holds"] = false }, expect = "fail" },
      { kind .. ", not known, on " .. day, without = { "papers.approval_uplift_holds" },
        expect = "open" },
      { "asphalt shingles have a table of their own, on " .. day,
        with = { ["covering.kind"] = "asphalt_shingle", ["papers.approval_uplift_holds"] = false },
        expect = "not_applicable" },
    }
  end
end

-- The sections on wood coverings are reserved: the model's slope is no line of this book.
for _, kind in ipairs { "wood_shingle", "wood_shake" } do
  cases "slope.least" {
    under = "us-fl", date = "2026-03-02", with = { ["covering.kind"] = kind },
    { kind .. " at 4:12", expect = "warn", where = "porch", required = 3 },
    { kind .. " at 2-1/2:12", with = { ["roof.slopes[3].pitch"] = "2.5:12" }, expect = "fail",
      where = "porch" },
  }
end

-- An old deck nailed anew where the land lies open: near the edges the nails of C may stand
-- 1.216 times as far apart as those of D, as their height factors at 15 ft, 0.85 and 1.03
-- (Table R301.2.1(2)), before they are rounded.
local function renailed(ground, inches)
  return { ["decks[1].work"] = "kept", ["decks[1].renailed"] = true, ["site.exposure"] = ground,
    ["site.wind_vult_mph"] = 180, ["decks[1].nails.field_spacing_in"] = 0.5,
    ["decks[1].nails.band_spacing_in"] = inches }
end
cases "wind.nail_spacing" {
  under = "us-fl", date = EIGHTH,
  { "as close as C asks", with = renailed("C", 3.007), expect = "pass" },
  { "a hair wider", with = renailed("C", 3.008), expect = "warn", says = "near eaves" },
  { "as close as D asks", with = renailed("D", 2.472), expect = "pass" },
  { "a hair wider there", with = renailed("D", 2.473), expect = "warn", says = "near eaves" },
}
