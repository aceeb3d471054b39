-- Rotted wood, and wood shingles and shakes (R905.7, R905.8). No row of the code makes
-- replaced fascia or tails of any species: that part is practice.

-- What was read: code texts of states that took the editions over, not the printed books. In
-- an edition that was not read such a figure counts as parallel.
local TEXTS = "state code texts on the editions of 2015 to 2024"
local EDITION = "state code text on this edition"
local BOOKS = { "IRC 2015", "IRC 2018", "IRC 2021", "IRC 2024" }

figure "wood.rot_replaced_required" { true, "R905.2.1, R908.2", sense = "equals", seen = TEXTS,
  read_in = BOOKS, stricter = true,
  ["2012"] = { cite = "R905.2.1, R907.2" },
}

figure "wood.repairs_allowed" { { "new_piece", "sistered" }, "R905.2.1, R908.2", sense = "one_of",
  seen = TEXTS, read_in = BOOKS, behind = "wood.rot_replaced_required",
  ["2012"] = { cite = "R905.2.1, R907.2" },
}

figure "wood.sister_times_least" { 2, "R802 gives no figure", unit = "times", sense = "at_least",
  practice = "a roofer's public page on rotted tails: twice the overhang past the wall" }

figure "wood.structure_required" { true, "R908.2", sense = "equals", seen = TEXTS,
  read_in = BOOKS, stricter = true,
  ["2012"] = { cite = "R907.2" },
}

figure "wood.framing_members" { { "rafter", "rafter_tail", "truss" }, "R802", sense = "among",
  practice = "a working list: what counts as framing here" }
figure "wood.match_required" { true, "R802 and R803 give no figure", sense = "equals",
  practice = "recalled trade practice: match species and size", stricter = true }
figure "wood.primed_required" { true, "no section", sense = "equals",
  practice = "builders' trade handbook on priming end grain", stricter = true }

figure "wood.primed_members" {
  { "fascia", "rafter_tail", "starter_board", "rake_board", "soffit" }, "no section",
  sense = "among", practice = "builders' trade handbook on priming end grain",
  behind = "wood.primed_required" }

-- Wood shingles. "low" is under 4:12. Three grades, No. 1 the best.
figure "wood.exposure_limited" { true, "R905.7.5", sense = "equals", seen = TEXTS,
  read_in = BOOKS, stricter = true,
  ["2018"] = { cite = "R905.7.5", seen = EDITION },
  ["2024"] = { cite = "R905.7.6", seen = EDITION },
}

figure "wood.exposure_low_below" { 4, "Table R905.7.5", unit = "rise_in_12", sense = "under",
  seen = TEXTS, read_in = BOOKS,
  ["2018"] = { cite = "Table R905.7.5(1)", seen = EDITION },
  ["2024"] = { cite = "Table R905.7.6(1)", seen = EDITION },
}

figure "wood.solid_eaves_required" { true, "R905.7.1.1, R905.8.1.1", sense = "equals",
  seen = TEXTS, read_in = BOOKS, stricter = true }
figure "wood.solid_eaves_at_most" { 25, "R905.7.1.1, R905.8.1.1", unit = "F", sense = "at_most",
  seen = TEXTS, read_in = BOOKS, behind = "wood.solid_eaves_required" }
figure "wood.spaced_deck_barred_in" { { "D2" }, "R803.1", sense = "none_of", seen = TEXTS,
  read_in = BOOKS }

figure "wood.exposure_most" { unit = "in", sense = "at_most", cite = "Table R905.7.5",
  seen = TEXTS, read_in = BOOKS,
  ["2018"] = { cite = "Table R905.7.5(1)", seen = EDITION },
  ["2024"] = { cite = "Table R905.7.6(1)", seen = EDITION },
  rows = {
    ["low.16.No1"] = { 3.75 },
    ["low.16.No2"] = { 3.5 },
    ["low.16.No3"] = { 3 },
    ["low.18.No1"] = { 4.25 },
    ["low.18.No2"] = { 4 },
    ["low.18.No3"] = { 3.5 },
    ["low.24.No1"] = { 5.75 },
    ["low.24.No2"] = { 5.5 },
    ["low.24.No3"] = { 5 },
    ["steep.16.No1"] = { 5 },
    ["steep.16.No2"] = { 4 },
    ["steep.16.No3"] = { 3.5 },
    ["steep.18.No1"] = { 5.5 },
    ["steep.18.No2"] = { 4.5 },
    ["steep.18.No3"] = { 4 },
    ["steep.24.No1"] = { 7.5 },
    ["steep.24.No2"] = { 6.5 },
    ["steep.24.No3"] = { 5.5 },
  },
}
