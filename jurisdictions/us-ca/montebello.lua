-- Montebello, California: a page without a date tells applicants that up to three
-- layers may lie on a roof. The state's book stops at two: the city's own figure
-- stands here, and warns.

local function seen(value)
  return { value, cite = "roofing page", status = "seen", source = "the city's roofing page" }
end

jurisdiction "us-ca/montebello" {
  title = "Montebello, California",
  follows = "us-ca",
  edition = "California Residential Code; the city's page",
  as_seen = "2026-11-25",
  figures = {
    ["layers.most"] = { 3, cite = "roofing page", status = "seen",
      source = "the city's roofing page",
      disputed = "the state's R908.3 takes off everything once two layers are on; ask the city" },
    ["inspection.required.pre"] = seen(true),
    ["inspection.methods.pre"] = seen { "overlay" },
    ["papers.handed_in_overlay"] = seen { "fastening_method" },
    ["papers.application_states"] = seen { "maker", "new_covering", "color", "weight",
      "squares" },
    ["papers.maker_specification_required"] = seen(true),
    ["permit.license_required"] = seen(true),
  },
}
