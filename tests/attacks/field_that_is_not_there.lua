-- stops: error "existing has no field "layer" (did you mean "layers"?)"
-- A field nobody declared names the nearest.

rule "attack.field_that_is_not_there" {
  title = "Field that is not there",
  stage = "final",
  judge = function(job, figure)
    return at_most(job.existing.layer, figure "test.most", "layers")
  end,
  mend = "Remove this rule.",
}
