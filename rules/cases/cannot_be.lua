-- Cases of cannot_be.lua: what is refused or asked back, at its limit, and the
-- right jobs that look like it. The base job's planes come to 1,289.2 sq ft along
-- the slope: two of 40 x 14 ft at 5:12, and a porch of 12 x 6 ft at 4:12.

local function meant(at, with)
  local all = { as_meant = { { at = at } } }
  for path, value in pairs(with) do all[path] = value end
  return all
end

-- 1,289.2 x 0.75 is 966.9, x 1.25 is 1,611.5.
cases "cannot_be.area" {
  under = "model/irc-2021",
  { "as measured", with = { ["scope.area_sqft"] = 1289 }, expect = "usable" },
  { "with waste", with = { ["scope.area_sqft"] = 1550 }, expect = "usable" },
  { "at the upper limit", with = { ["scope.area_sqft"] = 1611.5 }, expect = "usable" },
  { "past it", with = { ["scope.area_sqft"] = 1612 }, expect = "refused",
    says = "1,612 sq ft, but the planes under /roof/slopes come to 1,289.2 sq ft" },
  { "at the lower limit", with = { ["scope.area_sqft"] = 967 }, expect = "usable" },
  { "past it", with = { ["scope.area_sqft"] = 966.8 }, expect = "refused" },
  { "squares for sq ft", with = { ["scope.area_sqft"] = 12.9 }, expect = "refused",
    says = "Did you mean 1,290 sq ft (12.9 squares)?" },
  { "half the roof left out", with = { ["scope.area_sqft"] = 2578 }, expect = "refused",
    says = "Is half the roof left out?" },
  { "meant", with = meant("/scope/area_sqft", { ["scope.area_sqft"] = 2578 }),
    expect = "usable" },
  { "a share of it", with = { ["scope.area_sqft"] = 129, ["scope.roof_share_percent"] = 10 },
    expect = "usable" },
  { "another share", with = { ["scope.area_sqft"] = 129, ["scope.roof_share_percent"] = 40 },
    expect = "refused", says = "but 40 % of the planes" },
  { "a hundredth of the roof, told as 1 percent",
    with = { ["scope.area_sqft"] = 8, ["scope.roof_share_percent"] = 1 }, expect = "usable" },
  { "a small repair", with = { ["scope.area_sqft"] = 30, ["scope.extent"] = "repair" },
    expect = "usable" },
  { "a repair larger than the roof",
    with = { ["scope.area_sqft"] = 3000, ["scope.extent"] = "repair" }, expect = "refused" },
  { "one plane of three", with = { ["scope.area_sqft"] = 600,
    ["roof.slopes[1].replaced_percent"] = 0, ["roof.slopes[2].replaced_percent"] = 100,
    ["roof.slopes[3].replaced_percent"] = 0 }, expect = "usable" },
  { "a plane not measured yet", with = { ["scope.area_sqft"] = 2578 },
    without = { "roof.slopes[2].run_ft" }, expect = "usable" },
}

-- A size by which the job would be free needs the planes to say the same.
cases "permit.by_area" {
  under = "example/quillbank", from = "paperwork",
  with = { ["permit.status"] = "none", ["scope.area_sqft"] = 90 },
  { "a small repair whose share says so too", with = { ["scope.extent"] = "repair",
    ["scope.roof_share_percent"] = 7 }, expect = "pass" },
  { "a small repair of which nothing else is said", with = { ["scope.extent"] = "repair" },
    without = { "scope.roof_share_percent" }, expect = "open",
    says = "/scope/roof_share_percent" },
  { "a reroof called meant all the same", with = { as_meant = { { at = "/scope/area_sqft" } } },
    expect = "open", says = "which holds?" },
  { "a repair of planes not measured", with = { ["scope.extent"] = "repair",
    ["scope.roof_share_percent"] = 7 }, without = { "roof.slopes[2].run_ft" }, expect = "open" },
}

local function hip(upper)
  return { ["roof.form"] = "hip", ["roof.ridge_ft"] = 40, ["roof.slopes[1].ridge_ft"] = upper }
