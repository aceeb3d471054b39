-- stops: error "judge must return a comparison"
-- Neither is a number a judgement.

rule "attack.returns_a_number_of_its_own" {
  title = "Returns a number of its own",
  stage = "final",
  judge = function(job, figure)
    return 42
  end,
  mend = "Remove this rule.",
}
