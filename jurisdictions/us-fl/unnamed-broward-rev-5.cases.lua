-- Cases of that checklist, beside the state.

cases "papers.packets" {
  under = "us-fl/unnamed-broward-rev-5", from = "paperwork",
  { "two, exactly", with = { ["papers.packets"] = 2 }, expect = "pass", required = 2 },
  { "one", with = { ["papers.packets"] = 1 }, expect = "fail" },
  { "not known", expect = "open" },
  { "under the state", under = "us-fl", with = { ["papers.packets"] = 1 },
    expect = "open" },
}

cases "papers.approvals_marked" {
  under = "us-fl/unnamed-broward-rev-5", from = "paperwork",
  { "circled", with = { ["papers.approvals_marked"] = "circled" }, expect = "pass" },
  { "highlighted", with = { ["papers.approvals_marked"] = "highlighted" }, expect = "fail" },
  { "not known", expect = "open" },
}

local function worth(value, papers)
  return { ["house.value_usd"] = value, ["papers.handed_in"] = papers }
end

cases "papers.by_value" {
  under = "us-fl/unnamed-broward-rev-5", from = "paperwork",
  { "exactly 300,000, with the sheet", with = worth(300000, { "appraisal" }), expect = "pass" },
  { "exactly 300,000, without it", with = worth(300000, { "tie_affidavit" }),
    expect = "fail", says = "appraisal" },
  { "299,999", with = worth(299999, { "none" }), expect = "not_applicable" },
  { "value not known", expect = "open", says = "/house/value_usd" },
  { "under the state", under = "us-fl", with = worth(500000, { "none" }),
    expect = "open" },
}

-- The affidavits have time until the final.
cases "papers.by_value_final" {
  under = "us-fl/unnamed-broward-rev-5", from = "paperwork", stage = "final",
  { "exactly 300,000, with it", with = worth(300000, { "appraisal", "tie_affidavit" }),
    expect = "pass" },
  { "exactly 300,000, without it", with = worth(300000, { "appraisal" }), expect = "fail",
    says = "tie affidavit" },
  { "299,999", with = worth(299999, { "none" }), expect = "not_applicable" },
  { "value not known", expect = "open", says = "/house/value_usd" },
  { "on the checklist's day", date = "2021-01-05", with = worth(300000, { "appraisal" }),
    expect = "fail" },
  { "the day before", date = "2021-01-04", expect = "refused", says = "from 2021-01-05" },
}

cases "papers.by_value" {
  under = "us-fl/unnamed-broward-rev-5", from = "paperwork",
  { "without the appraisal", with = worth(300000, { "tie_affidavit" }), expect = "fail",
    says = "appraisal" },
}

-- The county lies in the zone, whose sections are carried from the 8th edition on.
local INSIDE = { ["site.high_velocity_hurricane_zone"] = true }
cases "underlayment.kind" {
  under = "us-fl/unnamed-broward-rev-5", date = "2026-11-28",
  { "said to lie outside the zone", expect = "refused",
    says = "high-velocity hurricane zone: this is true" },
  { "D226 I inside it", with = INSIDE, expect = "fail" },
  { "inside it under the 7th", date = "2023-12-30", with = INSIDE, expect = "open",
    says = "Not carried here" },
}
cases "shingle.wind_class" {
  under = "us-fl/unnamed-broward-rev-5", date = "2026-11-28",
  { "whether inside the zone is not said", without = { "site.high_velocity_hurricane_zone" },
    expect = "open", says = "/site/high_velocity_hurricane_zone" },
}

cases "papers.product_approval" {
  under = "us-fl/unnamed-broward-rev-5", from = "paperwork",
  { "two sheets, exactly", expect = "pass", required = 2 },
  { "one", with = { ["papers.approval_sheets"] = 1 }, expect = "fail" },
}
