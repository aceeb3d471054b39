-- New York: the Residential Code of New York State, 2020 and 2025.
--
-- The first day of the book of 2020 was read; which model edition each rests
-- on, and the first day of the book of 2025, are recalled. The City of New York
-- has a code of its own, which this is not.

local ADVICE = "one town's form restating the state's advice"
local DIFFER = "a city of the state wants a certificate for every reroof"

local function common()
  return {
    ["permit.every"] = { false, cite = "state advice on permits for reroofing", status = "seen",
      source = ADVICE, disputed = DIFFER },
    ["permit.deck_any_counts"] = { true, cite = "state advice on permits for reroofing",
      status = "seen", source = ADVICE, disputed = DIFFER },
    ["permit.deck_any_free"] = { 0, cite = "state advice on permits for reroofing",
      status = "seen", source = ADVICE, disputed = DIFFER },
  }
end

jurisdiction "us-ny" {
  title = "New York State",
  follows = "model/irc-2018",
  unsure = "that the state's book of 2020 rests on IRC 2018 is recalled, not read",
  from = "2020-05-12",
  to = "2025-12-31",
  code = "RCNYS 2020",
  edition = "Residential Code of New York State 2020 (on IRC 2018)",
  as_seen = "2026-11-25",
  figures = common(),
}

jurisdiction "us-ny" {
  title = "New York State",
  follows = "model/irc-2024",
  unsure = "that the state's book of 2025 rests on IRC 2024, and its first day, 31 December 2025, "
    .. "are recalled, not read",
  from = "2025-12-31",
  code = "RCNYS 2025",
  edition = "Residential Code of New York State 2025 (on IRC 2024)",
  as_seen = "2026-11-25",
  figures = common(),
}
