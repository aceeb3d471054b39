-- Cases of Carlsbad, beside the state.

local OUT = { ["site.fire_zone"] = "none", ["site.state_fire_area"] = false }

cases "fire.class" {
  under = "us-ca/carlsbad", with = OUT,
  { "class B", with = { ["covering.fire_class"] = "B" }, expect = "fail" },
  { "class B under the state", under = "us-ca", with = { ["covering.fire_class"] = "B" },
    expect = "warn" },
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
  { "on its first day", date = "2022-06-10", expect = "warn" },
}

cases "inspection.ladder_past" {
  under = "us-ca/carlsbad", from = "paperwork",
  { "two rungs, exactly", with = { ["inspection.ladder_past_eave_in"] = 24 }, expect = "warn",
    required = 24 },
  { "one", with = { ["inspection.ladder_past_eave_in"] = 12 }, expect = "fail" },
}
