-- stops: error "'%p' is not to be had here"
-- A format goes on after a zero byte; so must the guard.

rule "attack.format_address_after_zero" {
  title = "Format address after zero",
  stage = "final",
  judge = function(job, figure)
    error(string.format('\0%p', {}))
  end,
  mend = "Remove this rule.",
}
