-- Cases of rules/energy.lua. The model leaves all of it off; the invented
-- Quillrun County has cool roofs from mid-2026, and before that insulation of
-- opened rafter spaces.

-- A covering that falls short, and a house that no exception excuses.
local SHORT = { ["scope.roof_share_percent"] = 100, ["covering.aged_reflectance"] = 0.10,
  ["covering.aged_emittance"] = 0.90, ["covering.aged_SRI"] = 5, ["energy"] = {
    ceiling_R = 30, radiant_barrier = false, radiant_barrier_on_spaced = false,
    ducts_in_attic = true, ducts_insulated_and_sealed = false, deck_R = 0, deck_before_R = 0,
    air_space_in = 0, profile_ratio = 0, profile_share_percent = 0, mass_psf = 0 },
  ["roof.slopes[1].under_integrated_solar"] = false,
  ["roof.slopes[2].under_integrated_solar"] = false,
  ["roof.slopes[3].under_integrated_solar"] = false }

-- The pair of figures and the index are alternatives: 0.20 with 0.75 works out
-- at an index of about 11, and still passes.
cases "energy.cool_roof" {
  under = "example/quillrun", date = "2026-07-01", with = SHORT,
  { "neither pair nor index", expect = "fail", where = "main front" },
  { "the pair, exactly", with = { ["covering.aged_reflectance"] = 0.20,
    ["covering.aged_emittance"] = 0.75, ["covering.aged_SRI"] = 11 }, expect = "pass",
    where = "main front" },
  { "the pair alone known", with = { ["covering.aged_reflectance"] = 0.20,
    ["covering.aged_emittance"] = 0.75 }, without = { "covering.aged_SRI" }, expect = "pass",
    where = "main front" },
  { "the index, exactly", with = { ["covering.aged_SRI"] = 16 }, expect = "pass",
    where = "main front", required = 16, found = 16 },
  { "the index alone known", with = { ["covering.aged_SRI"] = 16 },
    without = { "covering.aged_reflectance", "covering.aged_emittance" }, expect = "pass",
    where = "main front" },
  { "index just short", with = { ["covering.aged_SRI"] = 15.9 }, expect = "fail",
    where = "main front" },
  { "reflectance without emittance", with = { ["covering.aged_reflectance"] = 0.30,
    ["covering.aged_emittance"] = 0.70 }, expect = "fail", where = "main front" },
  { "index short and the pair not known",
    without = { "covering.aged_reflectance", "covering.aged_emittance" }, expect = "open",
    where = "main front" },
  { "pair short and the index not known", without = { "covering.aged_SRI" }, expect = "open",
    where = "main front", says = "/covering/aged_SRI" },
  { "half the roof, exactly, is not more", with = { ["scope.roof_share_percent"] = 50 },
    expect = "not_applicable", where = "main front" },
  { "a little more than half", with = { ["scope.roof_share_percent"] = 50.1 },
    expect = "fail", where = "main front" },
  { "share not known", without = { "scope.roof_share_percent" }, expect = "open",
    where = "main front" },
  { "another zone", with = { ["site.climate_zone"] = "6A" }, expect = "not_applicable",
    where = "main front" },
  { "zone not known", without = { "site.climate_zone" }, expect = "open",
    where = "main front" },

  -- Exactly 2:12 is steep by this county's figure: SRI 20 passes there only.
  { "exactly 2:12 counts as steep", with = { ["roof.slopes[1].pitch"] = "2:12",
    ["covering.aged_SRI"] = 20 }, expect = "pass", where = "main front", required = 16 },
  { "flatter is low", with = { ["roof.slopes[1].pitch"] = "1.9:12",
    ["covering.aged_SRI"] = 20 }, expect = "fail", where = "main front", required = 75 },
  { "low in its own zone, at its figure", with = { ["roof.slopes[1].pitch"] = "1:12",
    ["covering.aged_SRI"] = 75, ["site.climate_zone"] = "5A" }, expect = "pass",
    where = "main front" },
  { "low by the pair", with = { ["roof.slopes[1].pitch"] = "1:12",
    ["covering.aged_reflectance"] = 0.63, ["covering.aged_emittance"] = 0.75 },
    expect = "pass", where = "main front" },

  -- Exceptions, each at its limit and short of it.
  { "R-38 in the ceiling", with = { ["energy.ceiling_R"] = 38 }, expect = "pass",
    where = "main front" },
  { "R-37", with = { ["energy.ceiling_R"] = 37 }, expect = "fail", where = "main front" },
  { "radiant barrier", with = { ["energy.radiant_barrier"] = true }, expect = "pass",
    where = "main front" },
  { "radiant barrier on spaced boards", with = { ["energy.radiant_barrier"] = true,
    ["energy.radiant_barrier_on_spaced"] = true }, expect = "fail", where = "main front" },
  { "radiant barrier on what is not known", with = { ["energy.radiant_barrier"] = true },
    without = { "energy.radiant_barrier_on_spaced" }, expect = "open", where = "main front" },
  { "no ducts in the attic, zone 4A", with = { ["energy.ducts_in_attic"] = false },
    expect = "pass", where = "main front" },
  { "no ducts in the attic, zone 3A", with = { ["energy.ducts_in_attic"] = false,
    ["site.climate_zone"] = "3A" }, expect = "fail", where = "main front" },
  { "R-2 at the deck", with = { ["energy.deck_R"] = 2 }, expect = "pass",
    where = "main front" },
  { "R-1.9 at the deck", with = { ["energy.deck_R"] = 1.9 }, expect = "fail",
    where = "main front" },
  { "1 in of air", with = { ["energy.air_space_in"] = 1 }, expect = "pass",
    where = "main front" },
  { "1 in 5 over half the width", with = { ["energy.profile_ratio"] = 0.2,
    ["energy.profile_share_percent"] = 50 }, expect = "pass", where = "main front" },
  { "1 in 5 over less", with = { ["energy.profile_ratio"] = 0.2,
    ["energy.profile_share_percent"] = 49 }, expect = "fail", where = "main front" },
  { "sealed ducts", with = { ["energy.ducts_insulated_and_sealed"] = true },
    expect = "pass", where = "main front" },
  { "25 lb per sq ft", with = { ["energy.mass_psf"] = 25 }, expect = "pass",
    where = "main front" },
  { "R-38 excuses no low slope", with = { ["energy.ceiling_R"] = 38,
    ["roof.slopes[1].pitch"] = "1:12" }, expect = "fail", where = "main front" },
  { "under integrated panels", with = { ["roof.slopes[1].under_integrated_solar"] = true },
    expect = "not_applicable", where = "main front" },
  { "an exception not known", without = { "energy.mass_psf" }, expect = "open",
    where = "main front", says = "/energy/mass_psf" },
  { "another one holds all the same", with = { ["energy.ceiling_R"] = 40 },
    without = { "energy.mass_psf" }, expect = "pass", where = "main front" },
  { "nothing known of the house", without = { "energy" }, expect = "open",
    where = "main front" },
  { "nor needed when the covering does", with = { ["covering.aged_SRI"] = 29 },
    without = { "energy" }, expect = "pass", where = "main front" },
}

