-- stops: error "a rule's name holds a-z, 0-9, _ and one dot"
-- when: load
-- A name is not cut at a zero byte.

rule "attack.x\0y" { title = "x", stage = "final", judge = function() end, mend = "x" }
