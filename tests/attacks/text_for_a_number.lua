-- stops: error "part must be a number"
-- A text that looks like a number is not converted behind the author's back.

rule "attack.text_for_a_number" {
  title = "Text for a number",
  stage = "final",
  judge = function(job, figure)
    return trade.share_percent { part = "1", whole = 2 }
  end,
  mend = "Remove this rule.",
}
