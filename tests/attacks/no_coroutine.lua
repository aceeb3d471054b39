-- stops: error "unknown name 'coroutine'"
-- A hook counts per coroutine.

rule "attack.no_coroutine" {
  title = "No coroutine",
  stage = "final",
  judge = function(job, figure)
    return coroutine.create(function() while true do end end)
  end,
  mend = "Remove this rule.",
}
