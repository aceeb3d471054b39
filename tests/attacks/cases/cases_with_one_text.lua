-- stops: memory
-- A thousand jobs, each with the same long name.

local big = "x"
for _ = 1, 20 do big = big .. big end
local group = {}
for i = 1, 1000 do group[i] = { "long", with = { ["job"] = big }, expect = "pass" } end
cases "harmless.layers" (group)