end

cases "cannot_be.ridge" {
  under = "model/irc-2021",
  { "a plane that is a triangle where the ridge is long", with = hip(0), expect = "refused",
    says = "those of the planes under /roof/slopes come to 52 ft. Is a plane left out?" },
  { "short by no more than the tape", with = hip(24), expect = "usable" },
  { "short by more", with = hip(23.9), expect = "refused", says = "80 ft of upper edges" },
  { "a shed, whose top was called its ridge", with = { ["roof.form"] = "other",
    ["roof.slopes[1].ridge_ft"] = 0, ["roof.ridge_ft"] = 40 }, expect = "usable" },
  { "a part of the roof", with = { ["scope.roof_share_percent"] = 50,
    ["roof.slopes[1].ridge_ft"] = 0 }, expect = "usable" },
  { "meant", with = meant("/roof/ridge_ft", hip(0)), expect = "usable" },
}

local ONE_PLANE = { { name = "front", pitch = "5:12", eave_ft = 40, ridge_ft = 40, run_ft = 14,
  deck = "panels", underlayment = "felt" } }
local function one_plane(form, ridge, area)
  return { ["roof.slopes"] = ONE_PLANE, ["roof.walls"] = {},
    ["roof.edges"] = { { name = "eave", kind = "eave", slope = "front", length_ft = 40 } },
    ["roof.form"] = form, ["roof.ridge_ft"] = ridge, ["attics[1].area_sqft"] = 500,
    ["attics[1].vents"] = {}, ["scope.area_sqft"] = area }
end

cases "cannot_be.planes" {
  under = "model/irc-2021", with = { ["decks[1].replaced_sqft"] = 96 },
  { "one plane of a gable", with = one_plane("gable", 40), expect = "refused",
    says = "/roof/ridge_ft: is asked back: 40 ft of ridge has as much roof on either side" },
  { "and the area of both", with = one_plane("gable", 40, 1213), expect = "refused",
    says = "Is half the roof left out?" },
  { "one plane of a gable whose ridge is not told", with = one_plane("gable", nil),
    without = { "roof.ridge_ft" }, expect = "refused", says = "has 2 planes at least" },
  { "two of a hip", with = one_plane("hip", nil), without = { "roof.ridge_ft" },
    expect = "refused", says = "has 3 planes at least" },
  { "a shed", with = one_plane("other", 0), expect = "usable" },
}

local PORCH = { form = "gable_porch", length_ft = 38, width_ft = 26, pitch = "5:12",
  eave_overhang_in = 12, rake_overhang_in = 12,
  porch = { length_ft = 12, depth_ft = 6, pitch = "4:12" },
  planes = { deck = "panels", underlayment = "felt" } }
local function by_plan(walls, changes)
  local plan = {}
  for key, value in pairs(PORCH) do plan[key] = value end
  for key, value in pairs(changes or {}) do plan[key] = value end
  return { ["roof.footprint"] = plan, ["roof.walls"] = walls, ["roof.edges"] = {},
    ["roof.slopes"] = {} }
end

cases "cannot_be.porch" {
  under = "model/irc-2021",
  { "by its plan, and no wall", with = by_plan {}, expect = "refused",
    says = "/roof/walls: cannot be: lists none, but /roof/footprint has a porch" },
  { "by its plan, with its top", with = by_plan { { name = "top", kind = "headwall" } },
    expect = "usable" },
  { "by its plan, walls not told", with = by_plan(nil), without = { "roof.walls" },
    expect = "usable" },
  { "listed, and no wall", with = { ["roof.walls"] = {} }, expect = "refused",
    says = "upper edges of the planes under /roof/slopes come to 92 ft and both sides of the "
      .. "ridge only to 80 ft" },
  { "said to end at a wall, and no wall", with = meant("/roof/walls", { ["roof.walls"] = {},
    ["roof.slopes[3].ends_at_wall"] = true }), expect = "refused",
    says = "/roof/slopes/2/ends_at_wall: cannot be" },
  { "listed, and its top in the air",
    with = meant("/roof/walls", { ["roof.walls"] = {} }), expect = "usable" },
}

