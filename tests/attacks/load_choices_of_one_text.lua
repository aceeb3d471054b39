-- stops: error "has more than 200 choices"
-- when: load
-- One text of a megabyte, listed a hundred thousand times, costs Lua next to nothing.

local big = "x"
for _ = 1, 20 do big = big .. big end
local choices = {}
for i = 1, 100000 do choices[i] = big end
field "attack" { type = "choice", choices = choices, stage = "permit", ask = "Which?" }
