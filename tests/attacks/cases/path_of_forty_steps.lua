-- stops: case "no such place in a job: more than 32 steps"
-- No reader of a job goes deeper, so no case may.

local path = "a"
for _ = 2, 40 do path = path .. ".a" end
cases "harmless.layers" {
  { "deep", with = { [path] = 1 }, expect = "pass" },
}
