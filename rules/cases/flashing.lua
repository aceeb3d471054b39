-- Cases of rules/flashing.lua: R903.2, R905.2.8, R1003.20 and R908.5.

local function wall(changes)
  local one = { name = "wall", kind = "sidewall", flashing_is = "new", flashing = "step",
    up_in = 4, out_in = 4, eave_ends_here = true, kickout = true, top_covered_by = "siding" }
  for key, value in pairs(changes or {}) do one[key] = value end
  return { ["roof.walls"] = { one } }
end

local function chimney(changes)
  local one = { name = "chimney", slope = "main front", width_in = 36, masonry = true,
    meets_ridge = false, flashing_is = "new", counterflashed = true, cricket = true,
    cricket_cover = "sheet_metal", cricket_height_in = 7.5 }
  for key, value in pairs(changes or {}) do one[key] = value end
  return { ["roof.chimneys"] = { one } }
end

local function hole(changes)
  local one = { name = "hole", kind = "other", width_in = 36, flashing_is = "new",
    per_instructions = true, cricket = true }
  for key, value in pairs(changes or {}) do one[key] = value end
  return { ["roof.penetrations"] = { one } }
end

cases "flashing.walls_listed" {
  under = "model/irc-2018",
  { "a side along a wall, and the wall", with = { ["roof.edges[4].kind"] = "sidewall",
    ["roof.walls"] = { { name = "wall", kind = "sidewall" } } }, expect = "pass" },
  { "the wall not listed", with = { ["roof.edges[4].kind"] = "sidewall" }, expect = "open",
    says = "roof.walls" },
  { "two sides, one wall", with = { ["roof.edges[4].kind"] = "sidewall",
    ["roof.edges[5].kind"] = "sidewall",
    ["roof.walls"] = { { name = "wall", kind = "sidewall" } } }, expect = "open" },
  { "no walls", expect = "not_applicable" },
  { "a plane that ends at a wall, and only a change of slope listed",
    with = { ["roof.slopes[3].ends_at_wall"] = true }, expect = "open", says = "headwall" },
  { "a plane that ends at a wall, and the wall", with = { ["roof.slopes[3].ends_at_wall"] = true,
    ["roof.walls"] = { { name = "wall", kind = "headwall" } } }, expect = "pass" },
  { "two planes end at one wall", with = { ["roof.slopes[2].ends_at_wall"] = true,
    ["roof.slopes[3].ends_at_wall"] = true,
    ["roof.walls"] = { { name = "wall", kind = "headwall" } } }, expect = "pass" },
  { "the side of a wall listed, its head not", with = { ["roof.edges[4].kind"] = "sidewall",
    ["roof.slopes[3].ends_at_wall"] = true,
    ["roof.walls"] = { { name = "wall", kind = "sidewall" } } }, expect = "open",
    says = "headwall" },
  { "no plane ends at a wall", with = { ["roof.slopes[3].ends_at_wall"] = false },
    expect = "not_applicable" },
  { "edges not known", without = { "roof.edges" }, expect = "open" },
}

cases "flashing.walls" {
  under = "model/irc-2018",
  { "step flashing", with = wall(), expect = "pass" },
  { "one continuous piece", with = wall { flashing = "continuous" }, expect = "pass" },
  { "caulk", with = wall { flashing = "other" }, expect = "fail" },
  { "none", with = wall { flashing_is = "none" }, expect = "fail" },
  { "a head wall as the maker prints", with = wall { kind = "headwall",
    flashing = "by_instructions" }, expect = "pass" },
  { "a change of slope left bare", with = wall { kind = "slope_change",
    flashing_is = "none" }, expect = "fail" },
  { "not known", with = wall(), without = { "roof.walls[1].flashing" }, expect = "open" },
  { "list not known", without = { "roof.walls" }, expect = "open" },
  { "no walls", with = { ["roof.walls"] = {}, as_meant = { { at = "/roof/walls" } } },
    expect = "not_applicable" },
}

cases "flashing.walls" {
  under = "model/irc-2021",
  { "one continuous piece, by a recalled figure", with = wall { flashing = "continuous" },
    expect = "pass" },
}

