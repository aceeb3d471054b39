-- Cases of rules/layers.lua.

-- The base job as an overlay of its one old layer, with other facts changed.
local function overlay(changes)
  local with = { ["scope.method"] = "overlay", ["existing.layers_removed"] = 0,
    ["existing.coverings[1].removed"] = false }
  for place, value in pairs(changes or {}) do with[place] = value end
  -- Coverings given whole say for themselves which come off.
  if with["existing.coverings"] then with["existing.coverings[1].removed"] = nil end
  return with
end

local function old(kind, removed)
  return { kind = kind, thickness_in = 0.25, removed = removed }
end

cases "layers.overlay" {
  under = "model/irc-2021",
  { "an overlay where the code lets it", with = overlay(), expect = "pass" },
  { "a tear-off lays nothing over", expect = "not_applicable" },
  { "method not known", without = { "scope.method" }, expect = "open" },
}

cases "layers.overlay" {
  under = "model/irc-2018",
  { "an overlay, by a figure read in a sister text", with = overlay(), expect = "pass" },
}

cases "layers.overlay" {
  under = "example/saltmarsh",
  { "an overlay where the county bars it", with = overlay(), expect = "fail" },
  { "a tear-off there", expect = "not_applicable" },
}

-- IRC R908.3.1.1: no more than two coverings after the work.
cases "layers.total" {
  under = "model/irc-2018",
  { "a tear-off leaves one", expect = "pass", required = 2, found = 1 },
  { "an overlay of one layer makes two", with = overlay(), expect = "pass", required = 2,
    found = 2 },
  { "an overlay of two layers makes three",
    with = overlay { ["existing.layers"] = 2,
      ["existing.coverings"] = { old("asphalt_shingle", false), old("asphalt_shingle", false) } },
    expect = "fail", required = 2, found = 3 },
  { "one of two peeled off: item 3 asks how many are on now",
    with = overlay { ["existing.layers"] = 2, ["existing.layers_removed"] = 1,
      ["existing.coverings"] = { old("asphalt_shingle", true), old("asphalt_shingle", false) } },
    expect = "fail", required = 2, found = 3, says = "peeled off counts" },
  { "one of two peeled off, by the name of a tear-off",
    with = { ["existing.layers"] = 2, ["existing.layers_removed"] = 1,
      ["existing.coverings"] = { old("asphalt_shingle", true), old("asphalt_shingle", false) } },
    expect = "fail", required = 2, found = 3 },
  { "both of two off",
    with = { ["existing.layers"] = 2, ["existing.layers_removed"] = 2,
      ["existing.coverings"] = { old("asphalt_shingle", true), old("asphalt_shingle", true) } },
    expect = "pass", found = 1 },
  { "layers not counted", without = { "existing.layers" }, expect = "open" },
  { "layers not said", without = { "existing.layers", "existing.layers_removed" },
    expect = "open" },
  { "a tear-off takes off what is there", without = { "existing.layers_removed" },
    expect = "pass", found = 1 },
}

cases "layers.total" {
  under = "model/irc-2021",
  { "two, by a figure that is only recalled", with = overlay(), expect = "pass", required = 2,
    found = 2 },
  { "three", with = overlay { ["existing.layers"] = 2,
    ["existing.coverings"] = { old("asphalt_shingle", false), old("asphalt_shingle", false) } },
    expect = "fail", required = 2, found = 3 },
}

-- Two layers on the porch alone, both of which come off; the one of the main roof stays.
-- R908.3.1.1 (2012 R907.3 item 3, 2024 R908.4) bars a covering over two, not beside them.
local function porch_stripped(changes)
  local with = overlay { ["existing.layers"] = 2, ["existing.layers_removed"] = 1,
    ["existing.coverings"] = { old("asphalt_shingle", true), old("asphalt_shingle", false) },
    ["roof.slopes[1].old_layers"] = 1, ["roof.slopes[2].old_layers"] = 1,
    ["roof.slopes[3].old_layers"] = 2, ["roof.slopes[3].old_layers_removed"] = 2 }
  for place, value in pairs(changes or {}) do with[place] = value end
  return with
