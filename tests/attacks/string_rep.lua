-- stops: error "attempt to call a nil value (field 'rep')"
-- A gigabyte in one step of C.

rule "attack.string_rep" {
  title = "String rep",
  stage = "final",
  judge = function(job, figure)
    return string.rep("x", 1 << 30)
  end,
  mend = "Remove this rule.",
}
