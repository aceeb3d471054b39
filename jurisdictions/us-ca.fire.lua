-- California, fire class and wildfire details, CRC 2019 and 2022.
--
-- The statute's floor (B in a very high zone, C elsewhere) is below the code's,
-- so the code's classes stand here. Cities and counties lift them further.

local STATUTE = "the statute as amended in 2001"
local WUI = "recalled or read second-hand; a county's text of chapter 7A, insurers' research"

local function detail(section)
  return { cite = section, status = "practice", source = WUI }
end

local function in_statute(value)
  return { value, book = "Health and Safety Code", cite = "13132.7(c)", status = "seen",
    source = "the statute as stored in 2026" }
end

figures {
  ["fire.class_by_zone"] = { true, cite = "R902.1.1 to R902.1.3", status = "seen",
    source = "local amendments that edit these sections; a city's page" },
  ["fire.classes_in.none"] = { { "A", "B", "C" }, cite = "R902.1.3", status = "seen",
    source = "local amendments that edit this section" },
  ["fire.classes_in.moderate"] = { { "A", "B", "C" }, cite = "R902.1.3", status = "seen",
    source = "local amendments that edit this section" },
  ["fire.classes_in.high"] = { { "A", "B", "C" }, cite = "R902.1.3", status = "seen",
    source = "local amendments that edit this section" },
  ["fire.classes_in.very_high"] = { { "A" }, cite = "R902.1.1; H&S 13132.7(a)",
    status = "seen", source = "a city's page restating the building code; the statute asks B" },
  ["fire.state_area_counts"] = in_statute(true),
  ["fire.classes_state_area"] = in_statute { "A", "B" },
  ["fire.state_area_exempt_zones"] = in_statute { "moderate" },

  ["fire.whole_roof_required"] = { true, cite = "H&S 13132.7", status = "seen",
    source = STATUTE },
  ["fire.whole_roof_over"] = { cite = "H&S 13132.7", status = "seen", source = STATUTE },
  ["fire.whole_roof_months"] = { cite = "H&S 13132.7", status = "seen",
    source = STATUTE .. ": within any one-year period" },
  ["fire.whole_roof_at_named_share"] = { false, cite = "H&S 13132.7", status = "seen",
    source = STATUTE .. ": more than",
    disputed = "some local pages keep the wording of before 1999, 50 % or more", rival = true },

  ["fire.tests"] = { { "E108", "UL_790" }, cite = "CBC 1505.1", status = "seen",
    source = "county bulletin on class A roofs" },
  ["fire.tests_by_standard"] = { {}, cite = "CBC 1505.1", status = "seen",
    source = "county bulletin on class A roofs: those two tests" },
  ["fire.wood_weathering_required"] = { true, cite = "H&S 13132.7", status = "seen",
    source = STATUTE },
  ["fire.wood_weathering_years_least"] = { cite = "H&S 13132.7", status = "seen",
    source = STATUTE },

  -- Warned of, not demanded: the status is practice. A place that holds reroofs
  -- to the wildfire chapter states this figure with how it knows it.
  ["fire.wildfire_details"] = { true, cite = "R337.5, CBC 705A", status = "practice",
    source = "wildfire chapter; whether it binds a plain reroof is disputed in print",
    disputed = "a guideline on the 2016 codes has chapter 7A bind new houses only" },
  ["fire.wildfire_zones"] = detail "R337.1, CBC 701A",
  ["fire.gap_ways"] = detail "R337.5.2, CBC 705A.2",
  ["fire.cap_sheet_least"] = detail "R337.5.2, R337.5.3",
  ["fire.ends_stopped_required"] = detail "R337.5.2, CBC 705A.2",
  ["fire.valley_strip_least"] = detail "R337.5.3, CBC 705A.3",
  ["fire.valley_metal_least"] = detail "R337.5.3, CBC 705A.3",
  ["fire.gutter_guard_required"] = detail "R337.5.4, CBC 705A.4",
  ["fire.vent_listing_accepted"] = detail "R337.6, CBC 706A.2",
  ["fire.mesh_least"] = detail "R337.6, CBC 706A.2",
  ["fire.mesh_most"] = detail "R337.6, CBC 706A.2",
}