end
for _, edition in ipairs { "2012", "2015", "2018", "2021", "2024" } do
  cases "layers.total" {
    under = "model/irc-" .. edition,
    { "one laid over on the main roof, the porch stripped of its two, in " .. edition,
      with = porch_stripped(), expect = edition == "2012" and "warn" or "pass", required = 2,
      found = 2, says = "Most will lie on main front" },
    { "the porch laid over two, in " .. edition,
      with = porch_stripped { ["existing.layers_removed"] = 0,
        ["existing.coverings[1].removed"] = false, ["roof.slopes[3].old_layers_removed"] = 0 },
      expect = "fail", required = 2, found = 3, says = "Most will lie on porch" },
    { "one of the porch's two peeled off, in " .. edition,
      with = porch_stripped { ["roof.slopes[3].old_layers_removed"] = 1 }, expect = "fail",
      found = 3, says = "peeled off counts" },
    { "two on one plane of the main roof as well, in " .. edition,
      with = porch_stripped { ["roof.slopes[2].old_layers"] = 2 }, expect = "fail", found = 3,
      says = "Most will lie on main back" },
  }
end

cases "layers.total" {
  under = "model/irc-2021",
  { "how much comes off the porch is not said: the list's one of two",
    with = porch_stripped { ["roof.slopes[3].old_layers"] = 2,
      ["roof.slopes[3].old_layers_removed"] = 1 }, expect = "fail", found = 3 },
  { "the porch gets another covering over its two",
    with = porch_stripped { ["existing.layers_removed"] = 0,
      ["existing.coverings[1].removed"] = false, ["roof.slopes[3].old_layers_removed"] = 0,
      ["roof.slopes[3].gets"] = "roll_roofing", ["roof.slopes[3].other_checked"] = true },
    expect = "fail", found = 3 },
  { "the porch keeps its old covering, of two layers",
    with = porch_stripped { ["existing.layers_removed"] = 0,
      ["existing.coverings[1].removed"] = false, ["roof.slopes[3].old_layers_removed"] = 0,
      ["roof.slopes[3].gets"] = "old_stays" }, expect = "pass", found = 2 },
}

-- Every edition bars a new covering over two or more: 2012 in R907.3 item 3.
for _, edition in ipairs { "2012", "2015", "2018", "2021", "2024" } do
  cases "layers.total" {
    under = "model/irc-" .. edition,
    { "one of three peeled off, in " .. edition,
      with = overlay { ["existing.layers"] = 3, ["existing.layers_removed"] = 1,
        ["existing.coverings"] = { old("asphalt_shingle", true), old("asphalt_shingle", false),
          old("asphalt_shingle", false) } },
      expect = "fail", required = 2, found = 4 },
  }
end

-- What stays is laid over, whatever the job is called.
local TWO_LESS_ONE = { ["existing.layers"] = 2, ["existing.layers_removed"] = 1,
  ["existing.coverings"] = { old("asphalt_shingle", true), old("asphalt_shingle", false) } }
cases "layers.base_kind" {
  under = "model/irc-2021",
  { "a tear-off that leaves slate", with = { ["existing.layers_removed"] = 0,
    ["existing.coverings"] = { old("slate", false) } }, expect = "fail" },
}
cases "layers.base_condition" {
  under = "model/irc-2021",
  { "a tear-off that leaves a rotted layer", with = {
    ["existing.layers"] = 2, ["existing.layers_removed"] = 1,
    ["existing.coverings"] = TWO_LESS_ONE["existing.coverings"],
    ["existing.condition"] = "rotted" }, expect = "fail" },
  { "a tear-off, layers not said", without = { "existing.layers", "existing.layers_removed" },
    expect = "open" },
}
cases "layers.maker" {
  under = "model/irc-2021",
  { "a tear-off that leaves a layer", with = TWO_LESS_ONE,
    without = { "covering.maker_allows_overlay" }, expect = "open" },
}

