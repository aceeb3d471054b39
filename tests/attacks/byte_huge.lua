-- stops: memory
-- Every byte of a long text as a result of its own.

rule "attack.byte_huge" {
  title = "Byte huge",
  stage = "final",
  judge = function(job, figure)
    local text = "x"
    while #text < 300000 do text = text .. text end
    return text:byte(1, -1)
  end,
  mend = "Remove this rule.",
}
