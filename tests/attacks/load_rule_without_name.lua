-- stops: error "string expected, got nil"
-- when: load
-- A rule needs a name that is a text.

rule(nil)
