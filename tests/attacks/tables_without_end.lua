-- stops: memory
-- Many small tables, each kept by the next.

rule "attack.tables_without_end" {
  title = "Tables without end",
  stage = "final",
  judge = function(job, figure)
    local kept
    while true do kept = { kept } end
  end,
  mend = "Remove this rule.",
}
