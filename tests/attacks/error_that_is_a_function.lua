-- stops: error "an error that is a function, not a text"
-- As with a table.

rule "attack.error_that_is_a_function" {
  title = "Error that is a function",
  stage = "final",
  judge = function(job, figure)
    error(function() while true do end end)
  end,
  mend = "Remove this rule.",
}
