-- stops: error "an error that is a table"
-- assert hands on its message unread.

rule "attack.assert_with_a_table" {
  title = "Assert with a table",
  stage = "final",
  judge = function(job, figure)
    assert(false, {})
  end,
  mend = "Remove this rule.",
}
