-- Quillrun County, invented: dry bluffs over a river in the invented state of
-- Harrow. It asks for fire classes by zone, and the rule cases try fire and
-- energy duties here that the model code leaves off. Until mid-2026 its
-- wildfire details are advice; from then on they bind, and cool roofs with them.

-- One all over the place.
local FACTS = {
  ["site.wind_vult_mph"] = { 115, unit = "mph", cite = "climate table" },
  ["site.wind_design_required"] = { false, cite = "climate table" },
  ["site.exposure"] = { one_of = { "B", "C" }, cite = "climate table" },
  ["site.climate_zone"] = { "5B", cite = "climate table" },
  ["site.ice_barrier_in_table"] = { false, cite = "climate table" },
  ["site.january_mean_F"] = { 27, unit = "F", cite = "climate table" },
  ["site.hail_exposure"] = { "low", cite = "climate table" },
  ["site.seismic_category"] = { "B", cite = "climate table" },
  ["site.high_velocity_hurricane_zone"] = { false, cite = "climate table" },
  ["site.hurricane_prone_region"] = { false, cite = "climate table" },
  ["permit.telephone"] = { "555-0119", cite = "title page" },
}

-- A figure taken over as it stands, under the county's own section.
local function own(cite)
  return { cite = cite, status = "invented", source = "Quillrun County Code" }
end

local function common(more)
  local figures = {
    ["fire.class_by_zone"] = { true, cite = "6-201" },
    ["fire.classes_in.none"] = { { "A", "B", "C" }, cite = "6-201(a)" },
    ["fire.classes_in.moderate"] = { { "A", "B" }, cite = "6-201(b)" },
    ["fire.classes_in.high"] = { { "A" }, cite = "6-201(c)" },
    ["fire.classes_in.very_high"] = { { "A" }, cite = "6-201(c)" },
    ["fire.whole_roof_required"] = { true, cite = "6-203" },
    ["fire.whole_roof_over"] = own "6-203",
    ["fire.whole_roof_months"] = own "6-203",
    ["fire.whole_roof_at_named_share"] = own "6-203",
    ["fire.banned_in_zones"] = { { "wood_shingle", "wood_shake" }, cite = "6-206" },
    ["fire.ban_zones"] = { { "high", "very_high" }, cite = "6-206" },
    ["fire.wood_weathering_required"] = { true, cite = "6-207" },
    ["fire.wood_weathering_years_least"] = own "6-207",
  }
  for name, entry in pairs(more) do figures[name] = entry end
  return figures
end

jurisdiction "example/quillrun" {
  title = "Quillrun County, Harrow",
  invented = true,
  facts = FACTS,
  code = "Quillrun County Code",
  follows = "model/irc-2021",
  from = "2024-01-01",
  to = "2026-07-01",
  figures = common {
    -- Warned of only: the status says so.
    ["fire.wildfire_details"] = { true, cite = "6-210, advice", status = "practice" },
    ["fire.match_old_most"] = { 25, cite = "6-204" },
    ["energy.opened_R_required"] = { true, cite = "6-310" },
    ["energy.opened_R_least"] = own "6-310",
    ["energy.opened_air_gap_least"] = own "6-310",
  },
}

jurisdiction "example/quillrun" {
  title = "Quillrun County, Harrow",
  invented = true,
  facts = FACTS,
  code = "Quillrun County Code",
  follows = "model/irc-2021",
  from = "2026-07-01",
  figures = common {
    -- A county floor, over the zones.
    ["fire.class_required"] = { true, cite = "6-200" },
    ["fire.classes"] = { { "A", "B" }, cite = "6-200" },
    ["fire.state_area_counts"] = { true, cite = "6-202" },
    ["fire.classes_state_area"] = { { "A" }, cite = "6-202" },
    ["fire.state_area_exempt_zones"] = own "6-202",
    ["fire.whole_roof_at_named_share"] = { true, cite = "6-203, or more" },
    ["fire.banned"] = { { "roll_roofing" }, cite = "6-205" },

    ["fire.wildfire_details"] = { true, cite = "6-210" },
    ["fire.wildfire_zones"] = { { "high", "very_high" }, cite = "6-210" },
    ["fire.mesh_least"] = own "6-215",
    ["fire.mesh_most"] = own "6-215",
    ["fire.vent_listing_accepted"] = own "6-215",

    ["flashing.reuse_allowed"] = { false, cite = "6-250" },

    ["energy.cool_roof_required"] = { true, cite = "6-301" },
    ["energy.trigger_over"] = own "6-301",
    ["energy.trigger_at_named_share"] = own "6-301",
    ["energy.steep_from"] = own "6-302",
    ["energy.steep_at_named_slope"] = own "6-302",
    ["energy.steep_zones"] = { { "3A", "4A" }, cite = "6-302" },
    ["energy.steep_reflectance_least"] = own "6-303",
    ["energy.steep_emittance_least"] = own "6-303",
    ["energy.steep_SRI_least"] = own "6-303",
    ["energy.low_zones"] = { { "3A", "4A", "5A" }, cite = "6-304" },
    ["energy.low_reflectance_least"] = own "6-304",
    ["energy.low_emittance_least"] = own "6-304",
    ["energy.low_SRI_least"] = own "6-304",
    ["energy.exempt_ceiling_R"] = { true, cite = "6-305(1)" },
    ["energy.exempt_ceiling_R_least"] = own "6-305(1)",
    ["energy.exempt_radiant_barrier"] = { true, cite = "6-305(2)" },
    ["energy.radiant_barrier_not_on_spaced"] = own "6-305(2)",
    ["energy.exempt_no_ducts"] = { true, cite = "6-305(3)" },
    ["energy.no_ducts_by_zone"] = { true, cite = "6-305(3)" },
    ["energy.no_ducts_zones"] = { { "4A" }, cite = "6-305(3)" },
    ["energy.exempt_deck_R"] = { true, cite = "6-305(4)" },
    ["energy.exempt_deck_R_least"] = own "6-305(4)",
    ["energy.exempt_air_space"] = { true, cite = "6-305(5)" },
    ["energy.exempt_air_space_least"] = own "6-305(5)",
    ["energy.exempt_profile"] = { true, cite = "6-305(6)" },
    ["energy.exempt_profile_rise_least"] = own "6-305(6)",
    ["energy.exempt_profile_share_least"] = own "6-305(6)",
    ["energy.exempt_sealed_ducts"] = { true, cite = "6-305(7)" },
    ["energy.exempt_mass"] = { true, cite = "6-305(8)" },
    ["energy.exempt_mass_least"] = own "6-305(8)",
    ["energy.exempt_integrated_pv"] = { true, cite = "6-305(9)" },
    ["energy.low_deck_R_required"] = { true, cite = "6-306" },
    ["energy.low_deck_R_zones"] = { { "4A" }, cite = "6-306" },
    ["energy.low_deck_R_least"] = own "6-306",
    ["energy.low_deck_R_existing_least"] = own "6-306",
  },
}
