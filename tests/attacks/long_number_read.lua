-- stops: time
-- Reading a long text as a number is work in C at one step.

rule "attack.long_number_read" {
  title = "Long number read",
  stage = "final",
  judge = function(job, figure)
    local digits = "1"
    while #digits < 1000000 do digits = digits .. digits end
    while true do tonumber(digits) end
  end,
  mend = "Remove this rule.",
}
