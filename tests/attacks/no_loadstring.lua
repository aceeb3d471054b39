-- stops: error "unknown name 'loadstring'"
-- Code from a text, by its old name.

rule "attack.no_loadstring" {
  title = "No loadstring",
  stage = "final",
  judge = function(job, figure)
    return loadstring("return 1")()
  end,
  mend = "Remove this rule.",
}
