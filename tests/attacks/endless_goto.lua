-- stops: steps
-- A loop without a loop statement.

rule "attack.endless_goto" {
  title = "Endless goto",
  stage = "final",
  judge = function(job, figure)
    ::again::
    goto again
  end,
  mend = "Remove this rule.",
}
