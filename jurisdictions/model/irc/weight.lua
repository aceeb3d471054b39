-- The weight of coverings, and roof live load by slope (Table R301.6).

-- What was read: code texts of states that took the editions over, not the printed books. In
-- an edition that was not read such a figure counts as parallel.
local TEXTS = "state code texts on the editions of 2015 to 2024"
local BOOKS = { "IRC 2015", "IRC 2018", "IRC 2021", "IRC 2024" }

-- What coverings and decks weigh, and what a roof was framed for. Planning
-- figures: none of them is a demand, so they only ever warn.
figure "weight.design_dead_load" { 10, "R908.2 gives no figure", unit = "psf", sense = "at_most",
  practice = "common framing assumption for shingles on panels, read on weak pages",
  disputed = "10, 15 or 20 psf by source, some of them with the ceiling", rival = 20 }

figure "weight.panel_inch" { 3.2, "R908.2 gives no figure", unit = "psf", sense = "equals",
  practice = "recalled from a load standard's table: 0.4 psf for each 1/8 in" }
figure "weight.board_inch" { 3, "R908.2 gives no figure", unit = "psf", sense = "equals",
  practice = "old builder's handbook: pine, spruce or hemlock; yellow pine 4" }

figure "weight.underlayment_ply" { 80, "R908.2 gives no figure", unit = "lb_per_square",
  sense = "equals",
  practice = "recalled: heaviest self-adhered rolls; No. 15 felt is 15 lb, No. 30 is 30" }

-- For 200 sq ft of roof and less on a member; 16 and 12 under 4:12 for more.
figure "weight.roof_live_load" { unit = "psf", sense = "at_most", cite = "Table R301.6",
  seen = TEXTS, read_in = BOOKS,
  rows = {
    low = { 20 },
    mid = { 16 },
    steep = { 12 },
  },
}

figure "weight.live_load_mid_from" { 4, "Table R301.6", unit = "rise_in_12", sense = "from",
  seen = TEXTS, read_in = BOOKS }
figure "weight.live_load_steep_from" { 12, "Table R301.6", unit = "rise_in_12", sense = "from",
  seen = TEXTS, read_in = BOOKS }