-- Inside the eaves the two main planes cover 2 x 40 x 13 ft, 1,040 sq ft; the porch's
-- eave is over no heated space.
cases "cannot_be.attics" {
  under = "model/irc-2021",
  { "half of the roof", with = { ["attics[1].area_sqft"] = 520 }, expect = "usable" },
  { "less than half", with = { ["attics[1].area_sqft"] = 519.9 }, expect = "refused",
    says = "covers 1,040 sq ft inside its eaves" },
  { "a tenth, as by a lost digit", with = { ["attics[1].area_sqft"] = 100 }, expect = "refused" },
  { "less than half, but the back is a porch too", with = { ["attics[1].area_sqft"] = 400,
    ["roof.edges[2].over_heated_space"] = false }, expect = "usable" },
  { "less than half, meant", with = meant("/attics", { ["attics[1].area_sqft"] = 400 }),
    expect = "usable" },
  { "a ceiling along the rafters", with = { ["attics[1].area_sqft"] = 1289 },
    expect = "usable" },
  { "at the limit of it", with = { ["attics[1].area_sqft"] = 1418 }, expect = "usable" },
  { "past it", with = { ["attics[1].area_sqft"] = 1419 }, expect = "refused",
    says = "come to 1,419 sq ft, but the whole roof (/roof/slopes) only to 1,289.2 sq ft" },
  { "a part of the roof", with = { ["attics[1].area_sqft"] = 100,
    ["scope.roof_share_percent"] = 20 }, expect = "usable" },
}

cases "cannot_be.chimney" {
  under = "model/irc-2021",
  { "a wood fire and none", with = { ["house.solid_fuel_chimney"] = true }, expect = "refused",
    says = "/house/solid_fuel_chimney says that there is one" },
  { "a fireplace and none", with = { ["house.co_sources"] = { "fireplace" } },
    expect = "refused", says = "/house/co_sources has a fireplace" },
  { "a gas fireplace out through the wall", with = { ["house.co_sources"] = { "fireplace" },
    ["house.solid_fuel_chimney"] = false }, expect = "usable" },
  { "one that stands clear of the roof",
    with = meant("/roof/chimneys", { ["house.solid_fuel_chimney"] = true }), expect = "usable" },
  { "listed", with = { ["house.solid_fuel_chimney"] = true,
    ["roof.chimneys"] = { { name = "brick", width_in = 20 } } }, expect = "usable" },
  { "not told", with = { ["house.solid_fuel_chimney"] = true }, without = { "roof.chimneys" },
    expect = "usable" },
}

local function skylight(kind)
  return { ["scope.skylights_changed"] = true, ["roof.penetrations"] = {
    { name = "one", kind = kind, width_in = 22 } } }
end

cases "cannot_be.skylight" {
  under = "model/irc-2021",
  { "a skylight changed, and only a pipe listed", with = skylight "pipe", expect = "refused",
    says = "/scope/skylights_changed says" },
  { "listed", with = skylight "skylight", expect = "usable" },
  { "taken out for good", with = meant("/roof/penetrations", skylight "pipe"),
    expect = "usable" },
  { "none changed", with = { ["scope.skylights_changed"] = false }, expect = "usable" },
}

-- Said both ways, a permit that goes by new underlayment would not be asked for.
local TORN_OFF = { ["scope.new_underlayment"] = false }
cases "cannot_be.underlayment" {
  under = "model/irc-2021",
  { "torn off, and felt listed", with = TORN_OFF, expect = "refused",
    says = "/roof/slopes/0/underlayment says what is laid there" },
  { "the old felt stays", with = meant("/scope/new_underlayment", TORN_OFF), expect = "usable" },
  { "laid", with = { ["scope.new_underlayment"] = true }, expect = "usable" },
  { "none listed", with = TORN_OFF, without = { "underlayments", "roof.slopes[1].underlayment",
    "roof.slopes[2].underlayment", "roof.slopes[3].underlayment" }, expect = "usable" },
  { "an overlay", with = { ["scope.new_underlayment"] = false, ["scope.method"] = "overlay",
    ["existing.layers_removed"] = 0, ["existing.coverings[1].removed"] = false,
    ["decks[1].work"] = "kept", ["decks[1].replaced_sqft"] = 0 }, expect = "usable" },
}

