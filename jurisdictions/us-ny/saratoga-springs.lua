-- Saratoga Springs, New York: the city's notice of 1 July 2021. A certificate on
-- every reroof; the first look before the ice barrier is covered, or an affidavit
-- on it; the final from the ground. Permits open over 45 days without a reason
-- can bar the firm from new ones.

local function seen(value, instead)
  return { value, instead = instead, cite = "notice of 1 July 2021", status = "seen",
    source = "the city's notice" }
end

jurisdiction "us-ny/saratoga-springs" {
  title = "Saratoga Springs, New York",
  follows = "us-ny",
  from = "2021-07-01",
  edition = "Residential Code of New York State",
  as_seen = "2021-07-01",
  read = { "visits" },
  figures = {
    ["permit.every"] = seen(true),
    ["permit.certificate_required"] = seen(true),
    ["inspection.required.dry_in"] = seen(true),
    ["inspection.proofs.dry_in"] = seen { "visit", "affidavit" },
    ["papers.affidavit_required"] = seen(true),
    ["papers.affidavit_unseen_only"] = seen(true),
    ["papers.affidavit_visits"] = seen { "dry_in" },
    ["papers.affidavit_covers"] = seen({ "ice_barrier" }, true),
    ["inspection.required.final"] = seen(true),
    ["inspection.access_required"] = seen(false),
    ["permit.overdue_bars"] = seen(true),
    ["permit.open_counts"] = seen(true),
    ["permit.open_days_most"] = seen(45),
    ["permit.open_excuses"] = seen { "delay_explained" },
  },
}
