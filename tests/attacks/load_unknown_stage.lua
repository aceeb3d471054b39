-- stops: error "stage "later" is not one of"
-- when: load
-- A stage nobody reaches would never be judged.

rule "attack.x" { title = "x", stage = "later", judge = function() end, mend = "x" }
