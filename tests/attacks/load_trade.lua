-- stops: error "only while a rule judges"
-- when: load
-- Nor what writes one by itself.

trade.sum { { "a", 1 }, unit = "in" }