cases "energy.cool_roof" {
  under = "model/irc-2021", with = SHORT,
  { "off in the model", expect = "not_applicable" },
}

cases "energy.low_insulation" {
  under = "example/quillrun", date = "2026-07-01", with = SHORT,
  { "steep", expect = "not_applicable", where = "main front" },
  { "low, none", with = { ["roof.slopes[1].pitch"] = "1:12" }, expect = "fail",
    where = "main front", required = 14, found = 0 },
  { "R-14, exactly", with = { ["roof.slopes[1].pitch"] = "1:12", ["energy.deck_R"] = 14 },
    expect = "pass", where = "main front" },
  { "R-10 there before, exactly", with = { ["roof.slopes[1].pitch"] = "1:12",
    ["energy.deck_R"] = 10, ["energy.deck_before_R"] = 10 }, expect = "pass",
    where = "main front", required = 10 },
  { "R-10 new is not enough", with = { ["roof.slopes[1].pitch"] = "1:12",
    ["energy.deck_R"] = 10 }, expect = "fail", where = "main front", required = 14 },
  { "what was there before not known", with = { ["roof.slopes[1].pitch"] = "1:12" },
    without = { "energy.deck_before_R" }, expect = "open", where = "main front" },
}

local OPENED = { ["energy"] = { cavity_opened = true, cavity_R = 38, cavity_air_gap_in = 1 } }

cases "energy.opened_cavity" {
  under = "example/quillrun", with = OPENED,
  { "R-38, exactly", expect = "pass", required = 38, found = 38 },
  { "R-30", with = { ["energy.cavity_R"] = 30 }, expect = "fail", found = 30 },
  { "not known", without = { "energy.cavity_R" }, expect = "open" },
  { "nothing opened", with = { ["energy.cavity_opened"] = false }, expect = "not_applicable" },
  { "whether anything is opened not known", without = { "energy" }, expect = "open" },
}

cases "energy.opened_airspace" {
  under = "example/quillrun", with = OPENED,
  { "1 in, exactly", expect = "pass" },
  { "1/2 in", with = { ["energy.cavity_air_gap_in"] = 0.5 }, expect = "fail", found = 0.5 },
  { "not known", without = { "energy.cavity_air_gap_in" }, expect = "open" },
}
