-- stops: error "unknown name 'getmetatable'"
-- Leads to the methods of every text.

rule "attack.no_getmetatable" {
  title = "No getmetatable",
  stage = "final",
  judge = function(job, figure)
    return getmetatable("")
  end,
  mend = "Remove this rule.",
}
