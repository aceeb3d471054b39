-- stops: error "attempt to call a nil value (field 'dump')"
-- Bytecode out is half of bytecode in.

rule "attack.string_dump" {
  title = "String dump",
  stage = "final",
  judge = function(job, figure)
    return string.dump(function() end)
  end,
  mend = "Remove this rule.",
}
