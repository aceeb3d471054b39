-- Rosemount, Minnesota: a roofing page without a date, which cites R907 as IRC
-- 2012 and older number it. The state's book of 2020 binds, so it is followed.
-- The page gives 1/300 for vents with half of it high, and does not speak of the
-- retarder that the state's smaller area asks for: the state's condition stays.

local function seen(value, cite)
  return { value, cite = cite or "roofing page", status = "seen",
    source = "the city's roofing page" }
end

local HALF = "the page wants half high and the rest at the soffit; the state 40 to 50 percent"

jurisdiction "us-mn/rosemount" {
  title = "Rosemount, Minnesota",
  follows = "us-mn",
  edition = "Minnesota Residential Code 2020; a page that cites older sections",
  as_seen = "2026-11-25",
  read = { "visits" },
  figures = {
    ["layers.overlay_allowed"] = seen(false),
    ["layers.most"] = seen(1),
    ["fire.banned"] = seen { "metal_panel" },
    ["fire.ban_one_family_only"] = seen(true),
    ["inspection.required.dry_in"] = seen(true, "roofing page: starter and ice barrier"),
    ["flashing.kickout_required"] = seen(true, "1309.0903.2.2"),
    ["ventilation.high_share_least"] = { 50, cite = "roofing page, R806", status = "seen",
      source = "the city's roofing page", disputed = HALF },
  },
}
