-- stops: memory
-- Every rule is dropped for the same endless reason.

local big = "x"
for _ = 1, 20 do big = big .. big end
local drop = {}
for i = 1, 2000 do drop["attack.r" .. i] = big end
jurisdiction "example/attack" { title = "x", follows = "model/test", drop = drop }
