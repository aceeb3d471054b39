-- us-or.rules.lua - a roof on land zoned as forest.
--
-- The text names no fire class for it, so the job says whether the covering is
-- fire-retardant, as its listing has it.

field "site.forest_zoned" { type = "yes_no", stage = "permit",
  ask = "Is the lot zoned as forest land?" }
field "covering.fire_retardant" { type = "yes_no", stage = "permit",
  ask = "Is the covering listed as fire-retardant?" }

rule "fire.forest_roof" {
  title = "Roof of a house on forest land",
  stage = "permit",
  applies = function(job, figure)
    if not figure "fire.forest_counts" then return false, "forest land asks for nothing here" end
    return job.site.forest_zoned, "the lot is not zoned as forest land"
  end,
  judge = function(job)
    return shown(job.covering.fire_retardant, "a covering listed as fire-retardant")
  end,
  mend = "Choose a covering that is listed as fire-retardant.",
}
