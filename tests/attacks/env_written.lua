-- stops: error "'os' may not be set here"
-- _ENV itself is a read-only view.

rule "attack.env_written" {
  title = "Env written",
  stage = "final",
  judge = function(job, figure)
    _ENV.os = 1
  end,
  mend = "Remove this rule.",
}
