-- stops: error "judge must be a function"
-- when: load
-- Only functions judge.

rule "attack.x" { title = "x", stage = "final", judge = {}, mend = "x" }
