-- Saltmarsh County, invented: a windy coast whose code states its wind, seals
-- decks, nails drip edge closer in wind and bars overlays. The rule cases try those duties here.

-- One all over the place.
local FACTS = {
  ["site.wind_vult_mph"] = { 138, unit = "mph", cite = "climate table" },
  ["site.wind_design_required"] = { false, cite = "climate table" },
  ["site.exposure"] = { one_of = { "C", "D" }, cite = "climate table" },
  ["site.climate_zone"] = { "2A", cite = "climate table" },
  ["site.ice_barrier_in_table"] = { false, cite = "climate table" },
  ["site.january_mean_F"] = { 52, unit = "F", cite = "climate table" },
  ["site.hail_exposure"] = { "low", cite = "climate table" },
  ["site.seismic_category"] = { "B", cite = "climate table" },
  ["site.high_velocity_hurricane_zone"] = { false, cite = "climate table" },
  ["site.hurricane_prone_region"] = { true, cite = "climate table" },
  ["site.fire_zone"] = { "none", cite = "climate table" },
  ["site.state_fire_area"] = { false, cite = "climate table" },
  ["permit.telephone"] = { "555-0121", cite = "title page" },
}

jurisdiction "example/saltmarsh" {
  title = "Saltmarsh County",
  invented = true,
  facts = FACTS,
  code = "Saltmarsh County Code",
  follows = "model/irc-2018",
  from = "2024-01-01",
  figures = {
    ["layers.overlay_allowed"] = { false, cite = "14-201" },
    ["underlayment.sealed_deck_required"] = { true, cite = "14-210" },
    ["underlayment.tape_width_least"] = { 3.75, cite = "14-211" },
    ["drip_edge.sealed_flange_allowed"] = { true, cite = "14-220" },
    ["drip_edge.close_fastening"] = { true, cite = "14-221" },
    ["wind.vult_counts"] = { true, cite = "14-200" },
    ["wind.vult_least"] = { 115, cite = "14-200" },
    ["wind.engineered_nailing_binds"] = { true, cite = "14-230" },
  },
}
