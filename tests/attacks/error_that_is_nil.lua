-- stops: error "an error that is a nil, not a text"
-- error(nil) must not be read as "no error".

rule "attack.error_that_is_nil" {
  title = "Error that is nil",
  stage = "final",
  judge = function(job, figure)
    error(nil)
  end,
  mend = "Remove this rule.",
}
