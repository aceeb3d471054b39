-- stops: error "unknown name 'utf8'"
-- Not needed, so not there.

rule "attack.no_utf8" {
  title = "No utf8",
  stage = "final",
  judge = function(job, figure)
    return utf8.char(1)
  end,
  mend = "Remove this rule.",
}
