-- Frostledge County, invented: it turned on the lines by height as the model has them, and later
-- drew a map for the ice instead, and other lines.

-- One all over the county.
local FACTS = {
  ["site.wind_vult_mph"] = { 115, unit = "mph", cite = "climate table" },
  ["site.wind_design_required"] = { false, cite = "climate table" },
  ["site.exposure"] = { one_of = { "B", "C" }, cite = "climate table" },
  ["site.climate_zone"] = { "6A", cite = "climate table" },
  ["site.january_mean_F"] = { 19, unit = "F", cite = "climate table" },
  ["site.hail_exposure"] = { "low", cite = "climate table" },
  ["site.seismic_category"] = { "B", cite = "climate table" },
  ["site.high_velocity_hurricane_zone"] = { false, cite = "climate table" },
  ["site.hurricane_prone_region"] = { false, cite = "climate table" },
  ["site.fire_zone"] = { "none", cite = "climate table" },
  ["site.state_fire_area"] = { false, cite = "climate table" },
}

jurisdiction "example/frostledge" {
  title = "Frostledge County", invented = true, follows = "model/irc-2021", facts = FACTS,
  from = "2024-01-01", to = "2026-01-01", code = "Frostledge Code",
  figures = {
    ["ice_barrier.by_elevation"] = { true, cite = "8-2" },
    ["fire.class_by_elevation"] = { true, cite = "8-4" },
    ["underlayment.sealed_deck_by_elevation"] = { true, cite = "8-5" },
    ["wind.vult_by_elevation"] = { true, cite = "8-6" },
  },
}

jurisdiction "example/frostledge" {
  title = "Frostledge County", invented = true, follows = "model/irc-2021", facts = FACTS,
  from = "2026-01-01", code = "Frostledge Code",
  zones = {
    ["site.local_ice_zone"] = { "ice", "mild",
      ask = "Does the house stand in the ice zone of the county's map, or in the mild one?" },
  },
  figures = {
    ["ice_barrier.by_local_zone"] = { true, cite = "8-3" },
    -- "Above 5,000 feet, 5,000 itself with it, coverings are of class A or B."
    ["fire.class_by_elevation"] = { true, cite = "8-4" },
    ["fire.class_elevation_from"] = { "5,000", cite = "8-4" },
    ["fire.classes_high"] = { { "A", "B" }, cite = "8-4" },
    -- "From 8,000 feet on, decks are sealed."
    ["underlayment.sealed_deck_by_elevation"] = { true, cite = "8-5" },
    ["underlayment.sealed_deck_elevation_from"] = { "8,000", cite = "8-5" },
    -- "From 6,000 feet on, the wind is taken as 130 miles an hour at least."
    ["wind.vult_by_elevation"] = { true, cite = "8-6" },
    ["wind.vult_elevation_from"] = { "6,000", cite = "8-6" },
    ["wind.vult_high_least"] = { 130, cite = "8-6" },
  },
}
