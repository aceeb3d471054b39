-- Wind on the cladding. The figures are the load standard's own, worked back from the code's
-- tables: ASCE 7-10, 7-16 and 7-22, which the editions go by in turn.

-- What was read: code texts of states that took the editions over, not the printed books. In
-- an edition that was not read such a figure counts as parallel.
local TEXTS = "state code texts on the editions of 2015 to 2024"
local NO_LINE = TEXTS .. ": no such line"
local EDITION = "state code text on this edition"
local FROM_7_10 = "worked back from the cladding tables of 2015 and 2018"
local FROM_7_16 = "worked back from the cladding table of 2021"
local FROM_7_22 = "worked back from the cladding table of 2024, and of a state's text of 2023"
local FROM_HEIGHTS = "worked back from the height factors of 2015, 2018 and 2021"
local WOOD_NOTES = "engineers' notes made from the wood design standard"
local NO_PAGE = "local pages, nearly all of which print no such thing"
local BOOKS = { "IRC 2015", "IRC 2018", "IRC 2021", "IRC 2024" }
local IN_7_10 = { "IRC 2015", "IRC 2018" }
local IN_7_16 = { "IRC 2021" }
local IN_7_22 = { "IRC 2024" }
local HEIGHTS_IN = { "IRC 2015", "IRC 2018", "IRC 2021" }

-- Where the code's own wind rules for houses stop.
figure "wind.prescriptive_under" { 140, "R301.2.1.1", unit = "mph", sense = "under",
  seen = "state code texts on the editions of 2015 to 2024: by the map; 140 is named for "
    .. "special wind regions, since 2021", read_in = BOOKS }

-- Engineering of the deck's nails. No code asks for it where the nailing
-- table holds, so it advises; a place that wants it kept says true.
figure "wind.engineered_nailing_binds" { false, "R301.2.1", sense = "equals",
  practice = "good practice in strong wind; the nailing table is what binds", stricter = true }

-- Wind by height and ground: the standard's exponents and gradient heights.
figure "wind.kz_factor" { 2.01, "ASCE 7 Table 26.9-1", unit = "coefficient", sense = "equals",
  seen = FROM_HEIGHTS, read_in = HEIGHTS_IN,
  ["2024"] = { 2.41, "ASCE 7-22 26.10",
    seen = "worked back from the height factors of Table R301.2.1(2)" },
}

figure "wind.kz_least_height" { 15, "ASCE 7 Table 26.9-1", unit = "ft", sense = "at_least",
  seen = FROM_HEIGHTS, read_in = HEIGHTS_IN }

figure "wind.alpha" { unit = "coefficient", sense = "equals", by = "site.exposure",
  cite = "ASCE 7 Table 26.9-1", seen = FROM_HEIGHTS, read_in = HEIGHTS_IN,
  rows = {
    B = { 7,
      ["2024"] = { 7.5, "ASCE 7-22 26.10",
        seen = "worked back from the height factors of Table R301.2.1(2)" },
    },
    C = { 9.5,
      ["2024"] = { 9.8, "ASCE 7-22 26.10",
        parallel = "gives the height factors of 2015 to 2021, from which that table was found "
          .. "to differ in exposure B alone" },
    },
    D = { 11.5 },
  },
}

figure "wind.gradient_height" { unit = "ft", sense = "equals", by = "site.exposure",
  cite = "ASCE 7 Table 26.9-1", seen = FROM_HEIGHTS, read_in = HEIGHTS_IN,
  rows = {
    B = { 1200,
      ["2024"] = { 3280, "ASCE 7-22 26.10",
        seen = "worked back from the height factors of Table R301.2.1(2)" },
    },
    C = { 900,
      ["2024"] = { 2460, "ASCE 7-22 26.10",
        parallel = "gives the height factors of 2015 to 2021, from which that table was found "
          .. "to differ in exposure B alone" },
    },
    D = { 700,
      ["2024"] = { 1935, "ASCE 7-22 26.10",
        parallel = "gives the height factors of 2015 to 2021, from which that table was found "
          .. "to differ in exposure B alone" },
    },
  },
}

