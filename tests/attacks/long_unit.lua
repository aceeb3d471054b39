-- stops: error "a text of more than 4000 bytes"
-- A unit is a word.

rule "attack.long_unit" {
  title = "Long unit",
  stage = "final",
  reads = { figures = { "test.most" } },
  judge = function(job, figure)
    local unit = "x"
    while #unit < 100000 do unit = unit .. unit end
    return at_most(1, figure "test.most", unit)
  end,
  mend = "Remove this rule.",
}
