-- stops: error "the limit is not a finite number"
-- Everything is at least minus infinity.

rule "attack.infinity_compared" {
  title = "Infinity compared",
  stage = "final",
  judge = function(job, figure)
    return at_least(1, -math.huge, "layers")
  end,
  mend = "Remove this rule.",
}
