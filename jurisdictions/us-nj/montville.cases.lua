-- Cases of Montville, beside IRC 2021.

local function share(percent)
  return { ["permit.status"] = "none", ["scope.roof_share_percent"] = percent,
    ["scope.area_sqft"] = 12.89 * percent }
end

cases "permit.by_share" {
  under = "us-nj/montville", from = "paperwork",
  { "up to 25 percent, exactly", with = share(25), expect = "warn", required = 25 },
  { "25.1 percent", with = share(25.1), expect = "fail" },
  { "under IRC 2021", under = "model/irc-2021", with = share(25), expect = "not_applicable" },
}

cases "permit.by_material" {
  under = "us-nj/montville", from = "paperwork",
  { "not like for like", with = { ["permit.status"] = "none",
    ["scope.material_change"] = true }, expect = "fail" },
}
