-- Montville, New Jersey: a page without a date: like for like is free up to 25
-- percent in a year. The state is said to ask no permit for an ordinary reroof, so
-- the page may be stale.

local STALE = "the state asks for no permit for an ordinary reroof; the page may be stale"

local function seen(value)
  return { value, cite = "page on when a permit is required", status = "seen",
    source = "the township's page", disputed = STALE }
end

jurisdiction "us-nj/montville" {
  title = "Montville, New Jersey",
  follows = "us-nj",
  edition = "New Jersey one- and two-family subcode 2021 (on IRC 2021)",
  as_seen = "2026-11-25",
  figures = {
    ["permit.every"] = seen(false),
    ["permit.share_counts"] = seen(true),
    ["permit.share_limit"] = seen(25),
    ["permit.share_at_counts"] = seen(false),
    ["permit.share_months"] = seen(12),
    ["permit.material_change_counts"] = seen(true),
  },
}
