-- A city of Broward County, Florida, that the page's excerpt does not name: its
-- checklist, revision 5 of 5 January 2021. Of its two affidavits, both before a
-- notary, the one on improved ties is due before the final, the one on ties that
-- are sound already with the application or before the final: so they are asked
-- for at the final. The county lies in the high-velocity zone, whose sections are
-- carried from the 8th edition on; until then the job says that it does.

local function seen(value)
  return { value, cite = "checklist, rev. 5", status = "seen", source = "the city's checklist" }
end

local function city(follows, from, to)
  jurisdiction "us-fl/unnamed-broward-rev-5" {
    title = "A Broward County city, not named on the page read",
    follows = follows,
    from = from,
    to = to,
    edition = "Florida Building Code",
    as_seen = "2021-01-05",
    read = { "papers" },
    figures = {
      ["papers.packets_count"] = seen(true),
      ["papers.packets_least"] = seen(2),
      ["papers.approval_sheets_required"] = seen(true),
      ["papers.approval_sheets_least"] = seen(2),
      ["papers.approval_marks_count"] = seen(true),
      ["papers.approval_marks"] = seen { "circled" },
      ["papers.value_counts"] = seen(true),
      ["papers.value_from"] = seen(300000),
      ["papers.value_papers"] = seen { "appraisal" },
      ["papers.value_papers_final"] = seen { "tie_affidavit" },
    },
  }
end

city("us-fl", "2021-01-05", "2023-12-31")
city("us-fl/high-velocity-zone", "2023-12-31")
