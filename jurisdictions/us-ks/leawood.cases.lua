-- Cases of Leawood, beside IRC 2021.

cases "permit.local_list" {
  under = "us-ks/leawood", from = "paperwork",
  { "listed", expect = "pass" },
  { "not", with = { ["covering.on_local_list"] = false }, expect = "fail" },
  { "under IRC 2021", under = "model/irc-2021", with = { ["covering.on_local_list"] = false },
    expect = "not_applicable" },
}

cases "fire.class_by_material" {
  under = "us-ks/leawood",
  { "shingles of class A", expect = "pass" },
  { "shingles of class B", with = { ["covering.fire_class"] = "B" }, expect = "fail" },
  { "metal of class A", with = { ["covering.kind"] = "metal_shingle" }, expect = "pass" },
  { "metal of class B", with = { ["covering.kind"] = "metal_shingle",
    ["covering.fire_class"] = "B" }, expect = "pass" },
  { "metal of class C", with = { ["covering.kind"] = "metal_shingle",
    ["covering.fire_class"] = "C" }, expect = "fail" },
  { "class not known", without = { "covering.fire_class" }, expect = "open" },
  { "under IRC 2021", under = "model/irc-2021", with = { ["covering.fire_class"] = "B" },
    expect = "not_applicable" },
}

local function open(days, done, extended)
  return { ["permit.open_days"] = days, ["permit.mostly_done"] = done,
    ["permit.extended"] = extended }
end

cases "permit.open" {
  under = "us-ks/leawood", from = "paperwork",
  { "60 days, exactly", with = open(60, false, false), expect = "pass", required = 60 },
  { "61", with = open(61, false, false), expect = "fail" },
  { "61, mostly done by then", with = open(61, true, false), expect = "pass" },
  -- How long an extension lasts the page does not say: the model code's 180 days.
  { "240, extended", with = open(240, false, true), expect = "pass", required = 240 },
  { "241, extended", with = open(241, false, true), expect = "fail" },
  { "under IRC 2021", under = "model/irc-2021", with = open(61, false, false),
    expect = "not_applicable" },
}

cases "papers.association_notice" {
  under = "us-ks/leawood", from = "paperwork",
  { "one business day", with = { ["papers.association_notice_days"] = 1 }, expect = "fail",
    required = 2 },
}

cases "permit.license" {
  under = "us-ks/leawood", from = "paperwork",
  { "a roofer's", expect = "pass" },
  { "none", with = { ["contractor.license"] = "none" }, expect = "fail" },
}
