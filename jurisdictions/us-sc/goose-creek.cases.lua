-- Cases of Goose Creek, beside IRC 2012.

cases "permit.visible" {
  under = "us-sc/goose-creek", from = "paperwork",
  { "not seen from the street", with = { ["permit.seen_from_street"] = false },
    expect = "fail" },
  { "under IRC 2012", under = "model/irc-2012",
    with = { ["permit.seen_from_street"] = false }, expect = "not_applicable" },
}

cases "inspection.final" {
  under = "us-sc/goose-creek", from = "paperwork",
  with = { ["inspection.final.proof"] = "none" },
  { "nobody comes", expect = "not_applicable" },
  { "under IRC 2012", under = "model/irc-2012", expect = "fail" },
}

cases "fasteners.count" {
  under = "us-sc/goose-creek", with = { ["covering.nails_printed"] = 6 },
  { "four where the maker prints six", expect = "fail", required = 6 },
  { "six", with = { ["fasteners.per_shingle"] = 6 }, expect = "pass", required = 6 },
  { "the maker's sheet not read", without = { "covering.nails_printed" }, with = {},
    expect = "open" },
}

cases "drip_edge.eave" {
  under = "us-sc/goose-creek", with = { ["roof.edges[1].drip_edge"] = false },
  { "none asked for", expect = "not_applicable", where = "front eave" },
}

cases "drip_edge.rake" {
  under = "us-sc/goose-creek",
  { "none", with = { ["roof.edges[4].drip_edge"] = false },
    expect = "not_applicable", where = "front left rake" },
}

cases "inspection.site_clean" {
  under = "us-sc/goose-creek", from = "paperwork",
  { "clean", expect = "pass" },
  { "not", with = { ["site.clean"] = false }, expect = "fail" },
}
