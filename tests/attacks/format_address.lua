-- stops: error "'%p' is not to be had here"
-- %p prints where a table lies: another place each run.

rule "attack.format_address" {
  title = "Format address",
  stage = "final",
  judge = function(job, figure)
    return string.format('%p', {})
  end,
  mend = "Remove this rule.",
}
