-- Kenilworth, New Jersey: an answer without a date: a permit when sheathing is
-- replaced. The state is said to ask none for an ordinary reroof, so the page may
-- be stale.

local STALE = "the state asks for no permit for an ordinary reroof; the page may be stale"

local function seen(value)
  return { value, cite = "construction department answers", status = "seen",
    source = "the borough's answers", disputed = STALE }
end

jurisdiction "us-nj/kenilworth" {
  title = "Kenilworth, New Jersey",
  follows = "us-nj",
  edition = "New Jersey one- and two-family subcode 2021 (on IRC 2021)",
  as_seen = "2026-11-25",
  figures = {
    ["permit.every"] = seen(false),
    ["permit.deck_any_counts"] = seen(true),
    ["permit.deck_any_free"] = seen(0),
  },
}
