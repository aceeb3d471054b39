-- Cases of Apple Valley, beside the state.

cases "inspection.dry_in" {
  under = "us-mn/apple-valley", from = "paperwork",
  { "photographs", with = { ["inspection.dry_in.proof"] = "photos" }, expect = "pass" },
  { "nothing", with = { ["inspection.dry_in.proof"] = "none" }, expect = "fail" },
  { "the state leaves it to its places", under = "us-mn",
    with = { ["inspection.dry_in.proof"] = "none" }, expect = "open" },
}

local function set(list, chimneys)
  return { ["inspection.final.proof"] = "photos", ["roof.chimneys"] = chimneys or {},
    ["house.solid_fuel_chimney"] = chimneys ~= nil,
    ["papers.photos.final"] = list }
end

local REST = { "street_view", "pipes", "vents", "flashings", "ridge" }

cases "papers.photos_final" {
  under = "us-mn/apple-valley", from = "paperwork",
  { "all, on a house without chimney", with = set(REST), expect = "pass" },
  { "the same with a chimney", with = set(REST, { { name = "stack", width_in = 20 } }),
    expect = "fail", says = "chimney saddles" },
  { "no street view", with = set { "pipes", "vents", "flashings", "ridge" }, expect = "fail",
    says = "street view" },
  { "chimneys not told", with = { ["inspection.final.proof"] = "photos",
    ["papers.photos.final"] = REST }, expect = "open", says = "/roof/chimneys" },
  { "under the state", under = "us-mn", with = set {}, expect = "open" },
}

-- Short of each in turn, as a picture not taken.
for left_out, word in ipairs(REST) do
  local list = {}
  for i, one in ipairs(REST) do if i ~= left_out then table.insert(list, one) end end
  cases "papers.photos_final" {
    under = "us-mn/apple-valley", from = "paperwork",
    { "without " .. word, with = set(list), expect = "fail" },
  }
end

cases "inspection.final" {
  under = "us-mn/apple-valley", from = "paperwork",
  { "photographs", with = { ["inspection.final.proof"] = "photos" }, expect = "pass" },
  { "the visit they stand in for", expect = "fail" },
}

cases "papers.photos_dry_in" {
  under = "us-mn/apple-valley", from = "paperwork",
  with = { ["inspection.dry_in.proof"] = "photos" },
  { "of the ice barrier", with = { ["papers.photos.dry_in"] = { "ice_barrier" } },
    expect = "pass" },
  { "of the planes only", with = { ["papers.photos.dry_in"] = { "each_plane" } },
    expect = "fail", says = "ice barrier" },
}
