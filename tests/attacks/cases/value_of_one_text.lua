-- stops: memory
-- One text of a megabyte, listed ten thousand times.

local big = "x"
for _ = 1, 20 do big = big .. big end
local value = {}
for i = 1, 10000 do value[i] = big end
cases "harmless.layers" {
  { "long", with = { ["existing.kinds"] = value }, expect = "pass" },
}
