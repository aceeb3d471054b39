-- stops: error "judge must return a comparison"
-- Nor another of the engine's own values.

rule "attack.returns_the_job" {
  title = "Returns the job",
  stage = "final",
  judge = function(job, figure)
    return job
  end,
  mend = "Remove this rule.",
}
