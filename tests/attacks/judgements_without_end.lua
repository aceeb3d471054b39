-- stops: error "the rule has said more than 1024 KB"
-- Every comparison takes memory that outlives the call, so it is charged for.

rule "attack.judgements_without_end" {
  title = "Judgements without end",
  stage = "final",
  judge = function(job, figure)
    while true do at_most(1, 2) end
  end,
  mend = "Remove this rule.",
}
