-- California: the Residential Code (CRC), by edition.
--
-- The book in force on the day the application is filed binds, for the state's
-- text and for local changes alike; not the day of issue or of the work
-- (Health and Safety Code 18938.5, as an erratum of the Building Standards
-- Commission restates it). Some counters close the old book some days early.
--
-- The text of 2025 was read (residential chapters 1, 3, 8, 9 and 10): it rests on IRC
-- 2024, and for asphalt shingles the model code's figures stand in it. What is taken
-- over from it into the books of 2019 and 2022 is "parallel" there; "memory" is a
-- figure recalled, or read only on a page that restates the code second-hand.
--
-- Fire class and the wildfire details, and cool roofs, are in parts beside this
-- file, by edition. Roofs in fire zones go by Part 7 since 2026, which was not read.
-- That CRC 2019 rests on IRC 2018 is recalled.

local TEXT = "state code text on this edition"
local SISTER = "the state's code text of 2025"
local OWN_ZONES = "recalled, with the state's zones 14 and 16 where the model names 6, 7 and 8"

local SHEETS = "alarm sheets of California cities for reroofs and other outside work"
local SHEET = "a California city's alarm sheet on the code of 2019"
local STATUTE = "Health and Safety Code 13113.7, read in the statute"
local LOOKED_AT = "a California city's reroof page: the final is withheld without it"
local LOCAL = "whether a reroof brings it is each department's to say"
local SHAKES = "a city bars shingles over wood shakes, as older books did"

-- What all three editions share. `read` says how a figure of the text is known.
local function common(read)
  return {
    -- The state's list of free work has no line for reroofing; cities may free some.
    ["permit.every"] = read(true, "R105.1, R105.2"),
    ["permit.license_required"] = { true, book = "Business and Professions Code",
      cite = "7026 ff.", status = "seen",
      source = "a California county's reroof page: the owner, or a C-39 holder" },
    ["permit.licenses"] = { { "roofing", "general" }, book = "Business and Professions Code",
      cite = "7026 ff.; 16 CCR 832.39", status = "memory",
      source = "recalled: general builders (class B) too in some places",
      disputed = "a county names the roofing license (C-39) alone", rival = { "roofing" } },
    -- 12 months to begin, 12 standing still, for permits since 2019.
    ["permit.life_days"] = read(365, "R105.5.1"),

    ["alarms.by_price"] = { true, book = "Health and Safety Code", cite = "13113.7(a)(2)",
      status = "seen", source = STATUTE },
    ["alarms.price_limit"] = { book = "Health and Safety Code", cite = "13113.7(a)(2)",
      status = "seen", source = STATUTE },
    ["alarms.listed_required"] = { true, book = "Health and Safety Code",
      cite = "13113.7(a)(2)", status = "seen", source = STATUTE },
  }
end

local function reader(status, source)
  return function(value, cite, more)
    local figure = {}
    for name, said in pairs(more or {}) do figure[name] = said end
    figure[1], figure.cite, figure.status, figure.source = value, cite, status, source
    return figure
  end
end

local function with(it, more)
  for name, figure in pairs(more) do it[name] = figure end
  return it
end

-- The books of 2019 and 2022: no line that lets outside work off was found in print.
local function older()
  local read = reader("parallel", SISTER)
  return with(common(read), {
    -- Its own energy code stands in place of the model's chapter.
    ["energy.bare_rafters_count"] = { false, book = "Energy Code", cite = "150.2(b)",
      status = "memory", source = "recalled: no such line among those on reroofing" },
    ["alarms.co_sources"] = { { "fuel_appliance", "bedroom_appliance", "fireplace",
      "attached_garage" }, cite = "R315.2", status = "seen",
      source = "county sheets on the 2013 wording" },
    ["alarms.co_places"] = { { "outside_bedrooms", "each_story" }, cite = "R315.3",
      status = "seen", source = "a retrofit sheet" },
    ["alarms.exterior_exempt"] = { false, cite = "R314.2.2, R315.2.2", status = "seen",
      source = SHEETS },
    ["alarms.by_permit"] = { cite = "R314.2.2", status = "seen", source = SHEET },
    ["alarms.co_by_permit"] = { cite = "R315.2.2", status = "seen", source = SHEET },
    ["alarms.clearances_count"] = { true, cite = "R314.3", status = "seen", source = SHEET },
    ["alarms.power_counts"] = { true, cite = "R314.6; SB 1394 of 2012", status = "seen",
      source = "a California city's alarm sheet", disputed = "the sealed battery is for alarms "
        .. "put up since 1 July 2014" },
    ["inspection.spark_arrester_required"] = { true, cite = "R1003.9.2", status = "seen",
      source = LOOKED_AT, disputed = LOCAL },
    ["inspection.address_counts"] = { true, cite = "R319.1", status = "seen",
      source = LOOKED_AT, disputed = LOCAL },
    ["layers.over_wood_shake_allowed"] = { cite = "R908.3.1.1", disputed = SHAKES,
      rival = false },
    ["ventilation.retarder_classes"] = read(nil, "R806.2 exception"),
    ["ventilation.retarder_zones"] = { { "state_14", "state_16" }, instead = true,
      cite = "R806.2 exception",
      status = "memory", source = OWN_ZONES },
  })
end

