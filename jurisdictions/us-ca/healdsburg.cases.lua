-- Cases of Healdsburg, beside the state.

local OUT = { ["site.fire_zone"] = "none", ["site.state_fire_area"] = false }

cases "fire.class" {
  under = "us-ca/healdsburg", with = OUT,
  { "class B", with = { ["covering.fire_class"] = "B" }, expect = "fail" },
  { "class A", expect = "pass" },
  { "class B under the state", under = "us-ca", with = { ["covering.fire_class"] = "B" },
    expect = "pass" },
}

cases "inspection.address_size" {
  under = "us-ca/healdsburg", from = "paperwork",
  { "4 in and 1/2 in, exactly", expect = "pass" },
  { "3 in", with = { ["site.address_height_in"] = 3 }, expect = "fail" },
}

cases "inspection.spark_arrester" {
  under = "us-ca/healdsburg", from = "paperwork",
  { "none", with = { ["house.spark_arrester"] = false }, expect = "fail" },
}

cases "alarms.smoke" {
  under = "us-ca/healdsburg", from = "paperwork",
  { "none in the halls", with = { ["alarms.smoke_at"] = { "each_bedroom" } }, expect = "fail" },
}

cases "inspection.deck" {
  under = "us-ca/healdsburg", from = "paperwork",
  { "looked at", expect = "pass" },
  { "not", with = { ["inspection.deck.proof"] = "none" }, expect = "fail" },
}
