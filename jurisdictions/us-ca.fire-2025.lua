-- California, fire class and wildfire details, CRC 2025: R902.1.2 is for areas outside
-- of fire zones and the wildland-urban interface alone. Inside of them a code of its own
-- binds (Part 7), whose text was not read: short of class A, which no reading can ask
-- more than, a roof there is for the department to judge.
--
-- The statute's floor (B in a very high zone, C elsewhere) is below the code's.
-- Cities and counties lift the classes further.

local TEXT = "state code text on this edition"
local STATUTE = "the statute as stored in 2026"
local SAFETY = "Health and Safety Code"

local function read(value, cite)
  return { value, cite = cite, status = "seen", source = TEXT }
end

local function statute(value, cite)
  return { value, book = SAFETY, cite = cite, status = "seen", source = STATUTE }
end

local WUI = "recalled or read second-hand; a county's text of chapter 7A, insurers' research"

local function detail(section)
  return { cite = section, status = "practice", source = WUI }
end

figures {
  ["fire.class_by_zone"] = read(true, "R902.1.1, R902.1.2"),
  ["fire.classes_in.none"] = read({ "A", "B", "C" }, "R902.1.2"),
  ["fire.classes_in.moderate"] = { { "A" }, book = "CBC Part 7", cite = "ch. 5, not read",
    status = "seen", source = TEXT .. ": R902.1.1 sends there" },
  ["fire.classes_in.high"] = { { "A" }, book = "CBC Part 7", cite = "ch. 5, not read",
    status = "seen", source = TEXT .. ": R902.1.1 sends there" },
  ["fire.zones_not_read"] = read({ "moderate", "high" }, "R902.1.1"),
  ["fire.classes_in.very_high"] = { { "A" }, cite = "R902.1.1, Part 7 ch. 5",
    status = "seen", source = "pages of 2025 and 2026 on very high zones" },
  ["fire.state_area_counts"] = statute(true, "13132.7(c)"),
  ["fire.classes_state_area"] = statute({ "A", "B" }, "13132.7(c)"),
  ["fire.state_area_exempt_zones"] = statute({ "moderate" }, "13132.7(c)"),

  ["fire.whole_roof_required"] = read(true, "R902.1.2"),
  ["fire.whole_roof_over"] = read(50, "R902.1.2"),
  ["fire.whole_roof_months"] = read(12, "R902.1.2"),
  ["fire.whole_roof_at_named_share"] = read(false, "R902.1.2"),

  ["fire.tests"] = read({ "E108", "UL_790" }, "R902.1"),
  ["fire.deemed_A_any_deck"] = read({ "slate" }, "R902.1 exc. 4"),
  ["fire.wood_weathering_required"] = read(true, "R902.2"),
  ["fire.wood_weathering_years_least"] = read(5, "R902.2"),

  -- Warned of, not demanded: the status is practice. A place that holds reroofs
  -- to the wildfire chapter states this figure with how it knows it.
  ["fire.wildfire_details"] = { true, cite = "Part 7 ch. 5", status = "practice",
    source = "wildfire chapter; whether it binds a plain reroof is disputed in print",
    disputed = "a guideline on the 2016 codes has chapter 7A bind new houses only" },
  ["fire.wildfire_zones"] = detail "Part 7 ch. 5",
  ["fire.gap_ways"] = detail "Part 7 ch. 5",
  ["fire.cap_sheet_least"] = detail "Part 7 ch. 5",
  ["fire.ends_stopped_required"] = detail "Part 7 ch. 5",
  ["fire.valley_strip_least"] = detail "Part 7 ch. 5",
  ["fire.valley_metal_least"] = detail "Part 7 ch. 5",
  ["fire.gutter_guard_required"] = detail "Part 7 ch. 5",
  ["fire.vent_listing_accepted"] = detail "Part 7 ch. 5",
  ["fire.mesh_least"] = detail "Part 7 ch. 5",
  ["fire.mesh_most"] = detail "Part 7 ch. 5",
}
