-- Palo Alto, California: ordinance 5626 of 2024 on debris, from a job of 25,000
-- dollars; the state asks for 65 percent, which is not carried.

local function seen(value)
  return { value, cite = "Ord. 5626", status = "seen", source = "the city's ordinance" }
end

jurisdiction "us-ca/palo-alto" {
  title = "Palo Alto, California",
  follows = "us-ca",
  edition = "California codes as amended by Ord. 5626 of 2024",
  as_seen = "2026-11-25",
  figures = {
    ["papers.waste_share_counts"] = seen(true),
    ["papers.waste_share_price_from"] = seen(25000),
    ["papers.waste_share_least"] = seen(80),
  },
}
