-- stops: error "judge compared without asking for a figure"
-- A limit written into a rule has no citation, and no county could move it.

rule "attack.compares_without_a_figure" {
  title = "Compares without a figure",
  stage = "final",
  judge = function(job, figure)
    return at_most(1, 2, "layers")
  end,
  mend = "Remove this rule.",
}
