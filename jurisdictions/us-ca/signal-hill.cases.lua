-- Cases of Signal Hill: "26 percent or more", beside the state's "more than 50".

local function part(share, as_new, earlier)
  return { ["scope.roof_share_percent"] = share, ["scope.area_sqft"] = 12.89 * share,
    ["scope.part_as_new"] = as_new, ["scope.earlier_roofing"] = earlier or {} }
end

cases "permit.part_as_new" {
  under = "us-ca/signal-hill", from = "paperwork",
  { "exactly 26 percent, not built as new", with = part(26, false), expect = "fail" },
  { "exactly 26 percent, built as new", with = part(26, true), expect = "pass" },
  { "25.9 percent", with = part(25.9, false), expect = "pass", required = 26 },
  { "two pieces within 12 months", with = part(14,
    false, { { done_on = "2025-06-01", roof_share_percent = 12 } }), expect = "fail" },
  { "the same, the first longer ago", with = part(14,
    false, { { done_on = "2025-03-01", roof_share_percent = 12 } }), expect = "pass" },
  { "share not known", without = { "scope.roof_share_percent" },
    expect = "open" },
  { "not asked by the state", under = "us-ca", with = part(40, false),
    expect = "not_applicable" },
}

-- The state's trigger stays where it is: 51 percent, not 26.
cases "fire.whole_roof" {
  under = "us-ca/signal-hill", with = { ["site.fire_zone"] = "very_high",
    ["site.state_fire_area"] = false, ["scope.earlier_roofing"] = {},
    ["existing.fire_class_left"] = "C" },
  { "26 percent", with = { ["scope.roof_share_percent"] = 26 }, expect = "not_applicable" },
  { "51 percent", with = { ["scope.roof_share_percent"] = 51 }, expect = "fail" },
}

cases "permit.part_as_new" {
  under = "us-ca/signal-hill", from = "paperwork",
  { "12 months to the day still add up", with = part(14,
    false, { { done_on = "2025-03-02", roof_share_percent = 12 } }), expect = "fail" },
}
