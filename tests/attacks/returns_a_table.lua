-- stops: error "judge must return a comparison"
-- Nor a table that looks like one.

rule "attack.returns_a_table" {
  title = "Returns a table",
  stage = "final",
  judge = function(job, figure)
    return { met = true, sense = "at_most" }
  end,
  mend = "Remove this rule.",
}
