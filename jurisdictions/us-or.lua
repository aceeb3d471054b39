-- Oregon: the Residential Specialty Code of 2023, on IRC 2021.
--
-- Its text was read (chapters 1, 3, 8 and 9). Until 1 April 2024 the book before it
-- could still be used; which that was is not carried. A book of 2026 was to begin on
-- 1 October 2026, with six months in which this one may still be used; that it was
-- adopted was not read. Not carried: R327 on mapped lots, which is for new houses and
-- whose law was changed later.

local TEXT = "state code text on this edition"

local function read(value, cite, more)
  local figure = {}
  for name, said in pairs(more or {}) do figure[name] = said end
  figure[1], figure.cite, figure.status, figure.source = value, cite, "seen", TEXT
  return figure
end

local function new(value, unit, sense, cite)
  return read(value, cite, { unit = unit, sense = sense })
end

local NO_DESIGN = "the section on a design for wind is deleted"

local function edition(from, to, unsure)
  jurisdiction "us-or" {
    title = "Oregon",
    follows = "model/irc-2021",
    unsure = unsure,
    from = from,
    to = to,
    code = "ORSC 2023",
    edition = "Oregon Residential Specialty Code 2023 (on IRC 2021)",
    as_seen = "2026-11-28",
    rules = "us-or.rules.lua",
    figures = {
      ["energy.bare_rafters_count"] = { true, cite = "N1111.1.1", status = "parallel",
        source = "the model code's line; the state has an energy code of its own, not read for it" },
      -- A reroof is free by its weight, but for wildfire zones, townhouses and solar
      -- roofs. The live load is that of small rafters, the largest in the table.
      ["permit.every"] = read(false, "R105.2"),
      ["permit.load_share_counts"] = read(true, "R105.2"),
      ["permit.load_share_limit"] = read(30, "R105.2"),
      ["weight.roof_live_load.low"] = read(nil, "Table R301.6"),
      ["weight.roof_live_load.mid"] = read(nil, "Table R301.6"),
      ["weight.roof_live_load.steep"] = read(nil, "Table R301.6"),
      ["weight.live_load_mid_from"] = read(nil, "Table R301.6"),
      ["weight.live_load_steep_from"] = read(nil, "Table R301.6"),
      ["permit.house_kinds_counted"] = read({ "townhouse" }, "R105.2 exception"),
      ["permit.wildfire_zone_counts"] = read(true, "R105.2 exception"),
      ["permit.solar_roof_counts"] = read(true, "R105.2 exception"),
      ["permit.life_days"] = read(nil, "R105.5"),

      -- Two coverings there already: strip.
      ["layers.most"] = read(nil, "R908.3.1.1 item 3"),
      ["fire.forest_counts"] = { true, sense = "equals", stricter = true, book = "ORS",
        cite = "215.730",
        status = "seen", source = "an older copy of the state's chapter 9 quoting the statute" },
      ["fire.pv_class_required"] = read(false, "R902"),
      ["fire.deemed_A_any_deck"] = read({ "slate", "clay_tile", "concrete_tile", "metal_panel",
        "metal_shingle" }, "R902.1"),

      -- The ice barrier by January's mean or by history; no table.
      ["ice_barrier.by_table"] = read(false, "R905.1.2"),
      ["ice_barrier.by_january_mean"] = read(true, "R905.1.2"),
      ["ice_barrier.january_mean_most"] = new(25, "F", "at_most", "R905.1.2"),
      ["ice_barrier.by_history"] = read(true, "R905.1.2"),

      -- One column of underlayment, whatever the wind.
      ["underlayment.wind_counts"] = read(false, "Tables R905.1.1(1) to (3)"),

      ["flashing.sidewall_methods"] = read({ "step" }, "R905.2.8.3"),
      ["flashing.kickout_required"] = read(nil, "R905.2.8.3"),
      -- The table of wind classes ends at 142 mph.
      ["shingle.D7158_vult_most.G"] = read(142, "Table R905.2.4.1"),
      ["shingle.D7158_vult_most.H"] = read(142, "Table R905.2.4.1"),
      ["shingle.D3161_vult_most.F"] = read(142, "Table R905.2.4.1"),

      -- The zones are struck out of the list: none, or, as it reads, any. Vents are looked
      -- at where sheathing is replaced.
      ["ventilation.retarder_zones"] = read({}, "R806.2 exception",
        { disputed = "the numbers of the zones are struck out: it may mean all of them",
          rival = { "4C", "5B", "5C", "6B" } }),
      ["ventilation.with_new_deck_only"] = read(true, "R908.1.1"),

      ["deck.nail_close_mph.B"] = read(nil, "Table R602.3(1) note f"),
      ["deck.nail_close_mph.C"] = read(nil, "Table R602.3(1) note f"),
      ["alarms.exterior_exempt"] = read(nil, "R314.2.2, R315.2.2"),
    },
    drop = { ["wind.prescriptive_limit"] = NO_DESIGN },
  }
end

edition("2023-10-01", "2024-04-01", "the book before could be used until 1 April 2024")
edition("2024-04-01", "2026-10-01")
edition("2026-10-01", nil, "a book of 2026 on IRC 2024 was to begin on 1 October 2026, with six "
  .. "months in which this one may be used: that it was adopted was not read")
