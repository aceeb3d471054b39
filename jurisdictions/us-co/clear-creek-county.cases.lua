-- Cases of Clear Creek County, against IRC 2015.

local OVERLAY = { ["scope.method"] = "overlay", ["existing.layers_removed"] = 0,
  ["existing.coverings[1].removed"] = false }

cases "layers.overlay" {
  under = "us-co/clear-creek-county",
  { "an overlay", with = OVERLAY, expect = "fail" },
  { "under the code it follows", under = "model/irc-2015", with = OVERLAY, expect = "pass" },
}

cases "layers.total" {
  under = "us-co/clear-creek-county",
  { "one layer, exactly", expect = "pass", required = 1, found = 1 },
  { "two", with = OVERLAY, expect = "fail", required = 1, found = 2 },
}

cases "fire.class" {
  under = "us-co/clear-creek-county",
  { "class A", expect = "pass" },
  { "class B", with = { ["covering.fire_class"] = "B" }, expect = "fail" },
  { "class B under the code it follows", under = "model/irc-2015",
    with = { ["covering.fire_class"] = "B" }, expect = "not_applicable" },
}

-- Mid-roof is another word for the dry-in here.
cases "inspection.mid_roof" {
  under = "us-co/clear-creek-county", from = "paperwork",
  { "a visit", expect = "pass" },
  { "photographs do not do", with = { ["inspection.mid_roof.proof"] = "photos" },
    expect = "fail" },
  { "the code it follows leaves it to the place", under = "model/irc-2015",
    with = { ["inspection.mid_roof.proof"] = "none" }, expect = "open" },
}

cases "inspection.mid_roof_moment" {
  under = "us-co/clear-creek-county", from = "paperwork",
  { "dried in", expect = "pass" },
  { "some courses up is another moment", with = {
    ["inspection.mid_roof.moment"] = "courses_laid" }, expect = "fail" },
}

cases "inspection.deck" {
  under = "us-co/clear-creek-county", from = "paperwork",
  { "new deck, not looked at", with = { ["inspection.deck.proof"] = "none" }, expect = "fail" },
  { "no new deck", with = { ["inspection.deck.proof"] = "none", ["decks[1].work"] = "kept" },
    expect = "not_applicable" },
}

cases "inspection.access" {
  under = "us-co/clear-creek-county", from = "paperwork",
  { "a ladder", expect = "pass" },
  { "a drone", with = { ["inspection.access"] = "drone" }, expect = "fail" },
}

cases "inspection.snow" {
  under = "us-co/clear-creek-county", from = "paperwork",
  { "snow on the roof", with = { ["site.snow_on_roof"] = true }, expect = "fail" },
  { "under the code it follows", under = "model/irc-2015",
    with = { ["site.snow_on_roof"] = true }, expect = "open" },
}

cases "alarms.co_affidavit" {
  under = "us-co/clear-creek-county", from = "paperwork",
  { "an affidavit", expect = "pass" },
  { "a form is none", with = { ["alarms.proof"] = "signed_form" }, expect = "fail" },
  { "under the code it follows", under = "model/irc-2015",
    with = { ["alarms.proof"] = "none" }, expect = "not_applicable" },
}

cases "ice_barrier.reach" {
  under = "us-co/clear-creek-county",
  { "none", with = { ["roof.edges[1].ice_barrier_reach_in"] = 0 },
    expect = "fail", where = "front eave" },
}
