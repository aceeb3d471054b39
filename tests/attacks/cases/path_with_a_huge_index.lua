-- stops: case "no such place in a job: [4294967297]"
-- The number of an item must not wrap round to another item.

cases "harmless.layers" {
  { "huge", with = { ["roof.slopes[4294967297].name"] = "x" }, expect = "pass" },
}
