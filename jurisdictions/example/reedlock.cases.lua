-- Cases of Reedlock, invented: duties at work, and beside each what the borough
-- does not say of it, at rest. What is at rest would change these outcomes.

local REEDLOCK = "example/reedlock"

local function merged(one, more)
  local with = {}
  for place, value in pairs(one) do with[place] = value end
  for place, value in pairs(more or {}) do with[place] = value end
  return with
end

local OVERLAY = { ["scope.method"] = "overlay", ["existing.layers_removed"] = 0,
  ["existing.coverings[1].removed"] = false }
local OWNER = { ["permit.holder"] = "owner", ["inspection.called_by"] = "owner" }

-- Due, and bad as it is nobody asks for more than the duty itself.
local function at_rest(id, with)
  cases(id) {
    under = REEDLOCK, from = "paperwork",
    { "not asked for by the borough, bad as it is", with = with, expect = "not_applicable" },
  }
end

-- Alarms: due with any permit.
cases "alarms.smoke" {
  under = REEDLOCK, from = "paperwork",
  { "none", with = { ["alarms.smoke_at"] = { "none" } }, expect = "fail" },
}
at_rest("alarms.listed", { ["alarms.listed"] = false })
at_rest("alarms.power", { ["alarms.power"] = "battery" })
at_rest("alarms.clearances", { ["alarms.from_bath_door_in"] = 1 })
at_rest("alarms.proof", { ["alarms.proof"] = "none" })
at_rest("alarms.form_signers", { ["alarms.proof"] = "signed_form",
  ["alarms.form_signed_by"] = { "tenant" } })

-- Visits.
cases "inspection.pre" {
  under = REEDLOCK, from = "paperwork",
  { "an overlay nobody looked at first", expect = "fail",
    with = merged(OVERLAY, { ["inspection.pre.proof"] = "none" }) },
  { "a tear-off has none, flat as the porch may be", expect = "not_applicable",
    with = { ["roof.slopes[3].pitch"] = "2:12", ["inspection.pre.proof"] = "none" } },
}

cases "inspection.deck" {
  under = REEDLOCK, from = "paperwork",
  { "a visit", expect = "pass" },
  { "photographs", with = { ["inspection.deck.proof"] = "photos" }, expect = "pass" },
  { "a deck that stays is looked at too", expect = "fail",
    with = { ["decks[1].work"] = "kept", ["inspection.deck.proof"] = "none" } },
  { "an owner's affidavit does like any other", expect = "pass",
    with = merged(OWNER, { ["inspection.deck.proof"] = "affidavit" }) },
}

cases "inspection.deck_passed" {
  under = REEDLOCK, from = "paperwork",
  -- That the next visit waits, R109.4, is recalled.
  { "passed", expect = "pass" },
  { "passed in part", with = { ["inspection.deck.result"] = "partial" }, expect = "fail" },
}

-- The borough does not say what it means by mid-roof: any of the five moments,
-- any covering but a coating, whoever holds the permit.
for _, moment in ipairs { "after_tear_off", "dried_in", "courses_laid", "loaded", "battens_on" } do
  cases "inspection.mid_roof_moment" {
    under = REEDLOCK, from = "paperwork",
    { moment, with = { ["inspection.mid_roof.moment"] = moment }, expect = "pass" },
  }
end
for _, kind in ipairs { "asphalt_shingle", "roll_roofing", "wood_shingle", "wood_shake", "slate",
  "clay_tile", "concrete_tile", "metal_panel", "metal_shingle" } do
  cases "inspection.mid_roof" {
    under = REEDLOCK, from = "paperwork",
    { kind .. " that nobody looked at", expect = "fail",
      with = { ["covering.kind"] = kind, ["inspection.mid_roof.proof"] = "none" } },
  }
end
cases "inspection.mid_roof" {
  under = REEDLOCK, from = "paperwork",
  { "a coating has no such look", expect = "not_applicable",
    with = { ["covering.kind"] = "coating", ["inspection.mid_roof.proof"] = "none" } },
}
for _, holder in ipairs { "owner", "contractor", "agent", "other" } do
  cases "inspection.mid_roof" {
    under = REEDLOCK, from = "paperwork",
    { holder .. " holds the permit, and nobody looked", expect = "fail",
      with = { ["permit.holder"] = holder, ["inspection.mid_roof.proof"] = "none" } },
  }
