-- stops: error "more than 2000 rules"
-- when: load
-- A loop can declare more rules than any book has.

for i = 1, 100000 do
  rule("attack.x" .. i) { title = "x", stage = "final", judge = function() end, mend = "x" }
end
