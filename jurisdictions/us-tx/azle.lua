-- Azle, Texas: a page on IRC 2018 without a date. Shingles and minor decking are
-- free, a full redeck is not; what lies between is not said. It adopted a later
-- edition than the state's, so that edition is followed.

local function seen(value)
  return { value, cite = "roofing page", status = "seen", source = "the city's roofing page" }
end

jurisdiction "us-tx/azle" {
  title = "Azle, Texas",
  follows = "model/irc-2018",
  edition = "IRC 2018",
  as_seen = "2026-11-25",
  figures = {
    ["permit.every"] = seen(false),
    ["permit.deck_share_counts"] = seen(true),
    ["permit.deck_share_limit"] = { 100, cite = "roofing page", status = "seen",
      source = "the city's roofing page",
      disputed = "minor decking is free, a full redeck not; ask about what lies between" },
    ["permit.deck_share_at_counts"] = seen(true),
    ["deck.panel_thickness_least.24/16"] = seen(0.4375),
  },
}