cases "layers.tear_off" {
  under = "model/irc-2021",
  { "the one layer comes off", expect = "pass", required = 1, found = 1 },
  { "one of two stays under a tear-off",
    with = { ["existing.layers"] = 2, ["existing.layers_removed"] = 1,
      ["existing.coverings"] = { old("asphalt_shingle", true), old("asphalt_shingle", false) } },
    expect = "fail", required = 2, found = 1 },
  { "both of two come off",
    with = { ["existing.layers"] = 2, ["existing.layers_removed"] = 2,
      ["existing.coverings"] = { old("asphalt_shingle", true), old("wood_shingle", true) } },
    expect = "pass", required = 2, found = 2 },
  { "an overlay is no tear-off", with = overlay(), expect = "not_applicable" },
  { "layers not said", without = { "existing.layers", "existing.layers_removed" },
    expect = "open" },
  { "a tear-off takes off what is there", without = { "existing.layers_removed" },
    expect = "pass", found = 1 },
}

-- IRC R908.3.1.1 item 2.
cases "layers.base_kind" {
  under = "model/irc-2021",
  { "asphalt over asphalt", with = overlay(), expect = "pass" },
  { "over slate", with = overlay { ["existing.coverings"] = { old("slate", false) } },
    expect = "fail" },
  { "over clay tile", with = overlay { ["existing.coverings"] = { old("clay_tile", false) } },
    expect = "fail" },
  { "over concrete tile",
    with = overlay { ["existing.coverings"] = { old("concrete_tile", false) } }, expect = "fail" },
  { "over asbestos-cement",
    with = overlay { ["existing.coverings"] = { old("asbestos_cement", false) } },
    expect = "fail" },
  { "over wood shake, where sources disagree",
    with = overlay { ["existing.coverings"] = { old("wood_shake", false) } }, expect = "pass" },
  { "a layer that comes off does not matter", expect = "not_applicable" },
  { "kind not known", with = overlay(), without = { "existing.coverings[1].kind" },
    expect = "open" },
}

cases "layers.base_kind" {
  under = "example/frostmere",
  { "over wood shake, where the county bars it",
    with = overlay { ["existing.coverings"] = { old("wood_shake", false) } }, expect = "fail" },
}

-- IRC R908.3.1.1 item 1.
cases "layers.base_condition" {
  under = "model/irc-2021",
  { "a sound base", with = overlay(), expect = "pass" },
  { "a water-soaked base", with = overlay { ["existing.condition"] = "water_soaked" },
    expect = "fail" },
  { "a rotted base", with = overlay { ["existing.condition"] = "rotted" }, expect = "fail" },
  { "condition not known", with = overlay(), without = { "existing.condition" },
    expect = "open" },
  { "a tear-off", with = { ["existing.condition"] = "rotted" }, expect = "not_applicable" },
}

-- IRC R908.4.
cases "layers.wood_hollow" {
  under = "model/irc-2021",
  { "old shingles under a hollow, covered first",
    with = overlay { ["existing.coverings"] = { old("wood_shingle", false) },
      ["existing.hidden_space_over_wood"] = true,
      ["existing.wood_covered_with_noncombustible"] = true },
    expect = "pass" },
  { "old shakes under a hollow, left bare",
    with = overlay { ["existing.coverings"] = { old("wood_shake", false) },
      ["existing.hidden_space_over_wood"] = true },
    expect = "fail" },
  { "no hollow is left", with = overlay { ["existing.coverings"] = { old("wood_shingle", false) } },
    expect = "not_applicable" },
  { "no wood stays", with = overlay { ["existing.hidden_space_over_wood"] = true },
    expect = "not_applicable" },
  { "hollow not known",
    with = overlay { ["existing.coverings"] = { old("wood_shingle", false) } },
    without = { "existing.hidden_space_over_wood" }, expect = "open" },
  { "cover not known",
    with = overlay { ["existing.coverings"] = { old("wood_shingle", false) },
      ["existing.hidden_space_over_wood"] = true },
    without = { "existing.wood_covered_with_noncombustible" }, expect = "open" },
}

-- IRC R908.3.1 item 1.
cases "layers.maker" {
  under = "model/irc-2021",
  { "the maker allows it", with = overlay(), expect = "pass" },
  { "the maker does not", with = overlay { ["covering.maker_allows_overlay"] = false },
    expect = "fail" },
  { "nobody has looked", with = overlay(), without = { "covering.maker_allows_overlay" },
    expect = "open" },
  { "a tear-off", expect = "not_applicable" },
}

