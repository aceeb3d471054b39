-- stops: error "the limit is not a finite number"
-- Nor may the limit be one.

rule "attack.nan_as_limit" {
  title = "Nan as limit",
  stage = "final",
  judge = function(job, figure)
    return at_least(1, 0 / 0, "layers")
  end,
  mend = "Remove this rule.",
}
