-- stops: error "attempt to call a nil value (method 'rep')"
-- Through the metatable that all texts share.

rule "attack.string_rep_as_method" {
  title = "String rep as method",
  stage = "final",
  judge = function(job, figure)
    return ("x"):rep(1 << 30)
  end,
  mend = "Remove this rule.",
}
