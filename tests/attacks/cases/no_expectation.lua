-- stops: error "expects nothing"
-- A case that expects nothing could not fail.

cases "harmless.layers" {
  { "nothing" },
}
