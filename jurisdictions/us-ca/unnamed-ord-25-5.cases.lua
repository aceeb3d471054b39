-- Cases of ordinance 25-5, beside the state.

cases "fire.class" {
  under = "us-ca/unnamed-ord-25-5",
  with = { ["site.state_fire_area"] = false, ["site.fire_zone"] = "none" },
  { "class C, which the state takes there", with = { ["covering.fire_class"] = "C" },
    expect = "fail" },
  { "class B", with = { ["covering.fire_class"] = "B" }, expect = "warn", says = "freeze" },
  { "class A", expect = "warn" },
  { "class B in a very high zone", with = { ["covering.fire_class"] = "B",
    ["site.fire_zone"] = "very_high" }, expect = "fail" },
  { "class C the day before", date = "2025-11-24", with = { ["covering.fire_class"] = "C" },
    expect = "refused", says = "from 2025-11-25" },
  { "class C under the state", under = "us-ca", with = { ["covering.fire_class"] = "C" },
    expect = "pass" },
}

cases "deck.solid" {
  under = "us-ca/unnamed-ord-25-5", with = { ["covering.kind"] = "concrete_tile" },
  { "spaced boards kept under tile", with = { ["decks[1].kind"] = "spaced_board",
    ["decks[1].work"] = "kept" }, expect = "fail" },
  { "panels over them", with = { ["decks[1].kind"] = "spaced_board",
    ["decks[1].work"] = "paneled_over" }, expect = "pass" },
  { "the state asks it of shingles only; what tile asks is not held", under = "us-ca",
    with = { ["decks[1].kind"] = "spaced_board", ["decks[1].work"] = "kept" },
    expect = "open" },
}

local OVER_WOOD = { ["scope.method"] = "overlay", ["existing.layers_removed"] = 0,
  ["existing.coverings[1].removed"] = false, ["existing.coverings[1].kind"] = "wood_shingle" }

cases "layers.base_kind" {
  under = "us-ca/unnamed-ord-25-5", with = OVER_WOOD,
  { "wood shingles covered over", expect = "fail" },
  { "under the state", under = "us-ca", expect = "pass" },
}

cases "inspection.pre" {
  under = "us-ca/unnamed-ord-25-5", from = "paperwork",
  with = { ["inspection.pre.proof"] = "none" },
  { "an overlay", with = { ["scope.method"] = "overlay", ["existing.layers_removed"] = 0,
    ["existing.coverings[1].removed"] = false }, expect = "fail" },
  { "a tear-off is looked at bare instead", expect = "not_applicable" },
}

cases "inspection.deck" {
  under = "us-ca/unnamed-ord-25-5", from = "paperwork",
  with = { ["inspection.deck.proof"] = "none" },
  { "a tear-off", expect = "fail" },
  { "under the state", under = "us-ca", expect = "open" },
}

for _, kind in ipairs { "wood_shake", "slate", "clay_tile", "concrete_tile",
  "asbestos_cement" } do
  cases "layers.base_kind" {
    under = "us-ca/unnamed-ord-25-5", with = OVER_WOOD,
    { kind .. " covered over", with = { ["existing.coverings[1].kind"] = kind },
      expect = "fail" },
  }
end
cases "layers.base_kind" {
  under = "us-ca/unnamed-ord-25-5", with = OVER_WOOD,
  { "asphalt covered over", with = { ["existing.coverings[1].kind"] = "asphalt_shingle" },
    expect = "warn" },
}
