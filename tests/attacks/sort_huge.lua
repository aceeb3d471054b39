-- stops: error "a list of more than 10000 items"
-- A long list is refused before it is sorted.

rule "attack.sort_huge" {
  title = "Sort huge",
  stage = "final",
  judge = function(job, figure)
    local list = {}
    for i = 1, 10001 do list[i] = -i end
    table.sort(list)
  end,
  mend = "Remove this rule.",
}
