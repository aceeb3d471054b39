-- Rotted wood, and wood shingles and shakes (R905.7, R905.8). No row of the code
-- makes replaced fascia or tails of any species: that part is practice.

-- What was read: code texts of states that took the editions of 2015 to 2024 over,
-- not the printed books. In another edition such a figure counts as parallel.
local TEXTS = "state code texts on the editions of 2015 to 2024"
local BOOKS = { "IRC 2015", "IRC 2018", "IRC 2021", "IRC 2024" }

figures {
  ["wood.rot_replaced_required"] = { true, sense = "equals", cite = "R905.2.1, R908.2",
    status = "seen", source = TEXTS, read_in = BOOKS },
  ["wood.repairs_allowed"] = { { "new_piece" }, sense = "one_of", cite = "R905.2.1, R908.2",
    status = "seen", source = TEXTS, read_in = BOOKS },
  ["wood.structure_required"] = { true, sense = "equals", cite = "R908.2", status = "seen",
    source = TEXTS, read_in = BOOKS },
  ["wood.framing_members"] = { { "rafter", "rafter_tail", "truss" }, sense = "among", cite = "R802",
    status = "practice", source = "a working list: what counts as framing here" },
  ["wood.match_required"] = { true, sense = "equals", cite = "R802 and R803 give no figure",
    status = "practice", source = "recalled trade practice: match species and size" },
  ["wood.primed_required"] = { true, sense = "equals", cite = "no section",
    status = "practice", source = "builders' trade handbook on priming end grain" },
  ["wood.primed_members"] = { { "fascia", "rafter_tail", "starter_board", "rake_board",
    "soffit" }, sense = "among", cite = "no section", status = "practice",
    source = "builders' trade handbook on priming end grain" },

  -- Wood shingles. "low" is under 4:12. Three grades, No. 1 the best.
  ["wood.exposure_limited"] = { true, sense = "equals", cite = "R905.7.5", status = "seen",
    source = TEXTS, read_in = BOOKS },
  ["wood.exposure_low_below"] = { 4, unit = "rise_in_12", sense = "under", cite = "Table R905.7.5",
    status = "seen", source = TEXTS, read_in = BOOKS },

  ["wood.solid_eaves_required"] = { true, sense = "equals", cite = "R905.7.1.1, R905.8.1.1",
    status = "seen", source = TEXTS, read_in = BOOKS },
  ["wood.solid_eaves_at_most"] = { 25, unit = "F", sense = "at_most",
    cite = "R905.7.1.1, R905.8.1.1", status = "seen", source = TEXTS, read_in = BOOKS },
  ["wood.spaced_deck_barred_in"] = { { "D2" }, sense = "none_of", cite = "R803.1", status = "seen",
    source = TEXTS, read_in = BOOKS },
}

-- Rows: length; then exposures by grade on low slopes, and on steeper ones.
local TABLE = {
  { "16", low = { 3.75, 3.5, 3 }, steep = { 5, 4, 3.5 } },
  { "18", low = { 4.25, 4, 3.5 }, steep = { 5.5, 4.5, 4 } },
  { "24", low = { 5.75, 5.5, 5 }, steep = { 7.5, 6.5, 5.5 } },
}

local rows = {}
for _, row in ipairs(TABLE) do
  for _, band in ipairs { "low", "steep" } do
    for grade = 1, 3 do
      rows["wood.exposure_most." .. band .. "." .. row[1] .. ".No" .. grade] = {
        row[band][grade], unit = "in", sense = "at_most", cite = "Table R905.7.5",
        status = "seen", source = TEXTS, read_in = BOOKS }
    end
  end
end
figures(rows)
