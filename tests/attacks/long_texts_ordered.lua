-- stops: time
-- As with ==, but through the locale's order.

rule "attack.long_texts_ordered" {
  title = "Long texts ordered",
  stage = "final",
  judge = function(job, figure)
    local half = "x"
    while #half < 400000 do half = half .. half end
    local a, b = half .. "a", half .. "b"
    while true do local _ = a < b end
  end,
  mend = "Remove this rule.",
}
