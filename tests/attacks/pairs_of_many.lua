-- stops: error "a table of more than 10000 keys"
-- Sorted iteration is bounded in length.

rule "attack.pairs_of_many" {
  title = "Pairs of many",
  stage = "final",
  judge = function(job, figure)
    local list = {}
    for i = 1, 20000 do list[i] = i end
    for _ in pairs(list) do end
  end,
  mend = "Remove this rule.",
}
