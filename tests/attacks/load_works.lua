-- stops: error "only while a rule judges"
-- when: load
-- Nor has a line of arithmetic.

work("a line for no finding")
