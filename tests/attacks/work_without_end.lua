-- stops: steps
-- Every line is charged for.

rule "attack.work_without_end" {
  title = "Work without end",
  stage = "final",
  judge = function(job, figure)
    while true do work("line") end
  end,
  mend = "Remove this rule.",
}
