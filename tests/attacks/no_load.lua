-- stops: error "unknown name 'load'"
-- Code from a text.

rule "attack.no_load" {
  title = "No load",
  stage = "final",
  judge = function(job, figure)
    return load("return 1")()
  end,
  mend = "Remove this rule.",
}
