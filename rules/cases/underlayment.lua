-- Cases of rules/underlayment.lua.
--
-- IRC 2018 goes by speed (140 mph), IRC 2021 by a map; both are tried. The
-- county of Saltmarsh asks for a sealed deck.

local OVERLAY = { ["scope.method"] = "overlay", ["existing.layers_removed"] = 0,
  ["existing.coverings[1].removed"] = false }
local LOW, FELT = "roof.slopes[3].pitch", "underlayments[1]."

-- The base job with its one underlayment changed, and with other facts.
local function felt(changes, others)
  local with = {}
  for name, value in pairs(changes) do with[FELT .. name] = value end
  for place, value in pairs(others or {}) do with[place] = value end
  return with
end

local STORMY = { ["site.wind_vult_mph"] = 140 }

cases "underlayment.plies" {
  under = "model/irc-2021",
  { "one ply", expect = "pass", where = "main front", required = 1, found = 1 },
  { "none", with = felt { plies = 0 }, expect = "fail", where = "main front", found = 0 },
  { "plies not known", without = { "underlayments[1].plies" }, expect = "open",
    where = "main front" },
  { "underlayment not named", without = { "roof.slopes[1].underlayment", "scope.method" },
    expect = "open", where = "main front" },
  { "the one underlayment of a tear-off", without = { "roof.slopes[1].underlayment" },
    expect = "pass", where = "main front", found = 1 },
  { "an overlay strips nothing", with = OVERLAY, expect = "not_applicable",
    where = "main front", says = "strips nothing" },
  { "a low slope is another rule's", with = { [LOW] = "3:12" }, expect = "not_applicable",
    where = "porch" },
  { "another covering", with = { ["covering.kind"] = "slate" }, expect = "not_applicable",
    where = "main front" },
}

-- IRC Table R905.1.1(1).
cases "underlayment.kind" {
  under = "model/irc-2018",
  { "No. 15 felt below the trigger", with = { ["site.wind_vult_mph"] = 139 }, expect = "pass",
    where = "main front" },
  { "No. 15 felt at the trigger", with = STORMY, expect = "fail", where = "main front" },
  { "No. 30 felt at the trigger", with = felt({ kind = "D226_II" }, STORMY), expect = "pass",
    where = "main front" },
  { "D4869 Type II at the trigger", with = felt({ kind = "D4869_II" }, STORMY),
    expect = "fail", where = "main front" },
  { "D4869 Type III at the trigger", with = felt({ kind = "D4869_III" }, STORMY),
    expect = "pass", where = "main front" },
  { "No. 30 felt where it is calm", with = felt { kind = "D226_II" }, expect = "warn",
    where = "main front", says = "heavier" },
  { "wind not known", without = { "site.wind_vult_mph" }, expect = "open",
    where = "main front" },
  { "wind not known, but the kind does anywhere", with = felt { kind = "D6757" },
    without = { "site.wind_vult_mph" }, expect = "pass", where = "main front" },
  { "a self-adhered sheet, by an exception", with = felt { kind = "D1970" },
    expect = "pass", where = "main front" },
  { "felt without a label", with = felt { kind = "unlabeled_felt" }, expect = "fail",
    where = "main front" },
  { "synthetic with an evaluation report",
    with = felt { kind = "other_synthetic", evaluation_report = true }, expect = "pass",
    where = "main front" },
  { "synthetic without one", with = felt { kind = "other_synthetic" }, expect = "fail",
    where = "main front" },
  { "synthetic, report not known", with = felt { kind = "D8257" },
    without = { "underlayments[1].evaluation_report" }, expect = "open", where = "main front" },
  { "kind not known", without = { "underlayments[1].kind" }, expect = "open",
    where = "main front" },
  { "an overlay", with = OVERLAY, expect = "not_applicable", where = "main front" },
}

cases "underlayment.kind" {
  under = "model/irc-2021",
  { "No. 15 felt where no wind design is required", expect = "pass", where = "main front" },
  { "the same at a speed that 2018 would mind", with = { ["site.wind_vult_mph"] = 150 },
    expect = "pass", where = "main front" },
  { "No. 15 felt where wind design is required",
    with = { ["site.wind_design_required"] = true }, expect = "fail", where = "main front" },
  { "the map not looked at", without = { "site.wind_design_required" }, expect = "open",
    where = "main front" },
}

-- Every kind of the tables, in calm and in wind: { kind, 2018, 2021 }.
local CALM = {
  { "D226_I", "pass", "pass" }, { "D226_II", "warn", "pass" }, { "D4869_I", "pass", "pass" },
  { "D4869_II", "pass", "pass" }, { "D4869_III", "pass", "pass" },
  { "D4869_IV", "pass", "pass" }, { "D6757", "pass", "pass" },
}
local WINDY = {
  { "D226_I", "fail", "fail" }, { "D226_II", "pass", "pass" }, { "D4869_I", "fail", "fail" },
  { "D4869_II", "fail", "fail" }, { "D4869_III", "pass", "pass" },
  { "D4869_IV", "pass", "pass" }, { "D6757", "pass", "fail" },
}

