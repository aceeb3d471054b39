-- Kettlebend County, invented: river-bluff country in the invented state of
-- Harrow. It loosens the model code and drops two of its rules.

-- One all over the place.
local FACTS = {
  ["site.wind_vult_mph"] = { 115, unit = "mph", cite = "climate table" },
  ["site.wind_design_required"] = { false, cite = "climate table" },
  ["site.exposure"] = { one_of = { "B", "C" }, cite = "climate table" },
  ["site.climate_zone"] = { "5A", cite = "climate table" },
  ["site.ice_barrier_in_table"] = { false, cite = "climate table" },
  ["site.january_mean_F"] = { 29, unit = "F", cite = "climate table" },
  ["site.hail_exposure"] = { "moderate", cite = "climate table" },
  ["site.seismic_category"] = { "B", cite = "climate table" },
  ["site.high_velocity_hurricane_zone"] = { false, cite = "climate table" },
  ["site.hurricane_prone_region"] = { false, cite = "climate table" },
  ["site.fire_zone"] = { "none", cite = "climate table" },
  ["site.state_fire_area"] = { false, cite = "climate table" },
  ["permit.telephone"] = { "555-0117", cite = "title page" },
}

jurisdiction "example/kettlebend" {
  title = "Kettlebend County, Harrow",
  invented = true,
  facts = FACTS,
  follows = "model/irc-2018",
  from = "2024-04-01",
  code = "Kettlebend County Code",
  figures = {
    -- A third covering may go on, and the maker is not asked.
    ["layers.most"] = { 3, cite = "8-112" },
    ["layers.overlay_needs_maker"] = { false, cite = "8-112(b)" },

    ["drip_edge.rake_required"] = { false, cite = "8-116" },
    ["fasteners.kinds"] = { { "nail", "staple" }, cite = "8-118" },

    -- One measured spacing in ten may be over, by an inch at most.
    ["deck.over_spacing_share_most"] = { 10, cite = "8-120" },
    ["deck.over_spacing_most"] = { 1, cite = "8-120" },

    ["ventilation.ratio_default"] = { 200, cite = "8-124" },
    ["ventilation.on_overlay_required"] = { true, cite = "8-124(b)" },
  },
  drop = {
    ["deck.panel_gap"] = "waived by Kettlebend County Code 8-121",
    ["shingle.instructions"] = "the inspector brings them, Kettlebend County Code 8-126",
  },
}
