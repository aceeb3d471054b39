-- stops: steps
-- Sorting is C: it is charged before it is done.

rule "attack.sort_again_and_again" {
  title = "Sort again and again",
  stage = "final",
  judge = function(job, figure)
    local list = {}
    for i = 1, 10000 do list[i] = -i end
    while true do table.sort(list) end
  end,
  mend = "Remove this rule.",
}