local function each_kind(list, said, site)
  for _, row in ipairs(list) do
    local title, with = row[1] .. " where it is " .. said, felt({ kind = row[1] }, site)
    cases "underlayment.kind" {
      under = "model/irc-2018",
      { title, with = with, expect = row[2], where = "main front" },
    }
    cases "underlayment.kind" {
      under = "model/irc-2021",
      { title, with = with, expect = row[3], where = "main front" },
    }
  end
end

each_kind(CALM, "calm", { ["site.wind_vult_mph"] = 115, ["site.wind_design_required"] = false })
each_kind(WINDY, "windy", { ["site.wind_vult_mph"] = 140, ["site.wind_design_required"] = true })

-- IRC Table R905.1.1(2).
cases "underlayment.head_lap" {
  under = "model/irc-2018",
  { "2 in", expect = "pass", where = "main front", required = 2, found = 2 },
  { "just short of 2 in", with = felt { head_lap_in = 1.9 }, expect = "fail",
    where = "main front", required = 2, found = 1.9 },
  { "2 in at the wind trigger", with = STORMY, expect = "fail", where = "main front",
    required = 4, found = 2 },
  { "4 in at the wind trigger", with = felt({ head_lap_in = 4 }, STORMY), expect = "pass",
    where = "main front", required = 4, found = 4 },
  { "19 in on a low slope", with = felt({ plies = 2, head_lap_in = 19 }, { [LOW] = "3:12" }),
    expect = "pass", where = "porch", required = 19, found = 19 },
  { "18 in on a low slope", with = felt({ plies = 2, head_lap_in = 18 }, { [LOW] = "3:12" }),
    expect = "fail", where = "porch", required = 19, found = 18 },
  { "lap not known", without = { "underlayments[1].head_lap_in" }, expect = "open",
    where = "main front" },
  { "planned laps do not do at dry-in", stage = "dry-in", expect = "open",
    where = "main front" },
  { "measured laps", stage = "dry-in", with = felt { measured_head_lap_in = { 2.5, 2, 3 } },
    expect = "pass", where = "main front", found = 2 },
  { "one measured short", stage = "dry-in",
    with = felt { measured_head_lap_in = { 2.5, 1.5, 3 } }, expect = "fail",
    where = "main front", found = 1.5 },
  { "a self-adhered sheet", with = felt { kind = "D1970" }, expect = "not_applicable",
    where = "main front" },
}

cases "underlayment.end_lap" {
  under = "model/irc-2021",
  { "4 in", expect = "pass", where = "main front", required = 4, found = 4 },
  { "3.9 in", with = felt { end_lap_in = 3.9 }, expect = "fail", where = "main front",
    required = 4, found = 3.9 },
  { "lap not known", without = { "underlayments[1].end_lap_in" }, expect = "open",
    where = "main front" },
  { "measured", stage = "dry-in", with = felt { measured_end_lap_in = { 4, 6 } },
    expect = "pass", where = "main front", found = 4 },
  { "one measured short", stage = "dry-in", with = felt { measured_end_lap_in = { 3, 6 } },
    expect = "fail", where = "main front", found = 3 },
  { "not measured by dry-in", stage = "dry-in", expect = "open", where = "main front" },
}

cases "underlayment.end_lap_offset" {
  under = "model/irc-2021",
  { "6 ft", expect = "pass", where = "main front", required = 6, found = 6 },
  { "5.9 ft", with = felt { end_lap_offset_ft = 5.9 }, expect = "fail", where = "main front",
    required = 6, found = 5.9 },
  { "not known", without = { "underlayments[1].end_lap_offset_ft" }, expect = "open",
    where = "main front" },
  { "a self-adhered sheet", with = felt { kind = "D1970" }, expect = "not_applicable",
    where = "main front" },
}

cases "underlayment.starter" {
  under = "model/irc-2021",
  { "19 in, exactly", with = felt({ starter_width_in = 19 }, { [LOW] = "3:12" }),
    expect = "pass", where = "porch", required = 19, found = 19 },
  { "18 in", with = felt({ starter_width_in = 18 }, { [LOW] = "3:12" }), expect = "fail",
    where = "porch", required = 19, found = 18 },
  { "at 4:12 there is none", with = felt { starter_width_in = 0 }, expect = "not_applicable",
    where = "porch" },
  { "not known", with = { [LOW] = "3:12" }, without = { "underlayments[1].starter_width_in" },
    expect = "open", where = "porch" },
}

-- IRC Table R905.1.1(3), read in the building code's table of 2018.
cases "underlayment.fasteners" {
  under = "model/irc-2018",
  { "cap nails at the trigger", with = STORMY, expect = "pass", where = "main front" },
  { "cap staples at the trigger", with = felt({ fastener = "cap_staple" }, STORMY),
    expect = "pass", where = "main front" },
  { "plain staples at the trigger", with = felt({ fastener = "staple" }, STORMY),
    expect = "fail", where = "main front" },
  { "plain staples below it", with = felt({ fastener = "staple" },
    { ["site.wind_vult_mph"] = 139 }), expect = "not_applicable", where = "main front" },
  { "fastener not known", with = STORMY, without = { "underlayments[1].fastener" },
    expect = "open", where = "main front" },
  { "wind not known", without = { "site.wind_vult_mph" }, expect = "open",
    where = "main front" },
  { "a self-adhered sheet", with = felt({ kind = "D1970" }, STORMY),
    expect = "not_applicable", where = "main front" },
}

