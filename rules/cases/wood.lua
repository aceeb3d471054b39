-- Cases of rules/wood.lua: rot found at tear-off (R905.2.1, R908.2; the rest is
-- practice), and wood shingles (R905.7).

local function rot(changes)
  local one = { name = "tail", member = "rafter_tail", length_ft = 2, repair = "new_piece",
    size_matches = true, species_matches = true, primed_all_faces = true,
    reaches_wall = false, strength_shown = false }
  for key, value in pairs(changes or {}) do one[key] = value end
  return { ["rot"] = { one } }
end

cases "wood.replaced" {
  under = "model/irc-2021",
  { "a new piece", with = rot(), expect = "pass" },
  { "filled", with = rot { repair = "filled" }, expect = "fail" },
  { "left", with = rot { repair = "left" }, expect = "fail" },
  { "not known", with = rot(), without = { "rot[1].repair" }, expect = "open" },
  { "whether any was found not known", without = { "rot" }, expect = "open" },
  { "none found", expect = "not_applicable" },
}

-- The rot must be gone all the same (R908.2); how far the piece runs on is practice.
cases "wood.sister_cut" {
  under = "model/irc-2021",
  { "cut off", with = rot { repair = "sistered", rot_cut_off = true }, expect = "pass" },
  { "left beside the new piece", with = rot { repair = "sistered", rot_cut_off = false },
    expect = "fail" },
  { "not known", with = rot { repair = "sistered" }, expect = "open" },
  { "none alongside", with = rot(), expect = "not_applicable" },
}

cases "wood.replaced" {
  under = "model/irc-2021",
  { "a piece alongside", with = rot { repair = "sistered" }, expect = "pass" },
}

-- A tail of 2 ft: 4 ft along the rafter at least.
cases "wood.sister_length" {
  under = "model/irc-2021",
  { "twice as far, exactly", with = rot { repair = "sistered", sister_past_ft = 4 },
    expect = "pass", required = 2, found = 2 },
  { "an inch short", with = rot { repair = "sistered", sister_past_ft = 3.91 },
    expect = "warn", found = 1.955 },
  { "not known", with = rot { repair = "sistered" }, expect = "open" },
  { "fascia carries nothing", with = rot { member = "fascia", repair = "sistered" },
    expect = "not_applicable" },
  { "none alongside", with = rot(), expect = "not_applicable" },
}

-- Practice: what is not met is warned of.
cases "wood.matched" {
  under = "model/irc-2021",
  { "same size and species", with = rot(), expect = "pass", found = true },
  { "smaller", with = rot { size_matches = false }, expect = "warn", found = false },
  { "another species", with = rot { species_matches = false }, expect = "warn",
    found = false },
  { "not known", with = rot(), without = { "rot[1].species_matches" }, expect = "open" },
  { "no new piece", with = rot { repair = "filled" }, expect = "not_applicable" },
  { "a smaller piece alongside", with = rot { repair = "sistered", size_matches = false },
    expect = "warn", found = false },
}

cases "wood.primed" {
  under = "model/irc-2021",
  { "all faces", with = rot(), expect = "pass", found = true },
  { "the face only", with = rot { primed_all_faces = false }, expect = "warn",
    found = false },
  { "not known", with = rot(), without = { "rot[1].primed_all_faces" }, expect = "open" },
  { "fascia is painted", with = rot { member = "fascia" }, expect = "pass", found = true },
  { "starter boards are", with = rot { member = "starter_board" }, expect = "pass",
    found = true },
  { "rake boards are", with = rot { member = "rake_board" }, expect = "pass", found = true },
  { "soffits are", with = rot { member = "soffit" }, expect = "pass", found = true },
  { "deck edge is not painted", with = rot { member = "deck_edge" },
    expect = "not_applicable" },
}

cases "wood.carries" {
  under = "model/irc-2021",
  { "a tail rotted outside the wall", with = rot(), expect = "not_applicable" },
  { "rot at the bearing, with a drawing", with = rot { reaches_wall = true,
    strength_shown = true }, expect = "pass" },
  { "rot at the bearing, without", with = rot { reaches_wall = true }, expect = "fail" },
  { "how far it reaches not known", with = rot(), without = { "rot[1].reaches_wall" },
    expect = "open" },
  { "a rafter", with = rot { member = "rafter", reaches_wall = true }, expect = "fail" },
  { "a truss", with = rot { member = "truss", reaches_wall = true }, expect = "fail" },
  { "fascia carries nothing", with = rot { member = "fascia", reaches_wall = true },
    expect = "not_applicable" },
}

local function shingles(changes)
  local with = { ["covering.kind"] = "wood_shingle", ["covering.wood_length_in"] = 16,
    ["covering.wood_grade"] = "No1", ["covering.exposure_printed_in"] = 5 }
  for place, value in pairs(changes or {}) do with[place] = value end
  return with
