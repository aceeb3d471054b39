-- Jacksonville, Florida: an old handout, told by the office's address on it; an
-- example and hardly present law. Up to 2,500 dollars nobody looks; repairs under
-- 5 squares have a small permit of their own.

local function seen(value)
  return { value, cite = "old handout on permits to re-roof", status = "seen",
    source = "the city's old handout" }
end

jurisdiction "us-fl/jacksonville" {
  title = "Jacksonville, Florida",
  follows = "us-fl",
  facts = {
    ["site.high_velocity_hurricane_zone"] = { false, book = "FBC-B 2023", cite = "202",
      status = "seen", source = "an engineers' page that prints the definition: Broward and Dade" },
  },
  edition = "Florida Building Code; an old handout",
  as_seen = "2026-11-25",
  figures = {
    ["inspection.free_price_counts"] = seen(true),
    ["inspection.free_price_most"] = seen(2500),
    ["inspection.required.final"] = seen(true),
    ["permit.repair_exempt"] = seen(false),
    ["permit.small_counts"] = seen(true),
    ["permit.small_under"] = seen(500),
  },
}