cases "underlayment.cap" {
  under = "model/irc-2018",
  { "1 in", with = STORMY, expect = "pass", where = "main front", required = 1, found = 1 },
  { "7/8 in", with = felt({ cap_in = 0.875 }, STORMY), expect = "fail", where = "main front",
    required = 1, found = 0.875 },
  { "not windy", expect = "not_applicable", where = "main front" },
  { "not known", with = STORMY, without = { "underlayments[1].cap_in" }, expect = "open",
    where = "main front" },
}

-- IBC 2018 Table 1507.1.1(3): 32 gage, 0.010 power-driven, 0.035 plastic edge; shank
-- 0.083 ringed, 0.091 smooth, staple 21 gage; through the deck or 3/4 in into it.
local function capped(changes) return felt(changes, STORMY) end

cases "underlayment.cap_thickness" {
  under = "model/irc-2018",
  { "metal, exactly", with = capped { cap_made_of = "metal", cap_thickness_in = 0.0134 },
    expect = "pass", where = "main front", required = 13.4 },
  { "metal, thinner", with = capped { cap_made_of = "metal", cap_thickness_in = 0.013399 },
    expect = "fail", where = "main front" },
  { "metal for a tool, exactly", where = "main front", expect = "pass", required = 10,
    with = capped { cap_made_of = "power_driven_metal", cap_thickness_in = 0.01 } },
  { "metal for a tool, thinner", where = "main front", expect = "fail",
    with = capped { cap_made_of = "power_driven_metal", cap_thickness_in = 0.009999 } },
  { "plastic, exactly", with = capped { cap_made_of = "plastic", cap_thickness_in = 0.035 },
    expect = "pass", where = "main front", required = 35 },
  { "plastic, thinner", with = capped { cap_made_of = "plastic", cap_thickness_in = 0.034999 },
    expect = "fail", where = "main front" },
  { "not windy", expect = "not_applicable", where = "main front" },
  { "not known", with = capped { cap_made_of = "metal" }, expect = "open", where = "main front" },
}

cases "underlayment.shank" {
  under = "model/irc-2018",
  { "ringed, exactly", with = capped { fastener_ringed = true, fastener_shank_in = 0.083 },
    expect = "pass", where = "main front", required = 0.083 },
  { "ringed, thinner", with = capped { fastener_ringed = true, fastener_shank_in = 0.082 },
    expect = "fail", where = "main front" },
  { "smooth, exactly", with = capped { fastener_ringed = false, fastener_shank_in = 0.091 },
    expect = "pass", where = "main front", required = 0.091 },
  { "smooth, thinner", with = capped { fastener_ringed = false, fastener_shank_in = 0.09 },
    expect = "fail", where = "main front" },
  { "staple, exactly", with = capped { fastener = "cap_staple", fastener_shank_in = 0.032 },
    expect = "pass", where = "main front", required = 0.032 },
  { "staple, thinner", with = capped { fastener = "cap_staple", fastener_shank_in = 0.031 },
    expect = "fail", where = "main front" },
  { "not windy", expect = "not_applicable", where = "main front" },
  { "ringed or not is not known", with = capped { fastener_shank_in = 0.12 }, expect = "open",
    where = "main front" },
}

-- 12 gage stood in the paragraph of 2012, whatever the shank.
local function capped_2012(changes) return felt(changes, { ["site.wind_vult_mph"] = 160 }) end
cases "underlayment.shank" {
  under = "model/irc-2012",
  { "ringed, 12 gage", with = capped_2012 { fastener_ringed = true, fastener_shank_in = 0.105 },
    expect = "warn", where = "main front", required = 0.105 },
  { "ringed, thinner", with = capped_2012 { fastener_ringed = true, fastener_shank_in = 0.104 },
    expect = "fail", where = "main front" },
  { "smooth, 12 gage", with = capped_2012 { fastener_ringed = false, fastener_shank_in = 0.105 },
    expect = "warn", where = "main front", required = 0.105 },
  { "smooth, thinner", with = capped_2012 { fastener_ringed = false, fastener_shank_in = 0.104 },
    expect = "fail", where = "main front" },
}

cases "underlayment.bite" {
  under = "model/irc-2018",
  { "through a thin deck", with = capped { fastener_through_deck = true }, expect = "pass",
    where = "main front" },
  { "3/4 in into a thick one, exactly", expect = "pass", where = "main front", required = 0.75,
    with = capped { fastener_through_deck = false, fastener_into_deck_in = 0.75 } },
  { "less", expect = "fail", where = "main front",
    with = capped { fastener_through_deck = false, fastener_into_deck_in = 0.749 } },
  { "not windy", expect = "not_applicable", where = "main front" },
  { "not known", with = capped { fastener_through_deck = false }, expect = "open",
    where = "main front" },
}

