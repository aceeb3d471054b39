-- The shingles themselves (R905.2.4), their courses and their wind classes.

-- What was read: code texts of states that took the editions over, not the printed books. In
-- an edition that was not read such a figure counts as parallel.
local TEXTS = "state code texts on the editions of 2015 to 2024"
local NO_LINE = TEXTS .. ": no such line"
local NO_PAGE = "local pages, nearly all of which print no such thing"
local BOOKS = { "IRC 2015", "IRC 2018", "IRC 2021", "IRC 2024" }
local SINCE_2018 = { "IRC 2018", "IRC 2021", "IRC 2024" }

-- Shingles. The D7158 limits are the old 90, 120 and 150 mph on the present scale.
figure "shingle.D7158_vult_most" { unit = "mph", sense = "at_most", by = "covering.D7158_class",
  cite = "Table R905.2.4.1", seen = TEXTS, read_in = BOOKS,
  rows = {
    D = { 116,
      -- Shingles: two tables here.
      ["2012"] = { cite = "Table R905.2.4.1(1)",
        parallel = "trade association's note of 2016: 90 mph on the older scale" },
    },
    G = { 155,
      ["2012"] = { cite = "Table R905.2.4.1(1)",
        parallel = "trade association's note of 2016: 120 mph on the older scale" },
    },
    H = { 194,
      ["2012"] = { cite = "Table R905.2.4.1(1)",
        parallel = "trade association's note of 2016: 150 mph on the older scale" },
    },
  },
}

figure "shingle.D3161_vult_most" { unit = "mph", sense = "at_most", by = "covering.D3161_class",
  cite = "Table R905.2.4.1", seen = TEXTS, read_in = BOOKS,
  ["2012"] = { cite = "Table R905.2.4.1(2)" },
  rows = {
    A = { 129 },
    D = { 129 },
    F = { 194 },
  },
}

figure "shingle.D7158_classes" { { "D", "G", "H" }, "R905.2.4.1", sense = "one_of", seen = TEXTS,
  read_in = BOOKS }
figure "shingle.wind_exposures" { { "B", "C" }, "Table R905.2.4.1 footnote", sense = "among",
  seen = "trade association bulletin on the scope of D7158", read_in = BOOKS }
figure "shingle.wind_height_most" { 60, "Table R905.2.4.1 footnote", unit = "ft",
  sense = "at_most", seen = "trade association bulletin on the scope of D7158", read_in = BOOKS }
figure "shingle.follow_instructions" { true, "R905.1", sense = "equals",
  seen = "city reroof handout citing R905.1", read_in = BOOKS, stricter = true }
figure "shingle.offset_least" { 4, "R905.1", unit = "in", sense = "at_least",
  practice = "recalled trade practice" }
figure "shingle.instructions_required" { true, "R106.1.2", sense = "equals", seen = TEXTS,
  read_in = BOOKS, stricter = true }

figure "shingle.standards" { { "D3462" }, "R905.2.4", sense = "one_of", seen = TEXTS,
  read_in = BOOKS,
  ["2012"] = { { "D225", "D3462" }, "R905.2.4",
    parallel = "page of an older edition in a city file" },
}

-- Shingles: wind and hail classes by name ------------------------------------
figure "shingle.wind_label_required" { false, "R905.2.4.1", sense = "equals",
  seen = "state code texts on the editions of 2015 to 2024: every wrapper bears its class; off "
    .. "until a place names one", read_in = BOOKS, stricter = true }

figure "shingle.wind_labels_D7158" { { "G", "H" }, "R905.2.4.1", sense = "one_of",
  seen = "a Colorado city's page" }
figure "shingle.wind_labels_D3161" { { "F" }, "R905.2.4.1", sense = "one_of",
  seen = "two Colorado cities' pages" }
figure "shingle.hail_label_required" { false, "R905.2", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, stricter = true }
figure "shingle.hail_labels" { { "4" }, "R905.2", sense = "one_of",
  seen = "a Colorado city's page: class 4 of UL 2218", behind = "shingle.hail_label_required" }
figure "shingle.hail_proofs" { { "wrapper", "papers" }, "R905.2", sense = "one_of",
  seen = "the same page", behind = "shingle.hail_label_required" }
figure "shingle.hail_early_exempt" { false, "R905.2", sense = "equals", seen = NO_PAGE,
  stricter = false }

figure "shingle.hail_early_most" { 20190731, "R905.2", unit = "date", sense = "at_most",
  memory = "read second-hand in a notice to that city's people",
  behind = "shingle.hail_early_exempt" }

figure "shingle.weight_counts" { false, "R905.2", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, stricter = true }

figure "shingle.weight_least" { 240, "R905.2", unit = "lb_per_square", sense = "at_least",
  practice = "no page read sets it: what common strip shingles weigh",
  behind = "shingle.weight_counts" }

-- Wind classes named by the table of ASTM D3161.
figure "shingle.D3161_classes" { { "A", "D", "F" }, "Table R905.2.4.1", sense = "one_of",
  seen = TEXTS, read_in = SINCE_2018 }