cases "flashing.sidewall_size" {
  under = "model/irc-2021",
  { "4 by 4 in, exactly", with = wall(), expect = "pass", required = 4, found = 4 },
  { "3 1/2 up", with = wall { up_in = 3.5 }, expect = "fail", found = 3.5 },
  { "3 out", with = wall { out_in = 3 }, expect = "fail", found = 3 },
  { "not known", with = wall(), without = { "roof.walls[1].up_in" }, expect = "open" },
  { "beside tile", with = { ["covering.kind"] = "clay_tile",
    ["roof.walls"] = wall()["roof.walls"] }, expect = "open", says = "not judged here" },
  { "a head wall has no figure", with = wall { kind = "headwall", up_in = 2 },
    expect = "not_applicable" },
}

cases "flashing.wall_cover" {
  under = "model/irc-2021",
  { "behind the siding", with = wall(), expect = "pass" },
  { "nothing over it", with = wall { top_covered_by = "nothing" }, expect = "fail" },
  { "not known", with = wall(), without = { "roof.walls[1].top_covered_by" },
    expect = "open" },
}

cases "flashing.kickout" {
  under = "model/irc-2021",
  { "there, by a recalled section", with = wall(), expect = "pass" },
  { "not there", with = wall { kickout = false }, expect = "fail" },
  { "not known", with = wall(), without = { "roof.walls[1].kickout" }, expect = "open" },
  { "no eave ends here", with = wall { eave_ends_here = false, kickout = false },
    expect = "not_applicable" },
  { "whether one does not known", with = wall(), without = { "roof.walls[1].eave_ends_here" },
    expect = "open" },
}

cases "flashing.penetrations" {
  under = "model/irc-2021",
  { "as printed", expect = "pass", where = "soil pipe" },
  { "not as printed", with = { ["roof.penetrations[1].per_instructions"] = false },
    expect = "fail", where = "soil pipe" },
  { "none", with = { ["roof.penetrations[1].flashing_is"] = "none" }, expect = "fail",
    where = "soil pipe" },
  { "not known", without = { "roof.penetrations[1].per_instructions" }, expect = "open",
    where = "soil pipe" },
  { "list not known", without = { "roof.penetrations" }, expect = "open" },
  { "nothing goes through", with = { ["roof.penetrations"] = {} }, expect = "not_applicable" },
}

cases "flashing.chimneys" {
  under = "model/irc-2021",
  { "flashed", with = chimney(), expect = "pass" },
  { "a boxed one", with = chimney { masonry = false }, expect = "pass" },
  { "not flashed", with = chimney { masonry = false, flashing_is = "none" }, expect = "fail" },
  { "not known", with = chimney(), without = { "roof.chimneys[1].flashing_is" },
    expect = "open" },
}

cases "flashing.counterflashing" {
  under = "model/irc-2021",
  { "counterflashed", with = chimney(), expect = "pass" },
  { "not, beside a cricket", with = chimney { counterflashed = false }, expect = "fail" },
  { "counterflashed where there is no cricket", with = chimney { cricket = false },
    expect = "pass" },
  { "not where there is no cricket: practice alone asks for it",
    with = chimney { counterflashed = false, cricket = false }, expect = "warn" },
  { "a boxed one needs none", with = chimney { masonry = false, counterflashed = false },
    expect = "not_applicable" },
  { "not known", with = chimney(), without = { "roof.chimneys[1].counterflashed" },
    expect = "open" },
}

-- R903.2.2: wider than 30 in; exactly 30 needs none.
cases "flashing.cricket" {
  under = "model/irc-2021",
  { "exactly 30 in", with = chimney { width_in = 30, cricket = false },
    expect = "not_applicable", says = "exactly" },
  { "30 1/8 in without", with = chimney { width_in = 30.125, cricket = false },
    expect = "fail" },
  { "30 1/8 in with one", with = chimney { width_in = 30.125 }, expect = "pass" },
  { "a boxed one too", with = chimney { masonry = false, cricket = false }, expect = "fail" },
  { "at the ridge", with = chimney { meets_ridge = true, cricket = false },
    expect = "not_applicable" },
  { "width not known", with = chimney(), without = { "roof.chimneys[1].width_in" },
    expect = "open" },
  { "cricket not known", with = chimney(), without = { "roof.chimneys[1].cricket" },
    expect = "open" },
  { "chimneys not known", without = { "roof.chimneys" }, expect = "open" },
}