cases "underlayment.lap_spacing" {
  under = "model/irc-2018",
  { "6 in", with = STORMY, expect = "pass", where = "main front", required = 6, found = 6 },
  { "6.5 in", with = felt({ lap_spacing_in = 6.5 }, STORMY), expect = "fail",
    where = "main front", required = 6, found = 6.5 },
  { "not windy", expect = "not_applicable", where = "main front" },
  { "not known", with = STORMY, without = { "underlayments[1].lap_spacing_in" },
    expect = "open", where = "main front" },
}

cases "underlayment.lap_spacing" {
  under = "model/irc-2021",
  { "6.5 in where wind design is required",
    with = felt({ lap_spacing_in = 6.5 }, { ["site.wind_design_required"] = true }),
    expect = "fail", where = "main front" },
}

cases "underlayment.field_spacing" {
  under = "model/irc-2018",
  { "12 in", with = STORMY, expect = "pass", where = "main front", required = 12, found = 12 },
  { "12.5 in", with = felt({ field_spacing_in = 12.5 }, STORMY), expect = "fail",
    where = "main front", required = 12, found = 12.5 },
  { "not windy", expect = "not_applicable", where = "main front" },
  { "not known", with = STORMY, without = { "underlayments[1].field_spacing_in" },
    expect = "open", where = "main front" },
}

cases "underlayment.sealed_deck" {
  under = "example/saltmarsh",
  { "a self-adhered sheet all over", with = felt { kind = "D1970", fastener = "adhered" },
    expect = "pass", where = "main front" },
  { "taped joints and one ply, at the county's width",
    with = felt { deck_joints_taped = true, tape_width_in = 3.75 }, expect = "pass",
    where = "main front" },
  { "tape a little narrow", with = felt { deck_joints_taped = true, tape_width_in = 3.5 },
    expect = "fail", where = "main front", required = 3.75, found = 3.5 },
  { "taped joints under nothing",
    with = felt { deck_joints_taped = true, tape_width_in = 4, plies = 0 }, expect = "fail",
    where = "main front" },
  { "two plies of No. 30 felt", with = felt { kind = "D226_II", plies = 2, head_lap_in = 19 },
    expect = "pass", where = "main front" },
  { "two plies lapped short", with = felt { kind = "D226_II", plies = 2, head_lap_in = 18 },
    expect = "fail", where = "main front", required = 19, found = 18 },
  { "two plies of No. 15 felt", with = felt { plies = 2, head_lap_in = 19 }, expect = "fail",
    where = "main front" },
  { "two plies lapped short over taped joints",
    with = felt { kind = "D226_II", plies = 2, head_lap_in = 18, deck_joints_taped = true,
      tape_width_in = 4 }, expect = "pass", where = "main front" },
  { "two plies, measured", stage = "dry-in",
    with = felt { kind = "D226_II", plies = 2, measured_head_lap_in = { 19, 20 } },
    expect = "pass", where = "main front" },
  { "two plies, measured short", stage = "dry-in",
    with = felt { kind = "D226_II", plies = 2, head_lap_in = 19,
      measured_head_lap_in = { 18, 20 } },
    expect = "fail", where = "main front", found = 18 },
  { "one ply over bare joints", expect = "fail", where = "main front", says = "not taped" },
  { "tape not known", without = { "underlayments[1].deck_joints_taped" }, expect = "open",
    where = "main front" },
  { "tape width not known", with = felt { deck_joints_taped = true },
    without = { "underlayments[1].tape_width_in" }, expect = "open", where = "main front" },
  { "an overlay", with = OVERLAY, expect = "not_applicable", where = "main front" },
}

cases "underlayment.sealed_deck" {
  under = "model/irc-2021",
  { "the model code asks for none", expect = "not_applicable", where = "main front" },
}

for _, kind in ipairs { "D226_I", "D226_II", "D4869_I", "D4869_II", "D4869_III", "D4869_IV",
  "D6757" } do
  local two = "fail"
  if kind == "D226_II" or kind == "D4869_III" or kind == "D4869_IV" then two = "pass" end
  cases "underlayment.sealed_deck" {
    under = "example/saltmarsh",
    { kind .. " over taped joints",
      with = felt { kind = kind, deck_joints_taped = true, tape_width_in = 4 },
      expect = "pass", where = "main front" },
    { "two plies of " .. kind, with = felt { kind = kind, plies = 2, head_lap_in = 19 },
      expect = two, where = "main front" },
  }
end

-- R908.3 exception, 2015 on; old adhered underlayment only in 2024.
local LEFT = { ["existing.adhered_left"] = "ice_barrier",
  ["existing.adhered_left_covered"] = true }

