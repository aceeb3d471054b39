-- stops: error "more than 200 cautions"
-- when: load
-- A loop can declare more dangers than anybody reads.

for i = 1, 100000 do
  caution("c" .. i) { stages = { "permit" }, says = "x",
    cite = { code = "a", section = "b", status = "practice", source = "c" } }
end
