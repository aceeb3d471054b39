-- Maiden, North Carolina: town code 5-201. Nothing at 5,000 dollars or less,
-- unless what bears load is touched or the roofing is not of like grade and class.

local function seen(value)
  return { value, cite = "5-201", status = "seen", source = "the town code" }
end

jurisdiction "us-nc/maiden" {
  title = "Maiden, North Carolina",
  follows = "us-nc",
  code = "Maiden Town Code",
  edition = "North Carolina Residential Code",
  as_seen = "2026-11-25",
  figures = {
    ["permit.every"] = seen(false),
    ["permit.price_counts"] = seen(true),
    ["permit.price_limit"] = seen(5000),
    ["permit.price_at_counts"] = seen(false),
    ["permit.structure_counts"] = seen(true),
    ["permit.material_change_counts"] = seen(true),
  },
}
