-- stops: memory
-- A list that doubles its room each time it is full.

rule "attack.table_grown_for_ever" {
  title = "Table grown for ever",
  stage = "final",
  judge = function(job, figure)
    local list = {}
    for i = 1, math.maxinteger do list[i] = i end
  end,
  mend = "Remove this rule.",
}
