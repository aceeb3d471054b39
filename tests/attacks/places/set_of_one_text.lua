-- stops: error "a set has more than 200 members"
-- One text of a megabyte, listed a hundred thousand times, costs Lua next to nothing.

local big = "x"
for _ = 1, 20 do big = big .. big end
local set = {}
for i = 1, 100000 do set[i] = big end
jurisdiction "example/attack" { title = "x", follows = "model/test",
  figures = { ["test.kinds"] = { set } } }
