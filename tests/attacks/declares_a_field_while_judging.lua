-- stops: error "only while the file is loaded"
-- Nor fields.

rule "attack.declares_a_field_while_judging" {
  title = "Declares a field while judging",
  stage = "final",
  judge = function(job, figure)
    field "attack" { type = "text", stage = "permit", ask = "x" }
  end,
  mend = "Remove this rule.",
}
