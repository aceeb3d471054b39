-- stops: steps
-- The loop is in Lua, but sort, a C function, called it.

rule "attack.endless_loop_in_sort_comparator" {
  title = "Endless loop in sort comparator",
  stage = "final",
  judge = function(job, figure)
    table.sort({ 3, 2, 1 }, function() while true do end end)
  end,
  mend = "Remove this rule.",
}
