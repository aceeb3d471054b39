-- Texas, the windstorm rule of the insurance department, for houses in the designated
-- catastrophe areas that are to have the pool's wind cover: IRC 2018 from 1 September
-- 2020, IRC 2024 for applications (WPI-1) from 1 April 2026.
--
-- The department's page of 5 May 2021 was read; its later page second-hand, in a
-- research file of August 2026. The rule as proposed (28 TAC 5.4013) had the new book
-- for work begun from 1 March 2026. Not carried: the books for work before 2020, and
-- any nail counts, which were not found on a public page.

local PAGE = "the insurance department's page on inspections"

local function edition(base, from, to, unsure)
  jurisdiction "us-tx-windstorm" {
    title = "Texas, windstorm certificate",
    follows = "model/irc-" .. base,
    unsure = unsure,
    from = from,
    to = to,
    code = "Texas windstorm rule",
    edition = "IRC " .. base .. " (windstorm certificate)",
    as_seen = "2026-11-28",
    rules = "us-tx-windstorm.rules.lua",
    figures = {
      ["papers.windstorm_book_here"] = { true, sense = "equals", stricter = "neither",
        cite = "adopted windstorm codes", status = "seen",
        source = "the insurance department's page on its own books" },
      ["papers.windstorm_counts"] = { true, sense = "equals", stricter = true,
        cite = "28 TAC 5.4603", status = "seen", source = PAGE },
      ["papers.windstorm_inspectors"] = { { "department", "appointed_engineer" },
        sense = "one_of", cite = "28 TAC 5.4603", status = "seen", source = PAGE },
    },
  }
end

edition("2018", "2020-09-01", "2026-03-01")
edition("2018", "2026-03-01", "2026-04-01",
  "as proposed, the rule had IRC 2024 for work begun from 1 March 2026")
edition("2024", "2026-04-01", nil,
  "that applications from 1 April 2026 go by IRC 2024 was read second-hand")
