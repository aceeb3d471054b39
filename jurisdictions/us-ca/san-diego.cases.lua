-- Cases of San Diego, beside the state: like for like is free.

local function unpermitted(changes)
  local with = { ["permit.status"] = "none", ["decks[1].work"] = "kept" }
  for place, value in pairs(changes or {}) do with[place] = value end
  return with
end

cases "permit.every" {
  under = "us-ca/san-diego", from = "paperwork",
  { "like for like", with = unpermitted(), expect = "not_applicable" },
  { "under the state", under = "us-ca", with = unpermitted(), expect = "fail" },
}

cases "permit.by_heavy_covering" {
  under = "us-ca/san-diego", from = "paperwork",
  { "6 psf, exactly", with = unpermitted { ["covering.weight_lb_per_square"] = 600 },
    expect = "pass", required = 600 },
  { "tile of 9 psf", with = unpermitted { ["covering.weight_lb_per_square"] = 900 },
    expect = "fail" },
}

cases "permit.by_spaced_deck" {
  under = "us-ca/san-diego", from = "paperwork",
  { "spaced boards come off", with = unpermitted { ["decks[1].kind"] = "spaced_board",
    ["decks[1].work"] = "replaced" }, expect = "fail" },
}

cases "permit.by_history" {
  under = "us-ca/san-diego", from = "paperwork",
  { "a historic site", with = unpermitted { ["site.historic"] = true }, expect = "fail" },
}

cases "permit.by_structure" {
  under = "us-ca/san-diego", from = "paperwork",
  { "rafters altered", with = unpermitted { ["scope.structure_altered"] = true },
    expect = "fail" },
}

cases "permit.by_deck" {
  under = "us-ca/san-diego", from = "paperwork",
  { "no new deck", with = unpermitted(), expect = "warn", says = "could not be read" },
  { "some", with = { ["permit.status"] = "none" }, expect = "fail" },
}

cases "permit.every" {
  under = "us-ca/san-diego", from = "paperwork",
  { "on the bulletin's first day", date = "2025-01-01", with = unpermitted(),
    expect = "not_applicable" },
  { "the day before", date = "2024-12-31", with = unpermitted(), expect = "refused",
    says = "from 2025-01-01" },
}
