-- California, fire class and wildfire details, CRC 2025: the wildfire chapter
-- has moved to a code of its own (Part 7), and "all other areas" one section up.
--
-- The statute's floor (B in a very high zone, C elsewhere) is below the code's,
-- so the code's classes stand here. Cities and counties lift them further.

local STATUTE = "the statute as amended in 2001"
local WUI = "recalled or read second-hand; a county's text of chapter 7A, insurers' research"

local function detail(section)
  return { cite = section, status = "practice", source = WUI }
end

figures {
  ["fire.class_by_zone"] = { true, cite = "R902.1.1, R902.1.2", status = "seen",
    source = "local amendments that edit these sections; a city's page" },
  ["fire.classes_in.none"] = { { "A", "B", "C" }, cite = "R902.1.2", status = "seen",
    source = "local amendments that edit this section" },
  ["fire.classes_in.moderate"] = { { "A", "B", "C" }, cite = "R902.1.2", status = "memory",
    source = "recalled: as before", disputed = "the local maps of 2025 carry moderate zones "
      .. "for the first time: ask the building department" },
  ["fire.classes_in.high"] = { { "A", "B", "C" }, cite = "R902.1.2", status = "memory",
    source = "recalled: as before", disputed = "class A may reach the high zones of the "
      .. "local maps of 2025: ask the building department" },
  ["fire.classes_in.very_high"] = { { "A" }, cite = "R902.1.1, Part 7 ch. 5; H&S 13132.7(a)",
    status = "memory", source = "recalled: a move, not a rewrite, says the fire marshal" },
  ["fire.state_area_counts"] = { true, cite = "R902.1.1, Part 7 ch. 5; H&S 13132.7(c)",
    status = "memory", source = "statute read second-hand; the code's number recalled" },
  ["fire.classes_state_area"] = { cite = "R902.1.1, Part 7 ch. 5; H&S 13132.7(c)",
    status = "memory", source = "statute read second-hand; the code's number recalled" },
  ["fire.state_area_exempt_zones"] = { cite = "R902.1.1, Part 7 ch. 5; H&S 13132.7(c)",
    status = "memory", source = "statute read second-hand; the code's number recalled" },

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
