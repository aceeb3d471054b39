-- Cases of Wilmette, beside IRC 2021.

local function over(layers, pitch)
  local list = {}
  for _ = 1, layers do
    table.insert(list, { kind = "built_up", thickness_in = 0.25, removed = false })
  end
  return { ["scope.method"] = "overlay", ["existing.layers"] = layers,
    ["existing.layers_removed"] = 0, ["existing.coverings"] = list,
    ["roof.slopes[1].pitch"] = pitch, ["roof.slopes[2].pitch"] = pitch,
    ["roof.slopes[3].pitch"] = pitch }
end

cases "layers.total" {
  under = "us-il/wilmette",
  { "one stays under pitched shingles", with = over(1, "5:12"), expect = "pass", required = 2 },
  { "two do not", with = over(2, "5:12"), expect = "fail", required = 2, found = 3 },
  { "two stay on a flat roof", with = over(2, "0.5:12"), expect = "pass", required = 3,
    found = 3 },
  { "three do not", with = over(3, "0.5:12"), expect = "fail", required = 3, found = 4 },
  { "two stay at 1.99:12", with = over(2, "1.99:12"), expect = "pass", required = 3 },
  { "2:12, exactly, is not flat", with = over(2, "2:12"), expect = "fail", required = 2 },
  { "two on a flat roof under IRC 2021", under = "model/irc-2021", with = over(2, "0.5:12"),
    expect = "fail", required = 2 },
}

cases "papers.application" {
  under = "us-il/wilmette", from = "paperwork",
  { "all of it, and more", expect = "pass" },
  { "under IRC 2021", under = "model/irc-2021", expect = "open" },
}

cases "permit.bin_deposit" {
  under = "us-il/wilmette", from = "paperwork",
  { "not paid", with = { ["site.bin_deposit"] = false }, expect = "fail" },
  { "paid", with = { ["site.bin_deposit"] = true }, expect = "pass" },
  { "not known", expect = "open" },
  { "no bin", with = { ["site.bin_used"] = false }, expect = "not_applicable" },
}

cases "permit.right_of_way_clear" {
  under = "us-il/wilmette", from = "paperwork",
  { "used", expect = "fail" },
  { "clear", with = { ["site.right_of_way_used"] = false }, expect = "pass" },
  { "not known", without = { "site.right_of_way_used" }, expect = "open" },
  { "under IRC 2021", under = "model/irc-2021", expect = "not_applicable" },
}

-- Exactly what the village asks for, and short of each in turn.
local STATES = { "old_layers", "layers_removed", "new_covering", "price" }
cases "papers.application" {
  under = "us-il/wilmette", from = "paperwork",
  { "exactly that", with = { ["papers.application_states"] = STATES }, expect = "pass" },
}
for left_out, word in ipairs(STATES) do
  local rest = {}
  for i, one in ipairs(STATES) do if i ~= left_out then table.insert(rest, one) end end
  cases "papers.application" {
    under = "us-il/wilmette", from = "paperwork",
    { "without " .. word, with = { ["papers.application_states"] = rest }, expect = "fail" },
  }
end

cases "papers.sketch" {
  under = "us-il/wilmette", from = "paperwork",
  { "one, exactly", with = { ["papers.sketch_copies"] = 1 }, expect = "pass", required = 1 },
  { "none", with = { ["papers.sketch_copies"] = 0 }, expect = "fail" },
}

cases "papers.site_measures" {
  under = "us-il/wilmette", from = "paperwork",
  { "described", expect = "pass" },
  { "not", with = { ["papers.site_measures"] = false }, expect = "fail" },
}

cases "permit.bin" {
  under = "us-il/wilmette", from = "paperwork",
  { "with its permit", expect = "pass" },
  { "without", with = { ["site.bin_permit"] = false }, expect = "fail" },
}

cases "permit.license" {
  under = "us-il/wilmette", from = "paperwork",
  { "a roofer's", expect = "pass" },
  { "a general one", with = { ["contractor.license"] = "general" }, expect = "fail" },
}
