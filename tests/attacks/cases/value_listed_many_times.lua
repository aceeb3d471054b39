-- stops: memory
-- Eight levels of one table within another: fifty to the power of eight values.

local value = { 1 }
for _ = 1, 7 do
  local more = {}
  for i = 1, 50 do more[i] = value end
  value = more
end
cases "harmless.layers" {
  { "wide", with = { ["existing.kinds"] = value }, expect = "pass" },
}
