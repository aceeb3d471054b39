-- Dunmarrow County, invented: hail country in the invented state of Harrow. It
-- adds a figure and rules of its own, for shingles that withstand hail, and has
-- two editions: the day of application decides. The first takes either of the
-- two better classes and asks for no wrapper at the final; the second asks for
-- the best, for the wrapper, and for an ice barrier.

-- One all over the place.
local FACTS = {
  ["site.wind_vult_mph"] = { 115, unit = "mph", cite = "climate table" },
  ["site.wind_design_required"] = { false, cite = "climate table" },
  ["site.exposure"] = { one_of = { "B", "C" }, cite = "climate table" },
  ["site.climate_zone"] = { "5A", cite = "climate table" },
  ["site.ice_barrier_in_table"] = { false, cite = "climate table" },
  ["site.january_mean_F"] = { 30, unit = "F", cite = "climate table" },
  ["site.hail_exposure"] = { "severe", cite = "climate table" },
  ["site.seismic_category"] = { "B", cite = "climate table" },
  ["site.high_velocity_hurricane_zone"] = { false, cite = "climate table" },
  ["site.hurricane_prone_region"] = { false, cite = "climate table" },
  ["site.fire_zone"] = { "none", cite = "climate table" },
  ["site.state_fire_area"] = { false, cite = "climate table" },
  ["permit.telephone"] = { "555-0110", cite = "title page" },
}

jurisdiction "example/dunmarrow" {
  title = "Dunmarrow County, Harrow",
  covers = { "Ashgrove", "Dunmarrow Mills" },
  invented = true,
  facts = FACTS,
  follows = "model/irc-2018",
  from = "2023-09-01",
  to = "2026-03-01",
  code = "Dunmarrow Hail Ordinance 2023",
  rules = "dunmarrow.rules.lua",
  figures = {
    ["shingle.hail_classes"] = { { "class_3", "class_4" }, sense = "one_of", cite = "s. 4",
      status = "invented", source = "Dunmarrow County, Harrow" },
    ["shingle.hail_wrapper_required"] = { false, stricter = true, sense = "equals", cite = "s. 6",
      status = "invented", source = "Dunmarrow County, Harrow" },
  },
}

jurisdiction "example/dunmarrow" {
  title = "Dunmarrow County, Harrow",
  covers = { "Ashgrove", "Dunmarrow Mills" },
  invented = true,
  facts = FACTS,
  follows = "model/irc-2021",
  from = "2026-03-01",
  code = "Dunmarrow Hail Ordinance 2026",
  rules = "dunmarrow.rules.lua",
  figures = {
    ["shingle.hail_classes"] = { { "class_4" }, sense = "one_of", cite = "s. 4",
      status = "invented", source = "Dunmarrow County, Harrow" },
    ["shingle.hail_wrapper_required"] = { true, stricter = true, sense = "equals", cite = "s. 6",
      status = "invented", source = "Dunmarrow County, Harrow" },
    ["ice_barrier.required"] = { true, cite = "s. 9" },
    ["ice_barrier.unheated_exempt"] = { true, cite = "s. 9" },
    ["layers.hail_bars_overlay"] = { true, cite = "s. 11" },
  },
}
