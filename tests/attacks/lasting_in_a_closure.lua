-- stops: error "set 'told', a local of its file"
-- A variable may be a function's own, and outlast it all the same.

local function counter()
  local told = 0
  return function()
    told = told + 1
    return told
  end
end
local count = counter()

rule "attack.lasting_in_a_closure" {
  title = "Lasting in a closure",
  stage = "final",
  reads = { facts = { "existing.layers" }, figures = { "test.most" } },
  judge = function(job, figure)
    count()
    return at_most(job.existing.layers, figure "test.most", "layers")
  end,
  mend = "Remove this rule.",
}
