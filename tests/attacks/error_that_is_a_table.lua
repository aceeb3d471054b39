-- stops: error "an error that is a table, not a text"
-- The host asks an error nothing but its type.

rule "attack.error_that_is_a_table" {
  title = "Error that is a table",
  stage = "final",
  judge = function(job, figure)
    error({})
  end,
  mend = "Remove this rule.",
}
