-- stops: memory
-- The stack itself is memory.

rule "attack.unpack_many" {
  title = "Unpack many",
  stage = "final",
  judge = function(job, figure)
    local list = {}
    for i = 1, 100000 do list[i] = i end
    return select("#", table.unpack(list, 1, 400000))
  end,
  mend = "Remove this rule.",
}
