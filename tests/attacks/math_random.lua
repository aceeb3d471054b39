-- stops: error "attempt to call a nil value (field 'random')"
-- A judgement must come out the same each time.

rule "attack.math_random" {
  title = "Math random",
  stage = "final",
  judge = function(job, figure)
    return math.random()
  end,
  mend = "Remove this rule.",
}
