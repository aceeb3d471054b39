-- IRC 2015: reroofing moves to R908, underlayment to R905.1.1 with three tables, and wind to
-- the ultimate scale. The hail item is gone, and the ice barrier reaches further on steep
-- slopes. Its columns are those named 2015 in irc/.

jurisdiction "model/irc-2015" {
  title = "International Residential Code, 2015",
  model = true,
  follows = "model/irc",
  edition = "IRC 2015",
  parts = "irc",
  column = "2015",
}
