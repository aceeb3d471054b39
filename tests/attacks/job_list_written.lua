-- stops: error "a rule may not change the job"
-- Lists of the job are no tables.

rule "attack.job_list_written" {
  title = "Job list written",
  stage = "final",
  judge = function(job, figure)
    job.roof.slopes[1] = nil
  end,
  mend = "Remove this rule.",
}
