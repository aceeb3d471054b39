-- stops: error "unknown name 'xpcall'"
-- Would catch the limit itself.

rule "attack.no_xpcall" {
  title = "No xpcall",
  stage = "final",
  judge = function(job, figure)
    return xpcall(error, error)
  end,
  mend = "Remove this rule.",
}
