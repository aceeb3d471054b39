-- stops: error "more than 200 things are wrong"
-- Wrong in every member of every set.

local set, figures = {}, {}
for i = 1, 200 do set[i] = i end
for i = 1, 2000 do figures["attack.f" .. i] = { set } end
jurisdiction "example/attack" { title = "x", follows = "model/test", figures = figures }