cases "underlayment.old_left" {
  under = "model/irc-2018", with = LEFT,
  { "an old ice barrier covered again", expect = "pass" },
  { "not covered again", with = { ["existing.adhered_left_covered"] = false },
    expect = "fail" },
  { "an old sheet over the whole deck", with =
    { ["existing.adhered_left"] = "underlayment" }, expect = "open", says = "says nothing" },
  { "whether it is covered again not known", without = { "existing.adhered_left_covered" },
    expect = "open" },
  { "none left", with = { ["existing.adhered_left"] = "none" }, expect = "not_applicable" },
}

cases "underlayment.old_left" {
  under = "model/irc-2012", with = LEFT,
  { "before 2015 there was no rule", expect = "open", says = "says nothing" },
}

cases "underlayment.old_left" {
  under = "model/irc-2024", with = LEFT,
  { "an old sheet over the whole deck", with =
    { ["existing.adhered_left"] = "underlayment" }, expect = "pass" },
}

-- A step to either side of the older trigger, on the older scale: 154 mph is
-- 119.3 there, 155 is 120.1.
cases "underlayment.kind" {
  under = "model/irc-2012",
  { "No. 15 felt below the trigger", with = { ["site.wind_vult_mph"] = 154 }, expect = "warn",
    where = "main front" },
  { "at the trigger", with = { ["site.wind_vult_mph"] = 155 }, expect = "fail",
    where = "main front" },
}

-- Every kind under the other editions, in calm and in wind: { kind, 2012, 2015, 2024 }.
local function each_edition(list, said, site)
  for _, row in ipairs(list) do
    for i, edition in ipairs { "model/irc-2012", "model/irc-2015", "model/irc-2024" } do
      cases "underlayment.kind" {
        under = edition,
        { row[1] .. " where it is " .. said .. ", " .. edition, where = "main front",
          with = felt({ kind = row[1], evaluation_report = false }, site), expect = row[i + 1] },
      }
    end
  end
end
each_edition({
  { "D226_I", "warn", "pass", "pass" }, { "D226_II", "warn", "warn", "pass" },
  { "D4869_I", "warn", "pass", "pass" }, { "D4869_II", "fail", "pass", "pass" },
  { "D4869_III", "fail", "pass", "pass" }, { "D4869_IV", "warn", "pass", "pass" },
  { "D6757", "warn", "pass", "pass" }, { "D8257", "fail", "fail", "pass" },
}, "calm", { ["site.wind_vult_mph"] = 115, ["site.wind_design_required"] = false })
each_edition({
  { "D226_I", "fail", "fail", "fail" }, { "D226_II", "warn", "pass", "pass" },
  { "D4869_I", "fail", "fail", "fail" }, { "D4869_II", "fail", "fail", "fail" },
  { "D4869_III", "fail", "fail", "pass" }, { "D4869_IV", "warn", "pass", "pass" },
  { "D6757", "warn", "pass", "fail" }, { "D8257", "fail", "fail", "pass" },
}, "windy", { ["site.wind_vult_mph"] = 160, ["site.wind_design_required"] = true })

cases "underlayment.head_lap" {
  under = "us-fl", date = "2024-06-01",
  { "4 in", with = felt { head_lap_in = 4 }, expect = "pass", where = "main front" },
  { "a thousandth short", with = felt { head_lap_in = 3.999 }, expect = "fail",
    where = "main front" },
}

-- R905.2.7.2 of 2012, recalled: over 110 mph on the older scale, which prints
-- for Vult 143 (111), and not yet for 142 (110, exactly).
cases "underlayment.lap_spacing_mid" {
  under = "model/irc-2012", with = { ["underlayments[1].lap_spacing_in"] = 36 },
  { "110 on the older scale, exactly", with = { ["site.wind_vult_mph"] = 142 },
    expect = "not_applicable", where = "main front" },
  { "above it, 36 in exactly", with = { ["site.wind_vult_mph"] = 143 }, expect = "warn",
    where = "main front", required = 36 },
  { "above it, 40 in", with = { ["site.wind_vult_mph"] = 143,
    ["underlayments[1].lap_spacing_in"] = 40 }, expect = "fail", where = "main front" },
  { "from 120 the closer rule holds", with = { ["site.wind_vult_mph"] = 155 },
    expect = "not_applicable", where = "main front" },
  { "not known", with = { ["site.wind_vult_mph"] = 143 },
    without = { "underlayments[1].lap_spacing_in" }, expect = "open", where = "main front" },
}

cases "underlayment.lap_spacing_mid" {
  under = "model/irc-2015",
  { "gone in 2015", with = { ["site.wind_vult_mph"] = 135 }, expect = "not_applicable",
    where = "main front" },
}

