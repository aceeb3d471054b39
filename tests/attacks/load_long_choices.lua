-- stops: error "a choice is longer than 200 bytes"
-- when: load
-- Few choices, all of them long.

local big = "x"
for _ = 1, 20 do big = big .. big end
local choices = {}
for i = 1, 200 do choices[i] = big end
field "attack" { type = "choice", choices = choices, stage = "permit", ask = "Which?" }
