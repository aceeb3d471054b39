-- stops: case "no such place in a job: an empty path"
-- Nor can it be left out.

cases "harmless.layers" {
  { "empty", without = { "" }, expect = "pass" },
}
