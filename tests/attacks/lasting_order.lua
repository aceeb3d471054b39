-- stops: error "changed a table of its file"
-- Sorting a table is changing it.

local told = { 3, 1, 2 }

rule "attack.lasting_order" {
  title = "Lasting order",
  stage = "final",
  reads = { facts = { "existing.layers" }, figures = { "test.most" } },
  judge = function(job, figure)
    table.sort(told)
    return at_most(job.existing.layers, figure "test.most", "layers")
  end,
  mend = "Remove this rule.",
}
