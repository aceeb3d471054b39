-- stops: error "only while a rule judges"
-- when: load
-- A comparison has nothing to stand in before a job is there.

at_most(1, #"no", "layers")
