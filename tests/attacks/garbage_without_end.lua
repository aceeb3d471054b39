-- stops: memory
-- Nothing is kept, but what was taken in one call is never credited back.

rule "attack.garbage_without_end" {
  title = "Garbage without end",
  stage = "final",
  judge = function(job, figure)
    while true do local _ = {} end
  end,
  mend = "Remove this rule.",
}
