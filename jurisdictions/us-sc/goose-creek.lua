-- Goose Creek, South Carolina: a page on IRC 2003 without a date, an example and
-- hardly present law. The permit shows from the street, and nobody comes. The
-- nails go by the maker's sheet for strong wind, never under the model's four.
-- IRC 2003 has no drip edge for shingles; 2012 is the nearest edition carried.

local function seen(value, cite)
  return { value, cite = cite or "re-roofing page", status = "seen",
    source = "the city's re-roofing page" }
end

local LACKS = { false, cite = "IRC 2003 R905.2.8", status = "seen",
  source = "trade pages: drip edge first stands in the edition of 2012" }
local SILENT = "IRC 2003 says nothing of drip edge"

jurisdiction "us-sc/goose-creek" {
  title = "Goose Creek, South Carolina",
  follows = "model/irc-2012",
  edition = "IRC 2003 (IRC 2012 taken for the rest)",
  unsure = "the page rests on IRC 2003, and IRC 2012 is taken for what it does not change",
  as_seen = "2026-11-25",
  read = { "visits" },
  figures = {
    ["permit.visible_required"] = seen(true),
    ["inspection.required.final"] = seen(false),
    ["inspection.clean_required"] = seen(true),
    ["fasteners.per_shingle_least"] = seen(4, "re-roofing page: by the maker's sheet"),
    ["fasteners.metals"] = seen { "galvanized", "stainless", "aluminum", "copper" },
    ["fasteners.shank_least"] = seen(0.105),
    ["fasteners.penetration_least"] = seen(0.75),
    ["slope.least.asphalt_shingle"] = seen(2),
    ["layers.most"] = seen(2),
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
