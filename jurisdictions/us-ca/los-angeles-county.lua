-- Los Angeles County, California, outside its cities: ordinance 2016-0053, on
-- wildfire exposure. The model's other wildfire details stay advice, as in the
-- state.

local function seen(value, cite)
  return { value, cite = cite, status = "seen", source = "the county's ordinance" }
end

jurisdiction "us-ca/los-angeles-county" {
  title = "Los Angeles County, California (outside cities)",
  follows = "us-ca",
  edition = "California codes as amended by Ord. 2016-0053",
  as_seen = "2026-11-25",
  figures = {
    ["fire.banned_in_zones"] = seen({ "wood_shingle", "wood_shake" }, "Title 26, 705A"),
    ["fire.ban_zones"] = seen({ "moderate", "high", "very_high" }, "Title 26, 705A"),
    ["fire.gap_ways"] = seen({ "firestopped", "cap_sheet" }, "Title 26, 705A.2"),
    ["fire.cap_sheet_least"] = seen(72, "Title 26, 705A.2"),
  },
}
