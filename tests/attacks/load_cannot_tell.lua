-- stops: error "only while a rule judges"
-- when: load
-- There is no finding to leave open.

cannot_tell("whatever")
