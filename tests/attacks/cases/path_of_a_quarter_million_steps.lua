-- stops: case "no such place in a job: a path of more than 500 bytes"
-- A path as deep as this makes a job that no reader can walk down.

local path = "a"
for _ = 1, 18 do path = path .. "." .. path end
cases "harmless.layers" {
  { "deep", with = { [path] = 1 }, expect = "pass" },
}
