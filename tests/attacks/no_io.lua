-- stops: error "unknown name 'io'"
-- Reaches the host.

rule "attack.no_io" {
  title = "No io",
  stage = "final",
  judge = function(job, figure)
    return io.open("/etc/passwd")
  end,
  mend = "Remove this rule.",
}
