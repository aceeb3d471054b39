-- stops: error "unknown key "aplies"; did you mean "applies"?"
-- when: load
-- A misspelled key would otherwise be a duty left out.

rule "attack.x" { title = "x", stage = "final", aplies = function() end, mend = "x",
  judge = function() end }
