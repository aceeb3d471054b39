-- Brookville, Pennsylvania: a page without a date frees new shingles from the
-- permit. Framing stays the state's matter.

jurisdiction "us-pa/brookville" {
  title = "Brookville, Pennsylvania",
  follows = "us-pa",
  edition = "Pennsylvania UCC",
  as_seen = "2026-11-25",
  figures = {
    ["permit.every"] = { false, cite = "page on work free of a permit", status = "seen",
      source = "the borough's page" },
  },
}
