-- stops: error "attempt to call a nil value (method 'gmatch')"
-- Patterns take time that no hook can end.

rule "attack.pattern_gmatch" {
  title = "Pattern gmatch",
  stage = "final",
  judge = function(job, figure)
    return ("aaaaaaaaaaaaaaaa"):gmatch(".-")
  end,
  mend = "Remove this rule.",
}
