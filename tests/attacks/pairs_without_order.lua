-- stops: error "has no order"
-- Keys that are tables have no order but their address.

rule "attack.pairs_without_order" {
  title = "Pairs without order",
  stage = "final",
  judge = function(job, figure)
    for _ in pairs({ [{}] = 1 }) do end
  end,
  mend = "Remove this rule.",
}
