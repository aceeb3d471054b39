-- Cases of Bellevue, beside the state. A shingle overlay doubles the weight of its
-- roof; a coating hardly adds to it.

local function overlay(weight)
  return { ["permit.status"] = "none", ["scope.method"] = "overlay",
    ["existing.layers_removed"] = 0, ["existing.coverings[1].removed"] = false,
    ["existing.coverings[1].weight_lb_per_square"] = 1000,
    ["covering.kind"] = weight < 100 and "coating" or "asphalt_shingle",
    ["covering.weight_lb_per_square"] = weight }
end

cases "permit.by_weight_rise" {
  under = "us-wa/bellevue", from = "paperwork",
  { "5 percent, exactly", with = overlay(50), expect = "pass", required = 5 },
  { "6 percent", with = overlay(60), expect = "fail" },
  { "shingles over shingles", with = overlay(240), expect = "fail" },
  { "any reroof under the state", under = "us-wa", with = overlay(50),
    expect = "not_applicable" },
}

cases "permit.by_method" {
  under = "us-wa/bellevue", from = "paperwork",
  { "a tear-off", with = { ["permit.status"] = "none" }, expect = "fail" },
  { "an overlay as such", with = overlay(50), expect = "not_applicable" },
}
