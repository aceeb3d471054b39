-- stops: error "changed a table of its file"
-- Nor may anything be taken out.

local told = { 1, 2, 3 }

rule "attack.lasting_table_emptied" {
  title = "Lasting table emptied",
  stage = "final",
  reads = { facts = { "existing.layers" }, figures = { "test.most" } },
  judge = function(job, figure)
    table.remove(told)
    return at_most(job.existing.layers, figure "test.most", "layers")
  end,
  mend = "Remove this rule.",
}
