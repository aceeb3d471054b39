-- stops: error "unknown name 'debug'"
-- Reaches the host.

rule "attack.no_debug" {
  title = "No debug",
  stage = "final",
  judge = function(job, figure)
    return debug.getinfo(1)
  end,
  mend = "Remove this rule.",
}
