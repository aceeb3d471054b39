-- stops: error "attempt to call a nil value (method 'match')"
-- Patterns take time that no hook can end.

rule "attack.pattern_match" {
  title = "Pattern match",
  stage = "final",
  judge = function(job, figure)
    return ("aaaaaaaaaaaaaaaa"):match(".-.-.-.-b")
  end,
  mend = "Remove this rule.",
}
