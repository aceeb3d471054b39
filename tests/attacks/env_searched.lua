-- stops: error "saw nothing"
-- The view shows nothing to whoever walks over it.

rule "attack.env_searched" {
  title = "Env searched",
  stage = "final",
  judge = function(job, figure)
    for name in pairs(_ENV) do error("saw " .. name) end
    error("saw nothing")
  end,
  mend = "Remove this rule.",
}
