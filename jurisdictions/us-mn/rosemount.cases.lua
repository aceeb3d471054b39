-- Cases of Rosemount, beside the state.

local OVERLAY = { ["scope.method"] = "overlay", ["existing.layers_removed"] = 0,
  ["existing.coverings[1].removed"] = false }

cases "layers.overlay" {
  under = "us-mn/rosemount", with = OVERLAY,
  { "an overlay", expect = "fail" },
  { "under the state", under = "us-mn", expect = "pass" },
}

cases "fire.material_ban" {
  under = "us-mn/rosemount", with = { ["covering.kind"] = "metal_panel" },
  { "metal panels on a one-family house", expect = "fail" },
  { "on a two-family house", with = { ["house.kind"] = "two_family" }, expect = "pass" },
  { "metal that looks like shingles", with = { ["covering.kind"] = "metal_shingle" },
    expect = "pass" },
  { "kind of house not known", without = { "house.kind" }, expect = "open" },
  { "under the state", under = "us-mn", expect = "not_applicable" },
}

cases "inspection.dry_in" {
  under = "us-mn/rosemount", from = "paperwork",
  { "shingled over without a look", with = { ["inspection.dry_in.proof"] = "none" },
    expect = "fail" },
  { "under the state", under = "us-mn", with = { ["inspection.dry_in.proof"] = "none" },
    expect = "open" },
}

-- 1,500 sq ft: 720 sq in by the smaller area, split 432 high and 540 low.
cases "ventilation.high_share" {
  under = "us-mn/rosemount", with = { ["attics[1].area_sqft"] = 1500,
    as_meant = { { at = "/attics" } } }, -- larger than the base job's roof
  { "44 percent high", expect = "fail", where = "attic" },
  { "under the state", under = "us-mn", expect = "warn", where = "attic" },
}

cases "layers.total" {
  under = "us-mn/rosemount",
  { "a tear-off leaves one", expect = "pass", required = 1, found = 1 },
  { "an overlay makes two", with = { ["scope.method"] = "overlay",
    ["existing.layers_removed"] = 0, ["existing.coverings[1].removed"] = false },
    expect = "fail", required = 1, found = 2 },
}
