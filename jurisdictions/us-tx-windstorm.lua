-- Texas, the windstorm rule of the insurance department: IRC 2018 from
-- 1 September 2020, for houses in the designated catastrophe areas that are to
-- have the pool's wind cover. The page read is of 5 May 2021.
--
-- Not carried: the books for work before 2020, and any nail counts, which were
-- not found on a public page.

local PAGE = "the insurance department's page on inspections"

jurisdiction "us-tx-windstorm" {
  title = "Texas, windstorm certificate",
  follows = "model/irc-2018",
  unsure = "the page read is of 5 May 2021: a later rule may name a later edition",
  from = "2020-09-01",
  code = "Texas windstorm rule",
  edition = "IRC 2018 (windstorm certificate)",
  as_seen = "2026-11-25",
  rules = "us-tx-windstorm.rules.lua",
  figures = {
    ["papers.windstorm_book_here"] = { true, sense = "equals", cite = "adopted windstorm codes",
      status = "seen", source = "the insurance department's page on its own books" },
    ["papers.windstorm_counts"] = { true, sense = "equals", cite = "28 TAC 5.4603",
      status = "seen", source = PAGE },
    ["papers.windstorm_inspectors"] = { { "department", "appointed_engineer" },
      sense = "one_of", cite = "28 TAC 5.4603", status = "seen", source = PAGE },
  },
}
