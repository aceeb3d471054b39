-- stops: steps
-- A for loop over an iterator that never ends.

rule "attack.endless_iterator" {
  title = "Endless iterator",
  stage = "final",
  judge = function(job, figure)
    for _ in function() return 1 end do end
  end,
  mend = "Remove this rule.",
}
