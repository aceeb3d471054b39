-- Gullhaven County, invented: it has old decks nailed again, knows hurricane
-- zones, and reads the vent rule the older way (either condition will do).

-- One all over the place.
local FACTS = {
  ["site.wind_vult_mph"] = { 150, unit = "mph", cite = "climate table" },
  ["site.wind_design_required"] = { false, cite = "climate table" },
  ["site.exposure"] = { one_of = { "C", "D" }, cite = "climate table" },
  ["site.climate_zone"] = { "2A", cite = "climate table" },
  ["site.ice_barrier_in_table"] = { false, cite = "climate table" },
  ["site.january_mean_F"] = { 60, unit = "F", cite = "climate table" },
  ["site.hail_exposure"] = { "low", cite = "climate table" },
  ["site.seismic_category"] = { "B", cite = "climate table" },
  ["site.hurricane_prone_region"] = { true, cite = "climate table" },
  ["site.fire_zone"] = { "none", cite = "climate table" },
  ["site.state_fire_area"] = { false, cite = "climate table" },
  ["permit.telephone"] = { "555-0114", cite = "title page" },
}

jurisdiction "example/gullhaven" {
  title = "Gullhaven County",
  invented = true,
  facts = FACTS,
  code = "Gullhaven County Code",
  follows = "model/irc-2021",
  from = "2024-01-01",
  figures = {
    ["deck.renail_required"] = { true, cite = "7-310" },
    ["deck.renail_built_before"] = { 2002, cite = "7-310" },
    ["deck.kept_held_to_tables"] = { true, cite = "7-312" },
    ["deck.over_spacing_share_most"] = { 5, cite = "7-314" },
    ["deck.over_spacing_most"] = { 1, cite = "7-314" },
    ["fasteners.hurricane_zone_counts"] = { true, cite = "7-320" },
    ["ventilation.reduced_needs_both"] = { false, cite = "7-330" },
    ["wind.vult_counts"] = { true, cite = "7-335" },
    ["wind.engineered_nailing_binds"] = { true, cite = "7-340" },
  },
}
