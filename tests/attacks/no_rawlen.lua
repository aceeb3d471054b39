-- stops: error "unknown name 'rawlen'"
-- Not needed, so not there.

rule "attack.no_rawlen" {
  title = "No rawlen",
  stage = "final",
  judge = function(job, figure)
    return rawlen({})
  end,
  mend = "Remove this rule.",
}
