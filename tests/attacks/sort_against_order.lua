-- stops: error "invalid order function"
-- A comparator that contradicts itself must not lead sort out of the list.

rule "attack.sort_against_order" {
  title = "Sort against order",
  stage = "final",
  judge = function(job, figure)
    local list = {}
    for i = 1, 1000 do list[i] = i end
    table.sort(list, function() return true end)
  end,
  mend = "Remove this rule.",
}
