-- San Diego, California: bulletin 123 of January 2025 (its day not shown), from that
-- month on; what was free before it was not read. Like for like needs no permit. How
-- much damaged deck may be swapped without one could not be read, so any counts here.

local function seen(value)
  return { value, cite = "bulletin 123", status = "seen", source = "the city's bulletin" }
end

jurisdiction "us-ca/san-diego" {
  title = "San Diego, California",
  follows = "us-ca",
  from = "2025-01-01",
  edition = "California Residential Code; bulletin 123 of January 2025",
  as_seen = "2025-01-01",
  figures = {
    ["permit.every"] = seen(false),
    ["permit.structure_counts"] = seen(true),
    ["permit.deck_any_counts"] = seen(true),
    ["permit.deck_any_free"] = { 0, cite = "bulletin 123", status = "seen",
      source = "the city's bulletin",
      disputed = "the bulletin lets some damaged deck be swapped, how much could not be read" },
    ["permit.heavy_counts"] = seen(true),
    ["permit.heavy_limit"] = seen(600),
    ["permit.heavy_at_counts"] = seen(false),
    ["permit.spaced_deck_counts"] = seen(true),
    ["permit.historic_counts"] = seen(true),
  },
}
