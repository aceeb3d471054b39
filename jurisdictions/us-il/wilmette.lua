-- Wilmette, Illinois: section 8-561 of the village code. One old layer may stay on
-- a pitched roof, two on a flat one; where flat begins was not read, and shingles'
-- 2:12 is taken. The sum of the bin's deposit was not read.

local function seen(value)
  return { value, cite = "8-561", status = "seen", source = "the village code" }
end

jurisdiction "us-il/wilmette" {
  title = "Wilmette, Illinois",
  follows = "model/irc-2021",
  edition = "edition not shown (IRC 2021 taken)",
  unsure = "the ordinance shows no edition of the model code: IRC 2021 is taken",
  code = "Wilmette Village Code",
  as_seen = "2026-11-25",
  figures = {
    ["layers.most"] = seen(2),
    ["layers.flat_differs"] = seen(true),
    ["layers.most_flat"] = seen(3),
    ["papers.application_states"] = seen { "old_layers", "layers_removed", "new_covering",
      "price" },
    ["papers.sketch_required"] = seen(true),
    ["papers.sketch_copies_least"] = seen(1),
    ["papers.site_measures_required"] = seen(true),
    ["permit.bin_required"] = seen(true),
    ["permit.bin_deposit_required"] = seen(true),
    ["permit.right_of_way_clear_required"] = seen(true),
    ["permit.license_required"] = seen(true),
    ["permit.licenses"] = seen { "roofing" },
  },
}
