-- stops: steps
-- A loop in tail calls: no stack grows, no memory is taken.

rule "attack.endless_loop_of_calls" {
  title = "Endless loop of calls",
  stage = "final",
  judge = function(job, figure)
    local function again() return again() end
    return again()
  end,
  mend = "Remove this rule.",
}
