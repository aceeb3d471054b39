-- stops: error "this table may not be changed"
-- A read-only view looks empty to sort, and stays as it is.

rule "attack.sort_the_whitelist" {
  title = "Sort the whitelist",
  stage = "final",
  judge = function(job, figure)
    table.sort(math)
    math[1] = 1
  end,
  mend = "Remove this rule.",
}
