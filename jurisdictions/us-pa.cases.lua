-- Cases of Pennsylvania: the editions' days (lawyers' and architects' notices),
-- and what the state's code does not reach (Act 45, 104(b)).

cases "deck.nail_field" {
  under = "us-pa", with = { ["decks[1].nails.field_spacing_in"] = 12 },
  { "the day before the editions of 2018", date = "2022-02-13", expect = "refused",
    says = "from 2022-02-14" },
  { "12 in on their first day", date = "2022-02-14", expect = "pass", required = 12 },
  { "12 in on the day that was dropped", date = "2025-07-13", expect = "pass", required = 12 },
  { "12 in on their last day", date = "2025-12-31", expect = "pass", required = 12 },
  { "12 in on the first day of 2021", date = "2026-01-01", expect = "fail", required = 6,
    says = "may go by the editions of 2018" },
  { "6 in, exactly", date = "2026-01-01", with = { ["decks[1].nails.field_spacing_in"] = 6 },
    expect = "pass", required = 6, says = "local ordinance" },
}
cases "permit.by_structure" {
  under = "us-pa", with = { ["permit.status"] = "none" },
  { "framing altered", with = { ["scope.structure_altered"] = true }, expect = "fail" },
  { "framing left alone", expect = "warn", says = "local ordinance" },
  { "not known", without = { "scope.structure_altered" }, expect = "open" },
}
cases "permit.every" {
  under = "us-pa",
  { "not every reroof", expect = "not_applicable" },
}

-- One or more of the two conditions in the state's text of 2021 (R806.2): 1,500 sq ft need
-- 1,440 sq in, or 720.
local HIGH = { ["site.climate_zone"] = "6A", ["attics[1].area_sqft"] = 1500,
  as_meant = { { at = "/attics" } }, -- larger than the base job's roof
  ["attics[1].vents[1].below_ridge_ft"] = 4 }
cases "ventilation.net_free_area" {
  under = "us-pa", with = HIGH,
  { "a retarder alone", date = "2026-07-01", expect = "pass", where = "attic",
    required = 720 },
  { "a retarder alone under the editions of 2018", date = "2025-12-31", expect = "fail",
    where = "attic", required = 1440 },
}
