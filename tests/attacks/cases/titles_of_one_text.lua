-- stops: memory
-- A thousand cases of one long title.

local big = "x"
for _ = 1, 20 do big = big .. big end
local group = {}
for i = 1, 1000 do group[i] = { big, expect = "pass" } end
cases "harmless.layers" (group)
