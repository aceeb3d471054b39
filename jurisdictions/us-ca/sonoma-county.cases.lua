-- Cases of Sonoma County, beside the state.

local function job(share, added, class)
  return { ["scope.roof_share_percent"] = share, ["scope.addition_floor_sqft"] = added,
    ["covering.fire_class"] = class, ["site.fire_zone"] = "none",
    ["site.state_fire_area"] = false, ["scope.earlier_roofing"] = {} }
end

cases "fire.class" {
  under = "us-ca/sonoma-county",
  { "exactly half, class B", with = job(50, 0, "B"), expect = "pass" },
  { "over half, class B", with = job(50.1, 0, "B"), expect = "fail" },
  { "over half, class A", with = job(51, 0, "A"), expect = "pass" },
  { "a small piece beside 640 sq ft of new floor", with = job(10, 640, "B"), expect = "pass" },
  { "a small piece beside more", with = job(10, 640.1, "B"), expect = "fail" },
  { "addition not told", with = { ["scope.roof_share_percent"] = 10,
    ["covering.fire_class"] = "B", ["site.fire_zone"] = "none",
    ["site.state_fire_area"] = false, ["scope.earlier_roofing"] = {} }, expect = "open" },
  { "over half, class B, under the state", under = "us-ca", with = job(51, 0, "B"),
    expect = "pass" },
}

cases "inspection.pre" {
  under = "us-ca/sonoma-county", from = "paperwork",
  { "none", with = { ["inspection.pre.proof"] = "none" }, expect = "fail" },
  { "under the state", under = "us-ca", with = { ["inspection.pre.proof"] = "none" },
    expect = "open" },
}

cases "permit.license" {
  under = "us-ca/sonoma-county", from = "paperwork",
  { "a roofer's", expect = "pass" },
  { "a general one", with = { ["contractor.license"] = "general" }, expect = "fail" },
}

cases "inspection.pre" {
  under = "us-ca/sonoma-county", from = "paperwork",
  { "none before an overlay", expect = "fail", with = { ["inspection.pre.proof"] = "none",
    ["scope.method"] = "overlay", ["existing.layers_removed"] = 0,
    ["existing.coverings[1].removed"] = false } },
}

-- Exactly what the page asks for, and short of each in turn.
local STATES = { "squares", "layers_removed", "deck_replaced", "price" }
cases "papers.application" {
  under = "us-ca/sonoma-county", from = "paperwork",
  { "exactly that", with = { ["papers.application_states"] = STATES }, expect = "pass" },
}
for left_out, word in ipairs(STATES) do
  local rest = {}
  for i, one in ipairs(STATES) do if i ~= left_out then table.insert(rest, one) end end
  cases "papers.application" {
    under = "us-ca/sonoma-county", from = "paperwork",
    { "without " .. word, with = { ["papers.application_states"] = rest }, expect = "fail" },
  }
end

cases "permit.violations" {
  under = "us-ca/sonoma-county", from = "paperwork",
  { "none open", expect = "pass" },
  { "one", with = { ["site.open_violations"] = true }, expect = "fail" },
}

cases "permit.holder" {
  under = "us-ca/sonoma-county", from = "paperwork",
  { "the contractor", expect = "pass" },
  { "someone else", with = { ["permit.holder"] = "other" }, expect = "fail" },
  { "the owner", with = { ["permit.holder"] = "owner" }, expect = "pass" },
}
