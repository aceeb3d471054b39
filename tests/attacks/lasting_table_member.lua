-- stops: error "changed a table of its file"
-- One member for another is a change too.

local told = { 1, 2, 3 }

rule "attack.lasting_table_member" {
  title = "Lasting table member",
  stage = "final",
  reads = { facts = { "existing.layers" }, figures = { "test.most" } },
  judge = function(job, figure)
    told[2] = 4
    return at_most(job.existing.layers, figure "test.most", "layers")
  end,
  mend = "Remove this rule.",
}
