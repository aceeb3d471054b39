-- stops: error "unknown name 'loadfile'"
-- Reaches the host.

rule "attack.no_loadfile" {
  title = "No loadfile",
  stage = "final",
  judge = function(job, figure)
    return loadfile("/etc/passwd")
  end,
  mend = "Remove this rule.",
}
