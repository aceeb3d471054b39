-- stops: error "unknown name 'dofile'"
-- Reaches the host.

rule "attack.no_dofile" {
  title = "No dofile",
  stage = "final",
  judge = function(job, figure)
    return dofile("/etc/passwd")
  end,
  mend = "Remove this rule.",
}
