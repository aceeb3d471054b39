-- Bellevue, Washington: a page without a date. An overlay needs no permit unless
-- the roof grows more than 5 percent heavier. That a tear-off needs one is the
-- model's rule, which the page does not change.

local function seen(value)
  return { value, cite = "page on roofing projects", status = "seen",
    source = "the city's policy page" }
end

jurisdiction "us-wa/bellevue" {
  title = "Bellevue, Washington",
  follows = "us-wa",
  edition = "Washington Residential Code",
  as_seen = "2026-11-25",
  figures = {
    ["permit.every"] = seen(false),
    ["permit.tear_off_counts"] = { true, cite = "R105.1", status = "memory",
      source = "recalled; the city's page frees overlays only" },
    ["permit.weight_rise_counts"] = seen(true),
    ["permit.weight_rise_limit"] = seen(5),
    ["permit.weight_rise_at_counts"] = seen(false),
  },
}
