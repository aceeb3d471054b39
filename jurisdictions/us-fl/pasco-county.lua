-- Pasco County, Florida: a page without a date. It says "2002 or prior"; the
-- state's cut-off is 1 March 2002.

local STATE_DAY = "the state's cut-off is 1 March 2002"

local function seen(value, disputed)
  return { value, cite = "roof replacement page", status = "seen", source = "the county's page",
    disputed = disputed }
end

jurisdiction "us-fl/pasco-county" {
  title = "Pasco County, Florida",
  follows = "us-fl",
  facts = {
    ["site.high_velocity_hurricane_zone"] = { false, book = "FBC-B 2023", cite = "202",
      status = "seen", source = "an engineers' page that prints the definition: Broward and Dade" },
  },
  edition = "Florida Building Code",
  as_seen = "2026-11-25",
  read = { "papers" },
  figures = {
    ["papers.underlayment_stated_required"] = seen(true),
    ["papers.underlayment_stated_built_most"] = seen(2002, STATE_DAY),
    ["papers.underlayments_stated"] = seen { "no_30_felt", "self_adhered" },
    ["papers.affidavit_required"] = seen(true),
    ["papers.affidavit_by_age"] = seen(true),
    ["papers.affidavit_built_most"] = seen(2002, STATE_DAY),
    ["papers.affidavit_covers"] = seen { "deck_nailing" },
    ["papers.approval_sheets_required"] = seen(true),
    ["papers.approval_sheets_least"] = seen(2),
    ["papers.contract_required"] = seen(true),
    ["papers.application_states"] = seen { "who_works", "flood_zone" },
  },
}
