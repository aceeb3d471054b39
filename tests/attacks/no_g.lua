-- stops: error "unknown name '_G'"
-- There is no table of all names.

rule "attack.no_g" {
  title = "No g",
  stage = "final",
  judge = function(job, figure)
    return _G.math
  end,
  mend = "Remove this rule.",
}
