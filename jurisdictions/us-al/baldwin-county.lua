-- Baldwin County, Alabama, outside its cities: a notice of 1 September 2007 on IRC
-- 2006, an example and hardly present law. Its speeds are on that edition's scale
-- of nominal speeds, which is recalled: 140 mph there is 181 on today's. IRC 2006
-- has no drip edge for shingles; 2012 is the nearest edition carried.

local function seen(value, unit)
  return { value, unit = unit, sense = unit and "at_least", cite = "code notice of 2007",
    status = "seen", source = "the builders' association printing the county's notice" }
end

local LACKS = { false, cite = "IRC 2006 R905.2.8", status = "seen",
  source = "trade pages: drip edge first stands in the edition of 2012" }
local SILENT = "IRC 2006 says nothing of drip edge"

jurisdiction "us-al/baldwin-county" {
  title = "Baldwin County, Alabama (outside cities)",
  follows = "model/irc-2012",
  from = "2007-09-01",
  edition = "IRC 2006 as amended (IRC 2012 taken for the rest)",
  unsure = "the notice rests on IRC 2006, and IRC 2012 is taken for what it does not change",
  as_seen = "2026-11-25",
  rules = "baldwin-county.rules.lua",
  figures = {
    ["wind.local_zones_count"] = seen(true),
    ["wind.local_speed_on_vasd"] = { true, cite = "IRC 2006 Figure R301.2(4)",
      status = "memory", source = "recalled: speeds of that edition are nominal" },
    ["wind.local_speed.south_of_US_98"] = seen(140, "mph"),
    ["wind.local_speed.US_98_to_I_10"] = seen(130, "mph"),
    ["wind.local_speed.I_10_to_I_65"] = seen(120, "mph"),
    ["wind.local_speed.north_of_I_65"] = seen(110, "mph"),
    ["shingle.wind_label_required"] = seen(true),
    ["shingle.wind_labels_D3161"] = seen { "F" },
    ["shingle.wind_labels_D7158"] = seen {},
    ["drip_edge.eave_required"] = LACKS,
    ["drip_edge.rake_required"] = LACKS,
  },
  drop = {
    ["drip_edge.lap"] = SILENT,
    ["drip_edge.down"] = SILENT,
    ["drip_edge.back"] = SILENT,
    ["drip_edge.fastener_spacing"] = SILENT,
    ["drip_edge.order_eave"] = SILENT,
    ["drip_edge.order_rake"] = SILENT,
  },
}
