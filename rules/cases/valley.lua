-- Cases of rules/valley.lua: R905.2.8.2 and its table.

local function valley(changes)
  local one = { name = "valley", kind = "open", lining = "metal", width_in = 24,
    metal = "galvanized", thickness_in = 0.0179, lined_before_shingles = true,
    nails_from_center_in = 6 }
  for key, value in pairs(changes or {}) do one[key] = value end
  return { ["roof.valleys"] = { one } }
end

local function overlay(with)
  with["scope.method"], with["existing.layers_removed"] = "overlay", 0
  with["existing.coverings[1].removed"] = false
  return with
end

cases "valley.listed" {
  under = "model/irc-2018",
  { "two sides, one valley", with = { ["roof.edges[4].kind"] = "valley",
    ["roof.edges[5].kind"] = "valley", ["roof.valleys"] = { { name = "valley" } } },
    expect = "pass" },
  { "not listed", with = { ["roof.edges[4].kind"] = "valley" }, expect = "open",
    says = "roof.valleys" },
  { "no valley", expect = "not_applicable" },
}

cases "valley.lining" {
  under = "model/irc-2018",
  { "metal, open", with = valley(), expect = "pass" },
  { "two plies of roll, open", with = valley { lining = "two_ply_roll" }, expect = "pass" },
  { "peel-and-stick is for closed valleys", with = valley { lining = "self_adhered" },
    expect = "fail" },
  { "peel-and-stick, closed", with = valley { kind = "closed", lining = "self_adhered" },
    expect = "pass" },
  { "metal, woven", with = valley { kind = "woven" }, expect = "pass" },
  { "smooth roll, closed", with = valley { kind = "closed", lining = "smooth_roll" },
    expect = "pass" },
  { "two plies of roll, closed", with = valley { kind = "closed", lining = "two_ply_roll" },
    expect = "pass" },
  { "nothing", with = valley { kind = "closed", lining = "none" }, expect = "fail" },
  { "an overlay gets a new lining too", with = overlay(valley()), expect = "pass" },
  { "an overlay without", with = overlay(valley { kind = "closed", lining = "none" }),
    expect = "fail" },
  { "not known", with = valley(), without = { "roof.valleys[1].lining" }, expect = "open" },
  { "list not known", without = { "roof.valleys" }, expect = "open" },
  { "no valleys", expect = "not_applicable" },
  { "other coverings have their own", with = { ["covering.kind"] = "slate",
    ["roof.valleys"] = { { name = "valley" } } }, expect = "open", says = "not judged here" },
  { "a coating lines none", with = { ["covering.kind"] = "coating",
    ["roof.valleys"] = { { name = "valley" } } }, expect = "not_applicable" },
}

cases "valley.width" {
  under = "model/irc-2018",
  { "metal 24 in, exactly", with = valley(), expect = "pass", required = 24, found = 24 },
  { "metal just under 24 in", with = valley { width_in = 23.999 }, expect = "fail", required = 24 },
  { "roll 18 and 36 in, exactly", with = valley { lining = "two_ply_roll", width_in = 36,
    bottom_width_in = 18 }, expect = "pass", required = 18 },
  { "bottom ply just under 18 in", with = valley { lining = "two_ply_roll", width_in = 36,
    bottom_width_in = 17.999 }, expect = "fail", required = 18 },
  { "top ply just under 36 in", with = valley { lining = "two_ply_roll", width_in = 35.999,
    bottom_width_in = 18 }, expect = "fail", required = 36 },
  { "smooth roll 36 in, exactly", with = valley { kind = "closed", lining = "smooth_roll",
    width_in = 36 }, expect = "pass", required = 36 },
  { "smooth roll just under", with = valley { kind = "closed", lining = "smooth_roll",
    width_in = 35.999 }, expect = "fail" },
  { "peel-and-stick 36 in, by practice", with = valley { kind = "closed",
    lining = "self_adhered", width_in = 36 }, expect = "pass", required = 36 },
  { "peel-and-stick just under, by practice too", with = valley { kind = "closed",
    lining = "self_adhered", width_in = 35.999 }, expect = "warn", required = 36,
    found = 35.999 },
  { "not known", with = valley(), without = { "roof.valleys[1].width_in" }, expect = "open" },
  { "measured", stage = "dry-in", with = valley { measured_width_in = { 24, 25 } },
    expect = "pass", found = 24 },
  { "measured narrower at one place", stage = "dry-in",
    with = valley { measured_width_in = { 24, 23 } }, expect = "fail", found = 23 },
  { "not measured at dry-in", stage = "dry-in", with = valley(), expect = "open" },
}

