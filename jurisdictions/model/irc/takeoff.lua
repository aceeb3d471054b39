-- What a takeoff reckons with: common practice, and what wrappers print.

-- What things come in. A label goes before these: the job may state its own.
figure "takeoff.bundles_per_square" { 3, "gives no figure", unit = "count", sense = "equals",
  seen = "housing charity's material guide; laminated and heavy shingles take up to 5" }

figure "takeoff.strips_per_bundle" { 27, "gives no figure", unit = "count", sense = "equals",
  seen = "Navy builder manual" }
figure "takeoff.cap_run_per_bundle" { 35, "gives no figure", unit = "ft", sense = "equals",
  practice = "consumer how-to page: one bundle of strip shingles cut for caps" }

-- Nails to the pound by length; the sets in print disagree, the box decides.
figure "takeoff.nails_to_the_pound.1" { 255, "gives no figure", unit = "nails", sense = "equals",
  practice = "recalled, 11 gauge" }

figure "takeoff.nails_to_the_pound.1.25" { 210, "gives no figure", unit = "nails",
  sense = "equals", practice = "recalled, 11 gauge" }

figure "takeoff.nails_to_the_pound.1.5" { 180, "gives no figure", unit = "nails",
  sense = "equals", practice = "recalled, 11 gauge",
  disputed = "another set has 140 at 1 1/2 in" }

figure "takeoff.nails_to_the_pound.1.75" { 150, "gives no figure", unit = "nails",
  sense = "equals", practice = "recalled, 11 gauge" }
figure "takeoff.nails_to_the_pound.2" { 138, "gives no figure", unit = "nails", sense = "equals",
  practice = "recalled, 11 gauge" }

figure "takeoff.nails_to_the_pound.lengths" { { "1", "1.25", "1.5", "1.75", "2" },
  "gives no figure", sense = "among",
  practice = "recalled: the lengths, in inches, that the counts above are known for" }

figure "takeoff.nails_per_box" { 7200, "gives no figure", unit = "nails", sense = "equals",
  practice = "recalled: coil nails, 60 coils of 120" }
figure "takeoff.nail_lengths" { { "1", "1.25", "1.5", "1.75", "2", "2.5", "3" },
  "gives no figure", sense = "among", practice = "recalled, in inches" }

figure "takeoff.roll_width" { unit = "in", sense = "equals", cite = "gives no figure",
  practice = "recalled",
  rows = {
    felt = { 36, seen = "Navy builder manual" },
    self_adhered = { 36 },
    synthetic = { 48 },
  },
}

figure "takeoff.roll_length" { unit = "ft", sense = "equals", cite = "gives no figure",
  practice = "recalled: 432 sq ft gross; read second-hand as 4 squares",
  rows = {
    light_felt = { 144 },
    heavy_felt = { 72,
      practice = "recalled: 216 sq ft gross; an Army and Navy question makes it 2 squares" },
    self_adhered = { 66.7, practice = "recalled: 200 sq ft; some rolls hold 195 or 225" },
    synthetic = { 250, practice = "recalled: 10 squares gross" },
  },
}

figure "takeoff.sheet_lap" { 6, "gives no figure", unit = "in", sense = "equals",
  practice = "recalled: 3 to 6 in is usual; the maker's print decides" }
figure "takeoff.drip_edge_piece" { 10, "gives no figure", unit = "ft", sense = "equals",
  practice = "recalled" }
figure "takeoff.valley_roll" { 50, "gives no figure", unit = "ft", sense = "equals",
  practice = "recalled; metal also comes in pieces of 10 ft" }
figure "takeoff.valley_lap" { 6, "gives no figure", unit = "in", sense = "equals",
  practice = "recalled" }
figure "takeoff.panel_length" { 96, "gives no figure", unit = "in", sense = "equals",
  practice = "common panel, 4 by 8 ft" }
figure "takeoff.panel_width" { 48, "gives no figure", unit = "in", sense = "equals",
  practice = "common panel, 4 by 8 ft" }

