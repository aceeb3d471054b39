-- stops: case "existing.condition: a text with a zero byte is no value for a job"
-- The job would say less than the case does.

cases "harmless.layers" {
  { "zero", with = { ["existing.condition"] = "sound\0rotted" }, expect = "pass" },
}
