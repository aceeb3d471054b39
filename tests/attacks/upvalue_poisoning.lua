-- stops: error "counted to 1;"
-- A counter at the top of a file starts afresh for each judgement.

local counter = 0

rule "attack.upvalue_poisoning" {
  title = "Upvalue poisoning",
  stage = "final",
  judge = function(job, figure)
    counter = counter + 1
    error("counted to " .. counter .. ";")
  end,
  mend = "Remove this rule.",
}
