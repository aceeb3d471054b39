-- stops: steps
-- Unpacking pushes every item, in C.

rule "attack.unpack_again_and_again" {
  title = "Unpack again and again",
  stage = "final",
  judge = function(job, figure)
    local list = {}
    for i = 1, 20000 do list[i] = i end
    while true do select("#", table.unpack(list)) end
  end,
  mend = "Remove this rule.",
}
