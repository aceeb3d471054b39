-- stops: memory
-- Lua calls need no C stack, only memory.

rule "attack.deep_recursion" {
  title = "Deep recursion",
  stage = "final",
  judge = function(job, figure)
    local function deeper(n) return 1 + deeper(n + 1) end
    return deeper(1)
  end,
  mend = "Remove this rule.",
}
