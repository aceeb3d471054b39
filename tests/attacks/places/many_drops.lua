-- stops: error "drops more than 2000 rules"
-- There are not so many rules.

local drop = {}
for i = 1, 20000 do drop["attack.r" .. i] = "no" end
jurisdiction "example/attack" { title = "x", follows = "model/test", drop = drop }