end

-- Table R905.7.5. The porch is at 4:12, exactly, which is the steeper column.
cases "wood.exposure" {
  under = "model/irc-2018",
  { "16 in, No. 1, 5 in exactly", with = shingles(), expect = "pass", where = "main front",
    required = 5 },
  { "5 1/2 in", with = shingles { ["covering.exposure_printed_in"] = 5.5 }, expect = "fail",
    where = "main front", required = 5 },
  { "exactly 4:12", with = shingles(), expect = "pass", where = "porch", required = 5 },
  { "under 4:12", with = shingles { ["roof.slopes[1].pitch"] = "3.99:12" }, expect = "fail",
    where = "main front", required = 3.75 },
  { "3 3/4 in there", with = shingles { ["roof.slopes[1].pitch"] = "3:12",
    ["covering.exposure_printed_in"] = 3.75 }, expect = "pass", where = "main front" },
  { "No. 3 of 18 in", with = shingles { ["covering.wood_length_in"] = 18,
    ["covering.wood_grade"] = "No3", ["covering.exposure_printed_in"] = 4 },
    expect = "pass", where = "main front", required = 4 },
  { "No. 2 of 24 in", with = shingles { ["covering.wood_length_in"] = 24,
    ["covering.wood_grade"] = "No2", ["covering.exposure_printed_in"] = 6.5 },
    expect = "pass", where = "main front", required = 6.5 },
  { "a length with no row", with = shingles { ["covering.wood_length_in"] = 20 },
    expect = "open", where = "main front" },
  { "grade not known", with = shingles(), without = { "covering.wood_grade" },
    expect = "open", where = "main front" },
  { "shakes have their own table", with = shingles { ["covering.kind"] = "wood_shake" },
    expect = "open", where = "main front" },
  { "measured", stage = "final", with = shingles {
    ["covering.measured_exposure_in"] = { 5, 5.25 } }, expect = "fail",
    where = "main front", found = 5.25 },
  { "asphalt", expect = "not_applicable", where = "main front" },
}

-- The whole table: each exposure as printed there, and a thousandth of an inch more.
local TABLE = {
  { length = 16, low = { 3.75, 3.5, 3 }, steep = { 5, 4, 3.5 } },
  { length = 18, low = { 4.25, 4, 3.5 }, steep = { 5.5, 4.5, 4 } },
  { length = 24, low = { 5.75, 5.5, 5 }, steep = { 7.5, 6.5, 5.5 } },
}
local rows = { under = "model/irc-2018" }
for _, row in ipairs(TABLE) do
  for band, pitch in pairs { low = "3:12", steep = "5:12" } do
    for grade, most in ipairs(row[band]) do
      local function laid(exposure)
        return shingles { ["covering.wood_length_in"] = row.length,
          ["covering.wood_grade"] = "No" .. grade, ["roof.slopes[1].pitch"] = pitch,
          ["covering.exposure_printed_in"] = exposure }
      end
      local name = row.length .. " in, No. " .. grade .. ", at " .. pitch
      table.insert(rows, { name .. ", as the table has it", with = laid(most),
        expect = "pass", where = "main front", required = most })
      table.insert(rows, { name .. ", a hair more", with = laid(most + 0.001), expect = "fail",
        where = "main front", required = most, found = most + 0.001 })
    end
  end
end
cases "wood.exposure"(rows)

local function spaced(changes)
  local with = shingles { ["decks[1].kind"] = "spaced_board", ["decks[1].solid_at_eaves"] = true,
    ["site.january_mean_F"] = 20, ["site.seismic_category"] = "B" }
  for place, value in pairs(changes or {}) do with[place] = value end
  return with
end

cases "wood.solid_eaves" {
  under = "model/irc-2018",
  { "solid at the eaves", with = spaced(), expect = "pass" },
  { "not solid", with = spaced { ["decks[1].solid_at_eaves"] = false }, expect = "fail" },
  { "25 F, exactly, is cold", with = spaced { ["site.january_mean_F"] = 25,
    ["decks[1].solid_at_eaves"] = false }, expect = "fail" },
  { "25.1 F is not", with = spaced { ["site.january_mean_F"] = 25.1,
    ["decks[1].solid_at_eaves"] = false }, expect = "not_applicable" },
  { "not known", with = spaced(), without = { "site.january_mean_F" }, expect = "open" },
}

cases "wood.spaced_deck" {
  under = "model/irc-2021",
  { "category B", with = spaced(), expect = "pass" },
  { "category D2", with = spaced { ["site.seismic_category"] = "D2" }, expect = "fail" },
  { "not known", with = spaced(), without = { "site.seismic_category" }, expect = "open" },
  { "panels", with = shingles(), expect = "not_applicable" },
}
