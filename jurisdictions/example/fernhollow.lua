-- Fern Hollow County, invented: wooded hills in the invented state of Harrow. It asks
-- for what single handouts ask and the other invented counties do not, so that each
-- such condition is shown at work in the cases.

-- One all over the place.
local FACTS = {
  ["site.wind_vult_mph"] = { 115, unit = "mph", cite = "climate table" },
  ["site.wind_design_required"] = { false, cite = "climate table" },
  ["site.exposure"] = { one_of = { "B", "C" }, cite = "climate table" },
  ["site.climate_zone"] = { "5A", cite = "climate table" },
  ["site.ice_barrier_in_table"] = { false, cite = "climate table" },
  ["site.january_mean_F"] = { 24, unit = "F", cite = "climate table" },
  ["site.hail_exposure"] = { "moderate", cite = "climate table" },
  ["site.seismic_category"] = { "B", cite = "climate table" },
  ["site.high_velocity_hurricane_zone"] = { false, cite = "climate table" },
  ["site.hurricane_prone_region"] = { false, cite = "climate table" },
  ["site.fire_zone"] = { "none", cite = "climate table" },
  ["site.state_fire_area"] = { false, cite = "climate table" },
  ["permit.telephone"] = { "555-0112", cite = "title page" },
}

jurisdiction "example/fernhollow" {
  title = "Fern Hollow County, Harrow",
  invented = true,
  facts = FACTS,
  follows = "model/irc-2021",
  from = "2025-01-01",
  code = "Fern Hollow County Code",
  figures = {
    -- A reroof is free but for these.
    ["permit.every"] = { false, cite = "8-10" },
    ["permit.skylight_counts"] = { true, cite = "8-11" },
    ["permit.units_counts"] = { true, cite = "8-11" },
    ["permit.underlayment_counts"] = { true, cite = "8-11" },
    ["permit.structure_counts"] = { true, cite = "8-11" },
    ["permit.house_kinds_counted"] = { { "two_family", "townhouse" }, cite = "8-12" },
    ["permit.stories_counts"] = { true, cite = "8-12" },
    ["permit.weight_added_counts"] = { true, cite = "8-13" },

    -- At every eave a strip of ice barrier, and no reach past the wall.
    ["ice_barrier.required"] = { true, cite = "8-20" },
    ["ice_barrier.strip_allowed"] = { true, cite = "8-20" },

    ["shingle.weight_counts"] = { true, cite = "8-21" },
    ["permit.warranty_counts"] = { true, cite = "8-21" },

    ["flashing.primed_counts"] = { true, cite = "8-23" },
    ["flashing.rusted_metal_counts"] = { true, cite = "8-23" },
    ["papers.asbestos_notice_required"] = { true, cite = "8-31" },

    ["papers.workers_comp_required"] = { true, cite = "8-30" },

    -- Visits: one at the nails of new deck, and others where something is so.
    ["inspection.required.pre"] = { true, cite = "8-40" },
    ["inspection.only_where.pre"] = { { "pitch", "stories", "skylights_changed" },
      cite = "8-40" },
    ["inspection.required.deck"] = { true, cite = "8-41" },
    ["inspection.only_where.deck"] = { { "spaced_board", "structure_altered", "units_moved",
      "owner", "two_family", "townhouse" }, cite = "8-41" },
    ["inspection.required.nailing"] = { true, cite = "8-42" },
    ["inspection.required.dry_in"] = { true, cite = "8-43" },
    ["inspection.only_where.dry_in"] = { { "material_change", "deck_replaced" }, cite = "8-43" },
    ["inspection.tall_counts"] = { true, cite = "8-44" },

    -- Alarms with any permit; batteries where nothing inside is opened.
    ["alarms.exterior_exempt"] = { false, cite = "8-50" },
    ["alarms.power_counts"] = { true, cite = "8-50" },
    ["alarms.closed_differs"] = { true, cite = "8-50" },
  },
}
