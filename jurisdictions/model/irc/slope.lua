-- The least slope of each covering (R905), and where two plies are due.

-- What was read: code texts of states that took the editions over, not the printed books. In
-- an edition that was not read such a figure counts as parallel.
local TEXTS = "state code texts on the editions of 2015 to 2024"
local BOOKS = { "IRC 2015", "IRC 2018", "IRC 2021", "IRC 2024" }

-- Built-up, membranes, foam and coatings drain; coal tar flows with less.
figure "slope.least" { unit = "rise_in_12", sense = "at_least",
  parallel = "a state's rule printing the building code's 1507.10.1 to 1507.15.1",
  rows = {
    asphalt_shingle = { 2, "R905.2.2", seen = TEXTS, read_in = BOOKS },
    wood_shingle = { 3, "R905.7.2", seen = "city handout citing R905.7.2", read_in = BOOKS },
    wood_shake = { 3, "R905.8.2", seen = "city handout citing R905.8.2", read_in = BOOKS },
    roll_roofing = { 1, "R905.5.2", seen = TEXTS, read_in = BOOKS },
    built_up = { 0.25, "R905.9.1" },
    coal_tar_built_up = { 0.125, "R905.9.1" },
    modified_bitumen = { 0.25, "R905.11.1" },
    thermoset_membrane = { 0.25, "R905.12.1" },
    thermoplastic_membrane = { 0.25, "R905.13.1" },
    spray_foam = { 0.25, "R905.14.1" },
    coating = { 0.25, "R905.15.1" },
    metal_panel_lapped = { 3, "R905.10.2", seen = TEXTS, read_in = BOOKS },
    metal_panel_sealed = { 0.5, "R905.10.2", seen = TEXTS, read_in = BOOKS },
    metal_panel_standing = { 0.25, "R905.10.2", seen = TEXTS, read_in = BOOKS },
  },
}

figure "slope.other_checked_required" { true, "R905.1", sense = "equals",
  practice = "a job tells the facts of one covering", stricter = true }
figure "slope.double_below" { 4, "R905.2.2", unit = "rise_in_12", sense = "under", seen = TEXTS,
  read_in = BOOKS }

figure "slope.double_plies_least" { 2, "R905.2.2, Table R905.1.1(2)", unit = "plies",
  sense = "at_least", seen = TEXTS, read_in = BOOKS,
  -- Slope and underlayment stand in R905.2.
  ["2012"] = { cite = "R905.2.2, R905.2.7" },
}
