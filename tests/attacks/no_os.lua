-- stops: error "unknown name 'os'"
-- Reaches the host.

rule "attack.no_os" {
  title = "No os",
  stage = "final",
  judge = function(job, figure)
    return os.exit(0)
  end,
  mend = "Remove this rule.",
}
