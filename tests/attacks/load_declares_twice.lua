-- stops: error "is already a rule"
-- when: load
-- A later rule may not take an earlier one's name.

rule "harmless.layers" { title = "x", stage = "final", judge = function() end, mend = "x" }
rule "harmless.layers" { title = "x", stage = "final", judge = function() end, mend = "x" }
