-- Apple Valley, Minnesota: from 15 February 2022 photographs by mail stand in for
-- the visit at the ice barrier and at the end; a set with anything lacking brings
-- a correction notice.

local function seen(value, instead)
  return { value, instead = instead, cite = "roofing page", status = "seen",
    source = "the city's roofing page" }
end

jurisdiction "us-mn/apple-valley" {
  title = "Apple Valley, Minnesota",
  follows = "us-mn",
  from = "2022-02-15",
  edition = "Minnesota Residential Code 2020 (on IRC 2018)",
  as_seen = "2026-11-25",
  read = { "visits" },
  figures = {
    ["inspection.required.dry_in"] = seen(true),
    ["inspection.proofs.dry_in"] = seen({ "photos" }, true),
    ["inspection.proofs.final"] = seen({ "photos" }, true),
    ["papers.photos_dry_in"] = seen { "ice_barrier" },
    ["papers.photos_final"] = seen { "street_view", "pipes", "vents", "flashings",
      "chimney_saddles", "ridge" },
  },
}
