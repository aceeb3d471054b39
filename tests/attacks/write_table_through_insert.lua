-- stops: error "this table may not be changed"
-- insert honors the view: it may not be changed from C either.

rule "attack.write_table_through_insert" {
  title = "Write table through insert",
  stage = "final",
  judge = function(job, figure)
    table.insert(table, "x")
  end,
  mend = "Remove this rule.",
}
