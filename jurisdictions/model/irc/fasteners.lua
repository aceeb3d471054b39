-- The nails of the covering (R905.2.5, R905.2.6).

-- What was read: code texts of states that took the editions over, not the printed books. In
-- an edition that was not read such a figure counts as parallel.
local TEXTS = "state code texts on the editions of 2015 to 2024"
local BOOKS = { "IRC 2015", "IRC 2018", "IRC 2021", "IRC 2024" }

-- Fasteners of the covering.
figure "fasteners.kinds" { { "nail" }, "R905.2.5", sense = "one_of", seen = "city reroof handout",
  read_in = BOOKS }

figure "fasteners.metals" { { "galvanized", "stainless", "aluminum", "copper" }, "R905.2.5",
  sense = "one_of", seen = "city reroof handouts", read_in = BOOKS }
figure "fasteners.shank_least" { 0.105, "R905.2.5", unit = "in", sense = "at_least",
  seen = "city reroof handouts", read_in = BOOKS }
figure "fasteners.head_least" { 0.375, "R905.2.5", unit = "in", sense = "at_least",
  seen = "city reroof handouts", read_in = BOOKS }
figure "fasteners.penetration_least" { 0.75, "R905.2.5", unit = "in", sense = "at_least",
  seen = "city reroof handouts", read_in = BOOKS }
figure "fasteners.thin_deck_under" { 0.75, "R905.2.5", unit = "in", sense = "under", seen = TEXTS,
  read_in = BOOKS }
figure "fasteners.past_thin_deck_least" { 0.125, "R905.2.5 gives no figure", unit = "in",
  sense = "at_least", practice = "trade association bulletin" }
figure "fasteners.per_shingle_least" { 4, "R905.2.6", unit = "nails", sense = "at_least",
  seen = TEXTS, read_in = BOOKS }
figure "fasteners.per_individual_least" { 2, "R905.2.6", unit = "nails", sense = "at_least",
  seen = TEXTS, read_in = BOOKS }
figure "fasteners.hurricane_zone_counts" { false, "R905.2.6", sense = "equals", seen = TEXTS,
  read_in = BOOKS, stricter = true }
figure "fasteners.per_shingle_least_hurricane_zone" { 6, "R905.2.6 names no such zone",
  unit = "nails", sense = "at_least", seen = "one state's building code text of 2023" }

figure "fasteners.steep_over" { 21, "R905.2.6", unit = "rise_in_12", sense = "over", seen = TEXTS,
  read_in = BOOKS,
  ["2012"] = { cite = "R905.2.6", parallel = "state code texts on the 2015 edition" },
}

figure "fasteners.overdriven_allowed" { false, "R905.2.6", sense = "equals",
  seen = "Navy builder manual and trade association bulletin", stricter = false }

-- A nail must go through a thin deck all the same (R905.2.5).
figure "fasteners.hidden_at_eaves_wanted" { true, "no section", sense = "equals",
  practice = "common practice, for looks", stricter = true }
