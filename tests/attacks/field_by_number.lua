-- stops: error "a part of the job is read by name"
-- A group is no list.

rule "attack.field_by_number" {
  title = "Field by number",
  stage = "final",
  judge = function(job, figure)
    return job[1]
  end,
  mend = "Remove this rule.",
}
