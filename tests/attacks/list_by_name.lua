-- stops: error "it is read by number"
-- A list is no group.

rule "attack.list_by_name" {
  title = "List by name",
  stage = "final",
  judge = function(job, figure)
    return job.roof.slopes.first
  end,
  mend = "Remove this rule.",
}