figure "wind.kz_floor" { unit = "coefficient", sense = "at_least", by = "site.exposure",
  cite = "ASCE 7 Table 30.3-1", seen = FROM_HEIGHTS, read_in = HEIGHTS_IN,
  rows = {
    C = { 0 },
    D = { 0 },
    B = {
      ["2012"] = { 0.7, "Table R301.2(3)", parallel = "state code texts on the 2015 edition" },
      ["2015"] = { 0.7, "ASCE 7-10 Table 30.3-1", seen = EDITION },
      ["2018"] = { 0.7, "ASCE 7-10 Table 30.3-1", seen = EDITION },
      ["2021"] = { 0, "ASCE 7-16 Table 26.10-1",
        seen = "a guide to the standard: 0.57 at 12 ft" },
      ["2024"] = { 0, "Table R301.2.1(2)", seen = EDITION },
    },
  },
}

figure "wind.directionality" { 0.85, "ASCE 7 Table 26.6-1", unit = "coefficient",
  sense = "equals", seen = "a guide to the standard, worked house" }
figure "wind.elevation_factor" { 1, "ASCE 7 26.9", unit = "coefficient", sense = "equals",
  seen = "a guide to the standard: 1 may always be used" }
figure "wind.gcpi" { 0.18, "ASCE 7, enclosed buildings", unit = "coefficient", sense = "equals",
  seen = "a plan set filed with a Florida city" }
figure "wind.load_factor" { 0.6, "ASCE 7 2.4.1", unit = "coefficient", sense = "equals",
  seen = "worked back from the cladding tables of 2015 to 2024", read_in = BOOKS }
figure "wind.pressure_least" { 10, "Table R301.2(2)", unit = "psf", sense = "at_least",
  seen = TEXTS, read_in = BOOKS }

-- Zones: strips along eaves, rakes and ridges.
figure "wind.zone_width" { 4, "R301.2.1, figure of the cladding zones", unit = "ft",
  sense = "equals", seen = TEXTS, read_in = BOOKS }

figure "wind.zone_width_share" { 0.1, "ASCE 7 chapter 30 figures, note", unit = "coefficient",
  sense = "equals",
  parallel = "a structural handbook printing the figures of the 2002 edition; an engineers' "
    .. "forum on that of 2005" }

figure "wind.zone_height_share" { 0.4, "ASCE 7 chapter 30 figures, note", unit = "coefficient",
  sense = "equals",
  parallel = "a structural handbook printing the figures of the 2002 edition; an engineers' "
    .. "forum on that of 2005" }

figure "wind.zone_least_share" { 0.04, "ASCE 7 chapter 30 figures, note", unit = "coefficient",
  sense = "at_least",
  parallel = "a structural handbook printing the figures of the 2002 edition; an engineers' "
    .. "forum on that of 2005" }

figure "wind.zone_least" { 3, "ASCE 7 chapter 30 figures, note", unit = "ft", sense = "at_least",
  parallel = "a structural handbook printing the figures of the 2002 edition; an engineers' "
    .. "forum on that of 2005" }

figure "wind.zone_flat_height_share" { 0.6, "ASCE 7-16 Figure 30.3-2A", unit = "coefficient",
  sense = "equals", seen = "engineers' page on the flat-roof figure of the 2022 edition" }
figure "wind.zone_flat_from" { 2016, "ASCE 7-16 Figure 30.3-2A", unit = "year", sense = "from",
  seen = "engineers' page on the flat-roof figure" }

-- Slope bands, degrees: a slope belongs to the first it does not exceed.
figure "wind.band_most" { unit = "degrees", sense = "at_most", cite = "ASCE 7 chapter 30 figures",
  seen = "cladding tables in state code texts on the editions of 2015 to 2024", read_in = BOOKS,
  rows = {
    low = { 7 },
    shallow = { 20 },
    mid = { 27 },
    steep = { 45 },
  },
}

-- External coefficients of suction, 10 sq ft and less. ASCE 7-10 has three
-- zones for gables and hips alike and no band from 7 to 20 degrees.
figure "wind.gcp_7_10" { unit = "coefficient", sense = "equals",
  cite = "ASCE 7-10 Figures 30.4-2A to C", seen = FROM_7_10, read_in = IN_7_10,
  rows = {
    ["low.zone1"] = { -1 },
    ["low.zone2"] = { -1.8 },
    ["low.zone3"] = { -2.8 },
    ["mid.zone1"] = { -0.9 },
    ["mid.zone2"] = { -1.7 },
    ["mid.zone3"] = { -2.6 },
    ["steep.zone1"] = { -1 },
    ["steep.zone2"] = { -1.2 },
    ["steep.zone3"] = { -1.2 },
  },
}