end

at_rest("inspection.mid_roof_courses", { ["inspection.mid_roof.moment"] = "courses_laid",
  ["inspection.mid_roof.courses_laid"] = 0 })

-- That a share counts is the borough's; that it is half the roof is practice.
cases "inspection.mid_roof_share" {
  under = REEDLOCK, from = "paperwork",
  { "half, exactly", with = { ["inspection.mid_roof.covering_percent"] = 50 }, expect = "pass",
    required = 50, found = 50, says = "common practice" },
  { "a tenth of a percent more", with = { ["inspection.mid_roof.covering_percent"] = 50.1 },
    expect = "fail", required = 50, found = 50.1 },
  -- Too early is no better than too late: there is nothing yet to look at.
  { "a tenth, exactly", with = { ["inspection.mid_roof.covering_percent"] = 10 },
    expect = "pass", found = 10 },
  { "a tenth of a percent less", with = { ["inspection.mid_roof.covering_percent"] = 9.9 },
    expect = "fail", required = 10, found = 9.9 },
  { "five percent", with = { ["inspection.mid_roof.covering_percent"] = 5 },
    expect = "fail", required = 10, found = 5 },
}

-- Papers.
cases "papers.affidavit" {
  under = REEDLOCK, from = "paperwork",
  { "asked of a new house too", expect = "fail",
    with = { ["house.year_built"] = 2015, ["papers.affidavit.covers"] = { "none" } } },
}
cases "papers.affidavit_signer" {
  under = REEDLOCK, from = "paperwork",
  { "the license holder", expect = "pass" },
  { "an engineer", with = { ["papers.affidavit.signed_by"] = "engineer" }, expect = "fail" },
}
at_rest("papers.affidavit_notarized", { ["papers.affidavit.notarized"] = false })
at_rest("papers.affidavit_on_site", { ["papers.affidavit.on_site"] = false })
at_rest("papers.affidavit_filed", { ["papers.affidavit.filed"] = false })

cases "papers.photos_deck" {
  under = REEDLOCK, from = "paperwork",
  { "none in place of the visit", expect = "fail",
    with = { ["inspection.deck.proof"] = "photos", ["papers.photos.deck"] = { "none" } } },
}
at_rest("papers.photos_tied", { ["inspection.deck.proof"] = "photos",
  ["papers.photos.tied_to_job"] = false })
at_rest("papers.photos_clear", { ["inspection.deck.proof"] = "photos",
  ["papers.photos.clear"] = false })

cases "papers.commencement" {
  under = REEDLOCK, from = "paperwork",
  { "not recorded", with = { ["papers.commencement_recorded"] = false }, expect = "fail" },
}
at_rest("papers.commencement_posted", { ["papers.commencement_posted"] = false })
at_rest("papers.approvals_marked", { ["papers.approvals_marked"] = "unmarked" })
at_rest("permit.bin_deposit", { ["site.bin_deposit"] = false })

cases "papers.sketch" {
  under = REEDLOCK, from = "paperwork",
  { "one", with = { ["papers.sketch_copies"] = 1 }, expect = "pass", required = 1, found = 1 },
  { "none", with = { ["papers.sketch_copies"] = 0 }, expect = "fail", required = 1 },
}

cases "papers.waste_plan" {
  under = REEDLOCK, from = "paperwork",
  { "an overlay needs one too", with = merged(OVERLAY, { ["papers.waste_plan"] = false }),
    expect = "fail" },
}

-- 40 CFR 61: what may hold asbestos. Wood does not.
for _, kind in ipairs { "built_up", "roll_roofing", "asphalt_shingle", "asbestos_cement" } do
  cases "papers.asbestos" {
    under = REEDLOCK, from = "paperwork",
    { kind .. ", not tested", expect = "fail",
      with = { ["existing.coverings[1].kind"] = kind, ["papers.asbestos_test"] = "none" } },
  }
end
cases "papers.asbestos" {
  under = REEDLOCK, from = "paperwork",
  { "wood shakes are not tested", expect = "not_applicable",
    with = { ["existing.coverings[1].kind"] = "wood_shake", ["papers.asbestos_test"] = "none" } },
}

