-- stops: error "a text of more than 4000 bytes"
-- What goes into a finding outlives the sandbox: it is bounded in length.

rule "attack.long_work" {
  title = "Long work",
  stage = "final",
  judge = function(job, figure)
    local text = "x"
    while #text < 100000 do text = text .. text end
    work(text)
  end,
  mend = "Remove this rule.",
}
