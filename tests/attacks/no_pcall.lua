-- stops: error "unknown name 'pcall'"
-- Would catch the limit itself, in a loop.

rule "attack.no_pcall" {
  title = "No pcall",
  stage = "final",
  judge = function(job, figure)
    return pcall(error)
  end,
  mend = "Remove this rule.",
}
