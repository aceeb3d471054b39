-- IRC 2012: reroofing in R907, underlayment inside the shingle section, and a wind map on the
-- older scale. Its columns are those named 2012 in irc/.
--
-- Jobs state the ultimate speed. This edition's speeds are nominal ones: 120 mph here is 155
-- on the ultimate scale (x sqrt 0.6). Where a rule can convert, the figure stands as the
-- edition has it; where it cannot, the ultimate speed stands here and the source says so. No
-- copy of this text was found: what it shares with later editions counts as parallel here.

jurisdiction "model/irc-2012" {
  title = "International Residential Code, 2012",
  model = true,
  follows = "model/irc",
  edition = "IRC 2012",
  parts = "irc",
  column = "2012",
}