cases "layers.maker" {
  under = "model/irc-2018",
  { "by a figure read in a sister text", with = overlay(), expect = "pass" },
}

-- The hail bar of IRC R907.3 to 2012, which the county of these cases keeps.
cases "layers.hail" {
  under = "example/frostmere",
  { "little hail", with = overlay(), expect = "pass" },
  { "moderate hail", with = overlay { ["site.hail_exposure"] = "moderate" }, expect = "fail" },
  { "severe hail", with = overlay { ["site.hail_exposure"] = "severe" }, expect = "fail" },
  { "severe hail over wood shingles",
    with = overlay { ["site.hail_exposure"] = "severe",
      ["existing.coverings"] = { old("wood_shingle", false) } },
    expect = "not_applicable" },
  { "hail not known", with = overlay(), without = { "site.hail_exposure" }, expect = "open" },
}

cases "layers.hail" {
  under = "model/irc-2021",
  { "the model code dropped it", with = overlay { ["site.hail_exposure"] = "severe" },
    expect = "not_applicable" },
}

-- Weight. 240 lb to the square is 2.4 psf; 7/16 in of panel at 3.2 psf an inch 1.4; a
-- roll of unstated weight 0.8: 4.6 psf along the slope, x 1.0833 at 5:12 = 4.98
-- over the level. A trade journal takes 300 lb for laminated shingles.
local function weighed(changes)
  local with = { ["covering.weight_lb_per_square"] = 240 }
  for place, value in pairs(changes or {}) do with[place] = value end
  return with
end

cases "layers.dead_load" {
  under = "model/irc-2021",
  { "one layer of strip shingles", with = weighed(), expect = "pass", where = "main front",
    required = 10, found = 4.98 },
  { "a lighter roll, by its label",
    with = weighed { ["underlayments[1].weight_lb_per_square"] = 15 }, expect = "pass",
    where = "main front", found = 4.28 },
  { "two layers of laminated shingles",
    with = weighed(overlay { ["covering.weight_lb_per_square"] = 300,
      ["existing.coverings[1].weight_lb_per_square"] = 300 }),
    expect = "pass", where = "main front", found = 8.88 },
  { "slate weight", with = weighed { ["covering.weight_lb_per_square"] = 960 }, expect = "warn",
    where = "main front", found = 12.78 },
  -- 10 psf over the level at 4:12 is 10 / 1.05409 = 9.4868 along it; less 2.2 is 728.68 lb.
  { "the assumed load, exactly", with = weighed { ["covering.weight_lb_per_square"] = 728.68 },
    expect = "pass", where = "porch", required = 10, found = 10 },
  -- 9.491 and 9.492 psf along the slope: 10.0044 still prints as 10, 10.0054 does not.
  { "a hair over it prints the same", with = weighed { ["covering.weight_lb_per_square"] = 729.1 },
    expect = "pass", where = "porch", found = 10, says = "common practice, not code" },
  { "and then 10.01 is too much", with = weighed { ["covering.weight_lb_per_square"] = 729.2 },
    expect = "warn", where = "porch", found = 10.01 },
  -- Boards 3/4 in thick and the same roll are 3.05 psf: the same sums again.
  { "over boards, the assumed load", with = weighed { ["covering.weight_lb_per_square"] = 644.1,
    ["decks[1].kind"] = "board", ["decks[1].thickness_in"] = 0.75 }, expect = "pass",
    where = "porch", found = 10 },
  { "over boards, too much", with = weighed { ["covering.weight_lb_per_square"] = 644.2,
    ["decks[1].kind"] = "board", ["decks[1].thickness_in"] = 0.75 }, expect = "warn",
    where = "porch", found = 10.01 },
  { "panels over the old deck count", with = weighed { ["decks[1].work"] = "paneled_over",
    ["decks[1].over_panel_thickness_in"] = 0.375 }, expect = "pass", where = "main front",
    found = 6.28 },
  { "boards weigh by the inch too", with = weighed { ["decks[1].kind"] = "board",
    ["decks[1].thickness_in"] = 0.75 }, expect = "pass", where = "main front", found = 5.9 },
  { "new weight not known", expect = "open", where = "main front" },
  { "old weight not known", with = weighed(overlay()), expect = "open", where = "main front" },
  { "deck not known", with = weighed(), without = { "decks[1].thickness_in" }, expect = "open",
    where = "porch" },
}

