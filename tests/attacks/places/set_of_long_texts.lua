-- stops: memory
-- Few members, all of them long.

local big = "x"
for _ = 1, 20 do big = big .. big end
local set = {}
for i = 1, 200 do set[i] = big end
jurisdiction "example/attack" { title = "x", follows = "model/test",
  figures = { ["test.kinds"] = { set } } }