-- Loads and days. The trailer: bed 6 by 12 ft with sides of 2 ft.
figure "takeoff.debris_density" { 731, "gives no figure", unit = "lb", sense = "equals",
  practice = "recalled from federal factors of volume to weight: loose shingles, a cu yd" }

figure "takeoff.trailer_bed_length" { 12, "gives no figure", unit = "ft", sense = "equals",
  practice = "common dump trailer" }
figure "takeoff.trailer_bed_width" { 6, "gives no figure", unit = "ft", sense = "equals",
  practice = "common dump trailer" }
figure "takeoff.trailer_side" { 2, "gives no figure", unit = "ft", sense = "equals",
  practice = "common dump trailer" }
figure "takeoff.trailer_payload" { 7000, "gives no figure", unit = "lb", sense = "at_most",
  practice = "recalled: a trailer of 10,000 lb in all; its plate decides" }
figure "takeoff.squares_per_day" { 6, "gives no figure", unit = "squares", sense = "equals",
  practice = "crew's rule of thumb: 30 squares torn off, mended and shingled in five days" }

-- A powered fan; and how much larger an opening must be than its free area.
figure "takeoff.fan_cfm_per_sqft" { 0.7, "gives no figure", unit = "cfm", sense = "equals",
  seen = "ventilating-products trade association" }

figure "takeoff.fan_boost_dark_or_steep" { 1.15, "gives no figure", unit = "times",
  sense = "equals", seen = "ventilating-products trade association" }
figure "takeoff.fan_cfm_per_intake_sqft" { 300, "gives no figure", unit = "cfm", sense = "equals",
  seen = "ventilating-products trade association" }

-- Starter and caps of their own kind, as laminated shingles take them.
figure "takeoff.starter_run_per_bundle" { 100, "gives no figure", unit = "ft", sense = "equals",
  practice = "public how-to pages: 100 to 105 ft; the wrapper decides" }
figure "takeoff.own_cap_run_per_bundle" { 25, "gives no figure", unit = "ft", sense = "equals",
  practice = "public how-to pages: 20 to 33 ft; the wrapper decides" }

-- Deck nails to the pound, where a public chart has them.
figure "takeoff.deck_nails_to_the_pound.kinds" { { "common_6d", "common_8d", "common_10d" },
  "gives no figure", sense = "among", practice = "a working list: the kinds counted below" }
figure "takeoff.deck_nails_to_the_pound.common_6d" { 170, "gives no figure", unit = "nails",
  sense = "equals", practice = "public chart of common nails; charts run from 166 to 181" }
figure "takeoff.deck_nails_to_the_pound.common_8d" { 100, "gives no figure", unit = "nails",
  sense = "equals", practice = "public chart of common nails; charts run from 94 to 106" }
figure "takeoff.deck_nails_to_the_pound.common_10d" { 65, "gives no figure", unit = "nails",
  sense = "equals", practice = "public chart of common nails; charts run from 65 to 74" }

-- Small goods, and lumber.
figure "takeoff.flashing_piece" { 10, "gives no figure", unit = "ft", sense = "equals",
  practice = "recalled" }
figure "takeoff.ridge_vent_piece" { 4, "gives no figure", unit = "ft", sense = "equals",
  practice = "recalled: rigid ones; rolls hold 20 ft and more" }
figure "takeoff.caps_to_the_box" { 2000, "gives no figure", unit = "nails", sense = "equals",
  practice = "recalled: boxes and pails of 1,000 to 3,000" }
figure "takeoff.tape_roll" { 75, "gives no figure", unit = "ft", sense = "equals",
  practice = "recalled: rolls of 50 to 100 ft" }
figure "takeoff.lumber_lengths" { { "8", "10", "12", "14", "16", "18", "20" }, "gives no figure",
  sense = "among", practice = "common practice: lumber comes in even feet" }
figure "takeoff.strip_piece" { 8, "gives no figure", unit = "ft", sense = "equals",
  practice = "common practice: ripped from a panel along its length" }
