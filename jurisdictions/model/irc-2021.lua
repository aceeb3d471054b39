-- IRC 2021: closer deck nails in the field, ASCE 7-16, two plies where the wind is strong. Its
-- columns are those named 2021 in irc/.

jurisdiction "model/irc-2021" {
  title = "International Residential Code, 2021",
  model = true,
  follows = "model/irc",
  edition = "IRC 2021",
  parts = "irc",
  column = "2021",
}
