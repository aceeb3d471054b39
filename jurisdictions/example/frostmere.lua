-- Frostmere County, invented: a cold place, and the one in which the rule cases
-- try duties that the model code leaves off. Until mid-2026 its ice barrier
-- reads like the model's; from then on it lets unheated eaves off and counts
-- from the outer face of the wall.

-- One all over the place.
local FACTS = {
  ["site.wind_vult_mph"] = { 115, unit = "mph", cite = "climate table" },
  ["site.wind_design_required"] = { false, cite = "climate table" },
  ["site.exposure"] = { one_of = { "B", "C" }, cite = "climate table" },
  ["site.climate_zone"] = { "6A", cite = "climate table" },
  ["site.ice_barrier_in_table"] = { true, cite = "climate table" },
  ["site.january_mean_F"] = { 14, unit = "F", cite = "climate table" },
  ["site.hail_exposure"] = { "low", cite = "climate table" },
  ["site.seismic_category"] = { "B", cite = "climate table" },
  ["site.high_velocity_hurricane_zone"] = { false, cite = "climate table" },
  ["site.hurricane_prone_region"] = { false, cite = "climate table" },
  ["site.fire_zone"] = { "none", cite = "climate table" },
  ["site.state_fire_area"] = { false, cite = "climate table" },
  ["permit.telephone"] = { "555-0113", cite = "title page" },
}

jurisdiction "example/frostmere" {
  title = "Frostmere County",
  invented = true,
  facts = FACTS,
  code = "Frostmere County Code",
  follows = "model/irc-2021",
  from = "2024-01-01",
  to = "2026-07-01",
  figures = {
    ["ice_barrier.required"] = { true, cite = "9.20.010" },
    ["layers.hail_bars_overlay"] = { true, cite = "9.20.030" },
    ["layers.over_wood_shake_allowed"] = { false, cite = "9.20.032" },
  },
}

jurisdiction "example/frostmere" {
  title = "Frostmere County",
  invented = true,
  facts = FACTS,
  code = "Frostmere County Code",
  follows = "model/irc-2021",
  from = "2026-07-01",
  figures = {
    ["ice_barrier.required"] = { true, cite = "9.20.010" },
    ["ice_barrier.unheated_exempt"] = { true, cite = "9.20.012" },
    ["ice_barrier.wall_counts"] = { false, cite = "9.20.014" },
    ["ice_barrier.on_overlay_required"] = { false, cite = "9.20.016" },
    ["layers.hail_bars_overlay"] = { true, cite = "9.20.030" },
    ["layers.over_wood_shake_allowed"] = { false, cite = "9.20.032" },
  },
}
