-- stops: error "trade has no "share_prcent""
-- A missing function is told by name, not as nil.

rule "attack.trade_misspelled" {
  title = "Trade misspelled",
  stage = "final",
  judge = function(job, figure)
    return trade.share_prcent { part = 1, whole = 2 }
  end,
  mend = "Remove this rule.",
}
