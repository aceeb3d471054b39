-- stops: error "'%q' is not to be had here"
-- %q is for source code.

rule "attack.format_quoted" {
  title = "Format quoted",
  stage = "final",
  judge = function(job, figure)
    return string.format('%q', 'x')
  end,
  mend = "Remove this rule.",
}
