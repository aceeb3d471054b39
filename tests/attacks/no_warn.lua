-- stops: error "unknown name 'warn'"
-- Not needed, so not there.

rule "attack.no_warn" {
  title = "No warn",
  stage = "final",
  judge = function(job, figure)
    return warn("x")
  end,
  mend = "Remove this rule.",
}
