-- stops: error "more than 100 parts"
-- A hundred editions of a hundred parts are no fewer.

local parts = {}
for i = 1, 50 do parts[i] = "attack.lua" end
for i = 1, 100 do
  jurisdiction "example/attack" { title = "x", follows = "model/test", parts = parts }
end
