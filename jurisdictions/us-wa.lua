-- Washington: the 2021 Residential Code (WAC 51-51), after two delays (from
-- 1 July 2023, then from 29 October 2023). Its text was held against the model code's,
-- section by section (chapters 3, 8 and 9): no roof figure of the state's own. Cities
-- free some overlays from the permit. The codes of 2024 begin on 3 May 2027.

local TEXT = "state code text on this edition"

local function read(value, cite, more)
  local figure = more or {}
  figure[1], figure.cite, figure.status, figure.source = value, cite, "seen", TEXT
  return figure
end

jurisdiction "us-wa" {
  title = "Washington",
  follows = "model/irc-2021",
  from = "2024-03-15",
  to = "2027-05-03",
  code = "WAC 51-51",
  edition = "Washington Residential Code 2021 (on IRC 2021)",
  as_seen = "2026-11-28",
  figures = {
    ["energy.bare_rafters_count"] = { true, cite = "N1111.1.1", status = "parallel",
      source = "the model code's line; the state has an energy code of its own, not read for it" },
    -- Existing houses need carbon monoxide alarms, whatever is done to them and whatever
    -- burns there, but for one-family houses that their owners live in and that were
    -- lived in before 26 July 2009; a job says only the year.
    ["alarms.co_in_every_house"] = read(true, "R315.2.2"),
    ["alarms.co_by_permit"] = read(nil, "R315.2.2"),
    ["alarms.co_by_sources"] = read(false, "R315.2.1, R315.2.2"),
    ["alarms.co_places"] = read({ "outside_bedrooms", "each_story" }, "R315.2.1"),
    ["alarms.co_owner_exempt"] = read(true, "R315.2.2 exc. 3"),
    ["alarms.co_owner_exempt_before"] = read(2009, "R315.2.2 exc. 3", { unit = "year",
      sense = "under" }),
  },
}
