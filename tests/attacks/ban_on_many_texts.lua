-- stops: error "the rule has said more than 1024 KB"
-- none_of writes out what is banned: that text must not grow with its square.

rule "attack.ban_on_many_texts" {
  title = "Ban on many texts",
  stage = "final",
  judge = function(job, figure)
    local long, banned = "x", {}
    while #long < 1000 do long = long .. long end
    for i = 1, 3500 do banned[i] = long end
    while true do none_of("y", banned) end
  end,
  mend = "Remove this rule.",
}
