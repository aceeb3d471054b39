-- stops: memory
-- Every edition has the same endless title.

local big = "x"
for _ = 1, 20 do big = big .. big end
for i = 1, 200 do jurisdiction "example/attack" { title = big } end
