-- stops: steps
-- Only counting instructions can end it.

rule "attack.endless_loop" {
  title = "Endless loop",
  stage = "final",
  judge = function(job, figure)
    while true do end
  end,
  mend = "Remove this rule.",
}
