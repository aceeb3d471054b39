-- Attic ventilation (R806).

-- What was read: code texts of states that took the editions over, not the printed books. In
-- an edition that was not read such a figure counts as parallel.
local TEXTS = "state code texts on the editions of 2015 to 2024"
local EDITION = "state code text on this edition"
local BOOKS = { "IRC 2015", "IRC 2018", "IRC 2021", "IRC 2024" }

-- Attic ventilation. These held from 2012 on; whether one or both conditions of
-- the smaller area are needed differs by edition.
-- The section on laying over holds it to chapter 9; attic vents are in chapter 8.
figure "ventilation.on_overlay_required" { false, "R908.1, R102.7", sense = "equals",
  memory = "recalled", stricter = true,
  ["2012"] = { cite = "R907.1, R102.7" },
}

figure "ventilation.ratio_default" { 150, "R806.2", unit = "ratio", sense = "at_most",
  seen = TEXTS, read_in = BOOKS }
figure "ventilation.ratio_reduced" { 300, "R806.2", unit = "ratio", sense = "at_most",
  seen = TEXTS, read_in = BOOKS }
figure "ventilation.retarder_zones" { { "6A", "6B", "7", "8" }, "R806.2 exception",
  sense = "among", seen = TEXTS, read_in = BOOKS }
figure "ventilation.retarder_classes" { { "class_I", "class_II" }, "R806.2 exception",
  sense = "one_of", seen = TEXTS, read_in = BOOKS }
figure "ventilation.high_share_least" { 40, "R806.2 exception", unit = "percent",
  sense = "at_least", seen = TEXTS, read_in = BOOKS }
figure "ventilation.high_share_most" { 50, "R806.2 exception", unit = "percent",
  sense = "at_most", seen = TEXTS, read_in = BOOKS }
figure "ventilation.upper_band_most" { 3, "R806.2 exception", unit = "ft", sense = "at_most",
  seen = TEXTS, read_in = BOOKS }
figure "ventilation.opening_least" { 0.0625, "R806.1", unit = "in", sense = "at_least",
  seen = TEXTS, read_in = BOOKS }
figure "ventilation.opening_most" { 0.25, "R806.1", unit = "in", sense = "at_most", seen = TEXTS,
  read_in = BOOKS }
figure "ventilation.outdoors_required" { true, "R806.1", sense = "equals", seen = TEXTS,
  read_in = BOOKS, stricter = true }
figure "ventilation.airspace_least" { 1, "R806.3", unit = "in", sense = "at_least", seen = TEXTS,
  read_in = BOOKS }
figure "ventilation.fans_outdoors_required" { true, "M1501.1", sense = "equals", seen = TEXTS,
  read_in = BOOKS, stricter = true }
figure "ventilation.exhaust_kinds_most" { 1, "R806.4 names no figure", unit = "count",
  sense = "at_most", practice = "recalled trade practice" }
figure "ventilation.intake_share_least" { 100, "R806.2 names no figure", unit = "percent",
  sense = "at_least", practice = "recalled trade practice" }

figure "ventilation.gross_times" { unit = "times", sense = "equals",
  by = "attics[].vents[].cover", cite = "gives no figure", seen = "trade journal's field guide",
  rows = {
    quarter_inch_cloth = { 1 },
    eighth_inch_mesh = { 1.25 },
    sixteen_mesh = { 2 },
    wood_louver_quarter_inch_cloth = { 2 },
    wood_louver_eighth_inch_mesh = { 2.25 },
    wood_louver_sixteen_mesh = { 3 },
  },
}

-- Attic vents where the deck is new alone.
figure "ventilation.with_new_deck_only" { false, "R908.1", sense = "equals", seen = TEXTS,
  read_in = BOOKS, stricter = false }

figure "ventilation.reduced_needs_both" { sense = "equals", stricter = true,
  -- Either condition is enough for the smaller vent area in this edition.
  ["2012"] = { false, "R806.2 exception", memory = "recalled; also read second-hand" },
  -- One of the two conditions is enough for the smaller vent area.
  ["2015"] = { false, "R806.2 exception", seen = EDITION },
  ["2018"] = { true, "R806.2 exception", seen = EDITION },
  ["2021"] = { true, "R806.2 exception", seen = EDITION },
  ["2024"] = { true, "R806.2 exception", seen = EDITION },
}
