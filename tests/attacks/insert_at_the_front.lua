-- stops: steps
-- Each insertion moves the whole list, in C: it is charged by length.

rule "attack.insert_at_the_front" {
  title = "Insert at the front",
  stage = "final",
  judge = function(job, figure)
    local list = {}
    for i = 1, 1000000 do table.insert(list, 1, i) end
  end,
  mend = "Remove this rule.",
}
