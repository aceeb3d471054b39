-- stops: memory
-- Every figure is said to stand in the same endless page.

local big = "x"
for _ = 1, 20 do big = big .. big end
local figures = {}
for i = 1, 2000 do figures["attack.f" .. i] = { i, unit = "in", source = big } end
jurisdiction "example/attack" { title = "x", follows = "model/test", figures = figures }
