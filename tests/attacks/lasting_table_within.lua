-- stops: error "changed a table of its file"
-- However deep it lies.

local told = { a = { { b = {} } } }

rule "attack.lasting_table_within" {
  title = "Lasting table within",
  stage = "final",
  reads = { facts = { "existing.layers" }, figures = { "test.most" } },
  judge = function(job, figure)
    told.a[1].b.c = true
    return at_most(job.existing.layers, figure "test.most", "layers")
  end,
  mend = "Remove this rule.",
}