local function pitch(text) return { ["roof.slopes[1].pitch"] = text } end

cases "cannot_be.steep" {
  under = "model/irc-2021",
  { "24:12", with = pitch "24:12", expect = "usable" },
  { "an A-frame of 63 degrees", with = pitch "63 deg", expect = "usable" },
  { "a hair steeper than 24:12", with = pitch "24.1:12", expect = "refused" },
  { "12:3 for 3:12", with = pitch "12:3", expect = "refused",
    says = "/roof/slopes/0/pitch: is asked back: 12:3 is 48:12, steeper than 24:12, which few "
      .. "roofs but the lower part of a mansard are. Did you mean 3:12?" },
  { "12 in 4 for 4:12", with = pitch "12 in 4", expect = "refused", says = "Did you mean 4:12?" },
  { "a lost point", with = pitch "55:12", expect = "refused", says = "Did you mean 5.5:12?" },
  { "degrees for percent", with = pitch "66 deg", expect = "refused", says = "Did you mean 66 %?" },
  { "a mansard, meant", with = meant("/roof/slopes/0/pitch", pitch "36:12"),
    expect = "usable" },
  { "a mansard, meant of another plane", with = meant("/roof/slopes/1/pitch", pitch "36:12"),
    expect = "refused" },
  { "by the plan", with = by_plan({ { name = "top", kind = "headwall" } }, { pitch = "12:3" }),
    expect = "refused", says = "/roof/footprint/pitch: is asked back: 12:3 is 48:12" },
  { "by the plan, meant", with = meant("/roof/footprint/pitch",
    by_plan({ { name = "top", kind = "headwall" } }, { pitch = "30:12" })), expect = "usable" },
  { "a porch by the plan", with = by_plan({ { name = "top", kind = "headwall" } },
    { porch = { length_ft = 12, depth_ft = 6, pitch = "12:2" } }), expect = "refused",
    says = "/roof/footprint/porch/pitch: is asked back: 12:2 is 72:12" },
}

local function overhang(inches) return { ["roof.edges[1].overhang_in"] = inches } end

cases "cannot_be.overhang" {
  under = "model/irc-2021",
  { "2 ft", with = overhang(24), expect = "usable" },
  { "none", with = overhang(0), expect = "usable" },
  { "4.1 in", with = overhang(4.1), expect = "usable" },
  { "4 in", with = overhang(4), expect = "refused" },
  { "2, where feet were meant", with = overhang(2), expect = "refused",
    says = "/roof/edges/0/overhang_in: is asked back: 2 in is a very short eave. Did you mean "
      .. "2 ft, 24 in?" },
  { "2 in, meant", with = meant("/roof/edges/0/overhang_in", overhang(2)), expect = "usable" },
  { "a rake may well be short", with = { ["roof.edges[4].overhang_in"] = 2 },
    expect = "usable" },
  { "by the plan", with = by_plan({ { name = "top", kind = "headwall" } },
    { eave_overhang_in = 2 }), expect = "refused",
    says = "/roof/footprint/eave_overhang_in: is asked back: 2 in" },
  { "by the plan, meant", with = meant("/roof/footprint/eave_overhang_in",
    by_plan({ { name = "top", kind = "headwall" } }, { eave_overhang_in = 2 })),
    expect = "usable" },
}

