-- A city of Broward County, Florida, that the page's excerpt does not name: its
-- checklist, revision 5 of January 2021 (its day not shown). When the affidavits
-- are due could not be read. The job still says that the house lies in the
-- high-velocity zone.

local function seen(value)
  return { value, cite = "checklist, rev. 5", status = "seen", source = "the city's checklist" }
end

jurisdiction "us-fl/unnamed-broward-rev-5" {
  title = "A Broward County city, not named on the page read",
  follows = "us-fl",
  from = "2021-01-01",
  edition = "Florida Building Code",
  as_seen = "2021-01-01",
  figures = {
    ["papers.packets_count"] = seen(true),
    ["papers.packets_least"] = seen(2),
    ["papers.approval_sheets_required"] = seen(true),
    ["papers.approval_sheets_least"] = seen(2),
    ["papers.approval_marks_count"] = seen(true),
    ["papers.approval_marks"] = seen { "circled" },
    ["papers.value_counts"] = seen(true),
    ["papers.value_from"] = seen(300000),
    ["papers.value_papers"] = seen { "appraisal", "tie_affidavit" },
  },
}
