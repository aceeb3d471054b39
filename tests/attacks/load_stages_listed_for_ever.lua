-- stops: error "stages is a list of stages, each once"
-- when: load
-- One list of a million stages serves any number of cautions.

local stages = {}
for i = 1, 300000 do stages[i] = "permit" end
for i = 1, 100 do
  caution("c" .. i) { stages = stages, says = "x",
    cite = { code = "a", section = "b", status = "practice", source = "c" } }
end
