-- stops: steps
-- known leaves a trace as well.

rule "attack.known_without_end" {
  title = "Known without end",
  stage = "final",
  judge = function(job, figure)
    while true do known(job, "job") end
  end,
  mend = "Remove this rule.",
}
