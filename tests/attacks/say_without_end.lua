-- stops: error "a text of more than 4000 bytes"
-- Sentence upon sentence: the whole is bounded too.

rule "attack.say_without_end" {
  title = "Say without end",
  stage = "final",
  reads = { figures = { "test.most" } },
  judge = function(job, figure)
    local judgement = at_most(1, figure "test.most", "layers")
    while true do judgement:say("and again ") end
  end,
  mend = "Remove this rule.",
}
