-- IRC 2018: flashing and wood shingles, read on pages of this edition; and two
-- items of laying over, which were not.

local PAGE = "page of this edition"

figures {
  ["layers.hail_bars_overlay"] = { cite = "R908.3.1.1", status = "memory",
    source = "recalled: gone since 2015" },
  ["layers.coating_over"] = { cite = "R908.3.1 item 4", disputed =
    "the existing-building code of this year lists more roofs that may be coated" },

  ["flashing.base_kinds"] = { cite = "R905.2.8.1", status = "seen", source = PAGE },
  ["flashing.base_roll_least"] = { cite = "R905.2.8.1", status = "seen", source = PAGE },
  ["flashing.cap_least"] = { cite = "R905.2.8.1", status = "seen", source = PAGE },
  ["wood.exposure_limited"] = { cite = "R905.7.5", status = "seen", source = PAGE },
  ["wood.exposure_low_below"] = { cite = "Table R905.7.5(1)", status = "seen", source = PAGE },
  ["wood.solid_eaves_required"] = { cite = "R905.7.1.1, R905.8.1.1", status = "seen",
    source = PAGE .. ", for shakes" },
  ["wood.solid_eaves_at_most"] = { cite = "R905.7.1.1, R905.8.1.1", status = "seen",
    source = PAGE .. ", for shakes" },
}

-- Of the shingles 24 in long only the best grade was read.
local READ = { ["16"] = 3, ["18"] = 3, ["24"] = 1 }

local rows = {}
for length, grades in pairs(READ) do
  for _, band in ipairs { "low", "steep" } do
    for grade = 1, grades do
      rows["wood.exposure_most." .. band .. "." .. length .. ".No" .. grade] =
        { cite = "Table R905.7.5(1)", status = "seen", source = PAGE }
    end
  end
end
figures(rows)