-- The book of 2025: alarms and addresses have new numbers, retarders go by the model
-- code's zones, of which only 6 lies in the state. Carbon monoxide alarms are due in
-- every existing house with a fire or a garage, permit or not.
local function of_2025()
  local read = reader("seen", TEXT)
  return with(common(read), {
    ["alarms.exterior_exempt"] = read(false, "R310.2.2"),
    ["alarms.co_in_every_house"] = read(true, "R311.2"),
    ["alarms.by_permit"] = read(true, "R310.2.2"),
    ["alarms.smoke_places"] = read({ "each_bedroom", "outside_bedrooms", "each_story" },
      "R310.3"),
    ["alarms.co_by_permit"] = read(true, "R311.2"),
    ["alarms.co_sources"] = read({ "fuel_appliance", "bedroom_appliance", "fireplace",
      "attached_garage" }, "R311.2.1"),
    ["alarms.co_places"] = read({ "outside_bedrooms", "each_story" }, "R311.3"),
    -- A battery alone is enough where only the outside is worked on; that it is sealed
    -- for ten years is the statute's.
    ["alarms.power_counts"] = read(true, "R310.6"),
    ["alarms.powers"] = { { "wired", "sealed_battery" }, cite = "R310.6 exc. 4; SB 1394 of 2012",
      status = "seen", source = TEXT .. "; a California city's alarm sheet",
      disputed = "the sealed battery is for alarms put up since 1 July 2014",
      rival = { "wired", "sealed_battery", "battery" } },
    ["alarms.clearances_count"] = read(true, "R310.3.3"),
    ["alarms.bath_door_least"] = read(36, "R310.3"),
    ["alarms.register_least"] = read(36, "R310.3.3"),
    ["alarms.cooking_counts"] = read(true, "R310.3.3"),
    ["alarms.cooking_least.ionization"] = read(20, "R310.3.3", { unit = "ft",
      sense = "at_least" }),
    ["alarms.cooking_least.silenced"] = read(10, "R310.3.3", { unit = "ft",
      sense = "at_least" }),
    ["alarms.cooking_least.photoelectric"] = read(10, "R310.3.3", { unit = "ft",
      sense = "at_least" }),
    ["alarms.cooking_least.photoelectric_open"] = read(6, "R310.3.3", { unit = "ft",
      sense = "at_least" }),
    ["inspection.spark_arrester_required"] = read(true, "R1003.9.2"),
    ["inspection.address_counts"] = read(true, "R308.1"),
    ["layers.over_wood_shake_allowed"] = read(nil, "R908.4 item 3, exception 2"),
    ["layers.bases_allowed"] = read(nil, "R908.4 exception 1"),
    ["layers.not_over"] = read(nil, "R908.4 exception 2"),
    ["layers.most"] = read(nil, "R908.4 exception 3"),
    ["ventilation.ratio_default"] = read(nil, "R806.2"),
    ["ventilation.ratio_reduced"] = read(nil, "R806.2 exception"),
    ["ventilation.high_share_least"] = read(nil, "R806.2 exception"),
    ["ventilation.high_share_most"] = read(nil, "R806.2 exception"),
    ["ventilation.upper_band_most"] = read(nil, "R806.2 exception"),
    ["ventilation.retarder_classes"] = read(nil, "R806.2 exception"),
    ["ventilation.retarder_zones"] = read(nil, "R806.2 exception"),
    ["ventilation.opening_least"] = read(nil, "R806.1"),
    ["ventilation.opening_most"] = read(nil, "R806.1"),
    ["energy.trigger_at_named_share"] = { true, book = "Energy Code 2025", cite = "150.2(b)1I",
      status = "seen", source = "the state's form and manual for 2025: 50 percent or more" },
  })
end

local function of_2022()
  return with(older(), { ["energy.trigger_at_named_share"] = { false, book = "Energy Code 2022",
    cite = "150.2(b)1I", status = "seen", source = "the state's fact sheet for 2022: more than" } })
end

jurisdiction "us-ca" {
  title = "California",
  follows = "model/irc-2018",
  unsure = "that the state's book of 2019 rests on IRC 2018 is recalled, not read",
  from = "2020-01-01",
  to = "2023-01-01",
  code = "CRC 2019",
  parts = { "us-ca.fire.lua", "us-ca.energy-2019.lua" },
  edition = "CRC 2019 (on IRC 2018)",
  as_seen = "2026-11-25",
  rules = "us-ca.rules.lua",
  figures = older(),
}

jurisdiction "us-ca" {
  title = "California",
  follows = "model/irc-2021",
  from = "2023-01-01",
  to = "2026-01-01",
  code = "CRC 2022",
  parts = { "us-ca.fire.lua", "us-ca.energy.lua" },
  edition = "CRC 2022 (on IRC 2021)",
  as_seen = "2026-11-28",
  rules = "us-ca.rules.lua",
  figures = of_2022(),
}

jurisdiction "us-ca" {
  title = "California",
  follows = "model/irc-2024",
  from = "2026-01-01",
  code = "CRC 2025",
  parts = { "us-ca.fire-2025.lua", "us-ca.energy.lua" },
  edition = "CRC 2025 (on IRC 2024)",
  as_seen = "2026-11-28",
  rules = "us-ca.rules.lua",
  figures = of_2025(),
}
