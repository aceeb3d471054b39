-- Healdsburg, California: a page without a date on reroofs.

local function seen(value)
  return { value, cite = "reroof page", status = "seen", source = "the city's reroof page" }
end

jurisdiction "us-ca/healdsburg" {
  title = "Healdsburg, California",
  follows = "us-ca",
  edition = "California Residential Code as amended",
  as_seen = "2026-11-25",
  read = { "visits" },
  figures = {
    ["fire.class_required"] = seen(true),
    ["fire.classes"] = seen { "A" },
    ["inspection.required.deck"] = seen(true),
    ["inspection.required.final"] = seen(true),
    ["inspection.spark_arrester_required"] = seen(true),
    ["inspection.address_counts"] = seen(true),
    ["inspection.address_height_least"] = seen(4),
    ["inspection.address_stroke_least"] = seen(0.5),
    ["alarms.exterior_exempt"] = seen(false),
    ["alarms.by_permit"] = seen(true),
    ["alarms.smoke_places"] = seen { "each_bedroom", "outside_bedrooms", "each_story" },
  },
}
