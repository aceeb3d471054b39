-- stops: error "C stack overflow"
-- Each level of sort calls back into Lua, and so uses the C stack.

rule "attack.sort_within_sort" {
  title = "Sort within sort",
  stage = "final",
  judge = function(job, figure)
    local function deeper() table.sort({ 2, 1 }, deeper) end
    deeper()
  end,
  mend = "Remove this rule.",
}
