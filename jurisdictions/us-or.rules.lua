-- us-or.rules.lua - a roof on land zoned as forest.
--
-- The text names no fire class for it, so the job says whether the covering is
-- fire-retardant, as its listing has it.

field "site.forest_zoned" { type = "yes_no", stage = "permit",
  ask = "Is the lot zoned as forest land?" }
field "covering.fire_retardant" { type = "yes_no", stage = "permit",
  ask = "Is the covering listed as fire-retardant?" }

demand "fire.forest_roof" {
  title = "Roof of a house on forest land",
  stage = "permit",
  when = {
    on { "fire.forest_counts", otherwise = "forest land asks for nothing here" },
    is { "site.forest_zoned", otherwise = "the lot is not zoned as forest land" },
  },
  fact = "covering.fire_retardant", shown = "a covering listed as fire-retardant",
  mend = "Choose a covering that is listed as fire-retardant.",
}
