-- stops: error "table expected, got userdata"
-- Nor through a C function.

rule "attack.job_written_through_insert" {
  title = "Job written through insert",
  stage = "final",
  judge = function(job, figure)
    table.insert(job.roof.slopes, 1)
  end,
  mend = "Remove this rule.",
}
