-- Cool roofs and insulation at replacement. The model's energy chapter is not carried here:
-- every duty is off, and a place turns it on. The numbers are those of one state's energy
-- code, kept as common practice so that a place that turns a duty on states its own.

local STATE = "one state's energy code, read second-hand"
local NO_DUTY = "state code texts on the editions of 2018 to 2024: no such duty; states have it"
local EDITION = "state code text on this edition"
local SINCE_2018 = { "IRC 2018", "IRC 2021", "IRC 2024" }
local ALL_ZONES = { "1A", "2A", "2B", "3A", "3B", "3C", "4A", "4B", "4C", "5A", "5B", "5C", "6A",
  "6B", "7", "8" }

figure "energy.cool_roof_required" { false, "N1102", sense = "equals", seen = NO_DUTY,
  read_in = SINCE_2018, stricter = true }
figure "energy.trigger_over" { 50, "N1102", unit = "percent", sense = "over", practice = STATE,
  at_figure = "energy.trigger_at_named_share" }
figure "energy.trigger_at_named_share" { false, "N1102", sense = "equals", seen = NO_DUTY,
  read_in = SINCE_2018, stricter = true }
figure "energy.steep_from" { 2, "N1102", unit = "rise_in_12", sense = "from", practice = STATE,
  at_figure = "energy.steep_at_named_slope" }

figure "energy.steep_at_named_slope" { true, "N1102", sense = "equals",
  practice = "one state's energy code, read second-hand; trade copy begins above the named "
    .. "slope", stricter = false }

figure "energy.steep_zones" { ALL_ZONES, "N1102", sense = "one_of",
  practice = "all zones, until a place names its own" }
figure "energy.steep_reflectance_least" { 0.2, "N1102", unit = "reflectance", sense = "at_least",
  practice = STATE }
figure "energy.steep_emittance_least" { 0.75, "N1102", unit = "emittance", sense = "at_least",
  practice = STATE }
figure "energy.steep_SRI_least" { 16, "N1102", unit = "SRI", sense = "at_least",
  practice = STATE }
figure "energy.low_zones" { ALL_ZONES, "N1102", sense = "one_of",
  practice = "all zones, until a place names its own" }
figure "energy.low_reflectance_least" { 0.63, "N1102", unit = "reflectance", sense = "at_least",
  practice = STATE }
figure "energy.low_emittance_least" { 0.75, "N1102", unit = "emittance", sense = "at_least",
  practice = STATE }
figure "energy.low_SRI_least" { 75, "N1102", unit = "SRI", sense = "at_least", practice = STATE }
figure "energy.low_trade_for_insulation" { false, "N1102", sense = "equals", seen = NO_DUTY,
  read_in = SINCE_2018, stricter = false }

-- Exceptions, each with its own switch.
figure "energy.exempt_ceiling_R" { false, "N1102", sense = "equals", seen = NO_DUTY,
  read_in = SINCE_2018, stricter = false }

figure "energy.exempt_ceiling_R_least" { 38, "N1102", unit = "R", sense = "at_least",
  practice = STATE }
figure "energy.exempt_radiant_barrier" { false, "N1102", sense = "equals", seen = NO_DUTY,
  read_in = SINCE_2018, stricter = false }
figure "energy.radiant_barrier_not_on_spaced" { true, "N1102", sense = "equals", practice = STATE,
  stricter = true }
figure "energy.exempt_no_ducts" { false, "N1102", sense = "equals", seen = NO_DUTY,
  read_in = SINCE_2018, stricter = false }
figure "energy.no_ducts_by_zone" { false, "N1102", sense = "equals", seen = NO_DUTY,
  read_in = SINCE_2018, stricter = true }
figure "energy.no_ducts_zones" { ALL_ZONES, "N1102", sense = "one_of",
  practice = "all zones, until a place names its own" }
figure "energy.exempt_deck_R" { false, "N1102", sense = "equals", seen = NO_DUTY,
  read_in = SINCE_2018, stricter = false }
figure "energy.exempt_deck_R_least" { 2, "N1102", unit = "R", sense = "at_least",
  practice = STATE }
figure "energy.exempt_air_space" { false, "N1102", sense = "equals", seen = NO_DUTY,
  read_in = SINCE_2018, stricter = false }
figure "energy.exempt_air_space_least" { 1, "N1102", unit = "in", sense = "at_least",
  practice = STATE }
figure "energy.exempt_profile" { false, "N1102", sense = "equals", seen = NO_DUTY,
  read_in = SINCE_2018, stricter = false }
figure "energy.exempt_profile_rise_least" { 0.2, "N1102", unit = "rise_per_width",
  sense = "at_least", practice = STATE }
figure "energy.exempt_profile_share_least" { 50, "N1102", unit = "percent", sense = "at_least",
  practice = STATE }
figure "energy.exempt_sealed_ducts" { false, "N1102", sense = "equals", seen = NO_DUTY,
  read_in = SINCE_2018, stricter = false }
figure "energy.exempt_mass" { false, "N1102", sense = "equals", seen = NO_DUTY,
  read_in = SINCE_2018, stricter = false }
figure "energy.exempt_mass_least" { 25, "N1102", unit = "psf", sense = "at_least",
  practice = STATE }
figure "energy.exempt_integrated_pv" { false, "N1102", sense = "equals", seen = NO_DUTY,
  read_in = SINCE_2018, stricter = false }

-- Insulation where the roof is opened.
figure "energy.low_deck_R_required" { false, "N1102", sense = "equals", seen = NO_DUTY,
  read_in = SINCE_2018, stricter = true }

figure "energy.low_deck_R_zones" { ALL_ZONES, "N1102", sense = "one_of",
  practice = "all zones, until a place names its own", behind = "energy.low_deck_R_required" }
figure "energy.low_deck_R_least" { 14, "N1102", unit = "R", sense = "at_least", practice = STATE,
  behind = "energy.low_deck_R_required" }
figure "energy.low_deck_R_existing_least" { 10, "N1102", unit = "R", sense = "at_least",
  practice = STATE, behind = "energy.low_deck_R_required" }
-- N1109.1.1 of 2018 and N1111.1.1 of 2021: a roof that holds no insulation in its rafter
-- spaces and is laid bare is insulated, with what is not said; a recover is let off. 2024
-- (N1111.1.1.2) asks otherwise, by where the insulation lies, and is not carried; the copies
-- of 2015 lack the chapter.
figure "energy.bare_rafters_count" { false, "N1109.1.1", sense = "equals",
  memory = "the chapter of 2012 and 2015 was not read", stricter = true,
  ["2018"] = { true, "N1109.1.1", seen = EDITION },
  ["2021"] = { true, "N1111.1.1", seen = EDITION },
  ["2024"] = { false, "N1111.1.1.2", seen = EDITION .. ": by where the insulation lies" },
}

-- How much an opened space must hold is a place's own: see energy.bare_rafters too.
figure "energy.opened_R_required" { false, "N1109.1.1, N1111.1.1", sense = "equals",
  seen = NO_DUTY, read_in = SINCE_2018, stricter = true }

figure "energy.opened_R_least" { 38, "N1102", unit = "R", sense = "at_least",
  practice = "a city handout of a state with its own energy code",
  behind = "energy.opened_R_required" }

figure "energy.opened_air_gap_least" { 1, "N1102", unit = "in", sense = "at_least",
  practice = "a city handout of a state with its own energy code" }
