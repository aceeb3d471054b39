-- stops: error "a rule may not change the job"
-- A rule that could write the job could pass it.

rule "attack.job_written" {
  title = "Job written",
  stage = "final",
  judge = function(job, figure)
    job.job = "mine"
  end,
  mend = "Remove this rule.",
}
