-- stops: case "no such place in a job: an empty path"
-- A place without a name is none.

cases "harmless.layers" {
  { "empty", with = { [""] = 1 }, expect = "pass" },
}
