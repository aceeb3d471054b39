-- Signal Hill, California: an ordinance of December 2019 on the state's book. 26
-- percent or more of the covering within 12 months makes that part meet the rules
-- for new buildings; the state's own trigger, for the class of the whole roof, is
-- more than half.

local function seen(value)
  return { value, cite = "Ord. 2019-12-1510", status = "seen", source = "the city's ordinance" }
end

jurisdiction "us-ca/signal-hill" {
  title = "Signal Hill, California",
  follows = "us-ca",
  from = "2020-01-01",
  edition = "California Residential Code as amended",
  as_seen = "2026-11-25",
  figures = {
    ["permit.part_as_new_counts"] = seen(true),
    ["permit.part_as_new_limit"] = seen(26),
    ["permit.part_as_new_at_counts"] = seen(true),
    ["permit.part_as_new_months"] = seen(12),
  },
}
