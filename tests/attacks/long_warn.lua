-- stops: error "a text of more than 4000 bytes"
-- As with work.

rule "attack.long_warn" {
  title = "Long warn",
  stage = "final",
  reads = { figures = { "test.most" } },
  judge = function(job, figure)
    local text = "x"
    while #text < 100000 do text = text .. text end
    return at_most(1, figure "test.most", "layers"):warn(text)
  end,
  mend = "Remove this rule.",
}
