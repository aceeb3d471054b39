-- stops: case "with: more than 200 changes"
-- Each would be looked for among all that were made before it.

local with = {}
for i = 1, 50000 do with["existing.a" .. i] = { 1, 2, 3 } end
cases "harmless.layers" {
  { "many", with = with, expect = "pass" },
}
