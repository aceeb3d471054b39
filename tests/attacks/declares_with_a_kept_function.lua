-- stops: error "only while the file is loaded"
-- Nor through the second half of a declaration begun at load.

local declare = rule "attack.kept"

rule "attack.declares_with_a_kept_function" {
  title = "Declares with a kept function",
  stage = "final",
  judge = function(job, figure)
    declare { title = "x", stage = "final", judge = function() end, mend = "x" }
  end,
  mend = "Remove this rule.",
}
