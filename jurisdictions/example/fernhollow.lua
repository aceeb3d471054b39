-- Fern Hollow County, invented: wooded hills in the invented state of Harrow. It asks
-- for what single handouts ask and the other invented counties do not, so that each
-- such condition is shown at work in the cases.

jurisdiction "example/fernhollow" {
  title = "Fern Hollow County, Harrow",
  invented = true,
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
  },
}
