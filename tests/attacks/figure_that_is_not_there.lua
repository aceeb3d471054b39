-- stops: error "no figure is named "test.mots" (did you mean "test.most"?)"
-- A figure nobody gives names the nearest.

rule "attack.figure_that_is_not_there" {
  title = "Figure that is not there",
  stage = "final",
  judge = function(job, figure)
    return at_most(1, figure "test.mots", "layers")
  end,
  mend = "Remove this rule.",
}
