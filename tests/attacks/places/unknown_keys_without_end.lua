-- stops: error "more than 200 things are wrong"
-- Each slip is told, but not a hundred thousand of them.

local block = { title = "x" }
for i = 1, 100000 do block["key" .. i] = i end
jurisdiction "example/attack" (block)
