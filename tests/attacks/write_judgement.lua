-- stops: error "attempt to index a userdata value"
-- A judgement is changed by its methods only.

rule "attack.write_judgement" {
  title = "Write judgement",
  stage = "final",
  reads = { figures = { "test.most" } },
  judge = function(job, figure)
    local judgement = at_most(3, figure "test.most", "layers")
    judgement.met = true
  end,
  mend = "Remove this rule.",
}
