-- stops: error "judge must return a comparison"
-- A judge that does not compare has not judged.

rule "attack.returns_nothing" {
  title = "Returns nothing",
  stage = "final",
  judge = function(job, figure)
    local _ = figure "test.most"
  end,
  mend = "Remove this rule.",
}
