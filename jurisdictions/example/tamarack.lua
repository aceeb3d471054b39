-- Tamarack County, invented: river-bluff country in the invented state of
-- Harrow. It tightens the model code, and adds a duty of its own: pictures of
-- the nailed deck before it is covered.

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
  ["permit.telephone"] = { "555-0122", cite = "title page" },
}

jurisdiction "example/tamarack" {
  title = "Tamarack County, Harrow",
  invented = true,
  facts = FACTS,
  follows = "model/irc-2021",
  from = "2025-07-01",
  code = "Tamarack County Code",
  rules = "tamarack.rules.lua",
  figures = {
    -- One covering, so nothing may be laid over.
    ["layers.most"] = { 1, cite = "15.04.020" },
    ["slope.double_below"] = { 5, cite = "15.04.022" },
    ["underlayment.kinds_normal"] = {
      { "D226_II", "D4869_III", "D4869_IV", "D6757" }, cite = "15.04.024" },
    ["underlayment.kinds_high_wind"] = { cite = "15.04.024", status = "invented",
      source = "Tamarack County, Harrow" },

    -- Ice barrier: the wall line is the inner face of the wall, and 30 in past it.
    ["ice_barrier.required"] = { true, cite = "15.04.026" },
    ["ice_barrier.wall_counts"] = { true, cite = "15.04.026(b)" },
    ["ice_barrier.inside_wall_least"] = { 30, cite = "15.04.026(c)" },
    ["ice_barrier.on_overlay_required"] = { false, cite = "15.04.026(d)" },

    ["drip_edge.lap_least"] = { 3, cite = "15.04.030" },
    ["drip_edge.fastener_spacing_most"] = { 8, cite = "15.04.030" },

    ["fasteners.per_shingle_least"] = { 6, cite = "15.04.032" },
    ["deck.nail_edge_most"] = { 4, cite = "15.04.034" },

    ["deck.pictures_required"] = { true, stricter = true, sense = "equals", cite = "15.04.036",
      status = "invented", source = "Tamarack County, Harrow" },
  },
}
