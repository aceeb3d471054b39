-- stops: error "'max' may not be set here"
-- Replacing a function for every later rule.

rule "attack.write_math" {
  title = "Write math",
  stage = "final",
  judge = function(job, figure)
    math.max = function() return 0 end
  end,
  mend = "Remove this rule.",
}
