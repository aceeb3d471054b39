-- Cases of Garland, beside the state's default: "25 percent or more", so a quarter
-- itself is inside. The porch of 75.9 sq ft and the planes make 1,289.3 in all.

local function deck(sqft)
  return { ["permit.status"] = "none", ["decks[1].replaced_sqft"] = sqft }
end

cases "permit.by_deck_share" {
  under = "us-tx/garland", from = "paperwork",
  { "a quarter, as it prints", with = deck(322.3), expect = "fail" },
  { "a little less", with = deck(320), expect = "pass", required = 25 },
  { "any reroof by the state's default", under = "us-tx", with = deck(0),
    expect = "not_applicable" },
}

-- A job small by area is not free when its deck is.
cases "permit.by_deck_share" {
  under = "us-tx/garland", from = "paperwork",
  { "one square of covering over much new deck", with = { ["permit.status"] = "none",
    ["scope.roof_share_percent"] = 7, ["scope.area_sqft"] = 90,
    ["decks[1].replaced_sqft"] = 400 }, expect = "fail" },
}

cases "permit.by_material" {
  under = "us-tx/garland", from = "paperwork",
  { "tile for shingles", with = { ["permit.status"] = "none",
    ["scope.material_change"] = true }, expect = "fail" },
}

cases "permit.by_pitch" {
  under = "us-tx/garland", from = "paperwork",
  { "a new pitch", with = { ["permit.status"] = "none", ["scope.pitch_change"] = true },
    expect = "fail" },
}

cases "papers.plans" {
  under = "us-tx/garland", from = "paperwork", with = { ["scope.pitch_change"] = true },
  { "without drawings", with = { ["papers.plans"] = false }, expect = "fail" },
  { "by the state's default", under = "us-tx", with = { ["papers.plans"] = false },
    expect = "open" },
}
