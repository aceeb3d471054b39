-- Redwood City, California: a draft ordinance of 1993, an example and not present
-- law. The piece that may match the old roof is bounded by the year.

local DRAFT = "draft of 1993; whether it was adopted was not read"

local function seen(value)
  return { value, cite = "draft ordinance of 1993", status = "seen",
    source = "the city's archive" }
end

jurisdiction "us-ca/redwood-city" {
  title = "Redwood City, California (draft of 1993)",
  follows = "us-ca",
  edition = "California Residential Code; a draft ordinance of 1993",
  as_seen = "2026-11-25",
  draft = DRAFT,
  figures = {
    ["fire.class_required"] = seen(true),
    ["fire.classes"] = seen { "A", "B" },
    ["fire.match_old_most"] = seen(25),
    ["fire.match_old_adds_up"] = seen(true),
  },
}
