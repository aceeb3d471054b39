-- stops: error "a rule's name holds a-z, 0-9, _ and one dot"
-- when: load
-- topic.thing, no more.

rule "attack.x.y" { title = "x", stage = "final", judge = function() end, mend = "x" }
