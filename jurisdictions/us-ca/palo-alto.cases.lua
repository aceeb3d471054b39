-- Cases of Palo Alto, beside the state.

local function job(price, share)
  return { ["scope.price_usd"] = price, ["papers.waste_reused_percent"] = share }
end

cases "papers.waste_share" {
  under = "us-ca/palo-alto", from = "paperwork",
  { "80 percent of a job of exactly 25,000", with = job(25000, 80), expect = "pass",
    required = 80 },
  { "79 percent", with = job(25000, 79), expect = "fail" },
  { "a cheaper job", with = job(24999, 10), expect = "not_applicable" },
  { "share not known", with = { ["scope.price_usd"] = 30000 }, expect = "open" },
  { "under the state", under = "us-ca", with = job(30000, 10), expect = "open" },
}

cases "papers.waste_share" {
  under = "us-ca/palo-alto", from = "paperwork",
  { "79.9 percent", with = job(25000, 79.9), expect = "fail" },
}
