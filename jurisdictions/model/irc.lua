-- The International Residential Code. Its figures stand by topic in irc/: each once, with a
-- column for every edition that has it otherwise.
--
-- The code has force only as a state, county or city adopts it. "seen" means that a public
-- page was read, not that the book was; the source says which kind of page. Sections are
-- those of 2015 and later, where an edition does not say another.

jurisdiction "model/irc" {
  title = "International Residential Code, figures common to its editions",
  model = true,
  base_only = true,
  edition = "IRC",
  parts = "irc",
  columns = { "2012", "2015", "2018", "2021", "2024" },
}
