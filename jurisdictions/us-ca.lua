-- California: the Residential Code (CRC), by edition.
--
-- The book in force on the day the application is filed binds, for the state's
-- text and for local changes alike; not the day of issue or of the work
-- (Health and Safety Code 18938.5, as an erratum of the Building Standards
-- Commission restates it). Some counters close the old book some days early.
--
-- For asphalt shingles no figure of California's own was found in R905 or
-- R908, so the model code's figures stand, cited as such. Its own are the
-- conditions of the smaller vent area. "memory" here is a figure recalled, or
-- read only on a page that restates the code second-hand; the source says which.
--
-- Fire class and the wildfire details, and cool roofs, are in parts beside this
-- file, by edition. That CRC 2019 rests on IRC 2018, and CRC 2025 on IRC 2024,
-- is recalled, not read; that CRC 2022 rests on IRC 2021 was read.

local RECALLED = "recalled; private inspectors' pages restate it"
local SUMMARY = "read second-hand in a summary of California's attic rules"
local OWN_ZONES = "recalled, with the state's zones 14 and 16 where the model names 6, 7 and 8"

local SHEETS = "alarm sheets of California cities for reroofs and other outside work"
local SHEET = "a California city's alarm sheet on the code of 2019"
local STATUTE = "Health and Safety Code 13113.7, read in the statute"
local LOOKED_AT = "a California city's reroof page: the final is withheld without it"
local LOCAL = "whether a reroof brings it is each department's to say"

-- Figures that all three editions share.
local function common()
  return {
    -- The state's list of free work has no general line for reroofing.
    ["permit.every"] = { true, cite = "R105.1, R105.2", status = "memory", source = "recalled",
      disputed = "one city frees like for like, another jobs up to 100 sq ft: ask yours" },
    ["permit.license_required"] = { true, cite = "B&P 7026 ff.", status = "seen",
      source = "a California county's reroof page: the owner, or a C-39 holder" },
    ["permit.licenses"] = { { "roofing", "general" }, cite = "B&P 7026 ff.; 16 CCR 832.39",
      status = "memory", source = "recalled: general builders (class B) too in some places",
      disputed = "a county names the roofing license (C-39) alone" },

    -- Alarms: no line that lets outside work off was found in print. The statute
    -- counts work over 1,000, the code any permit; either is enough.
    ["alarms.exterior_exempt"] = { false, cite = "R314.2.2, R315.2.2", status = "seen",
      source = SHEETS, disputed = "the model code lets roofing off; that the state left the "
        .. "line out was not read" },
    ["alarms.by_permit"] = { cite = "R314.2.2", status = "seen", source = SHEET },
    ["alarms.co_by_permit"] = { cite = "R315.2.2", status = "seen", source = SHEET },
    ["alarms.by_price"] = { true, cite = "H&S 13113.7(a)(2)", status = "seen",
      source = STATUTE },
    ["alarms.price_limit"] = { cite = "H&S 13113.7(a)(2)", status = "seen", source = STATUTE },
    ["alarms.listed_required"] = { true, cite = "H&S 13113.7(a)(2)", status = "seen",
      source = STATUTE },
    ["alarms.clearances_count"] = { true, cite = "R314.3", status = "seen", source = SHEET },
    ["alarms.power_counts"] = { true, cite = "R314.6; SB 1394 of 2012", status = "seen",
      source = "a California city's alarm sheet", disputed = "the sealed battery is for alarms "
        .. "put up since 1 July 2014" },

    -- Looked at from the same ladder at the final.
    ["inspection.spark_arrester_required"] = { true, cite = "R1003.9.2", status = "seen",
      source = LOOKED_AT, disputed = LOCAL },
    ["inspection.address_counts"] = { true, cite = "R319.1", status = "seen",
      source = LOOKED_AT, disputed = LOCAL },

    ["layers.most"] = { 2, cite = "R908.3.1.1", status = "memory", source = RECALLED },
    ["layers.peeled_counts"] = { true, cite = "R908.3.1.1", status = "memory",
      source = RECALLED },
    ["layers.bases_allowed"] = { { "sound" }, cite = "R908.3.1.1", status = "memory",
      source = "recalled: the model code's list" },
    ["layers.not_over"] = { { "slate", "clay_tile", "concrete_tile", "asbestos_cement" },
      cite = "R908.3.1.1", status = "memory", source = "recalled: the model code's list" },
    ["layers.over_wood_shake_allowed"] = { false, cite = "R908.3.1.1", status = "memory",
      source = "recalled: wood shake stands on the list",
      disputed = "copies of the model text differ on whether wood shake stands on the list" },
    ["layers.wood_hollow_needs_cover"] = { true, cite = "R908.4", status = "memory",
      source = "recalled; some cities want all wood off instead" },

    ["ventilation.ratio_default"] = { 150, cite = "R806.2", status = "memory", source = SUMMARY },
    ["ventilation.ratio_reduced"] = { 300, cite = "R806.2 exception", status = "memory",
      source = SUMMARY },
    ["ventilation.reduced_needs_both"] = { true, cite = "R806.2 exception", status = "memory",
      source = SUMMARY },
    ["ventilation.high_share_least"] = { 40, cite = "R806.2 exception", status = "memory",
      source = SUMMARY },
    ["ventilation.high_share_most"] = { 50, cite = "R806.2 exception", status = "memory",
      source = SUMMARY },
    ["ventilation.upper_band_most"] = { 3, cite = "R806.2 exception", status = "memory",
      source = "recalled" },
    ["ventilation.retarder_zones"] = { { "state_14", "state_16" }, cite = "R806.2 exception",
      status = "memory", source = OWN_ZONES },
    ["ventilation.retarder_classes"] = { { "class_I", "class_II" }, cite = "R806.2 exception",
      status = "memory", source = SUMMARY },
    ["ventilation.opening_least"] = { 0.0625, cite = "R806.1", status = "memory",
      source = "recalled; the wildfire chapter asks for finer mesh" },
    ["ventilation.opening_most"] = { 0.25, cite = "R806.1", status = "memory",
      source = "recalled; the wildfire chapter asks for finer mesh" },
  }
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
  figures = common(),
}

jurisdiction "us-ca" {
  title = "California",
  follows = "model/irc-2021",
  from = "2023-01-01",
  to = "2026-01-01",
  code = "CRC 2022",
  parts = { "us-ca.fire.lua", "us-ca.energy.lua" },
  edition = "CRC 2022 (on IRC 2021)",
  as_seen = "2026-11-25",
  rules = "us-ca.rules.lua",
  figures = common(),
}

jurisdiction "us-ca" {
  title = "California",
  follows = "model/irc-2024",
  unsure = "that the state's book of 2025 rests on IRC 2024 is recalled, not read",
  from = "2026-01-01",
  code = "CRC 2025",
  parts = { "us-ca.fire-2025.lua", "us-ca.energy.lua" },
  edition = "CRC 2025 (on IRC 2024)",
  as_seen = "2026-11-25",
  rules = "us-ca.rules.lua",
  figures = common(),
}
