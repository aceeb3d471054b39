-- Cases of Daly City, beside the state.

cases "permit.by_area" {
  under = "us-ca/daly-city", from = "paperwork",
  { "exactly one square is free", with = { ["permit.status"] = "none",
    ["scope.area_sqft"] = 100, ["scope.roof_share_percent"] = 7.8 }, expect = "pass",
    required = 100 },
  { "more than one", with = { ["permit.status"] = "none", ["scope.area_sqft"] = 101,
    ["scope.roof_share_percent"] = 7.8 }, expect = "fail" },
  { "one square, of a whole roof", with = { ["permit.status"] = "none",
    ["scope.area_sqft"] = 100 }, expect = "refused", says = "/scope/area_sqft: is asked back" },
  { "under the state every reroof needs one", under = "us-ca",
    with = { ["permit.status"] = "none" }, expect = "not_applicable" },
}

cases "fire.class" {
  under = "us-ca/daly-city",
  with = { ["site.fire_zone"] = "none", ["site.state_fire_area"] = false },
  { "class C", with = { ["covering.fire_class"] = "C" }, expect = "fail" },
  { "class B", with = { ["covering.fire_class"] = "B" }, expect = "pass" },
}

cases "inspection.mid_roof" {
  under = "us-ca/daly-city", from = "paperwork",
  { "the one look it has", expect = "pass" },
  { "not held", with = { ["inspection.mid_roof.proof"] = "none" }, expect = "fail" },
}

cases "inspection.final" {
  under = "us-ca/daly-city", from = "paperwork",
  { "there is no other", with = { ["inspection.final.proof"] = "none" },
    expect = "not_applicable" },
  { "the state's book has one", under = "us-ca", with = { ["inspection.final.proof"] = "none" },
    expect = "fail" },
}

cases "permit.late_fee" {
  under = "us-ca/daly-city",
  { "waited for the permit", with = { ["permit.begun_before"] = false }, expect = "pass" },
  { "begun before it", with = { ["permit.begun_before"] = true }, expect = "fail",
    says = "a fee is charged" },
  { "not known", expect = "open" },
  { "no fee printed by the state", under = "us-ca", with = { ["permit.begun_before"] = true },
    expect = "not_applicable" },
}

cases "inspection.ladder_tied" {
  under = "us-ca/daly-city", from = "paperwork",
  { "tied", expect = "pass" },
  { "not tied", with = { ["inspection.ladder_tied"] = false }, expect = "fail" },
}

cases "inspection.ladder_past" {
  under = "us-ca/daly-city", from = "paperwork",
  { "36 in, exactly", expect = "pass", required = 36 },
  { "a hair less", with = { ["inspection.ladder_past_eave_in"] = 35.999 }, expect = "fail" },
}

cases "inspection.ladder_rating" {
  under = "us-ca/daly-city", from = "paperwork",
  { "300 lb, exactly", expect = "pass", required = 300 },
  { "a hair less", with = { ["inspection.ladder_rating_lb"] = 299.9 }, expect = "fail" },
}

cases "inspection.mid_roof_moment" {
  under = "us-ca/daly-city", from = "paperwork",
  { "with courses laid", with = { ["inspection.mid_roof.moment"] = "courses_laid" },
    expect = "pass" },
  { "dried in, and nothing laid", with = { ["inspection.mid_roof.moment"] = "dried_in" },
    expect = "fail" },
}

cases "permit.registration" {
  under = "us-ca/daly-city", from = "paperwork",
  { "registered", expect = "pass" },
  { "not", with = { ["contractor.registered"] = false }, expect = "fail" },
}

cases "papers.insurance" {
  under = "us-ca/daly-city", from = "paperwork",
  { "that of the workers", with = { ["contractor.insurance"] = { "workers_comp" } },
    expect = "pass" },
  { "only liability", with = { ["contractor.insurance"] = { "liability" } }, expect = "fail" },
}
