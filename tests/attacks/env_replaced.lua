-- stops: error "attempt to index a nil value (global 'os')"
-- A rule may replace its own surroundings; it gains nothing by it.

rule "attack.env_replaced" {
  title = "Env replaced",
  stage = "final",
  judge = function(job, figure)
    local _ENV = { at_most = at_most }
    x = 1
    return os.exit(0)
  end,
  mend = "Remove this rule.",
}
