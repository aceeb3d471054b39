-- stops: case "existing.layers: that is no value for a job"
-- JSON has neither infinity nor what is no number: the job would say nothing there.

cases "harmless.layers" {
  { "none", with = { ["existing.layers"] = 0 / 0 }, expect = "open" },
}
