-- stops: steps
-- Each removal moves the whole list, in C.

rule "attack.remove_from_the_front" {
  title = "Remove from the front",
  stage = "final",
  judge = function(job, figure)
    local list = {}
    for i = 1, 20000 do list[i] = i end
    while true do
      table.remove(list, 1)
      list[#list + 1] = 1
    end
  end,
  mend = "Remove this rule.",
}
