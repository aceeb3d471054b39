-- stops: error "given a value out of range"
-- Arithmetic refuses it too.

rule "attack.nan_into_arithmetic" {
  title = "Nan into arithmetic",
  stage = "final",
  judge = function(job, figure)
    return trade.share_percent { part = 0 / 0, whole = 1 }
  end,
  mend = "Remove this rule.",
}
