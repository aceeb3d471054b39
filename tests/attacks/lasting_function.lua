-- stops: error "set 'helper', a local of its file"
-- A helper put in the place of another is one for all rules that use it.

local function helper() return 1 end

rule "attack.lasting_function" {
  title = "Lasting function",
  stage = "final",
  reads = { facts = { "existing.layers" }, figures = { "test.most" } },
  judge = function(job, figure)
    helper = function() return 2 end
    return at_most(job.existing.layers, figure "test.most", "layers")
  end,
  mend = "Remove this rule.",
}
