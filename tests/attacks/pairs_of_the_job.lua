-- stops: error "table expected, got userdata"
-- The job is read by name, so that every read is recorded.

rule "attack.pairs_of_the_job" {
  title = "Pairs of the job",
  stage = "final",
  judge = function(job, figure)
    for _ in pairs(job) do end
  end,
  mend = "Remove this rule.",
}