-- ASCE 7-16: 1 field, 2e eave, 2n rake, 2r ridge, 3e and 3r corners.
figure "wind.gcp_7_16" { unit = "coefficient", sense = "equals",
  cite = "ASCE 7-16 Figures 30.3-2A to I", seen = FROM_7_16, read_in = IN_7_16,
  rows = {
    ["low.zone1"] = { -1.7 },
    ["low.zone2"] = { -2.3 },
    ["low.zone3"] = { -3.2 },
    ["gable.shallow.zone1"] = { -2 },
    ["gable.shallow.zone2e"] = { -2 },
    ["gable.shallow.zone2n"] = { -3 },
    ["gable.shallow.zone2r"] = { -3 },
    ["gable.shallow.zone3e"] = { -3 },
    ["gable.shallow.zone3r"] = { -3.6 },
    ["gable.mid.zone1"] = { -1.5 },
    ["gable.mid.zone2e"] = { -1.5 },
    ["gable.mid.zone2n"] = { -2.5 },
    ["gable.mid.zone2r"] = { -2.5 },
    ["gable.mid.zone3e"] = { -2.5 },
    ["gable.mid.zone3r"] = { -3 },
    ["gable.steep.zone1"] = { -1.8 },
    ["gable.steep.zone2e"] = { -1.8 },
    ["gable.steep.zone2n"] = { -2 },
    ["gable.steep.zone2r"] = { -1.8 },
    ["gable.steep.zone3e"] = { -2.5 },
    ["gable.steep.zone3r"] = { -2 },
    ["hip.shallow.zone1"] = { -1.8 },
    ["hip.shallow.zone2e"] = { -2.6 },
    ["hip.shallow.zone2r"] = { -2.4 },
    ["hip.shallow.zone3"] = { -2.6 },
    ["hip.mid.zone1"] = { -1.4 },
    ["hip.mid.zone2e"] = { -2 },
    ["hip.mid.zone2r"] = { -2 },
    ["hip.mid.zone3"] = { -2 },
  },
}

-- ASCE 7-22: three zones again, for gables and hips each their own.
figure "wind.gcp_7_22" { unit = "coefficient", sense = "equals",
  cite = "ASCE 7-22 Figures 30.3-2A to H", seen = FROM_7_22, read_in = IN_7_22,
  rows = {
    ["low.zone1"] = { -1.7 },
    ["low.zone2"] = { -2.3 },
    ["low.zone3"] = { -3.2 },
    ["gable.shallow.zone1"] = { -2 },
    ["gable.shallow.zone2"] = { -2.7 },
    ["gable.shallow.zone3"] = { -3.6 },
    ["gable.mid.zone1"] = { -1.5 },
    ["gable.mid.zone2"] = { -2.5 },
    ["gable.mid.zone3"] = { -3 },
    ["gable.steep.zone1"] = { -1.8 },
    ["gable.steep.zone2"] = { -2 },
    ["gable.steep.zone3"] = { -2.5 },
    ["hip.shallow.zone1"] = { -1.8 },
    ["hip.shallow.zone2"] = { -2.4 },
    ["hip.shallow.zone3"] = { -2.6 },
    ["hip.mid.zone1"] = { -1.4 },
    ["hip.mid.zone2"] = { -2 },
    ["hip.mid.zone3"] = { -2 },
    ["hip.steep.zone1"] = { -1.5 },
    ["hip.steep.zone2"] = { -1.8 },
    ["hip.steep.zone3"] = { -2.4 },
  },
}

-- What wood holds. Gravities of framing and panels, and the factors.
figure "wind.gravity" { unit = "coefficient", sense = "equals", parallel = WOOD_NOTES,
  rows = {
    southern_pine = { 0.55, "NDS Table 12.3.3A" },
    douglas_fir_larch = { 0.5, "NDS Table 12.3.3A" },
    hem_fir = { 0.43, "NDS Table 12.3.3A" },
    spruce_pine_fir = { 0.42, "NDS Table 12.3.3A" },
    spruce_pine_fir_south = { 0.36, "NDS Table 12.3.3A", memory = "recalled" },
    western_woods = { 0.36, "NDS Table 12.3.3A", memory = "recalled" },
    osb = { 0.5, "NDS Table 12.3.3B", memory = "recalled" },
    plywood = { 0.42, "NDS Table 12.3.3B" },
    plywood_structural_1 = { 0.5, "NDS Table 12.3.3B" },
  },
}

