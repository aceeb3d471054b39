-- stops: error "invalid conversion"
-- Widths are two digits at most.

rule "attack.format_wide" {
  title = "Format wide",
  stage = "final",
  judge = function(job, figure)
    return string.format('%99999d', 1)
  end,
  mend = "Remove this rule.",
}
