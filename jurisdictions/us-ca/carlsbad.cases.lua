-- Cases of Carlsbad, beside the state.

local OUT = { ["site.fire_zone"] = "none", ["site.state_fire_area"] = false }

cases "fire.class" {
  under = "us-ca/carlsbad", with = OUT,
  { "class B", with = { ["covering.fire_class"] = "B" }, expect = "fail" },
  { "class B under the state", under = "us-ca", with = { ["covering.fire_class"] = "B" },
    expect = "pass" },
}

cases "fire.material_ban" {
  under = "us-ca/carlsbad",
  { "treated shakes of class A too", with = { ["covering.kind"] = "wood_shake",
    ["covering.fire_class"] = "A" }, expect = "fail" },
  { "under the state", under = "us-ca", with = { ["covering.kind"] = "wood_shake" },
    expect = "not_applicable" },
}

cases "inspection.deck" {
  under = "us-ca/carlsbad", from = "paperwork",
  with = { ["inspection.deck.proof"] = "self_certified" },
  { "the contractor's report the day before the policy", date = "2022-06-09",
    expect = "fail" },
  { "on its first day", date = "2022-06-10", expect = "pass" },
}

cases "inspection.ladder_past" {
  under = "us-ca/carlsbad", from = "paperwork",
  { "two rungs, exactly", with = { ["inspection.ladder_past_eave_in"] = 24 }, expect = "pass",
    required = 24 },
  { "one", with = { ["inspection.ladder_past_eave_in"] = 12 }, expect = "fail" },
}

-- Exactly what the form asks for, and short of each in turn.
local STATES = { "pitch", "old_layers", "old_covering", "new_covering", "fire_class", "weight", "squares",
  "listing_number", "structure_ok" }
cases "papers.application" {
  under = "us-ca/carlsbad", from = "paperwork",
  { "exactly that", with = { ["papers.application_states"] = STATES }, expect = "pass" },
}
for left_out, word in ipairs(STATES) do
  local rest = {}
  for i, one in ipairs(STATES) do if i ~= left_out then table.insert(rest, one) end end
  cases "papers.application" {
    under = "us-ca/carlsbad", from = "paperwork",
    { "without " .. word, with = { ["papers.application_states"] = rest }, expect = "fail" },
  }
end

cases "inspection.deck" {
  under = "us-ca/carlsbad", from = "paperwork",
  { "a visit the day before the policy", date = "2022-06-09", expect = "pass" },
  { "a visit on its first day", date = "2022-06-10", expect = "pass" },
}
-- What the policy takes at each look, and what it does not.
for _, visit in ipairs { "pre", "deck", "final" } do
  local with = { ["scope.method"] = "tear-off" }
  if visit == "pre" then
    with = { ["scope.method"] = "overlay", ["existing.layers_removed"] = 0,
      ["existing.coverings[1].removed"] = false }
  end
  local at = "inspection." .. visit .. ".proof"
  cases("inspection." .. visit) {
    under = "us-ca/carlsbad", date = "2022-06-10", from = "paperwork", with = with,
    { "a visit", with = { [at] = "visit" }, expect = "pass" },
    { "the contractor's report", with = { [at] = "self_certified" }, expect = "pass" },
    { "photographs", with = { [at] = "photos" }, expect = "fail" },
  }
end

cases "inspection.ladder_past" {
  under = "us-ca/carlsbad", from = "paperwork",
  { "23.999 in", with = { ["inspection.ladder_past_eave_in"] = 23.999 }, expect = "fail" },
}
