-- stops: memory
-- Iteration in order makes a sorted list of the keys each time.

rule "attack.pairs_again_and_again" {
  title = "Pairs again and again",
  stage = "final",
  judge = function(job, figure)
    local list = {}
    for i = 1, 5000 do list[i] = i end
    while true do pairs(list) end
  end,
  mend = "Remove this rule.",
}