cases "cannot_be.weight" {
  under = "model/irc-2021",
  { "140 lb", with = { ["covering.weight_lb_per_square"] = 140 }, expect = "usable" },
  { "139 lb", with = { ["covering.weight_lb_per_square"] = 139 }, expect = "refused" },
  { "a bundle's weight", with = { ["covering.weight_lb_per_square"] = 70 }, expect = "refused",
    says = "Did you mean 210 lb (3 bundles of 70 lb)?" },
  { "a bundle's weight, four to the square", with = { ["covering.weight_lb_per_square"] = 80,
    ["covering.bundles_per_square"] = 4 }, expect = "refused", says = "Did you mean 320 lb" },
  { "an old layer's", with = { ["existing.coverings[1].weight_lb_per_square"] = 65 },
    expect = "refused", says = "/existing/coverings/0/weight_lb_per_square: is asked back: 65 lb" },
  { "steel panels are light", with = { ["covering.kind"] = "metal_panel",
    ["covering.weight_lb_per_square"] = 70 }, expect = "usable" },
  { "meant", with = meant("/covering/weight_lb_per_square",
    { ["covering.weight_lb_per_square"] = 130 }), expect = "usable" },
}

cases "cannot_be.year" {
  under = "model/irc-2021",
  { "built in the same year", with = { ["house.year_built"] = 2026 }, expect = "usable" },
  { "built after the date", with = { ["house.year_built"] = 2027 }, expect = "refused",
    says = "/house/year_built: cannot be: 2027 is after the day of the application, 2026-03-02" },
}

cases "cannot_be.layers" {
  under = "model/irc-2021",
  { "nothing to tear off", with = { ["existing.layers"] = 0, ["existing.layers_removed"] = 0,
    ["existing.coverings"] = {} }, expect = "refused", says = "Did you mean 1?" },
  { "layers not told", without = { "existing.layers", "existing.layers_removed" },
    expect = "usable" },
}

-- What is said to be meant must be what was asked.
cases "cannot_be.meant" {
  under = "model/irc-2021",
  { "a slip in the place", with = meant("/roof/slopes/0/pich", {}), expect = "refused",
    says = '/as_meant/0/at: "/roof/slopes/0/pich" is no place at which anything is asked back' },
  { "a place of which nothing is asked", with = meant("/house/stories", {}),
    expect = "refused" },
  { "a place that is right now", with = meant("/roof/slopes/0/pitch", {}), expect = "usable" },
}

-- The base house has 40 ft of ridge, all of it vented.
cases "deck.ridge_slot" {
  under = "model/irc-2021",
  { "a ridge vent and no slot", with = { ["roof.ridge_slot"] = "none" }, expect = "refused",
    says = "a deck that has no slot" },
  { "more vent and closed slot than ridge", with = { ["roof.ridge_slot"] = "closed",
    ["roof.ridge_slot_ft"] = 1, ["attics[1].vents[1].length_ft"] = 40 }, expect = "refused",
    says = "1 ft of closed slot" },
  { "half a foot is the tape's", with = { ["roof.ridge_slot"] = "closed",
    ["roof.ridge_slot_ft"] = 0.5, ["attics[1].vents[1].length_ft"] = 40 }, expect = "usable" },
  { "open under no vent", with = { ["roof.ridge_slot"] = "open", attics = {} },
    expect = "refused", says = "the roof would have a hole" },
  { "open under a vent", with = { ["roof.ridge_slot"] = "open" }, expect = "usable" },
}

-- The front is 14 ft from eave to ridge seen from above: 15 ft 2 in along 5:12.
cases "fasteners.eave_penetration" {
  under = "model/irc-2021",
  { "to the ridge", with = { ["roof.edges[1].deck_in"] = 182 }, expect = "usable" },
  { "past it", with = { ["roof.edges[1].deck_in"] = 182.1 }, expect = "refused",
    says = "on a plane of 15.17 ft" },
  { "a rake's past the other side", with = { ["roof.edges[4].deck_in"] = 481 },
    expect = "refused", says = "on a plane of 40 ft" },
  { "along a wall", with = { ["roof.edges[8].kind"] = "sidewall",
    ["roof.edges[8].deck_in"] = 16 }, expect = "refused",
    says = "is not open below" },
}

-- 40 ft of eave, 18 in of boards along it: 60 sq ft that are of the boards, not the panels.
local function boards_along(replaced, changes)
  local with = { ["roof.edges[1].deck"] = "eave boards", ["roof.edges[1].deck_in"] = 18,
    ["decks[2]"] = { name = "eave boards", kind = "board", work = "partly_replaced",
      replaced_sqft = replaced } }
  for fact, value in pairs(changes or {}) do with[fact] = value end
  return with
