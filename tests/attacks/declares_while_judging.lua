-- stops: error "only while the file is loaded"
-- A rule may not declare rules: the rulebook is closed by then.

rule "attack.declares_while_judging" {
  title = "Declares while judging",
  stage = "final",
  judge = function(job, figure)
    rule "attack.second" { title = "x", stage = "final", judge = function() end, mend = "x" }
  end,
  mend = "Remove this rule.",
}
