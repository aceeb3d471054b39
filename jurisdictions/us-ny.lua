-- New York: the Residential Code of New York State, 2020 and 2025.
--
-- The text of 2025 was read (chapters 1, 3, 8 and 9): it rests on IRC 2024 and begins on
-- 31 December 2025; for some time the book of 2020 could still be chosen. Of that one
-- the first day was read; that it rests on IRC 2018 is recalled. How long a permit
-- lives is left to cities and counties, carbon monoxide alarms to the fire code, which
-- was not read. The City of New York has a code of its own, which this is not.

local TEXT = "state code text on this edition"

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

local function of_2025()
  local function read(value, cite)
    return { value, cite = cite, status = "seen", source = TEXT }
  end
  local it = common()
  it["permit.every"].cite = "R105.2; state advice on permits for reroofing"
  it["permit.life_is_local"] = read(true, "R105.5")
  it["alarms.co_not_read"] = read(true, "R311.1")
  it["alarms.exterior_exempt"] = read(nil, "R310.2.2 exc. 1")
  -- Windy is what is hurricane-prone, not what the map of wind design shades.
  it["underlayment.wind_by_region"] = read(true, "Tables R905.1.1(1) to (3)")
  return it
end

jurisdiction "us-ny" {
  title = "New York State",
  follows = "model/irc-2024",
  from = "2025-12-31",
  code = "RCNYS 2025",
  edition = "Residential Code of New York State 2025 (on IRC 2024)",
  as_seen = "2026-11-28",
  figures = of_2025(),
}
