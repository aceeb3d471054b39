-- stops: error "unknown name 'rawset'"
-- Writes past a read-only view.

rule "attack.no_rawset" {
  title = "No rawset",
  stage = "final",
  judge = function(job, figure)
    return rawset(math, "pi", 3)
  end,
  mend = "Remove this rule.",
}
