-- stops: error "unknown name 'package'"
-- Reaches the host.

rule "attack.no_package" {
  title = "No package",
  stage = "final",
  judge = function(job, figure)
    return package.loaded
  end,
  mend = "Remove this rule.",
}
