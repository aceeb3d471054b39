-- stops: error "set '_ENV', a local of its file"
-- Names looked up in other surroundings from then on.

local own = { at_most = at_most }

rule "attack.lasting_names" {
  title = "Lasting names",
  stage = "final",
  reads = { facts = { "existing.layers" }, figures = { "test.most" } },
  judge = function(job, figure)
    _ENV = own
    return at_most(job.existing.layers, figure "test.most", "layers")
  end,
  mend = "Remove this rule.",
}
