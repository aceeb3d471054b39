-- stops: error "set 'told', a local of its file"
-- What one rule sets, the next would read.

local told = false

rule "attack.lasting_local" {
  title = "Lasting local",
  stage = "final",
  reads = { facts = { "existing.layers" }, figures = { "test.most" } },
  judge = function(job, figure)
    told = true
    return at_most(job.existing.layers, figure "test.most", "layers")
  end,
  mend = "Remove this rule.",
}
