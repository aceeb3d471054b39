-- stops: error "attempt to index a string value"
-- A text may be indexed, never written.

rule "attack.write_string_method" {
  title = "Write string method",
  stage = "final",
  judge = function(job, figure)
    ("").format = function() return "" end
  end,
  mend = "Remove this rule.",
}
