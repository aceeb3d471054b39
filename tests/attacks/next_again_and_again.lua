-- stops: memory
-- And so does next.

rule "attack.next_again_and_again" {
  title = "Next again and again",
  stage = "final",
  judge = function(job, figure)
    local list = {}
    for i = 1, 5000 do list[i] = i end
    while true do next(list) end
  end,
  mend = "Remove this rule.",
}
