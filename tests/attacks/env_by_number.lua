-- stops: error "there are no such names here"
-- Names are texts.

rule "attack.env_by_number" {
  title = "Env by number",
  stage = "final",
  judge = function(job, figure)
    return _ENV[1]
  end,
  mend = "Remove this rule.",
}
