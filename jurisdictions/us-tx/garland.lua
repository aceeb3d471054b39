-- Garland, Texas: a page without date or edition. 25 percent or more of the
-- decking calls for a permit, and so does another material or pitch.

local function seen(value)
  return { value, cite = "reroofing page", status = "seen", source = "the city's page" }
end

jurisdiction "us-tx/garland" {
  title = "Garland, Texas",
  follows = "us-tx",
  edition = "edition not shown (the state's default taken)",
  as_seen = "2026-11-25",
  figures = {
    ["permit.every"] = seen(false),
    ["permit.deck_share_counts"] = seen(true),
    ["permit.deck_share_limit"] = seen(25),
    ["permit.deck_share_at_counts"] = seen(true),
    ["permit.material_change_counts"] = seen(true),
    ["permit.pitch_change_counts"] = seen(true),
    ["papers.plans_for_pitch_required"] = seen(true),
    ["layers.most"] = seen(2),
  },
}
