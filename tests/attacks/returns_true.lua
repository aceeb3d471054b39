-- stops: error "judge must return a comparison"
-- A bare true is the tempting wrong pass.

rule "attack.returns_true" {
  title = "Returns true",
  stage = "final",
  judge = function(job, figure)
    return true
  end,
  mend = "Remove this rule.",
}
