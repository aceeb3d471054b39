-- stops: memory
-- Every piece cut from a text is memory taken.

rule "attack.cut_again_and_again" {
  title = "Cut again and again",
  stage = "final",
  judge = function(job, figure)
    local text = "x"
    while #text < 100000 do text = text .. text end
    while true do text:sub(2) end
  end,
  mend = "Remove this rule.",
}
