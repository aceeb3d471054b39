-- stops: error "unknown name 'maht' (did you mean 'math'?)"
-- A typo names what was meant.

rule "attack.global_read" {
  title = "Global read",
  stage = "final",
  judge = function(job, figure)
    return maht.max(1, 2)
  end,
  mend = "Remove this rule.",
}
