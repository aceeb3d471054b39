-- stops: error "a measured value is not a finite number"
-- One NaN among measurements.

rule "attack.nan_in_a_list" {
  title = "Nan in a list",
  stage = "final",
  judge = function(job, figure)
    return spacings_at_most({ 6, 0 / 0 }, figure "test.most", "in")
  end,
  mend = "Remove this rule.",
}
