-- stops: error "'counter' may not be set here (for your own names write 'local')"
-- Names of a rule's own are local.

rule "attack.global_write" {
  title = "Global write",
  stage = "final",
  judge = function(job, figure)
    counter = 1
  end,
  mend = "Remove this rule.",
}
