-- stops: memory
-- A long separator between many items.

rule "attack.concat_blown_up" {
  title = "Concat blown up",
  stage = "final",
  judge = function(job, figure)
    local list, between = {}, "x"
    for i = 1, 1000 do list[i] = "y" end
    while #between < 100000 do between = between .. between end
    return table.concat(list, between)
  end,
  mend = "Remove this rule.",
}
