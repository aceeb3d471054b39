-- stops: error ""roof.slope" is not a list of the job (the nearest field: roof.slopes)"
-- when: load
-- per names a list of the job.

rule "attack.x" { title = "x", stage = "final", per = "roof.slope", mend = "x",
  judge = function() end }
