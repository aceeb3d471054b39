-- stops: error "took too long and was stopped"
-- Why a call ended is told by the engine's own flags, never by the message.

rule "attack.limit_named_in_an_error" {
  title = "Limit named in an error",
  stage = "final",
  judge = function(job, figure)
    error("took too long and was stopped")
  end,
  mend = "Remove this rule.",
}
