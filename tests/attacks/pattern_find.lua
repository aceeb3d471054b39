-- stops: error "attempt to call a nil value (method 'find')"
-- Patterns take time that no hook can end.

rule "attack.pattern_find" {
  title = "Pattern find",
  stage = "final",
  judge = function(job, figure)
    return ("aaaaaaaaaaaaaaaa"):find(".-.-.-.-b")
  end,
  mend = "Remove this rule.",
}
