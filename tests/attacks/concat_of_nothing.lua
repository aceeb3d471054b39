-- stops: steps
-- Joining empty texts takes no memory, only work in C.

rule "attack.concat_of_nothing" {
  title = "Concat of nothing",
  stage = "final",
  judge = function(job, figure)
    local list = {}
    for i = 1, 30000 do list[i] = "" end
    while true do table.concat(list) end
  end,
  mend = "Remove this rule.",
}
