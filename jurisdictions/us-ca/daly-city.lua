-- Daly City, California: a page without a date. One look only, with the covering
-- part laid; class B and the ladder were read in copies of the page.

local function seen(value)
  return { value, cite = "roofing permit page", status = "seen",
    source = "the city's roofing page" }
end

local function copied(value)
  return { value, cite = "roofing permit page", status = "seen",
    source = "a copy of the city's roofing page" }
end

jurisdiction "us-ca/daly-city" {
  title = "Daly City, California",
  follows = "us-ca",
  edition = "California Residential Code as amended",
  as_seen = "2026-11-25",
  read = { "visits" },
  figures = {
    ["permit.every"] = seen(false),
    ["permit.area_counts"] = seen(true),
    ["permit.area_limit"] = seen(100),
    ["permit.area_at_counts"] = seen(false),
    ["fire.class_required"] = copied(true),
    ["fire.classes"] = copied { "A", "B" },
    ["inspection.required.mid_roof"] = seen(true),
    ["inspection.mid_roof_moments"] = seen { "courses_laid" },
    ["inspection.required.final"] = seen(false),
    ["inspection.spark_arrester_required"] = seen(true),
    ["inspection.ladder_tied_required"] = copied(true),
    ["inspection.ladder_past_counts"] = copied(true),
    ["inspection.ladder_past_least"] = copied(36),
    ["inspection.ladder_rating_counts"] = copied(true),
    ["inspection.ladder_rating_least"] = copied(300),
    ["permit.license_required"] = seen(true),
    ["permit.registration_required"] = seen(true),
    ["papers.insurance"] = seen { "workers_comp" },
    ["permit.late_fee_counts"] = { true,
      cite = "roofing permit page: the fee once more, then three and ten times", status = "seen",
      source = "the city's roofing page" },
  },
}
