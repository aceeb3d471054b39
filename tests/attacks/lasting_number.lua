-- stops: error "set 'told', a local of its file"
-- A whole number and its fraction are told apart.

local told = 1

rule "attack.lasting_number" {
  title = "Lasting number",
  stage = "final",
  reads = { facts = { "existing.layers" }, figures = { "test.most" } },
  judge = function(job, figure)
    told = 1.0
    return at_most(job.existing.layers, figure "test.most", "layers")
  end,
  mend = "Remove this rule.",
}
