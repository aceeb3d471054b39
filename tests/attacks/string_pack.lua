-- stops: error "attempt to call a nil value (field 'pack')"
-- Left out with all that writes bytes.

rule "attack.string_pack" {
  title = "String pack",
  stage = "final",
  judge = function(job, figure)
    return string.pack("i16", 1)
  end,
  mend = "Remove this rule.",
}
