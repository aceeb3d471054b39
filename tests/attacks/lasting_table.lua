-- stops: error "changed a table of its file"
-- And so what it puts into a table.

local told = {}

rule "attack.lasting_table" {
  title = "Lasting table",
  stage = "final",
  reads = { facts = { "existing.layers", "job" }, figures = { "test.most" } },
  judge = function(job, figure)
    told[#told + 1] = job.job
    return at_most(job.existing.layers, figure "test.most", "layers")
  end,
  mend = "Remove this rule.",
}
