-- Denver, Colorado: the local book of 2022 on IRC 2021, read only on two roofers'
-- pages. A permit is needed above 10 percent of the roof or 2 squares, whichever
-- is less: either trigger is enough.

local function told(value, cite, source)
  return { value, cite = cite, status = "memory",
    source = source or "read second-hand on a roofer's page" }
end

local BY_SIZE = "permits for small work"

jurisdiction "us-co/denver" {
  title = "Denver, Colorado",
  follows = "model/irc-2021",
  edition = "local book of 2022 on IRC 2021",
  unsure = "that the book of 2022 rests on IRC 2021 was read second-hand",
  as_seen = "2026-11-25",
  figures = {
    ["permit.every"] = told(false, BY_SIZE),
    ["permit.share_counts"] = told(true, BY_SIZE),
    ["permit.share_limit"] = told(10, BY_SIZE),
    ["permit.share_at_counts"] = told(false, BY_SIZE),
    ["permit.area_counts"] = told(true, BY_SIZE),
    ["permit.area_limit"] = told(200, BY_SIZE,
      "read second-hand: 2 squares; another roofer's page says 200 sq ft"),
    ["permit.area_at_counts"] = told(false, BY_SIZE),
    ["ice_barrier.one_family_exempt"] = told(true, "local change to R905.1.2",
      "read second-hand on a roofer's page: detached one-family houses"),
  },
}