-- One step past a figure, the smallest that prints: what a slip of it would let by.
cases "underlayment.cap" {
  under = "model/irc-2018",
  { "0.999 in", with = felt({ cap_in = 0.999 }, STORMY), expect = "fail",
    where = "main front", required = 1 },
}
cases "underlayment.end_lap" {
  under = "model/irc-2021",
  { "3.999 in", with = felt { end_lap_in = 3.999 }, expect = "fail", where = "main front",
    required = 4 },
}
cases "underlayment.end_lap_offset" {
  under = "model/irc-2021",
  { "5.99 ft", with = felt { end_lap_offset_ft = 5.99 }, expect = "fail",
    where = "main front", required = 6 },
}
cases "underlayment.field_spacing" {
  under = "model/irc-2018",
  { "12.001 in", with = felt({ field_spacing_in = 12.001 }, STORMY), expect = "fail",
    where = "main front", required = 12 },
}
cases "underlayment.lap_spacing" {
  under = "model/irc-2018",
  { "6.001 in", with = felt({ lap_spacing_in = 6.001 }, STORMY), expect = "fail",
    where = "main front", required = 6 },
}
cases "underlayment.lap_spacing_mid" {
  under = "model/irc-2012",
  { "36.001 in", with = felt({ lap_spacing_in = 36.001 }, { ["site.wind_vult_mph"] = 143 }),
    expect = "fail", where = "main front", required = 36 },
}
cases "underlayment.head_lap" {
  under = "model/irc-2018",
  { "1.999 in", with = felt { head_lap_in = 1.999 }, expect = "fail", where = "main front",
    required = 2 },
  { "3.999 in at the wind trigger", with = felt({ head_lap_in = 3.999 }, STORMY),
    expect = "fail", where = "main front", required = 4 },
  { "18.999 in on a low slope", with = felt({ plies = 2, head_lap_in = 18.999 },
    { [LOW] = "3:12" }), expect = "fail", where = "porch", required = 19 },
}
cases "underlayment.starter" {
  under = "model/irc-2021",
  { "18.999 in", with = felt({ starter_width_in = 18.999 }, { [LOW] = "3:12" }),
    expect = "fail", where = "porch", required = 19 },
}

-- What is on no list, whatever is shown for it.
for _, edition in ipairs { "model/irc-2012", "model/irc-2018", "model/irc-2021",
  "model/irc-2024" } do
  cases "underlayment.kind" {
    under = edition,
    { "felt without a label, and a report, " .. edition, expect = "fail", where = "main front",
      with = felt { kind = "unlabeled_felt", evaluation_report = true } },
  }
end
cases "underlayment.sealed_deck" {
  under = "example/saltmarsh",
  { "a synthetic over taped joints",
    with = felt { kind = "D8257", deck_joints_taped = true, tape_width_in = 4 },
    expect = "fail", where = "main front" },
}
cases "underlayment.old_left" {
  under = "model/irc-2024", with = LEFT,
  { "an old ice barrier, covered again", expect = "pass" },
}

-- Coverings whose own sections are not carried.
cases "underlayment.kind" {
  under = "model/irc-2021",
  { "wood shingles", with = { ["covering.kind"] = "wood_shingle" }, expect = "open",
    where = "main front", says = "not judged here" },
  { "metal panels", with = { ["covering.kind"] = "metal_panel" }, expect = "open",
    where = "main front" },
  { "a coating has none", with = { ["covering.kind"] = "coating" }, expect = "not_applicable",
    where = "main front" },
  { "an overlay of metal panels lays none", with = { ["covering.kind"] = "metal_panel",
    ["scope.method"] = "overlay", ["existing.layers_removed"] = 0,
    ["existing.coverings[1].removed"] = false }, expect = "not_applicable",
    where = "main front" },
}

-- Table R905.1.1(3): ring or deformed shanks alone since 2021.
for _, row in ipairs { { "2018", "pass" }, { "2021", "fail" }, { "2024", "fail" } } do
  local windy = { ["site.wind_vult_mph"] = 150, ["site.wind_design_required"] = true,
    ["underlayments[1].fastener_shank_in"] = 0.12, ["underlayments[1].fastener_ringed"] = false }
  cases "underlayment.shank" {
    under = "model/irc-" .. row[1],
    { "a stout smooth shank in " .. row[1], with = windy, expect = row[2],
      where = "main front" },
  }
end

-- Strong wind by edition (Tables R905.1.1(1) to (3) and R905.1.1 exceptions, state code
-- texts on each edition): one ply lapped 4 in until 2018, two plies from 2021 on at every
-- slope; taped joints, or one self-adhered sheet, in their place.
local function at(plane, block)
  for _, case in ipairs(block) do case.where = case.where or plane end
  return block
end

local MAPPED = { ["site.wind_vult_mph"] = 145, ["site.wind_design_required"] = true }

local function stormy(changes)
  local with = { kind = "D226_II", head_lap_in = 4, roll_width_in = 36 }
  for name, value in pairs(changes or {}) do with[name] = value end
  return felt(with, MAPPED)
end

local function taped(changes)
  local with = { deck_joints_taped = true, tape_width_in = 4 }
  for name, value in pairs(changes or {}) do with[name] = value end
  return stormy(with)
end

