-- Countryside, Illinois: an answer without a date: a permit only when sheathing is
-- replaced.

local function seen(value)
  return { value, cite = "permit answers", status = "seen", source = "the city's answers" }
end

jurisdiction "us-il/countryside" {
  title = "Countryside, Illinois",
  follows = "model/irc-2021",
  edition = "edition not shown (IRC 2021 taken)",
  unsure = "the page shows no edition of the model code: IRC 2021 is taken",
  as_seen = "2026-11-25",
  figures = {
    ["permit.every"] = seen(false),
    ["permit.deck_any_counts"] = seen(true),
    ["permit.deck_any_free"] = seen(0),
  },
}
