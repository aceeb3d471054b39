-- stops: error "has no judge function"
-- when: load
-- A rule that cannot judge would pass everything.

rule "attack.x" { title = "x", stage = "final", mend = "x" }
