-- stops: error "more than 100 parts"
-- Ten thousand parts would each be read and run.

local parts = {}
for i = 1, 10000 do parts[i] = "attack.lua" end
jurisdiction "example/attack" { title = "x", follows = "model/test", parts = parts }
