jurisdiction "fuzz" {
  title = "Fuzz County", invented = true, follows = "model/test", from = "2025-07-01",
  code = "Fuzz County Code", edition = "TEST 2020 as amended", as_seen = "2026-03-01",
  figures = {
    ["test.most"] = { 2, cite = "15.1" },
    ["test.kinds"] = { { "slate" }, cite = "15.2" },
    ["test.required"] = { false, cite = "15.3" },
  },
  drop = {},
}
jurisdiction "fuzz" {
  title = "Fuzz County", invented = true, follows = "model/test", from = "2020-01-01",
  to = "2025-01-01",
  figures = { ["test.pitch_least"] = { 3, unit = "rise_in_12", sense = "at_least",
    cite = "15.4", disputed = "4 by another page" } },
}
