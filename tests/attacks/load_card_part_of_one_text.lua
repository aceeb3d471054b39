-- stops: memory
-- when: load
-- Names as long as a file may make them.

local big = "x"
for _ = 1, 20 do big = big .. big end
local part, parts = { title = big }, {}
for i = 1, 200 do part[i] = big end
for i = 1, 200 do parts[i] = part end
card "final" (parts)