end
cases "deck.sound" {
  under = "model/irc-2021",
  { "all boards of the eave", with = boards_along(60), expect = "usable" },
  { "more than there are", with = boards_along(62), expect = "refused",
    says = "62 sq ft replaced, but its planes cover only 60 sq ft" },
  -- 1,289.2 sq ft in all.
  { "and of the panels the rest", with = boards_along(60, { ["decks[1].replaced_sqft"] = 1229 }),
    expect = "usable" },
  { "panels where boards lie", with = boards_along(60, { ["decks[1].replaced_sqft"] = 1231 }),
    expect = "refused", says = "1,231 sq ft replaced" },
}

-- Planes that differ in what lies on them: the list is that of the plane with most.
local TWO = { ["existing.layers"] = 2, ["existing.layers_removed"] = 2,
  ["existing.coverings[1].removed"] = true, ["existing.coverings[2]"] = { kind = "asphalt_shingle",
    thickness_in = 0.25, removed = true } }
local function on_porch(here, off, changes)
  local with = { ["roof.slopes[3].old_layers"] = here, ["roof.slopes[3].old_layers_removed"] = off }
  for path, value in pairs(TWO) do with[path] = value end
  for path, value in pairs(changes or {}) do with[path] = value end
  return with
end
local ONE_LEFT = { ["scope.method"] = "overlay", ["existing.layers_removed"] = 1,
  ["existing.coverings[2].removed"] = false }
local function on_each(key, number, changes)
  local with = { ["roof.slopes[1]." .. key] = number, ["roof.slopes[2]." .. key] = number }
  for path, value in pairs(changes) do with[path] = value end
  return with
end
cases "cannot_be.old_layers" {
  under = "model/irc-2021",
  { "two on the porch", with = on_porch(2, 2), expect = "usable" },
  { "one on the porch", with = on_porch(1, 1), expect = "usable" },
  { "none on the porch", with = on_porch(0, 0), expect = "usable" },
  { "three on the porch", with = on_porch(3, 2), expect = "refused",
    says = "counts them where there are most, says 2" },
  { "two off the one", with = on_porch(1, 2), expect = "refused",
    says = "2 layers cannot come off a plane that has 1" },
  { "one left where the list takes both off", with = on_porch(2, 1), expect = "refused",
    says = "layer 2 of /existing/coverings is marked removed" },
  { "stripped where the list leaves one", with = on_porch(2, 2, ONE_LEFT), expect = "usable" },
  { "as much left as the list leaves", with = on_porch(2, 1, ONE_LEFT), expect = "usable" },
  { "more left than the list leaves", with = on_porch(2, 0, ONE_LEFT), expect = "refused",
    says = "only 0 of 2 come off here" },
  { "one on every plane of a roof of two", expect = "refused",
    with = on_each("old_layers", 1, on_porch(1, 1)),
    says = "every plane of the roof has fewer than 2" },
  { "two on one of them", with = on_each("old_layers", 1, on_porch(2, 2)), expect = "usable" },
  { "stripped everywhere where the list leaves one", expect = "refused",
    with = on_each("old_layers_removed", 2, on_porch(2, 2, ONE_LEFT)),
    says = "of every plane of the roof more than 1 come off" },
  { "stripped but for one plane", expect = "usable",
    with = on_each("old_layers_removed", 2, on_porch(2, 1, ONE_LEFT)) },
}

cases "cannot_be.slips" {
  under = "model/irc-2021",
  { "valleys by the foot, and none listed", with = { ["roof.valley_ft"] = 30 },
    expect = "refused", says = "lists none, but /roof/valley_ft says 30 ft" },
  { "a lap of the whole roll", with = { ["underlayments[1].roll_width_in"] = 36,
    ["underlayments[1].head_lap_in"] = 35.5 }, expect = "refused", says = "leaves nothing" },
  { "an inch that shows", with = { ["underlayments[1].roll_width_in"] = 36,
    ["underlayments[1].head_lap_in"] = 35 }, expect = "usable" },
}
