-- California, cool roofs of single-family houses, Energy Code 2022 and 2025,
-- which share their figures as far as they were read, but for whether half of the
-- roof itself counts: that stands in us-ca.lua by edition. "seen" is what pages on the
-- state's forms and manuals of both years restate alike; other second-hand reading
-- counts as memory here, as in us-ca.lua. The nonresidential figures of 2022
-- (0.25, 0.80, SRI 23) are not for houses.

local CITE = "Energy Code 150.2(b)1I"
local STEEP, LOW = CITE .. "i", CITE .. "ii"
local TICKET = "read second-hand: change ticket of the state's rule set; a research note"
local BOTH = "pages on the state's forms and manuals of 2022 and 2025"
local MEASURE = "the state's page on the 2022 measure"
local DROPPED = "recalled: the list of 2022 omits it"

-- The state's own zones stand instead of the model's.
local function instead(figure)
  figure.instead = true
  return figure
end

local function told(value, cite, source)
  return { value, cite = cite, status = "memory", source = source }
end

local function seen(value, cite)
  return { value, cite = cite, status = "seen", source = MEASURE }
end

local function agreed(value, cite)
  return { value, cite = cite, status = "seen", source = BOTH }
end

figures {
  ["energy.cool_roof_required"] = agreed(true, CITE),
  ["energy.trigger_over"] = agreed(nil, CITE),
  ["energy.steep_from"] = agreed(nil, CITE),
  ["energy.steep_at_named_slope"] = { true, cite = CITE, status = "seen", source = BOTH,
    disputed = "trade copy, and the rule set before its correction, begin above 2:12" },
  ["energy.steep_zones"] = instead(agreed({ "state_4", "state_8", "state_9", "state_10", "state_11",
    "state_12", "state_13", "state_14", "state_15" }, STEEP)),
  ["energy.steep_reflectance_least"] = agreed(nil, STEEP),
  ["energy.steep_emittance_least"] = agreed(nil, STEEP),
  ["energy.steep_SRI_least"] = agreed(nil, STEEP),
  ["energy.low_zones"] = instead(told({ "state_4", "state_6", "state_7", "state_8", "state_9",
    "state_10", "state_11", "state_12", "state_13", "state_14", "state_15" }, LOW, TICKET)),
  ["energy.low_reflectance_least"] = told(nil, LOW, TICKET),
  ["energy.low_emittance_least"] = told(nil, LOW, TICKET),
  ["energy.low_SRI_least"] = told(nil, LOW, "recalled"),
  ["energy.low_trade_for_insulation"] = told(true, LOW .. ", Table 150.2-B", "recalled"),

  ["energy.exempt_ceiling_R"] = seen(true, STEEP),
  ["energy.exempt_ceiling_R_least"] = seen(nil, STEEP),
  ["energy.exempt_radiant_barrier"] = seen(true, STEEP),
  ["energy.radiant_barrier_not_on_spaced"] = seen(nil, STEEP),
  ["energy.exempt_no_ducts"] = seen(true, STEEP),
  ["energy.no_ducts_by_zone"] = seen(true, STEEP),
  ["energy.no_ducts_zones"] = instead(seen({ "state_2", "state_4", "state_9", "state_10",
    "state_12", "state_14" }, STEEP)),
  ["energy.exempt_deck_R"] = seen(true, STEEP),
  ["energy.exempt_deck_R_least"] = seen(nil, STEEP),
  ["energy.exempt_air_space"] = told(nil, STEEP, DROPPED),
  ["energy.exempt_profile"] = told(nil, STEEP, DROPPED),
  ["energy.exempt_sealed_ducts"] = told(nil, STEEP, DROPPED),
  ["energy.exempt_mass"] = told(true, CITE, "read second-hand: trade copy of a city list"),
  ["energy.exempt_mass_least"] = told(nil, CITE, "read second-hand: trade copy of a city list"),
  ["energy.exempt_integrated_pv"] = told(true, CITE, "recalled"),

  ["energy.low_deck_R_required"] = told(true, LOW, TICKET),
  ["energy.low_deck_R_zones"] = instead(told({ "state_1", "state_2", "state_4", "state_8",
    "state_9", "state_10", "state_11", "state_12", "state_13", "state_14", "state_15",
    "state_16" }, LOW,
    TICKET)),
  ["energy.low_deck_R_least"] = told(nil, LOW, TICKET),
  ["energy.low_deck_R_existing_least"] = seen(nil, LOW),
}
