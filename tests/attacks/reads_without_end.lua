-- stops: steps
-- Each read leaves a trace in the finding: it is charged for.

rule "attack.reads_without_end" {
  title = "Reads without end",
  stage = "final",
  judge = function(job, figure)
    while true do local _ = job.job end
  end,
  mend = "Remove this rule.",
}
