jurisdiction "fuzz" {
  title = "Fuzz County",
  invented = true,
  follows = "model/test",
  code = "Fuzz Code",
  adopts = { "TEST 2020", topics = { "test" }, cite = "1", as_seen = "2026-01-01" },
  zones = {
    ["site.local_wind_zone"] = { "ridge", "valley", ask = "Ridge or valley?" },
    ["site.local_ice_zone"] = { "ice", "other", "none_2", ask = "Which?" },
  },
  figures = {
    ["test.kinds"] = { adds = { "asphalt" }, without = { "slate" }, cite = "2" },
    ["test.most"] = { 1, advice = true, cite = "3" },
  },
}
