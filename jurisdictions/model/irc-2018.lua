-- IRC 2018: ringed deck nails, and closer nailing near the edges. Its columns are those named
-- 2018 in irc/.

jurisdiction "model/irc-2018" {
  title = "International Residential Code, 2018",
  model = true,
  follows = "model/irc",
  edition = "IRC 2018",
  parts = "irc",
  column = "2018",
}
