-- stops: error "text, number or true/false expected"
-- %s of a table would print its address.

rule "attack.format_a_table" {
  title = "Format a table",
  stage = "final",
  judge = function(job, figure)
    return string.format('%s', {})
  end,
  mend = "Remove this rule.",
}
