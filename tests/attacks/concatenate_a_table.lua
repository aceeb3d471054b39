-- stops: error "attempt to concatenate a table value"
-- .. consults no metamethod either.

rule "attack.concatenate_a_table" {
  title = "Concatenate a table",
  stage = "final",
  judge = function(job, figure)
    return "x" .. {}
  end,
  mend = "Remove this rule.",
}
