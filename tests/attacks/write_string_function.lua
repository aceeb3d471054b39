-- stops: error "'format' may not be set here"
-- Replacing what other rules call.

rule "attack.write_string_function" {
  title = "Write string function",
  stage = "final",
  judge = function(job, figure)
    string.format = function() return "passed" end
  end,
  mend = "Remove this rule.",
}
