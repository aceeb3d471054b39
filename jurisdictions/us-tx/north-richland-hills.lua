-- North Richland Hills, Texas: an answer on IRC 2018 without a date. What the page
-- asks of the work is due whether a permit is needed or not.

local function seen(value, cite)
  return { value, cite = cite or "reroof answers", status = "seen",
    source = "the city's answers" }
end

jurisdiction "us-tx/north-richland-hills" {
  title = "North Richland Hills, Texas",
  follows = "model/irc-2018",
  edition = "IRC 2018",
  as_seen = "2026-11-25",
  figures = {
    ["permit.every"] = seen(false),
    ["permit.deck_any_counts"] = seen(true),
    ["permit.deck_any_free"] = seen(0),
    ["ice_barrier.required"] = seen(false),
    ["ice_barrier.by_table"] = seen(false),
    ["drip_edge.eave_required"] = seen(true),
    ["drip_edge.rake_required"] = seen(true),
    ["flashing.kickout_required"] = seen(true),
    ["underlayment.plies_least"] = seen(1),
    ["underlayment.old_may_stay"] = seen {},
    ["layers.most"] = seen(2),
    ["papers.double_deck_needs_engineer"] = seen(true),
  },
}
