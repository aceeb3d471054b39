-- stops: error "kept 1;"
-- And so does a table that a rule fills.

local kept = {}

rule "attack.table_poisoning" {
  title = "Table poisoning",
  stage = "final",
  reads = { facts = { "job" } },
  judge = function(job, figure)
    kept[#kept + 1] = job.job
    error("kept " .. #kept .. ";")
  end,
  mend = "Remove this rule.",
}
