-- Figures that only the safety cautions print. They bind the employer.

-- Figures that only the safety cautions print. They bind the employer.
figure "cautions.fall_height" { 6, "29 CFR 1926.501(b)(13)", unit = "ft", sense = "from",
  seen = "OSHA residential fall protection FAQ" }

figure "cautions.ladder_above_least" { 3, "29 CFR 1926.1053(b)(1)", unit = "ft",
  sense = "at_least", seen = "copy of OSHA 3755, protecting roofing workers" }
figure "cautions.ladder_lean" { 4, "29 CFR 1926.1053(b)(5)(i)", unit = "ft", sense = "equals",
  seen = "copy of OSHA 3755, protecting roofing workers" }
figure "cautions.power_line_gap_least" { 10, "29 CFR 1926.451(f)(6)", unit = "ft",
  sense = "at_least", seen = "Code of Federal Regulations" }
figure "cautions.power_line_kv_most" { 50, "29 CFR 1926.451(f)(6)", unit = "kV",
  sense = "at_most", seen = "Code of Federal Regulations" }
figure "cautions.cover_load_times" { 2, "29 CFR 1926.502(i)", unit = "times", sense = "at_least",
  seen = "Code of Federal Regulations" }
figure "cautions.heat_rest_from" { 90, "WAC 296-62-09547", unit = "F", sense = "from",
  seen = "Washington labor department, outdoor heat rule" }
figure "cautions.heat_rest_minutes" { 10, "WAC 296-62-09547", unit = "min", sense = "at_least",
  seen = "Washington labor department, outdoor heat rule" }
figure "cautions.heat_rest_every" { 2, "WAC 296-62-09547", unit = "h", sense = "at_most",
  seen = "Washington labor department, outdoor heat rule" }
figure "cautions.bump_trigger_times" { 2, "NIOSH/OSHA nail gun guide, 2011", unit = "times",
  sense = "equals", seen = "trade magazine on the NIOSH and OSHA guide" }
figure "cautions.asbestos_over" { 1, "40 CFR 61 subpart M, app. A", unit = "percent",
  sense = "over", seen = "Code of Federal Regulations" }
figure "cautions.lead_paint_before" { 1978, "40 CFR 745.83", unit = "year", sense = "under",
  seen = "EPA renovation rule pages" }
figure "cautions.lead_paint_free_most" { 20, "40 CFR 745.83", unit = "sqft", sense = "at_most",
  seen = "EPA renovation rule pages" }
