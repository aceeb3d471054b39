-- stops: error "set 'told', a local of its file"
-- Asking whether a rule applies may leave nothing behind either.

local told = false

rule "attack.lasting_by_applies" {
  title = "Lasting by applies",
  stage = "final",
  reads = { facts = { "existing.layers" }, figures = { "test.most" } },
  applies = function()
    told = true
    return true
  end,
  judge = function(job, figure)
    return at_most(job.existing.layers, figure "test.most", "layers")
  end,
  mend = "Remove this rule.",
}