cases "valley.metal" {
  under = "model/irc-2021",
  { "galvanized 0.0179 in, exactly", with = valley(), expect = "pass", required = 17.9 },
  { "galvanized, a millionth of an inch short", with = valley { thickness_in = 0.017899 },
    expect = "fail", required = 17.9, found = 17.899 },
  { "aluminum 0.024 in, exactly", with = valley { metal = "aluminum", thickness_in = 0.024 },
    expect = "pass", required = 24 },
  { "aluminum 0.019 in", with = valley { metal = "aluminum", thickness_in = 0.019 },
    expect = "fail", required = 24 },
  { "aluminum, just short", with = valley { metal = "aluminum", thickness_in = 0.023999 },
    expect = "fail" },
  { "copper 0.0216 in, exactly", with = valley { metal = "copper", thickness_in = 0.0216 },
    expect = "pass" },
  { "copper, just short", with = valley { metal = "copper", thickness_in = 0.021599 },
    expect = "fail" },
  { "high-yield copper 0.0162 in, exactly", with = valley { metal = "high_yield_copper",
    thickness_in = 0.0162 }, expect = "pass", required = 16.2 },
  { "high-yield copper, just short", with = valley { metal = "high_yield_copper",
    thickness_in = 0.016199 }, expect = "fail" },
  { "lead-coated copper 0.0216 in, exactly", with = valley { metal = "lead_coated_copper",
    thickness_in = 0.0216 }, expect = "pass", required = 21.6 },
  { "lead-coated copper, just short", with = valley { metal = "lead_coated_copper",
    thickness_in = 0.021599 }, expect = "fail" },
  { "lead-coated high-yield copper 0.0162 in, exactly", with = valley {
    metal = "lead_coated_high_yield_copper", thickness_in = 0.0162 }, expect = "pass",
    required = 16.2 },
  { "lead-coated high-yield copper, just short", with = valley {
    metal = "lead_coated_high_yield_copper", thickness_in = 0.016199 }, expect = "fail" },
  { "zinc 0.027 in, exactly", with = valley { metal = "zinc", thickness_in = 0.027 },
    expect = "pass" },
  { "zinc, just short", with = valley { metal = "zinc", thickness_in = 0.026999 },
    expect = "fail" },
  { "stainless, 28 gage exactly", with = valley { metal = "stainless", gage = 28 },
    expect = "pass", required = 28 },
  { "stainless, 29 gage is thinner", with = valley { metal = "stainless", gage = 29 },
    expect = "fail" },
  { "lead of 2 1/2 lb, exactly", with = valley { metal = "lead", weight_lb = 2.5 },
    expect = "pass" },
  { "lead of 2.4 lb", with = valley { metal = "lead", weight_lb = 2.4 }, expect = "fail" },
  { "terne of 20 lb, exactly", with = valley { metal = "painted_terne", weight_lb = 20 },
    expect = "pass", required = 20 },
  { "terne of 19.9 lb", with = valley { metal = "painted_terne", weight_lb = 19.9 },
    expect = "fail" },
  { "plain steel", with = valley { metal = "plain_steel" }, expect = "fail" },
  { "not known", with = valley(), without = { "roof.valleys[1].thickness_in" },
    expect = "open" },
  { "no metal", with = valley { lining = "two_ply_roll" }, expect = "not_applicable" },
}

cases "valley.before" {
  under = "model/irc-2018",
  { "before", with = valley(), expect = "pass" },
  { "after", with = valley { lined_before_shingles = false }, expect = "fail" },
  { "not known", with = valley(), without = { "roof.valleys[1].lined_before_shingles" },
    expect = "open" },
}

-- Practice, not code: what is short is warned of.
cases "valley.nails" {
  under = "model/irc-2021",
  { "6 in from the center, exactly", with = valley(), expect = "pass", required = 6,
    found = 6 },
  { "just under 6 in", with = valley { nails_from_center_in = 5.999 }, expect = "warn",
    required = 6, found = 5.999 },
  { "not known", with = valley(), without = { "roof.valleys[1].nails_from_center_in" },
    expect = "open" },
}

-- 2024 names the width of a self-adhered lining; before it is practice.
for year, short in pairs { [2015] = "warn", [2018] = "warn", [2021] = "warn", [2024] = "fail" } do
  cases "valley.width" {
    under = "model/irc-" .. year,
    { "36 in of self-adhered sheet, " .. year, with = valley { kind = "closed",
      lining = "self_adhered", width_in = 36 }, expect = "pass", required = 36 },
    { "a hair less, " .. year, with = valley { kind = "closed", lining = "self_adhered",
      width_in = 35.999 }, expect = short, required = 36 },
  }
end