for year, plies in pairs { [2015] = 1, [2018] = 1, [2021] = 2, [2024] = 2 } do
  cases "underlayment.plies"(at("main front", {
    under = "model/irc-" .. year,
    { "No. 30 felt in one ply, " .. year, with = stormy(), expect = plies == 1 and "pass" or "fail",
      required = plies, found = 1 },
    { "in two, " .. year, with = stormy { plies = 2 }, expect = "pass", required = plies },
    { "one ply over taped joints, " .. year, with = taped(), expect = "pass", required = 1 },
    { "over strips a hair too narrow, " .. year, with = taped { tape_width_in = 3.999 },
      expect = plies == 1 and "pass" or "fail", required = plies },
    { "one self-adhered sheet, " .. year, with = stormy { kind = "D1970" }, expect = "pass",
      required = 1 },
    { "one ply where it is calm, " .. year, expect = "pass", required = 1,
      with = { ["site.wind_vult_mph"] = 139 } },
  }))
end
cases "underlayment.plies"(at("main front", {
  under = "model/irc-2021",
  { "the map not looked at", without = { "site.wind_design_required" }, expect = "open" },
  { "taped or not is not known", with = stormy(), without = { FELT .. "deck_joints_taped" },
    expect = "open" },
  { "how wide the tape is, is not known", with = taped(), without = { FELT .. "tape_width_in" },
    expect = "open" },
}))
cases "underlayment.plies"(at("main front", {
  under = "model/irc-2012",
  { "one ply at 160 mph, by a left-over text", with = felt({ kind = "D226_II" },
    { ["site.wind_vult_mph"] = 160 }), expect = "warn", required = 1 },
}))

cases "underlayment.head_lap"(at("main front", {
  under = "model/irc-2021",
  { "two plies lapped 19 in", with = stormy { plies = 2, head_lap_in = 19 }, expect = "pass",
    required = 19 },
  { "a hair less", with = stormy { plies = 2, head_lap_in = 18.999 }, expect = "fail",
    required = 19 },
  { "4 in, which 2018 would take", with = stormy { plies = 2 }, expect = "fail", required = 19 },
  { "over taped joints, as where it is calm", with = taped { head_lap_in = 2 }, expect = "pass",
    required = 2 },
  { "and a hair less", with = taped { head_lap_in = 1.999 }, expect = "fail", required = 2 },
}))
for _, year in ipairs { 2015, 2018 } do
  cases "underlayment.head_lap"(at("main front", {
    under = "model/irc-" .. year,
    { "4 in, " .. year, with = stormy(), expect = "pass", required = 4 },
    { "a hair less, " .. year, with = stormy { head_lap_in = 3.999 }, expect = "fail",
      required = 4 },
    { "over taped joints, " .. year, with = taped { head_lap_in = 2 }, expect = "pass",
      required = 2 },
  }))
end
-- Half of a 36 in sheet and 2 in; of a 48 in sheet 26 in.
cases "underlayment.head_lap"(at("main front", {
  under = "model/irc-2024",
  { "half the sheet and 2 in", with = stormy { plies = 2, head_lap_in = 20 }, expect = "pass",
    required = 20 },
  { "a hair less", with = stormy { plies = 2, head_lap_in = 19.999 }, expect = "fail",
    required = 20 },
  { "of a wider sheet", with = stormy { plies = 2, head_lap_in = 26, roll_width_in = 48 },
    expect = "pass", required = 26 },
  { "of a wider sheet, a hair less", expect = "fail", required = 26,
    with = stormy { plies = 2, head_lap_in = 25.999, roll_width_in = 48 } },
  { "a felt of the common width, 20 in", with = stormy { plies = 2, head_lap_in = 20 },
    without = { FELT .. "roll_width_in" }, expect = "pass", required = 20 },
  { "a felt of the common width, a hair less", expect = "fail", required = 20,
    with = stormy { plies = 2, head_lap_in = 19.999 }, without = { FELT .. "roll_width_in" } },
  { "a synthetic whose width is not known", without = { FELT .. "roll_width_in" },
    with = stormy { kind = "D8257", plies = 2, head_lap_in = 26 }, expect = "open" },
  { "over taped joints, as where it is calm", with = taped { head_lap_in = 2 }, expect = "pass",
    required = 2 },
}))
cases "underlayment.head_lap"(at("porch", {
  under = "model/irc-2024",
  { "a low slope, half the sheet and 2 in", expect = "pass", required = 20,
    with = felt({ plies = 2, head_lap_in = 20, roll_width_in = 36 }, { [LOW] = "3:12" }) },
  { "a low slope, 19 in", expect = "fail", required = 20,
    with = felt({ plies = 2, head_lap_in = 19, roll_width_in = 36 }, { [LOW] = "3:12" }) },
}))

cases "underlayment.starter"(at("main front", {
  under = "model/irc-2021",
  { "two plies for the wind, 19 in", with = stormy { plies = 2, starter_width_in = 19 },
    expect = "pass", required = 19 },
  { "a hair less", with = stormy { plies = 2, starter_width_in = 18.999 }, expect = "fail",
    required = 19 },
  { "one ply over taped joints", with = taped(), expect = "not_applicable" },
}))
cases "underlayment.starter"(at("main front", {
  under = "model/irc-2024",
  { "half the sheet", with = stormy { plies = 2, starter_width_in = 18 }, expect = "pass",
    required = 18 },
  { "a hair less", with = stormy { plies = 2, starter_width_in = 17.999 }, expect = "fail",
    required = 18 },
  { "of felt of the common width", with = stormy { plies = 2, starter_width_in = 18 },
    without = { FELT .. "roll_width_in" }, expect = "pass", required = 18 },
  { "of felt of the common width, a hair less", expect = "fail", required = 18,
    with = stormy { plies = 2, starter_width_in = 17.999 },
    without = { FELT .. "roll_width_in" } },
}))

