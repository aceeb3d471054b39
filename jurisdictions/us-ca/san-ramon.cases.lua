-- Cases of San Ramon, beside the state.

local function plane(share)
  return { ["permit.status"] = "none", ["roof.slopes[3].replaced_percent"] = share }
end

cases "permit.by_plane_share" {
  under = "us-ca/san-ramon", from = "paperwork",
  { "exactly a quarter of the porch", with = plane(25), expect = "pass", where = "porch",
    required = 25 },
  { "more than a quarter of it", with = plane(26), expect = "fail", where = "porch" },
  { "every reroof needs one by the state's book", under = "us-ca", with = plane(20),
    expect = "not_applicable", where = "porch" },
}

cases "inspection.deputy" {
  under = "us-ca/san-ramon",
  { "not known whether there is one", with = { ["roof.slopes[3].pitch"] = "0.2:12" },
    expect = "open", where = "porch" },
}

cases "inspection.deputy" {
  under = "us-ca/san-ramon", with = { ["inspection.deputy"] = false },
  { "under 1/4 in to the foot", with = { ["roof.slopes[3].pitch"] = "0.2:12" },
    expect = "fail", where = "porch" },
  { "with a deputy", with = { ["roof.slopes[3].pitch"] = "0.2:12",
    ["inspection.deputy"] = true }, expect = "pass", where = "porch" },
  { "exactly 1/4 in", with = { ["roof.slopes[3].pitch"] = "0.25:12" },
    expect = "not_applicable", where = "porch" },
  { "not asked by the state", under = "us-ca", with = { ["roof.slopes[3].pitch"] = "0.2:12" },
    expect = "not_applicable", where = "porch" },
}

cases "inspection.mid_roof_moment" {
  under = "us-ca/san-ramon", from = "paperwork",
  { "some courses laid", with = { ["inspection.mid_roof.moment"] = "courses_laid" },
    expect = "warn" },
  { "dried in is another moment", expect = "fail" },
}