cases "flashing.cricket_cover" {
  under = "model/irc-2021",
  { "sheet metal", with = chimney(), expect = "pass" },
  { "felt alone", with = chimney { cricket_cover = "other" }, expect = "fail" },
  { "not known", with = chimney(), without = { "roof.chimneys[1].cricket_cover" },
    expect = "open" },
  { "no cricket", with = chimney { cricket = false }, expect = "not_applicable" },
}

-- Table R1003.20: 36 in wide at 5:12 gives 7 1/2 in; at 4:12 W/6.
cases "flashing.cricket_height" {
  under = "model/irc-2021",
  { "7 1/2 in at 5:12, exactly", with = chimney(), expect = "pass", required = 7.5 },
  { "7 in", with = chimney { cricket_height_in = 7 }, expect = "fail", required = 7.5 },
  { "6 in at 4:12", with = chimney { slope = "porch", cricket_height_in = 6 },
    expect = "pass", required = 6 },
  { "not known", with = chimney(), without = { "roof.chimneys[1].cricket_height_in" },
    expect = "open" },
  { "plane not known", with = chimney(), without = { "roof.chimneys[1].slope" },
    expect = "open" },
  { "a boxed chimney is not in the table", with = chimney { masonry = false },
    expect = "not_applicable" },
}

cases "flashing.cricket_other" {
  under = "model/irc-2018",
  { "wide, with one", with = hole(), expect = "pass" },
  { "wide, without", with = hole { cricket = false }, expect = "fail" },
  { "exactly 30 in", with = hole { width_in = 30, cricket = false },
    expect = "not_applicable" },
  { "a skylight flashed as printed", with = hole { kind = "skylight", cricket = false },
    expect = "not_applicable", says = "skylight" },
  { "a skylight flashed otherwise", with = hole { kind = "skylight", cricket = false,
    per_instructions = false }, expect = "fail" },
  { "not known", with = hole(), without = { "roof.penetrations[1].cricket" },
    expect = "open" },
}

cases "flashing.base" {
  under = "model/irc-2018",
  { "0.019 in, exactly", expect = "pass", required = 0.019, found = 0.019 },
  { "0.018 in", with = { ["flashing.base_thickness_in"] = 0.018 }, expect = "fail",
    found = 0.018 },
  { "metal that rusts", with = { ["flashing.corrosion_resistant"] = false },
    expect = "fail" },
  { "roll of 77 lb, exactly", with = { ["flashing.base"] = "mineral_roll",
    ["flashing.base_lb_per_square"] = 77 }, expect = "pass", required = 77 },
  { "roll of 70 lb", with = { ["flashing.base"] = "mineral_roll",
    ["flashing.base_lb_per_square"] = 70 }, expect = "fail" },
  { "plastic", with = { ["flashing.base"] = "other" }, expect = "fail" },
  { "not known", without = { "flashing.base_thickness_in" }, expect = "open" },
  { "nothing new", with = { ["roof.penetrations[1].flashing_is"] = "reused",
    ["roof.walls[1].flashing_is"] = "reused" },
    expect = "not_applicable" },
}

cases "flashing.cap" {
  under = "model/irc-2018",
  { "0.019 in, exactly", with = chimney(), expect = "pass", required = 0.019 },
  { "0.015 in", with = { ["roof.chimneys"] = chimney()["roof.chimneys"],
    ["flashing.cap_thickness_in"] = 0.015 }, expect = "fail" },
  { "not known", with = chimney(), without = { "flashing.cap_thickness_in" },
    expect = "open" },
  { "over a wall's flashing", with = wall { top_covered_by = "counterflashing" },
    expect = "pass" },
  { "no cap flashing", expect = "not_applicable" },
}

cases "flashing.reuse" {
  under = "model/irc-2021",
  { "sound", with = chimney { flashing_is = "reused", flashing_condition = "sound" },
    expect = "pass" },
  { "rusted", with = chimney { flashing_is = "reused", flashing_condition = "rusted" },
    expect = "fail" },
  { "one sound, one damaged", with = { ["roof.walls"] = {
    { name = "wall", kind = "sidewall", flashing_is = "reused",
      flashing_condition = "sound" } },
    ["roof.penetrations[1].flashing_is"] = "reused",
    ["roof.penetrations[1].flashing_condition"] = "damaged" }, expect = "fail" },
  { "a wall's, rusted", with = wall { flashing_is = "reused", flashing_condition = "rusted" },
    expect = "fail" },
  { "of a wall without a name", with = { ["roof.walls"] = {
    { kind = "sidewall", flashing_is = "reused", flashing_condition = "decayed" } } },
    expect = "fail" },
  { "condition not known", with = chimney { flashing_is = "reused" }, expect = "open" },
  { "all new", with = chimney(), expect = "not_applicable" },
}

