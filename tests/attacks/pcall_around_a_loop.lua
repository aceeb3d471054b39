-- stops: error "unknown name 'pcall'"
-- The classic: swallow the error of the limit and go on.

rule "attack.pcall_around_a_loop" {
  title = "Pcall around a loop",
  stage = "final",
  judge = function(job, figure)
    while true do
      pcall(function() while true do end end)
    end
  end,
  mend = "Remove this rule.",
}