-- Coatings: over spray foam in older text, over most low roofs since 2021.
local function coating(kind)
  return overlay { ["covering.kind"] = "coating", ["existing.coverings[1].kind"] = kind }
end

cases "layers.coating" {
  under = "model/irc-2021",
  { "over metal", with = coating "metal_panel", expect = "pass" },
  { "over built-up", with = coating "built_up", expect = "pass" },
  { "over asphalt shingles", with = coating "asphalt_shingle", expect = "fail" },
  { "over what is not known", with = coating "built_up",
    without = { "existing.coverings[1].kind" }, expect = "open" },
  { "no coating", expect = "not_applicable" },
}

-- Torn off to the deck there is nothing that a coating may lie over.
cases "layers.under_coating" {
  under = "model/irc-2021",
  { "over metal", with = coating "metal_panel", expect = "pass" },
  { "on a bare deck", with = { ["covering.kind"] = "coating" }, expect = "fail" },
  { "layers not told", with = coating "built_up", without = { "existing.layers" },
    expect = "open" },
  { "no coating", expect = "not_applicable" },
}

cases "layers.coating" {
  under = "model/irc-2015",
  { "over metal", with = coating "metal_panel", expect = "fail" },
  { "over spray foam, by a sister text", with = coating "spray_foam", expect = "pass" },
}

-- Everything that a coating may lie over since 2021.
for _, kind in ipairs { "coating", "metal_panel", "roll_roofing", "built_up", "spray_foam" } do
  cases "layers.coating" {
    under = "model/irc-2021",
    { "over old " .. kind, with = coating(kind), expect = "pass" },
  }
end

-- What cannot be.
cases "layers.total" {
  under = "model/irc-2021",
  { "more layers than are listed", with = { ["existing.layers"] = 2 }, expect = "refused",
    says = "lists 1 of them, but /existing/layers says 2" },
  { "more layers off than are there", with = { ["existing.layers_removed"] = 2 },
    expect = "refused", says = "cannot come off a roof that has 1" },
  { "fewer marked as removed", with = { ["existing.coverings[1].removed"] = false },
    expect = "refused", says = "0 of /existing/coverings are marked removed" },
  { "off from under one that stays", with = { ["existing.layers"] = 2,
    ["existing.coverings"] = { { kind = "asphalt_shingle", removed = false },
      { kind = "wood_shingle", removed = true } } },
    expect = "refused", says = "comes off from under layer 1" },
  { "an overlay over nothing", with = { ["scope.method"] = "overlay" }, expect = "refused",
    says = "none stays" },
}

-- 240 lb a square is 2.4 psf: on the main roof two of them, on the porch, stripped, one.
cases "layers.dead_load" {
  under = "model/irc-2021",
  { "a plane with an old layer under the new", with = weighed(porch_stripped {
      ["existing.coverings[1].weight_lb_per_square"] = 240,
      ["existing.coverings[2].weight_lb_per_square"] = 240,
      ["covering.weight_lb_per_square"] = 240 }), expect = "pass", where = "main front",
    found = 7.58 },
  { "a plane stripped of both", with = weighed(porch_stripped {
      ["existing.coverings[1].weight_lb_per_square"] = 240,
      ["existing.coverings[2].weight_lb_per_square"] = 240,
      ["covering.weight_lb_per_square"] = 240 }), expect = "pass", where = "porch",
    found = 4.85 },
  { "layers of two kinds: which lies where is not said", with = weighed(porch_stripped {
      ["existing.coverings[1].weight_lb_per_square"] = 240,
      ["existing.coverings[2].weight_lb_per_square"] = 300,
      ["existing.coverings[2].kind"] = "wood_shingle",
      ["covering.weight_lb_per_square"] = 240 }), expect = "open", where = "main front" },
}
