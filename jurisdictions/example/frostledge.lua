-- Frostledge County, invented: it turned on the line by height as the model has it, and later
-- drew a map instead.

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
  figures = { ["ice_barrier.by_elevation"] = { true, cite = "8-2" } },
}

jurisdiction "example/frostledge" {
  title = "Frostledge County", invented = true, follows = "model/irc-2021", facts = FACTS,
  from = "2026-01-01", code = "Frostledge Code",
  zones = {
    ["site.local_ice_zone"] = { "ice", "mild",
      ask = "Does the house stand in the ice zone of the county's map, or in the mild one?" },
  },
  figures = { ["ice_barrier.by_local_zone"] = { true, cite = "8-3" } },
}
