-- stops: error "text, number or true/false expected"
-- The same, after a zero byte.

rule "attack.format_a_table_after_zero" {
  title = "Format a table after zero",
  stage = "final",
  judge = function(job, figure)
    error(string.format('\0%s', {}))
  end,
  mend = "Remove this rule.",
}
