-- stops: error "this table may not be changed"
-- A read-only view is not sorted, nor written to.

rule "attack.sort_the_whitelist" {
  title = "Sort the whitelist",
  stage = "final",
  judge = function(job, figure)
    table.sort(math)
  end,
  mend = "Remove this rule.",
}
