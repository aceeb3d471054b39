-- Texas: inside city limits the IRC as it stood on 1 May 2012, unless the city
-- adopts a later one; most have. Outside cities nothing is carried.
--
-- The day the default began is recalled. That the text of that day is the
-- edition of 2012 follows from its date. On the coast, a house that is to have
-- the windstorm pool's cover goes by the state's windstorm rule instead:
-- us-tx-windstorm. The job says whether it is one.

local LAW = "Local Gov. Code 214.212"

jurisdiction "us-tx" {
  title = "Texas, cities by default",
  follows = "model/irc-2012",
  unsure = "a city may have adopted a later edition, or amended this one: ask which",
  from = "2022-01-01",
  code = "Texas",
  edition = "IRC 2012 (as of 1 May 2012)",
  as_seen = "2026-11-25",
  rules = "us-tx.rules.lua",
  figures = {
    ["papers.windstorm_book_here"] = { false, sense = "equals", stricter = "neither", cite = LAW,
      status = "seen", source = "the insurance department's page on its own books" },
  },
}
