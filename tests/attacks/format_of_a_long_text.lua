-- stops: memory
-- Each call is a new text.

rule "attack.format_of_a_long_text" {
  title = "Format of a long text",
  stage = "final",
  judge = function(job, figure)
    local format = "x"
    while #format < 100000 do format = format .. format end
    while true do string.format(format .. "%%") end
  end,
  mend = "Remove this rule.",
}
