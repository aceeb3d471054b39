-- stops: error "nowhere"
-- when: load
-- A reference to a list that nobody declares could never be followed.

field "attack_refers" { type = "reference", refers = "nowhere", stage = "permit", ask = "x" }
