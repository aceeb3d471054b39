-- stops: error "unknown name 'collectgarbage'"
-- Leads to finalizers and to timing.

rule "attack.no_collectgarbage" {
  title = "No collectgarbage",
  stage = "final",
  judge = function(job, figure)
    return collectgarbage()
  end,
  mend = "Remove this rule.",
}
