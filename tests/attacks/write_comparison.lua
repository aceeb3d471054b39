-- stops: error "'at_most' may not be set here"
-- A comparison is not to be replaced.

rule "attack.write_comparison" {
  title = "Write comparison",
  stage = "final",
  judge = function(job, figure)
    at_most = function() return nil end
  end,
  mend = "Remove this rule.",
}
