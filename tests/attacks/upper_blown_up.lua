-- stops: memory
-- Each call of upper is a new text.

rule "attack.upper_blown_up" {
  title = "Upper blown up",
  stage = "final",
  judge = function(job, figure)
    local text = "x"
    while #text < 500000 do text = text .. text end
    while true do text = text .. text:upper() end
  end,
  mend = "Remove this rule.",
}
