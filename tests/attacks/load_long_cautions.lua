-- stops: memory
-- when: load
-- Every caution cites the same long section.

local big = "x"
for _ = 1, 20 do big = big .. big end
for i = 1, 100 do
  caution("c" .. i) { stages = { "permit" }, says = "x",
    cite = { code = big, section = big, status = "practice", source = big } }
end
