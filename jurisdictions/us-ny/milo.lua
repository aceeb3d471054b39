-- Milo, New York: the town's form on permits to re-roof, without a date.

local function seen(value, cite)
  return { value, cite = cite or "town form", status = "seen", source = "the town's form" }
end

jurisdiction "us-ny/milo" {
  title = "Milo, New York",
  follows = "us-ny",
  edition = "Residential Code of New York State",
  as_seen = "2026-11-25",
  read = { "visits", "notice", "papers" },
  figures = {
    ["permit.every"] = seen(false),
    ["permit.deck_any_counts"] = seen(true),
    ["permit.deck_any_free"] = seen(0),
    ["inspection.required.final"] = seen(true),
    ["inspection.notice_required"] = seen(true),
    ["inspection.notice_hours_least"] = seen(24),
    ["papers.insurance"] = seen { "workers_comp" },
    ["papers.lead_firm_required"] = seen(true),
    ["papers.lead_built_before"] = seen(1978),
  },
}
