-- Cases of Arvada's old page, against IRC 2012.

cases "shingle.wind_label" {
  under = "us-co/arvada",
  { "class F", expect = "pass" },
  { "class D, enough for this speed elsewhere", with = { ["covering.D3161_class"] = "D" },
    expect = "fail", found = "D" },
  { "a D7158 label is not named", with = { ["covering.D7158_class"] = "H",
    ["covering.D3161_class"] = "none" }, expect = "fail" },
  { "class not known", without = { "covering.D3161_class" }, expect = "open" },
  { "the speed decides under IRC 2012", under = "model/irc-2012",
    with = { ["covering.D3161_class"] = "D" }, expect = "not_applicable" },
}

cases "drip_edge.eave" {
  under = "us-co/arvada", with = { ["roof.edges[1].drip_edge"] = false },
  { "none asked for", expect = "not_applicable", where = "front eave" },
  { "asked for since IRC 2012", under = "model/irc-2012", expect = "fail",
    where = "front eave" },
}

cases "drip_edge.rake" {
  under = "us-co/arvada",
  { "none", with = { ["roof.edges[4].drip_edge"] = false },
    expect = "not_applicable", where = "front left rake" },
}
