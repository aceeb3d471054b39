-- stops: memory
-- Functions are memory too.

rule "attack.closures_without_end" {
  title = "Closures without end",
  stage = "final",
  judge = function(job, figure)
    local kept
    while true do
      local before = kept
      kept = function() return before end
    end
  end,
  mend = "Remove this rule.",
}
