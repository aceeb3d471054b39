-- cautions.lua - what can hurt the crew, by stage.
--
-- Printed with reports and cards; never a finding. `brief` is the one line of a
-- screen, `says` the long form of the full report and of a card's back. They bind the
-- employer, not the permit. `when` leaves one out where the danger is ruled out; a fact that
-- the job lacks rules nothing out.

local ALL = { "permit", "deck", "dry-in", "final" }

local tears_off = reads({ old_covering_comes_off, facts = { "scope.method" } }, function(job)
  return job.scope.method == "tear-off" or old_covering_comes_off(job)
end)

caution "falls" {
  stages = ALL,
  brief = function(job, figure)
    return "From " .. number(figure "cautions.fall_height", "ft")
      .. " up: rails, nets or a harness line."
  end,
  reads = { figures = { "cautions.fall_height" } },
  says = function(job, figure)
    return "From " .. number(figure "cautions.fall_height", "ft") .. " above a lower level, work "
      .. "behind rails, over nets or on a harness line. A written plan instead is only for "
      .. "where none of these can be used. Some states have stricter rules."
  end,
  cite = { code = "29 CFR", section = "1926.501(b)(13)", status = "seen",
    source = "OSHA residential fall protection FAQ" },
}

caution "ladders" {
  stages = ALL,
  brief = function(job, figure)
    return "Ladder: tied, " .. number(figure "cautions.ladder_above_least", "ft")
      .. " past the eave, foot out 1 in " .. number(figure "cautions.ladder_lean") .. "."
  end,
  reads = { figures = { "cautions.ladder_above_least", "cautions.ladder_lean" } },
  says = function(job, figure)
    return "Set the ladder's foot " .. number(1, "ft") .. " out for every "
      .. number(figure "cautions.ladder_lean", "ft") .. " of its working length, run its rails "
      .. number(figure "cautions.ladder_above_least", "ft") .. " past the eave, and tie it. "
      .. "Leave it tied for the inspector."
  end,
  cite = { code = "29 CFR", section = "1926.1053(b)(1) and (b)(5)(i)", status = "seen",
    source = "copy of OSHA 3755, protecting roofing workers" },
}

caution "power_lines" {
  stages = ALL,
  brief = function(job, figure)
    return "Power lines: keep people, ladders and metal edge "
      .. number(figure "cautions.power_line_gap_least", "ft") .. " away."
  end,
  reads = { figures = { "cautions.power_line_gap_least", "cautions.power_line_kv_most" } },
  says = function(job, figure)
    return "Find the overhead lines before raising anything. Keep people, ladders and lengths of "
      .. "metal edge or gutter " .. number(figure "cautions.power_line_gap_least", "ft")
      .. " or more from lines of up to " .. number(figure "cautions.power_line_kv_most", "kV")
      .. ", further from stronger ones. No metal ladder near a line; ask the utility to cover it "
      .. "or shut it off."
  end,
  cite = { code = "29 CFR", section = "1926.451(f)(6), 1926.1053(b)(12)", status = "parallel",
    source = "a utility restating OSHA; NIOSH summary; section numbers recalled" },
}

caution "weak_deck" {
  stages = { "permit", "deck", "dry-in" },
  brief = "Soft deck: look from the attic before anyone goes up; mark it, keep off.",
  says = "Find out whether the old roof will hold people before going up: look from the attic. "
    .. "Mark soft spots, keep off them, and open them first.",
  cite = { code = "29 CFR", section = "1926.501(a)(2)", status = "parallel",
    source = "OSHA re-roofing fact sheet; section number recalled" },
}

caution "holes" {
  stages = { "deck", "dry-in", "final" },
  brief = "Skylights and holes: rail them, or cover them with what holds a person.",
  reads = { figures = { "cautions.cover_load_times" } },
  says = function(job, figure)
    return "Rail skylights and openings in the deck, or cover them with something that holds "
      .. number(figure "cautions.cover_load_times", "times")
      .. " the load that may come on it, fixed down and marked."
  end,
  cite = { code = "29 CFR", section = "1926.501(b)(4)(i), 1926.502(i)", status = "parallel",
    source = "copy of OSHA 3755; the cover's load from a toolbox talk" },
}

