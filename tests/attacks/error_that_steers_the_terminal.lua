-- stops: error "gone"
-- Control characters reach nobody's screen.

rule "attack.error_that_steers_the_terminal" {
  title = "Error that steers the terminal",
  stage = "final",
  judge = function(job, figure)
    error("\27[2Jgone \0 \255\254")
  end,
  mend = "Remove this rule.",
}
