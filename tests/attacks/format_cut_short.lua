-- stops: error "is not to be had here"
-- A format that ends in the middle.

rule "attack.format_cut_short" {
  title = "Format cut short",
  stage = "final",
  judge = function(job, figure)
    return string.format('%')
  end,
  mend = "Remove this rule.",
}
