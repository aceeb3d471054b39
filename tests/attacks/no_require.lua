-- stops: error "unknown name 'require'"
-- Reaches the host.

rule "attack.no_require" {
  title = "No require",
  stage = "final",
  judge = function(job, figure)
    return require("os")
  end,
  mend = "Remove this rule.",
}
