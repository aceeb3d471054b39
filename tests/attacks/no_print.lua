-- stops: error "unknown name 'print'"
-- Not needed, so not there.

rule "attack.no_print" {
  title = "No print",
  stage = "final",
  judge = function(job, figure)
    return print("x")
  end,
  mend = "Remove this rule.",
}
