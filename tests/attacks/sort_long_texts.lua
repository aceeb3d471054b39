-- stops: error "a text of more than 256 bytes"
-- Comparing long texts is work in C that no step counts.

rule "attack.sort_long_texts" {
  title = "Sort long texts",
  stage = "final",
  judge = function(job, figure)
    local text = "x"
    while #text < 100000 do text = text .. text end
    table.sort({ text .. "a", text .. "b" })
  end,
  mend = "Remove this rule.",
}
