-- stops: error "the value found is not a finite number"
-- Every comparison with NaN is false: at_most must not read that as met.

rule "attack.nan_compared" {
  title = "Nan compared",
  stage = "final",
  judge = function(job, figure)
    return at_most(0 / 0, figure "test.most", "layers")
  end,
  mend = "Remove this rule.",
}
