-- California, cool roofs of single-family houses, Energy Code 2019. Second-hand
-- reading counts as memory here, as in us-ca.lua.

local CITE = "Energy Code 150.2(b)1I"
local SECOND = "read second-hand: a cool-roof tool kit"
local LIST = "read second-hand: trade copy of a city list"

-- The state's own zones stand instead of the model's.
local function instead(figure)
  figure.instead = true
  return figure
end

local function told(value, source)
  return { value, cite = CITE, status = "memory", source = source }
end

figures {
  ["energy.cool_roof_required"] = told(true, SECOND),
  ["energy.trigger_over"] = told(nil, "read second-hand: a research note"),
  ["energy.trigger_at_named_share"] = told(nil, "read second-hand: a research note"),
  ["energy.steep_from"] = told(nil, SECOND),
  ["energy.steep_at_named_slope"] = { true, cite = CITE, status = "memory",
    source = "read second-hand: a correction of the 2022 rule set",
    disputed = "trade copy, and the rule set before its correction, begin above 2:12" },
  ["energy.steep_zones"] = instead(told({ "state_10", "state_11", "state_12", "state_13",
    "state_14", "state_15" }, "recalled")),
  ["energy.steep_reflectance_least"] = told(nil, SECOND),
  ["energy.steep_emittance_least"] = told(nil, SECOND),
  ["energy.steep_SRI_least"] = told(nil, SECOND),
  ["energy.low_zones"] = instead(told({ "state_13", "state_15" }, "recalled")),
  ["energy.low_reflectance_least"] = told(nil, "recalled"),
  ["energy.low_emittance_least"] = told(nil, "recalled"),
  ["energy.low_SRI_least"] = told(nil, "recalled"),

  ["energy.exempt_ceiling_R"] = told(true, "recalled; read in the 2022 measure"),
  ["energy.exempt_ceiling_R_least"] = told(nil, "recalled; read in the 2022 measure"),
  ["energy.exempt_radiant_barrier"] = told(true, "recalled; read in the 2022 measure"),
  ["energy.radiant_barrier_not_on_spaced"] = told(false, "the 2022 measure brought it"),
  ["energy.exempt_no_ducts"] = told(true, LIST),
  ["energy.no_ducts_by_zone"] = told(nil, LIST),
  ["energy.exempt_deck_R"] = told(true, LIST),
  ["energy.exempt_deck_R_least"] = { 4, cite = CITE, status = "memory", source = LIST,
    disputed = "recollection of this edition is R-2, the list says R-4" },
  ["energy.exempt_air_space"] = told(true, LIST),
  ["energy.exempt_air_space_least"] = told(nil, LIST),
  ["energy.exempt_profile"] = told(true, LIST),
  ["energy.exempt_profile_rise_least"] = told(nil, LIST),
  ["energy.exempt_profile_share_least"] = told(nil, LIST),
  ["energy.exempt_sealed_ducts"] = told(true, LIST),
  ["energy.exempt_mass"] = told(true, LIST),
  ["energy.exempt_mass_least"] = told(nil, LIST),
  ["energy.exempt_integrated_pv"] = told(true, "recalled"),
}
