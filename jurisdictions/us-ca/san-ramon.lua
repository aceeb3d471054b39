-- San Ramon, California: three older pages. Their rules for a hillside brush area
-- could not be read. In the wet season the deck may be felted before it is looked
-- at. Its nails 12 in apart in the field, on an older book, do not loosen today's.

local function seen(value, cite)
  return { value, cite = cite or "general reroof page", status = "seen",
    source = "the city's older reroof pages" }
end

jurisdiction "us-ca/san-ramon" {
  title = "San Ramon, California",
  follows = "us-ca",
  edition = "California Residential Code; older pages of the city",
  as_seen = "2026-11-25",
  read = { "visits" },
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
    ["inspection.proofs.deck"] = seen({ "visit", "winter_rule" }, "wet-season page"),
    ["inspection.winter_from"] = seen({ "10-15" }, "wet-season page"),
    ["inspection.winter_to"] = seen({ "04-15" }, "wet-season page"),
    ["inspection.winter_covering_most"] = seen(50, "wet-season page: half a square"),
    ["inspection.winter_felt_peeled_least"] = seen(3, "wet-season page: in 3 or 4 places"),
    ["deck.panel_gap_least"] = seen(0.125, "tear-off page"),
    ["deck.panel_joints_count"] = seen(true, "tear-off page"),
  },
}
