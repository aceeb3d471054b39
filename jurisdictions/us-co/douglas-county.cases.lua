-- Cases of Douglas County, against IRC 2021.

cases "inspection.mid_roof" {
  under = "us-co/douglas-county", from = "paperwork",
  with = { ["inspection.mid_roof.proof"] = "none" },
  { "tile", with = { ["covering.kind"] = "concrete_tile" }, expect = "fail" },
  { "shingles have no such look", with = { ["covering.on_battens"] = false },
    expect = "not_applicable" },
  { "metal on battens has", with = { ["covering.kind"] = "metal_panel",
    ["covering.on_battens"] = true }, expect = "fail" },
  { "metal, battens not told", with = { ["covering.kind"] = "metal_panel" }, expect = "open" },
  { "tile under IRC 2021", under = "model/irc-2021",
    with = { ["covering.kind"] = "concrete_tile" }, expect = "open" },
}

cases "papers.engineer" {
  under = "us-co/douglas-county", from = "paperwork", with = { ["papers.engineer_report"] = false },
  { "600 lb to the square, exactly", with = { ["covering.weight_lb_per_square"] = 600 },
    expect = "pass", required = 600 },
  { "601 lb without an engineer", with = { ["covering.weight_lb_per_square"] = 601 },
    expect = "fail" },
  { "under IRC 2021", under = "model/irc-2021",
    with = { ["covering.weight_lb_per_square"] = 601 }, expect = "open" },
}

cases "fire.material_ban" {
  under = "us-co/douglas-county", with = { ["covering.kind"] = "wood_shake" },
  { "shakes in the red area", with = { ["site.local_fire_zone"] = "red" }, expect = "fail" },
  { "wood shingles in the red area", with = { ["covering.kind"] = "wood_shingle",
    ["site.local_fire_zone"] = "red" }, expect = "fail" },
  { "shakes outside it", with = { ["site.local_fire_zone"] = "other" }, expect = "pass" },
  { "area not known", expect = "open", says = "/site/local_fire_zone" },
  { "shingles in the red area", with = { ["covering.kind"] = "asphalt_shingle",
    ["site.local_fire_zone"] = "red" }, expect = "pass" },
  { "under IRC 2021", under = "model/irc-2021", expect = "not_applicable" },
}

cases "fire.class_by_material" {
  under = "us-co/douglas-county",
  { "shakes of class C", with = { ["covering.kind"] = "wood_shake",
    ["covering.fire_class"] = "C" }, expect = "pass" },
  { "shakes of no class", with = { ["covering.kind"] = "wood_shake",
    ["covering.fire_class"] = "none" }, expect = "fail" },
  { "shakes of class A", with = { ["covering.kind"] = "wood_shake" }, expect = "pass" },
  { "shakes of class B", with = { ["covering.kind"] = "wood_shake",
    ["covering.fire_class"] = "B" }, expect = "pass" },
  { "no class is asked of metal panels", with = { ["covering.kind"] = "metal_panel",
    ["covering.fire_class"] = "none" }, expect = "not_applicable" },
  { "nor of metal shingles", with = { ["covering.kind"] = "metal_shingle",
    ["covering.fire_class"] = "none" }, expect = "not_applicable" },
  { "no class is asked of shingles", with = { ["covering.fire_class"] = "none" },
    expect = "not_applicable" },
}

cases "inspection.ladder_tied" {
  under = "us-co/douglas-county", from = "paperwork",
  { "not tied", with = { ["inspection.ladder_tied"] = false }, expect = "fail" },
  { "under IRC 2021", under = "model/irc-2021",
    with = { ["inspection.ladder_tied"] = false }, expect = "open" },
}

-- 150 mph is past the tables for ordinary wind of the code it follows.
cases "underlayment.lap_spacing" {
  under = "us-co/douglas-county", with = { ["site.wind_vult_mph"] = 150,
    ["site.wind_design_required"] = true, ["underlayments[1].lap_spacing_in"] = 12 },
  { "no high-wind fastening", expect = "not_applicable", says = "Dropped by Douglas County" },
  { "12 in under IRC 2021", under = "model/irc-2021", expect = "fail",
    where = "main front" },
}

cases "inspection.mid_roof" {
  under = "us-co/douglas-county", from = "paperwork",
  with = { ["inspection.mid_roof.proof"] = "none" },
  { "slate", with = { ["covering.kind"] = "slate" }, expect = "fail" },
  { "clay tile", with = { ["covering.kind"] = "clay_tile" }, expect = "fail" },
}
