-- stops: error "set 'told', a local of its file"
-- Through whatever functions it is reached.

local told = 0
local function tell() told = told + 1 end
local helpers = { tell = tell }

rule "attack.lasting_through_a_helper" {
  title = "Lasting through a helper",
  stage = "final",
  reads = { facts = { "existing.layers" }, figures = { "test.most" } },
  judge = function(job, figure)
    helpers.tell()
    return at_most(job.existing.layers, figure "test.most", "layers")
  end,
  mend = "Remove this rule.",
}
