-- What a county's cases may hold.

cases "harmless.layers" {
  under = "example/fuzz",
  with = { ["existing.layers"] = 2 },
  { "as it is", expect = "pass" },
  { "many", with = { ["existing.layers"] = 5, ["roof.slopes[1].pitch"] = "8:12" }, expect = "fail" },
  { "a front alone", at = "roof.slopes[1]", without = { "existing.slippery" }, expect = "pass" },
  { "not known", without = { "existing.layers" }, expect = "open" },
  { "a list", with = { ["roof.slopes"] = list { { id = "a", pitch = "4:12" } } }, todo = true, expect = "pass" },
}