figure "wind.nail_duration" { 1.6, "NDS Table 2.3.2", unit = "coefficient", sense = "equals",
  parallel = WOOD_NOTES }

figure "wind.nail_wet_factor" { unit = "coefficient", sense = "equals", cite = "NDS Table 11.3.3",
  parallel = WOOD_NOTES,
  rows = {
    smooth = { 0.25 },
    ringed = { 1, memory = "recalled",
      disputed = "whether the full value holds in wet wood was not read" },
  },
}

figure "wind.nails_ringed" { { "RSRS_01", "RSRS_02", "RSRS_03", "RSRS_04", "RSRS_05" },
  "ASTM F1667 Table 46", sense = "among",
  practice = "a working list: the ringed kinds of that table" }

figure "wind.nail_ring_length" { 1.5, "ASTM F1667 Table 46", unit = "in", sense = "at_least",
  parallel = "a state residential code of 2023" }

figure "wind.nail_head" { unit = "in", sense = "at_least", by = "decks[].nails.kind",
  seen = "Table R602.3(1) of 2024, which prints the heads",
  rows = {
    common_6d = { 0.266, "ASTM F1667",
      seen = "Table R602.3(1) of 2021 and 2024, which print the heads" },
    common_8d = { 0.281, "ASTM F1667" },
    common_10d = { 0.312, "ASTM F1667",
      parallel = "engineers' notes made from the nail standard" },
    box_8d = { 0.297, "ASTM F1667", memory = "recalled" },
    sinker_8d = { 0.266, "ASTM F1667", memory = "recalled" },
    deformed_8d = { 0.281, "ASTM F1667" },
    RSRS_01 = { 0.281, "ASTM F1667 Table 46" },
    RSRS_02 = { 0.281, "ASTM F1667 Table 46", memory = "recalled" },
    RSRS_03 = { 0.281, "ASTM F1667 Table 46" },
    RSRS_04 = { 0.281, "ASTM F1667 Table 46", parallel = "a state residential code of 2023" },
    RSRS_05 = { 0.281, "ASTM F1667 Table 46", memory = "recalled" },
  },
}

figure "wind.vult_counts" { false, "R301.2.1", sense = "equals", seen = NO_LINE, read_in = BOOKS,
  stricter = true }

figure "wind.vult_least" { 115, "R301.2.1", unit = "mph", sense = "at_least",
  memory = "recalled: the map's speed for most of the country inland",
  behind = "wind.vult_counts" }

figure "wind.vult_by_elevation" { false, "R301.2.1", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, stricter = true }

figure "wind.vult_elevation_from" { 7000, "R301.2.1", unit = "ft", sense = "from",
  practice = "common practice: mountain counties draw such a line, each its own",
  behind = "wind.vult_by_elevation" }

figure "wind.vult_high_least" { 115, "R301.2.1", unit = "mph", sense = "at_least",
  memory = "recalled: the map's speed for most of the country inland",
  behind = "wind.vult_by_elevation" }

figure "wind.local_zones_count" { false, "R301.2.1", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, stricter = true }
figure "wind.local_speed_on_vasd" { false, "R301.2.1", sense = "equals", seen = NO_PAGE,
  stricter = true }

figure "wind.asce_year" { unit = "year", sense = "equals",
  -- Wind pressures: the coefficients are those of the next standard.
  ["2012"] = { 2010, "Table R301.2(2)", parallel = "state code texts on the 2015 edition" },
  ["2015"] = { 2010, "Table R301.2(2)", seen = EDITION },
  -- Which edition of the wind standard the cladding table was made with.
  ["2018"] = { 2010, "Table R301.2(2)", seen = EDITION },
  -- Which edition of the wind standard the cladding table was made with.
  ["2021"] = { 2016, "Table R301.2.1(1)", seen = EDITION },
  -- The standard of 2022, its zones and its height factors. In exposure B these give the
  -- table's factors at 15 to 25 and 40 to 50 ft; at 30 ft 0.69 where it has 0.70.
  ["2024"] = { 2022, "Table R301.2.1(1)", seen = EDITION },
}