cases "permit.owner_statement" {
  under = REEDLOCK, from = "paperwork", with = OWNER,
  { "signed", with = { ["permit.owner_statement"] = "signed" }, expect = "pass" },
  { "signed in person", expect = "pass" },
  { "none", with = { ["permit.owner_statement"] = "none" }, expect = "fail" },
}

-- Hail: no early storm is let off here, though a page elsewhere has a day for it.
cases "shingle.hail_label" {
  under = REEDLOCK,
  with = { ["existing.hail_damaged"] = true, ["existing.hail_on"] = "2019-06-01",
    ["existing.hail_documented"] = true },
  { "class 4", with = { ["covering.UL_2218_class"] = "4" }, expect = "pass" },
  { "none, for an old storm", with = { ["covering.UL_2218_class"] = "none" }, expect = "fail" },
}

-- Deck -------------------------------------------------------------------------

-- 1/2 in is the last of the thin row, which takes 6 in; the next row takes 4.
cases "deck.nail_field" {
  under = REEDLOCK,
  { "1/2 in, exactly, is thin", with = { ["decks[1].thickness_in"] = 0.5 }, expect = "pass",
    required = 6, found = 6 },
  { "a thousandth more is not", with = { ["decks[1].thickness_in"] = 0.501 }, expect = "fail",
    required = 4, found = 6 },
  { "4 in in the next row, exactly", expect = "pass", required = 4, found = 4,
    with = { ["decks[1].thickness_in"] = 0.75, ["decks[1].nails.field_spacing_in"] = 4 } },
  { "a thousandth over 4", expect = "fail", required = 4,
    with = { ["decks[1].thickness_in"] = 0.75, ["decks[1].nails.field_spacing_in"] = 4.001 } },
}

for _, kind in ipairs { "one_family", "two_family", "townhouse" } do
  cases "deck.renailed" {
    under = REEDLOCK, with = { ["house.kind"] = kind, ["decks[1].work"] = "kept",
      ["decks[1].renailed"] = false },
    { kind .. " of 2002, kept as it is", with = { ["house.year_built"] = 2002 },
      expect = "fail" },
    { kind .. " of 2003", with = { ["house.year_built"] = 2003 }, expect = "not_applicable" },
  }
end

local function measured(count, over)
  local list = { over }
  for _ = 2, count do table.insert(list, 6) end
  return { ["decks[1].nails.measured_edge_spacing_in"] = list }
end

-- Of 700, one is 0.143 percent: it prints as 0.1, not as none.
cases "deck.nail_edges" {
  under = REEDLOCK, stage = "deck",
  { "one of 700, half an inch over: none may be", with = measured(700, 6.5), expect = "fail",
    required = 6, found = 6.5 },
}
cases "deck.nail_edges" {
  under = REEDLOCK, date = "2025-03-03", stage = "deck",
  { "one of ten, a thousandth over: by nothing", with = measured(10, 6.001), expect = "fail",
    required = 6, found = 6.001 },
}

-- R905.2.7.2 of 2012, recalled: a self-adhered sheet all over, and no other way.
cases "underlayment.sealed_deck" {
  under = REEDLOCK, date = "2025-03-03",
  { "self-adhered all over", with = { ["underlayments[1].kind"] = "D1970" }, expect = "warn",
    where = "main front" },
  { "taped joints do not seal it", expect = "fail", where = "main front",
    with = { ["underlayments[1].deck_joints_taped"] = true,
      ["underlayments[1].tape_width_in"] = 4 } },
}

-- A season that does not run over the new year has days before it and after it.
local function felted(day)
  return { ["inspection.deck.proof"] = "winter_rule", ["inspection.winter"] = {
    felted_on = day, letter = true, covering_sqft = 50, felt_peeled = 3 } }
end
cases "inspection.winter_rule" {
  under = "example/reedlock", date = "2026-03-02", from = "paperwork",
  { "on its first day", with = felted "2026-01-05", expect = "pass" },
  { "the day before", with = felted "2026-01-04", expect = "fail", says = "01-05" },
  { "on its last day", with = felted "2026-03-20", expect = "pass" },
  { "the day after", with = felted "2026-03-21", expect = "fail" },
  { "in December", with = felted "2026-12-31", expect = "fail" },
}
