-- Cases of Montebello, beside the state: three layers, disputed.

local function layers(on)
  local list = {}
  for _ = 1, on do
    table.insert(list, { kind = "asphalt_shingle", thickness_in = 0.25, removed = false })
  end
  return { ["scope.method"] = "overlay", ["existing.layers"] = on,
    ["existing.layers_removed"] = 0, ["existing.coverings"] = list }
end

cases "layers.total" {
  under = "us-ca/montebello",
  { "an overlay of two makes three, exactly", with = layers(2), expect = "warn", required = 3,
    found = 3, says = "Sources disagree" },
  { "an overlay of three makes four", with = layers(3), expect = "fail", required = 3,
    found = 4 },
  { "an overlay of two under the state", under = "us-ca", with = layers(2), expect = "fail",
    required = 2, found = 3 },
}

local OVERLAY = { ["scope.method"] = "overlay", ["existing.layers_removed"] = 0,
  ["existing.coverings[1].removed"] = false }

cases "inspection.pre" {
  under = "us-ca/montebello", from = "paperwork", with = { ["inspection.pre.proof"] = "none" },
  { "an overlay", with = OVERLAY, expect = "fail" },
  { "a tear-off", expect = "not_applicable" },
  { "an overlay under the state", under = "us-ca", with = OVERLAY,
    expect = "open" },
}

cases "papers.handed_in_overlay" {
  under = "us-ca/montebello", from = "paperwork", with = OVERLAY,
  { "fastening not handed in", expect = "fail", says = "fastening method" },
  { "handed in", with = { ["papers.handed_in"] = { "fastening_method" } }, expect = "pass" },
  { "papers not known", without = { "papers.handed_in" }, expect = "open" },
  { "under the state", under = "us-ca", expect = "open" },
}

-- Exactly what the page asks for, and short of each in turn.
local STATES = { "maker", "new_covering", "color", "weight", "squares" }
cases "papers.application" {
  under = "us-ca/montebello", from = "paperwork",
  { "exactly that", with = { ["papers.application_states"] = STATES }, expect = "pass" },
}
for left_out, word in ipairs(STATES) do
  local rest = {}
  for i, one in ipairs(STATES) do if i ~= left_out then table.insert(rest, one) end end
  cases "papers.application" {
    under = "us-ca/montebello", from = "paperwork",
    { "without " .. word, with = { ["papers.application_states"] = rest }, expect = "fail" },
  }
end

cases "papers.maker_specification" {
  under = "us-ca/montebello", from = "paperwork",
  { "handed in", expect = "pass" },
  { "not", with = { ["papers.maker_specification"] = false }, expect = "fail" },
}
