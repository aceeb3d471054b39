-- stops: error "xxxxxxxx"
-- A message is cut to a length that a report can print.

rule "attack.error_that_is_huge" {
  title = "Error that is huge",
  stage = "final",
  judge = function(job, figure)
    local text = "x"
    while #text < 500000 do text = text .. text end
    error(text)
  end,
  mend = "Remove this rule.",
}
