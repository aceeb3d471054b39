-- IRC 2018: what may be coated over, and where the table of wood shingles stands.

local TEXT = "state code text on this edition"

figures {
  ["layers.coating_over"] = { { "coating", "metal_panel", "metal_shingle", "roll_roofing",
    "built_up", "spray_foam" }, cite = "R908.3.1 item 4", status = "seen", source = TEXT },
  ["wood.exposure_limited"] = { cite = "R905.7.5", status = "seen", source = TEXT },
  ["wood.exposure_low_below"] = { cite = "Table R905.7.5(1)", status = "seen", source = TEXT },
}

local rows = {}
for _, length in ipairs { "16", "18", "24" } do
  for _, band in ipairs { "low", "steep" } do
    for grade = 1, 3 do
      rows["wood.exposure_most." .. band .. "." .. length .. ".No" .. grade] =
        { cite = "Table R905.7.5(1)", status = "seen", source = TEXT }
    end
  end
end
figures(rows)
