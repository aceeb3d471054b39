-- Cases of Thousand Oaks, beside the state.

local OVERLAY = { ["scope.method"] = "overlay", ["existing.layers_removed"] = 0,
  ["existing.coverings[1].removed"] = false }

local function over(class, listed)
  local with = { ["existing.fire_class_left"] = class, ["covering.listed_over_old"] = listed }
  for place, value in pairs(OVERLAY) do with[place] = value end
  return with
end

cases "layers.overlay" {
  under = "us-ca/thousand-oaks",
  { "a tear-off", expect = "not_applicable" },
  { "an overlay listed over class A", with = over("A", true), expect = "pass" },
  { "an overlay listed over class B", with = over("B", true), expect = "pass" },
  { "over class C", with = over("C", true), expect = "fail" },
  { "without a listing", with = over("A", false), expect = "fail" },
  { "listing not known", with = OVERLAY, expect = "open" },
  { "without a listing under the state", under = "us-ca", with = over("A", false),
    expect = "pass" },
}

local function spaced(thickness, listed)
  return { ["decks[1].kind"] = "spaced_board", ["decks[1].work"] = "paneled_over",
    ["decks[1].over_panel_thickness_in"] = thickness, ["decks[1].shear_listed"] = listed }
end

cases "deck.thickness" {
  under = "us-ca/thousand-oaks",
  { "15/32, exactly", with = spaced(0.46875, false), expect = "pass", required = 0.46875 },
  { "7/16", with = spaced(0.4375, false), expect = "fail" },
  { "7/16 listed as equal", with = spaced(0.4375, true), expect = "pass" },
  { "7/16, listing not known", with = { ["decks[1].kind"] = "spaced_board",
    ["decks[1].work"] = "paneled_over", ["decks[1].over_panel_thickness_in"] = 0.4375 },
    expect = "open" },
  { "an old solid deck", expect = "not_applicable" },
  { "under the state", under = "us-ca", with = spaced(0.4375, false),
    expect = "not_applicable" },
}

local function piece(share, class, zone, earlier)
  return { ["scope.roof_share_percent"] = share, ["covering.fire_class"] = class,
    ["site.fire_zone"] = zone, ["scope.earlier_roofing"] = earlier or {},
    ["site.state_fire_area"] = false }
end

cases "fire.class" {
  under = "us-ca/thousand-oaks",
  { "the whole roof, class B", with = piece(100, "B", "none"), expect = "fail" },
  { "exactly half, class B", with = piece(50, "B", "none"), expect = "pass" },
  { "half and a little, class B", with = piece(50.1, "B", "none"), expect = "fail" },
  { "half, class C", with = piece(50, "C", "none"), expect = "fail" },
  { "half, class B, very high zone", with = piece(50, "B", "very_high"), expect = "fail" },
  { "30 percent after 25 within the year", with = piece(30, "B", "none",
    { { done_on = "2025-09-01", roof_share_percent = 25 } }), expect = "fail" },
  { "half, class A", with = piece(50, "A", "none"), expect = "warn" },
  { "class A", with = piece(100, "A", "none"), expect = "warn" },
  { "the whole roof, class B, under the state", under = "us-ca",
    with = piece(100, "B", "none"), expect = "pass" },
}

cases "deck.thickness" {
  under = "us-ca/thousand-oaks",
  { "0.468 in, and no listing", with = spaced(0.468, false), expect = "fail" },
}

cases "deck.solid" {
  under = "us-ca/thousand-oaks", with = { ["covering.kind"] = "concrete_tile" },
  { "spaced boards kept under tile", with = { ["decks[1].kind"] = "spaced_board",
    ["decks[1].work"] = "kept" }, expect = "fail" },
  { "panels over them", with = { ["decks[1].kind"] = "spaced_board",
    ["decks[1].work"] = "paneled_over" }, expect = "pass" },
}
