-- Cases of Pasco County, beside the state.

local function house(year, stated)
  return { ["house.year_built"] = year, ["papers.underlayment_stated"] = stated }
end

cases "papers.underlayment_stated" {
  under = "us-fl/pasco-county", from = "paperwork",
  { "2002, No. 30 felt", with = house(2002, "no_30_felt"), expect = "pass",
    says = "1 March 2002" },
  { "2002, not stated", with = house(2002, "none"), expect = "fail" },
  { "2003", with = house(2003, "none"), expect = "not_applicable" },
  { "not known what the form says", with = { ["house.year_built"] = 1990 }, expect = "open" },
  { "under the state", under = "us-fl", with = house(1990, "none"),
    expect = "open" },
}

cases "papers.affidavit" {
  under = "us-fl/pasco-county", from = "paperwork",
  { "2002, none", with = { ["house.year_built"] = 2002,
    ["papers.affidavit.covers"] = { "none" } }, expect = "fail" },
  { "2003, none", with = { ["house.year_built"] = 2003,
    ["papers.affidavit.covers"] = { "none" } }, expect = "not_applicable" },
}

cases "papers.product_approval" {
  under = "us-fl/pasco-county", from = "paperwork",
  { "one sheet", with = { ["papers.approval_sheets"] = 1 }, expect = "fail", required = 2 },
}

-- Exactly what the page asks for, and short of each in turn.
local STATES = { "who_works", "flood_zone" }
cases "papers.application" {
  under = "us-fl/pasco-county", from = "paperwork",
  { "exactly that", with = { ["papers.application_states"] = STATES }, expect = "pass" },
}
for left_out, word in ipairs(STATES) do
  local rest = {}
  for i, one in ipairs(STATES) do if i ~= left_out then table.insert(rest, one) end end
  cases "papers.application" {
    under = "us-fl/pasco-county", from = "paperwork",
    { "without " .. word, with = { ["papers.application_states"] = rest }, expect = "fail" },
  }
end

cases "papers.underlayment_stated" {
  under = "us-fl/pasco-county", from = "paperwork",
  { "2002, self-adhered", with = house(2002, "self_adhered"), expect = "pass" },
}

cases "papers.contract" {
  under = "us-fl/pasco-county", from = "paperwork",
  { "handed in", expect = "pass" },
  { "not", with = { ["papers.contract"] = false }, expect = "fail" },
}
