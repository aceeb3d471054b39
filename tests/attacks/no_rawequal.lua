-- stops: error "unknown name 'rawequal'"
-- Not needed, so not there.

rule "attack.no_rawequal" {
  title = "No rawequal",
  stage = "final",
  judge = function(job, figure)
    return rawequal(1, 1)
  end,
  mend = "Remove this rule.",
}
