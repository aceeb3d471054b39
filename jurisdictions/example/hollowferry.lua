-- Hollowferry, invented: a hamlet where the ferry was, in the invented state of
-- Harrow. It asks for no permit as such and prints no exemption for the outside of
-- a house, and says nothing more: so what the model code leaves off stays off.

-- One all over the place.
local FACTS = {
  ["site.wind_vult_mph"] = { 115, unit = "mph", cite = "climate table" },
  ["site.wind_design_required"] = { false, cite = "climate table" },
  ["site.exposure"] = { one_of = { "B", "C" }, cite = "climate table" },
  ["site.climate_zone"] = { "5A", cite = "climate table" },
  ["site.ice_barrier_in_table"] = { false, cite = "climate table" },
  ["site.january_mean_F"] = { 30, unit = "F", cite = "climate table" },
  ["site.hail_exposure"] = { "moderate", cite = "climate table" },
  ["site.seismic_category"] = { "B", cite = "climate table" },
  ["site.high_velocity_hurricane_zone"] = { false, cite = "climate table" },
  ["site.hurricane_prone_region"] = { false, cite = "climate table" },
  ["site.fire_zone"] = { "none", cite = "climate table" },
  ["site.state_fire_area"] = { false, cite = "climate table" },
  ["permit.telephone"] = { "555-0116", cite = "title page" },
}

jurisdiction "example/hollowferry" {
  title = "Hamlet of Hollowferry, Harrow",
  invented = true,
  facts = FACTS,
  follows = "model/irc-2021",
  from = "2025-01-01",
  code = "Hollowferry Bylaws",
  figures = {
    ["permit.every"] = { false, cite = "bylaw 3" },
    ["alarms.exterior_exempt"] = { false, cite = "bylaw 4" },
    ["alarms.by_permit"] = { false, cite = "bylaw 4" },
    ["alarms.co_by_permit"] = { false, cite = "bylaw 4" },
  },
}
