-- stops: error "too many results"
-- More results than any stack holds.

rule "attack.unpack_huge" {
  title = "Unpack huge",
  stage = "final",
  judge = function(job, figure)
    return table.unpack({}, 1, 100000000)
  end,
  mend = "Remove this rule.",
}
