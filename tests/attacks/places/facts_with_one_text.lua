-- stops: memory
-- Every fact says the same endless text.

local big = "x"
for _ = 1, 20 do big = big .. big end
local facts = {}
for i = 1, 1500 do facts["site.f" .. i] = { big, cite = big } end

jurisdiction "example/attack" {
  title = "Attack", invented = true, follows = "model/test", facts = facts,
}