-- Over taped joints the kinds of calm places did until 2021; 2024 has its own column.
for year, expect in pairs { [2015] = "pass", [2018] = "pass", [2021] = "pass", [2024] = "fail" } do
  cases "underlayment.kind"(at("main front", {
    under = "model/irc-" .. year,
    { "No. 15 felt over taped joints, " .. year, with = taped { kind = "D226_I" },
      expect = expect },
    { "over bare ones, " .. year, with = stormy { kind = "D226_I" }, expect = "fail" },
    { "a self-adhered sheet, " .. year, with = stormy { kind = "D1970" }, expect = "pass" },
  }))
end

-- Cap staples until 2018, ringed or deformed shanks alone from 2021 on.
for year, old in pairs { [2015] = true, [2018] = true, [2021] = false, [2024] = false } do
  local then_only = old and "pass" or "fail"
  cases "underlayment.fasteners"(at("main front", {
    under = "model/irc-" .. year,
    { "cap nails, " .. year, with = stormy { fastener = "cap_nail" }, expect = "pass" },
    { "cap staples, " .. year, with = stormy { fastener = "cap_staple" }, expect = then_only },
    { "bare staples, " .. year, with = stormy { fastener = "staple" }, expect = "fail" },
  }))
  cases "underlayment.shank"(at("main front", {
    under = "model/irc-" .. year,
    { "ringed, 0.083 in, " .. year,
      with = stormy { fastener_ringed = true, fastener_shank_in = 0.083 }, expect = "pass" },
    { "ringed, a hair thinner, " .. year,
      with = stormy { fastener_ringed = true, fastener_shank_in = 0.082 }, expect = "fail" },
    { "smooth, 0.12 in, " .. year,
      with = stormy { fastener_ringed = false, fastener_shank_in = 0.12 }, expect = then_only },
  }))
end

-- The rows under 4:12 of 2015 name no end lap: that of the other row, as practice.
cases "underlayment.end_lap"(at("porch", {
  under = "model/irc-2015",
  { "4 in on a low slope", with = felt({ plies = 2, end_lap_in = 4 }, { [LOW] = "3:12" }),
    expect = "pass", required = 4 },
  { "a hair less is not the code's word", expect = "warn", required = 4,
    with = felt({ plies = 2, end_lap_in = 3.999 }, { [LOW] = "3:12" }) },
  { "on a steeper one it is", with = felt { end_lap_in = 3.999 }, expect = "fail",
    where = "main front", required = 4 },
}))

-- Where the editions part, each at its limit (state code texts on each edition).
local DESIGNED = { ["site.wind_vult_mph"] = 145, ["site.wind_design_required"] = true }
local function windy(facts)
  local with = {}
  for name, value in pairs(DESIGNED) do with[name] = value end
  for name, value in pairs(facts) do with["underlayments[1]." .. name] = value end
  return with
end
-- Table R905.1.1(2): one ply in 2015 and 2018, two in 2021 and 2024, at 5:12 as well.
for year, plies in pairs { ["2015"] = 1, ["2018"] = 1, ["2021"] = 2, ["2024"] = 2 } do
  cases "underlayment.plies" {
    under = "model/irc-" .. year,
    { year .. ": as many as it asks", with = windy { kind = "D226_II", plies = plies,
      deck_joints_taped = false }, expect = "pass", where = "main front", required = plies },
    { year .. ": one fewer", with = windy { kind = "D226_II", plies = plies - 1,
      deck_joints_taped = false }, expect = "fail", where = "main front", required = plies },
  }
end
-- Caps on staples do in 2015 and 2018, no longer in 2021 and 2024.
for year, staple in pairs { ["2015"] = "pass", ["2018"] = "pass", ["2021"] = "fail",
  ["2024"] = "fail" } do
  cases "underlayment.fasteners" {
    under = "model/irc-" .. year,
    { year .. ": cap staples", with = windy { fastener = "cap_staple" }, expect = staple,
      where = "main front" },
    { year .. ": cap nails", with = windy { fastener = "cap_nail" }, expect = "pass",
      where = "main front" },
  }
end
-- D6757 left the list of windy places in 2021, D1970 came onto it in 2024.
for year, kinds in pairs { ["2021"] = { D226_II = "pass", D4869_III = "pass", D6757 = "fail" },
  ["2024"] = { D226_II = "pass", D1970 = "pass", D8257 = "pass", D6757 = "fail" } } do
  for kind, comes in pairs(kinds) do
    cases "underlayment.kind" {
      under = "model/irc-" .. year,
      { year .. ": " .. kind, with = windy { kind = kind }, expect = comes,
        where = "main front" },
    }
  end
end
