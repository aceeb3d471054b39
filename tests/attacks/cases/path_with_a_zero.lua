-- stops: case "with: a place's name must not hold a zero byte"
-- C would read only what stands before it: another place.

cases "harmless.layers" {
  { "zero", with = { ["existing.layers\0"] = 1 }, expect = "pass" },
}
