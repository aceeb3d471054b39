-- stops: error "'x' may not be set here"
-- The list of text functions is shared by every rule.

rule "attack.write_string" {
  title = "Write string",
  stage = "final",
  judge = function(job, figure)
    string.x = 1
  end,
  mend = "Remove this rule.",
}
