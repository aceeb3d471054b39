-- stops: memory
-- s .. s: a gigabyte in thirty steps.

rule "attack.text_doubled_for_ever" {
  title = "Text doubled for ever",
  stage = "final",
  judge = function(job, figure)
    local text = "x"
    while true do text = text .. text end
  end,
  mend = "Remove this rule.",
}
