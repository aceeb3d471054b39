-- stops: error "unknown name 'setmetatable'"
-- Leads to __gc, which no hook can end.

rule "attack.no_setmetatable" {
  title = "No setmetatable",
  stage = "final",
  judge = function(job, figure)
    return setmetatable({}, {})
  end,
  mend = "Remove this rule.",
}
