-- stops: error "unknown name 'rawget'"
-- Reads past a view.

rule "attack.no_rawget" {
  title = "No rawget",
  stage = "final",
  judge = function(job, figure)
    return rawget(math, "pi")
  end,
  mend = "Remove this rule.",
}
