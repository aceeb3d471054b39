-- San Ramon, California: three older pages. Their rules for a hillside brush area
-- and for the wet season were not carried: the first could not be read, the
-- season is not in a job. Its nails 12 in apart in the field, on an older book,
-- do not loosen today's.

local function seen(value, cite)
  return { value, cite = cite or "general reroof page", status = "seen",
    source = "the city's older reroof pages" }
end

jurisdiction "us-ca/san-ramon" {
  title = "San Ramon, California",
  follows = "us-ca",
  edition = "California Residential Code; older pages of the city",
  as_seen = "2026-11-25",
  figures = {
    ["permit.every"] = seen(false),
    ["permit.plane_share_counts"] = seen(true),
    ["permit.plane_share_limit"] = seen(25),
    ["permit.plane_share_at_counts"] = seen(false),
    ["inspection.deputy_required"] = seen(true),
    ["inspection.deputy_under"] = seen(0.25),
    ["inspection.required.deck"] = seen(true, "tear-off page"),
    ["inspection.required.mid_roof"] = seen(true),
    ["inspection.mid_roof_moments"] = seen { "courses_laid" },
    ["deck.panel_gap_least"] = seen(0.125, "tear-off page"),
  },
}
