-- stops: error "'sum' may not be set here"
-- The arithmetic is not to be replaced.

rule "attack.write_trade" {
  title = "Write trade",
  stage = "final",
  judge = function(job, figure)
    trade.sum = function() return 0 end
  end,
  mend = "Remove this rule.",
}