cases "flashing.reuse" {
  under = "example/quillrun", date = "2026-07-01",
  { "sound, where none may be used again",
    with = chimney { flashing_is = "reused", flashing_condition = "sound" },
    expect = "fail" },
}

-- Every way that the lists name, and one that they do not.
for _, way in ipairs { "step", "continuous", "by_instructions" } do
  for _, kind in ipairs { "headwall", "slope_change" } do
    cases "flashing.walls" {
      under = "model/irc-2018",
      { kind .. ", " .. way, with = wall { kind = kind, flashing = way }, expect = "pass" },
    }
  end
end
cases "flashing.walls" {
  under = "model/irc-2018",
  { "caulk at a head wall", with = wall { kind = "headwall", flashing = "other" },
    expect = "fail" },
  { "caulk at a change of slope", with = wall { kind = "slope_change", flashing = "other" },
    expect = "fail" },
}
cases "flashing.wall_cover" {
  under = "model/irc-2021",
  { "counterflashed", with = wall { top_covered_by = "counterflashing" }, expect = "pass" },
}
cases "flashing.cricket_cover" {
  under = "model/irc-2021",
  { "the roof covering", with = chimney { cricket_cover = "roof_covering" }, expect = "pass" },
}
cases "flashing.reuse" {
  under = "model/irc-2021",
  { "decayed", with = chimney { flashing_is = "reused", flashing_condition = "decayed" },
    expect = "fail" },
}

-- One step past a figure, the smallest that prints: what a slip of it would let by.
cases "flashing.sidewall_size" {
  under = "model/irc-2021",
  { "a thousandth less up", with = wall { up_in = 3.999 }, expect = "fail", required = 4 },
  { "a thousandth less out", with = wall { out_in = 3.999 }, expect = "fail", required = 4 },
}
cases "flashing.cricket" {
  under = "model/irc-2021",
  { "30.001 in without", with = chimney { width_in = 30.001, cricket = false },
    expect = "fail" },
}
cases "flashing.base" {
  under = "model/irc-2018",
  { "roll of 76.9 lb", with = { ["flashing.base"] = "mineral_roll",
    ["flashing.base_lb_per_square"] = 76.9 }, expect = "fail", required = 77 },
}
cases "flashing.cap" {
  under = "model/irc-2018",
  { "0.018 in", with = { ["roof.chimneys"] = chimney()["roof.chimneys"],
    ["flashing.cap_thickness_in"] = 0.018 }, expect = "fail", required = 0.019 },
}

-- R908.6 and R908.5, which Fern Hollow County, invented, looks at.
local FERNHOLLOW = "example/fernhollow"
cases "flashing.primed" {
  under = FERNHOLLOW,
  { "primed", with = { ["flashing.bitumen_on_metal"] = true, ["flashing.primed"] = true },
    expect = "pass" },
  { "bare", with = { ["flashing.bitumen_on_metal"] = true, ["flashing.primed"] = false },
    expect = "fail" },
  { "no bitumen on it", with = { ["flashing.bitumen_on_metal"] = false },
    expect = "not_applicable" },
  { "not told", with = { ["flashing.bitumen_on_metal"] = true }, expect = "open" },
  { "whether bitumen goes on, not told", expect = "open" },
  { "the model code leaves it off", under = "model/irc-2021", expect = "not_applicable" },
}
cases "flashing.rusted_metal" {
  under = FERNHOLLOW,
  { "none left", with = { ["existing.rusted_metal_left"] = false }, expect = "pass" },
  { "a rusted vent left", with = { ["existing.rusted_metal_left"] = true }, expect = "fail" },
  { "not told", expect = "open" },
  { "the model code leaves it off", under = "model/irc-2021", expect = "not_applicable" },
}

-- New flashing at the chimney alone.
cases "flashing.base" {
  under = "model/irc-2018",
  { "only the chimney's is new", with = { ["roof.chimneys"] = chimney()["roof.chimneys"],
    ["roof.walls[1].flashing_is"] = "reused", ["roof.penetrations[1].flashing_is"] = "reused" },
    expect = "pass" },
}
