-- Emberlow, invented: a village under dry pines in the invented state of Harrow. Its
-- bylaws turn duties of fire and energy on and say no more, so the model code's own
-- figures, which it leaves asleep, are at work here and the cases watch them. In 2025 a
-- class is asked for everywhere; from 2026 only by zone and by kind of covering.

-- One all over the place.
local FACTS = {
  ["site.wind_vult_mph"] = { 115, unit = "mph", cite = "climate table" },
  ["site.wind_design_required"] = { false, cite = "climate table" },
  ["site.exposure"] = { one_of = { "B", "C" }, cite = "climate table" },
  ["site.climate_zone"] = { "5B", cite = "climate table" },
  ["site.ice_barrier_in_table"] = { false, cite = "climate table" },
  ["site.january_mean_F"] = { 26, unit = "F", cite = "climate table" },
  ["site.hail_exposure"] = { "low", cite = "climate table" },
  ["site.seismic_category"] = { "B", cite = "climate table" },
  ["site.high_velocity_hurricane_zone"] = { false, cite = "climate table" },
  ["site.hurricane_prone_region"] = { false, cite = "climate table" },
  ["permit.telephone"] = { "555-0111", cite = "title page" },
}

jurisdiction "example/emberlow" {
  title = "Village of Emberlow, Harrow",
  invented = true,
  facts = FACTS,
  code = "Emberlow Bylaws",
  follows = "model/irc-2021",
  from = "2025-01-01",
  to = "2026-01-01",
  figures = {
    ["fire.class_required"] = { true, cite = "bylaw 1" },
    ["fire.class_by_zone"] = { true, cite = "bylaw 2" },
    ["fire.state_area_counts"] = { true, cite = "bylaw 3" },
    ["energy.cool_roof_required"] = { true, cite = "bylaw 7" },
  },
}

jurisdiction "example/emberlow" {
  title = "Village of Emberlow, Harrow",
  invented = true,
  facts = FACTS,
  code = "Emberlow Bylaws",
  follows = "model/irc-2021",
  from = "2026-01-01",
  figures = {
    ["fire.class_by_zone"] = { true, cite = "bylaw 2" },
    ["fire.class_by_material"] = { true, cite = "bylaw 4" },
    ["energy.cool_roof_required"] = { true, cite = "bylaw 7" },
    ["energy.exempt_no_ducts"] = { true, cite = "bylaw 8" },
    ["energy.no_ducts_by_zone"] = { true, cite = "bylaw 8" },
    ["energy.low_deck_R_required"] = { true, cite = "bylaw 9" },
  },
}