caution "loading" {
  stages = { "permit", "dry-in", "final" },
  brief = "Bundles: along the ridge, over several rafters, never in one stack.",
  says = "Spread bundles along the ridge over several rafters, never in one stack, and never over "
    .. "soft deck. Ask an engineer where an overlay or a heavier covering adds weight.",
  cite = { code = "common practice", section = "loading", status = "practice",
    source = "toolbox talk on roof loads; spreading is common advice" },
}

caution "heat" {
  stages = { "deck", "dry-in", "final" },
  brief = "Heat: water, shade, rest, and an eye on new hands.",
  reads = {
    figures = { "cautions.heat_rest_every", "cautions.heat_rest_from",
      "cautions.heat_rest_minutes" },
  },
  says = function(job, figure)
    return "Water, shade and rest in heat, and a close watch on new and returning hands. One "
      .. "state's measure: from " .. number(figure "cautions.heat_rest_from", "F") .. " at least "
      .. number(figure "cautions.heat_rest_minutes", "min") .. " of rest in the shade every "
      .. number(figure "cautions.heat_rest_every", "h") .. "."
  end,
  cite = { code = "WAC", section = "296-62-09547", status = "seen",
    source = "Washington labor department, outdoor heat rule" },
}

caution "nail_guns" {
  stages = { "deck", "dry-in", "final" },
  brief = "Nail guns: full-sequence trigger; never carried with the trigger held.",
  reads = { figures = { "cautions.bump_trigger_times" } },
  says = function(job, figure)
    return "Use the full-sequence trigger, on the flat too: a bump trigger hurts people about "
      .. number(figure "cautions.bump_trigger_times", "times")
      .. " as often. Never carry the gun with the trigger held."
  end,
  cite = { code = "NIOSH/OSHA", section = "nail gun safety guide, 2011", status = "seen",
    source = "trade magazine on the NIOSH and OSHA guide" },
}

caution "asbestos" {
  stages = { "permit", "deck" },
  reads = { figures = { "cautions.asbestos_over" } },
  when = tears_off,
  brief = "Asbestos in the old roof: ask or test before tear-off.",
  says = function(job, figure)
    return "Old shingles, felts, coatings, mastics and flashings may hold asbestos (over "
      .. number(figure "cautions.asbestos_over", "percent")
      .. " counts). Ask before tear-off whether the place wants a test; if in doubt, test. "
      .. "Asbestos-cement shingles break up easily: leave them to those licensed for it."
  end,
  cite = { code = "40 CFR", section = "61 subpart M, app. A", status = "seen",
    source = "Code of Federal Regulations" },
}

caution "lead_paint" {
  stages = { "permit", "deck", "dry-in" },
  reads = {
    facts = { "house.year_built" },
    figures = { "cautions.lead_paint_before", "cautions.lead_paint_free_most" },
  },
  when = function(job, figure)
    return job.house.year_built < figure "cautions.lead_paint_before"
  end,
  brief = function(job, figure)
    return "Built before " .. string.format("%d", figure "cautions.lead_paint_before")
      .. ": lead paint; a lead-safe firm for more than "
      .. number(figure "cautions.lead_paint_free_most", "sqft") .. "."
  end,
  says = function(job, figure)
    -- A year is written bare: a thousands mark would not do.
    return "A house built before " .. string.format("%d", figure "cautions.lead_paint_before")
      .. " may have lead paint on soffit, fascia and trim. Disturbing more than "
      .. number(figure "cautions.lead_paint_free_most", "sqft")
      .. " of it outdoors calls for a lead-safe firm."
  end,
  cite = { code = "40 CFR", section = "745.83", status = "seen",
    source = "EPA renovation rule pages" },
}

caution "open_deck" {
  stages = { "deck" },
  when = tears_off,
  brief = "Open deck: no more than can be dried in the same day.",
  says = "Do not leave an opened deck to the weather while waiting for the inspector: open no more "
    .. "than can be dried in that day, and ask for partial looks.",
  cite = { code = "local", section = "reroof inspection procedure", status = "practice",
    source = "a city handout on reroof inspections" },
}

caution "gas_vents" {
  stages = { "final" },
  brief = "Gas vents: see in the attic that they still fit; test the CO alarms.",
  says = "After tear-off and flashing work, look in the attic that gas vent pipes still fit "
    .. "together, and test the carbon monoxide alarms.",
  cite = { code = "local", section = "final reroof inspection", status = "practice",
    source = "two local reroof handouts" },
}
