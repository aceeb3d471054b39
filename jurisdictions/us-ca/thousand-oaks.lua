-- Thousand Oaks, California: ordinance 1669-NS, in force on 10 January 2020. That
-- it asks for class A wherever its exceptions do not let off is read out of them.

local function seen(value, cite)
  return { value, cite = cite or "Ord. 1669-NS", status = "seen",
    source = "the city's ordinance" }
end

local INFERRED = "the excerpt names the exceptions to class A, not the rule itself"

jurisdiction "us-ca/thousand-oaks" {
  title = "Thousand Oaks, California",
  follows = "us-ca",
  from = "2020-01-10",
  edition = "California Residential Code as amended",
  as_seen = "2026-11-25",
  figures = {
    -- Everything off, but for a listing as class A over an old A or B.
    ["layers.overlay_allowed"] = seen(false),
    ["layers.overlay_by_listing"] = seen(true),
    ["layers.listing_over_classes"] = seen { "A", "B" },
    -- No solid deck: panels of 15/32 first, or such as are listed as equal in shear.
    ["deck.thickness_counts"] = seen(true),
    ["deck.thickness_kinds"] = seen { "spaced_board" },
    ["deck.thickness_least"] = seen(0.46875),
    ["deck.shear_listing_allowed"] = seen(true),
    ["deck.solid_counts_for_all"] = seen(true),

    ["fire.class_required"] = { true, cite = "Ord. 1669-NS", status = "seen",
      source = "the city's ordinance", disputed = INFERRED },
    ["fire.classes"] = { { "A" }, cite = "Ord. 1669-NS", status = "seen",
      source = "the city's ordinance", disputed = INFERRED },
    -- Up to half within 12 months may match the old roof, at class B, outside the
    -- very high zone.
    ["fire.match_old_most"] = seen(50),
    ["fire.match_old_adds_up"] = seen(true),
    ["fire.match_old_by_zone"] = seen(true),
    ["fire.match_old_barred_zones"] = seen { "very_high" },
    ["fire.match_old_classes"] = seen { "A", "B" },
  },
}
