-- stops: error "attempt to call a nil value (method 'gsub')"
-- Patterns take time that no hook can end.

rule "attack.pattern_gsub" {
  title = "Pattern gsub",
  stage = "final",
  judge = function(job, figure)
    return ("aaaaaaaaaaaaaaaa"):gsub("a", "b")
  end,
  mend = "Remove this rule.",
}
