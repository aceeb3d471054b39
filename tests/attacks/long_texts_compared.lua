-- stops: time
-- Equal texts of many kilobytes are compared byte by byte, in C, at one step each.
-- Only the clock sees it.

rule "attack.long_texts_compared" {
  title = "Long texts compared",
  stage = "final",
  judge = function(job, figure)
    local half = "xxxxxxxxxxxxxxx" -- 2^15 of it take hardly less room than 2^19 bytes
    while #half < 300000 do half = half .. half end
    local a, b = half .. "a", half .. "b"
    while true do local _ = a == b end
  end,
  mend = "Remove this rule.",
}
