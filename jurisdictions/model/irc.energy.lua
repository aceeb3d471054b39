-- Cool roofs and insulation at replacement. The model's energy chapter is not
-- carried here: every duty is off, and a place turns it on. The numbers are
-- those of one state's energy code, kept as common practice so that a place
-- that turns a duty on states its own.

local STATE = "one state's energy code, read second-hand"
local OFF = "state code texts on the editions of 2018 to 2024: no such duty; states have it"
local BOOKS = { "IRC 2018", "IRC 2021", "IRC 2024" }

local function off(cite)
  return { false, sense = "equals", cite = cite, status = "seen", source = OFF,
    read_in = BOOKS }
end

local function number(value, unit, sense, cite, source)
  return { value, unit = unit, sense = sense, cite = cite, status = "practice",
    source = source or STATE }
end

local ALL_ZONES = { "1A", "2A", "2B", "3A", "3B", "3C", "4A", "4B", "4C", "5A", "5B", "5C", "6A",
  "6B", "7", "8" }

local function zones()
  return { ALL_ZONES, sense = "one_of", cite = "N1102", status = "practice",
    source = "all zones, until a place names its own" }
end

-- A limit, and the figure that says whether a job exactly at it counts.
local function at_said_by(at, limit)
  limit.at_figure = at
  return limit
end

figures {
  ["energy.cool_roof_required"] = off "N1102",
  ["energy.trigger_over"] = at_said_by("energy.trigger_at_named_share",
    number(50, "percent", "over", "N1102")),
  ["energy.trigger_at_named_share"] = off "N1102",
  ["energy.steep_from"] = at_said_by("energy.steep_at_named_slope",
    number(2, "rise_in_12", "from", "N1102")),
  ["energy.steep_at_named_slope"] = { true, sense = "equals", cite = "N1102",
    status = "practice", source = STATE .. "; trade copy begins above the named slope" },

  ["energy.steep_zones"] = zones(),
  ["energy.steep_reflectance_least"] = number(0.20, "reflectance", "at_least", "N1102"),
  ["energy.steep_emittance_least"] = number(0.75, "emittance", "at_least", "N1102"),
  ["energy.steep_SRI_least"] = number(16, "SRI", "at_least", "N1102"),
  ["energy.low_zones"] = zones(),
  ["energy.low_reflectance_least"] = number(0.63, "reflectance", "at_least", "N1102"),
  ["energy.low_emittance_least"] = number(0.75, "emittance", "at_least", "N1102"),
  ["energy.low_SRI_least"] = number(75, "SRI", "at_least", "N1102"),
  ["energy.low_trade_for_insulation"] = off "N1102",

  -- Exceptions, each with its own switch.
  ["energy.exempt_ceiling_R"] = off "N1102",
  ["energy.exempt_ceiling_R_least"] = number(38, "R", "at_least", "N1102"),
  ["energy.exempt_radiant_barrier"] = off "N1102",
  ["energy.radiant_barrier_not_on_spaced"] = { true, sense = "equals", cite = "N1102",
    status = "practice", source = STATE },
  ["energy.exempt_no_ducts"] = off "N1102",
  ["energy.no_ducts_by_zone"] = off "N1102",
  ["energy.no_ducts_zones"] = zones(),
  ["energy.exempt_deck_R"] = off "N1102",
  ["energy.exempt_deck_R_least"] = number(2, "R", "at_least", "N1102"),
  ["energy.exempt_air_space"] = off "N1102",
  ["energy.exempt_air_space_least"] = number(1, "in", "at_least", "N1102"),
  ["energy.exempt_profile"] = off "N1102",
  ["energy.exempt_profile_rise_least"] = number(0.2, "rise_per_width", "at_least", "N1102"),
  ["energy.exempt_profile_share_least"] = number(50, "percent", "at_least", "N1102"),
  ["energy.exempt_sealed_ducts"] = off "N1102",
  ["energy.exempt_mass"] = off "N1102",
  ["energy.exempt_mass_least"] = number(25, "psf", "at_least", "N1102"),
  ["energy.exempt_integrated_pv"] = off "N1102",

  -- Insulation where the roof is opened.
  ["energy.low_deck_R_required"] = off "N1102",
  ["energy.low_deck_R_zones"] = zones(),
  ["energy.low_deck_R_least"] = number(14, "R", "at_least", "N1102"),
  ["energy.low_deck_R_existing_least"] = number(10, "R", "at_least", "N1102"),
  ["energy.opened_R_required"] = off "N1102",
  ["energy.opened_R_least"] = number(38, "R", "at_least", "N1102",
    "a city handout of a state with its own energy code"),
  ["energy.opened_air_gap_least"] = number(1, "in", "at_least", "N1102",
    "a city handout of a state with its own energy code"),
}
