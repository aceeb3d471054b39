-- Reedlock, invented: a borough on the locks below Quillbank County, in the
-- invented state of Harrow. It switches duties on and says nothing of what may
-- narrow them or be added to them, so that the cases show each of those at rest
-- beside a duty that is at work. Until 2026 it follows the edition of 2012.

-- One all over the place.
local FACTS = {
  ["site.wind_vult_mph"] = { 115, unit = "mph", cite = "climate table" },
  ["site.wind_design_required"] = { false, cite = "climate table" },
  ["site.exposure"] = { one_of = { "B", "C" }, cite = "climate table" },
  ["site.climate_zone"] = { "5A", cite = "climate table" },
  ["site.ice_barrier_in_table"] = { false, cite = "climate table" },
  ["site.january_mean_F"] = { 28, unit = "F", cite = "climate table" },
  ["site.hail_exposure"] = { "moderate", cite = "climate table" },
  ["site.seismic_category"] = { "B", cite = "climate table" },
  ["site.high_velocity_hurricane_zone"] = { false, cite = "climate table" },
  ["site.hurricane_prone_region"] = { false, cite = "climate table" },
  ["site.fire_zone"] = { "none", cite = "climate table" },
  ["site.state_fire_area"] = { false, cite = "climate table" },
  ["permit.telephone"] = { "555-0120", cite = "title page" },
}

jurisdiction "example/reedlock" {
  title = "Borough of Reedlock, Harrow",
  invented = true,
  facts = FACTS,
  follows = "model/irc-2012",
  from = "2024-01-01",
  to = "2026-01-01",
  code = "Reedlock Borough Code",
  figures = {
    ["underlayment.sealed_deck_required"] = { true, cite = "2-14" },
    -- One spacing in ten may be over the figure, yet by nothing.
    ["deck.over_spacing_share_most"] = { 10, cite = "2-15" },
  },
}

jurisdiction "example/reedlock" {
  title = "Borough of Reedlock, Harrow",
  invented = true,
  facts = FACTS,
  follows = "model/irc-2021",
  from = "2026-01-01",
  code = "Reedlock Borough Code",
  figures = {
    -- Deck: an inch over is let pass, yet of none; the middle row of panels is
    -- nailed closer than the thin one.
    ["deck.over_spacing_most"] = { 1, cite = "2-15" },
    -- A season within one year.
    ["inspection.winter_from"] = { { "01-05" }, instead = true, cite = "2-17" },
    ["inspection.winter_to"] = { { "03-20" }, instead = true, cite = "2-17" },
    ["deck.nail_field_most.mid"] = { 4, cite = "2-16" },
    ["deck.renail_required"] = { true, cite = "2-17" },
    ["shingle.hail_label_required"] = { true, cite = "2-18" },

    ["permit.owner_statement_required"] = { true, cite = "2-20" },

    -- Papers.
    ["papers.sketch_required"] = { true, cite = "2-30" },
    ["papers.commencement_required"] = { true, cite = "2-31" },
    ["papers.asbestos_test_required"] = { true, cite = "2-32" },
    ["papers.waste_plan_required"] = { true, cite = "2-33" },
    ["papers.affidavit_required"] = { true, cite = "2-34" },
    ["papers.photos_deck"] = { { "each_plane" }, cite = "2-35" },

    -- Visits.
    ["inspection.required.pre"] = { true, cite = "2-40" },
    ["inspection.methods.pre"] = { { "overlay" }, cite = "2-40" },
    ["inspection.required.deck"] = { true, cite = "2-41" },
    ["inspection.proofs.deck"] = { { "visit", "affidavit", "photos", "winter_rule" },
      cite = "2-41" },
    ["inspection.required.mid_roof"] = { true, cite = "2-42" },
    ["inspection.mid_roof_share_counts"] = { true, cite = "2-42" },
    ["inspection.mid_roof_share_least"] = { 10, cite = "2-42" },

    -- Alarms, with any permit.
    ["alarms.exterior_exempt"] = { false, cite = "2-50" },
  },
}
