-- Cases of Lafayette: what its page adds, against IRC 2015.

local function hail(class, more)
  local with = { ["covering.UL_2218_class"] = class, ["existing.hail_damaged"] = false }
  for place, value in pairs(more or {}) do with[place] = value end
  return with
end

local function fell(day, documented)
  return hail("3", { ["existing.hail_damaged"] = true, ["existing.hail_on"] = day,
    ["existing.hail_documented"] = documented })
end

cases "shingle.hail_label" {
  under = "us-co/lafayette",
  { "class 4", with = hail "4", expect = "pass" },
  { "class 3", with = hail "3", expect = "fail", found = "3" },
  { "documented hail of the last day is let off", with = fell("2019-07-31", true),
    expect = "not_applicable" },
  { "hail of the day after is not", with = fell("2019-08-01", true), expect = "fail" },
  { "nor is hail that no paper shows", with = fell("2019-07-31", false), expect = "fail" },
  { "class not known", with = { ["existing.hail_damaged"] = false }, expect = "open" },
  { "the day before it began", date = "2021-03-14", expect = "refused",
    says = "from 2021-03-15" },
  { "not asked for by the code it follows", under = "model/irc-2015", with = hail "none",
    expect = "not_applicable" },
}

cases "shingle.hail_proof" {
  under = "us-co/lafayette", stage = "final", with = { ["existing.hail_damaged"] = false },
  { "a wrapper", with = { ["covering.hail_proof"] = "wrapper" }, expect = "pass" },
  { "nothing", with = { ["covering.hail_proof"] = "none" }, expect = "fail" },
  { "not known", expect = "open" },
}

cases "shingle.wind_label" {
  under = "us-co/lafayette",
  { "D7158 H", expect = "pass" },
  { "D3161 F alone", with = { ["covering.D7158_class"] = "none" }, expect = "pass" },
  { "D7158 D and D3161 D", with = { ["covering.D7158_class"] = "D",
    ["covering.D3161_class"] = "D" }, expect = "fail" },
  { "the same at this speed under the code it follows", under = "model/irc-2015",
    with = { ["covering.D7158_class"] = "D" }, expect = "not_applicable" },
}

cases "ice_barrier.kind" {
  under = "us-co/lafayette", with = { ["ice_barrier.kind"] = "none" },
  { "none, whatever the table says", expect = "fail" },
  { "the table's no counts under the code it follows", under = "model/irc-2015",
    expect = "not_applicable" },
}

cases "permit.by_area" {
  under = "us-co/lafayette", from = "paperwork",
  { "exactly one square", with = { ["permit.status"] = "none", ["scope.roof_share_percent"] = 7.8,
    ["scope.area_sqft"] = 100 },
    expect = "fail" },
  { "under one", with = { ["permit.status"] = "none", ["scope.roof_share_percent"] = 7.7,
    ["scope.area_sqft"] = 99.9 },
    expect = "pass" },
  { "the code it follows asks for one always", under = "model/irc-2015",
    expect = "not_applicable" },
}

cases "layers.total" {
  under = "us-co/lafayette",
  { "an overlay of one makes two, exactly", with = { ["scope.method"] = "overlay",
    ["existing.layers_removed"] = 0, ["existing.coverings[1].removed"] = false },
    expect = "pass", required = 2, found = 2 },
}

cases "shingle.hail_proof" {
  under = "us-co/lafayette", stage = "final", with = { ["existing.hail_damaged"] = false },
  { "the maker's papers", with = { ["covering.hail_proof"] = "papers" }, expect = "pass" },
}
cases "shingle.wind_label" {
  under = "us-co/lafayette",
  { "D7158 H alone", with = { ["covering.D3161_class"] = "none" }, expect = "pass" },
  { "D7158 G alone", with = { ["covering.D7158_class"] = "G",
    ["covering.D3161_class"] = "none" }, expect = "pass" },
}
