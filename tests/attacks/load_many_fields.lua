-- stops: error "more than 2000 fields"
-- when: load
-- A loop can declare fields, too.

for i = 1, 1000000 do
  field("attack" .. i) { type = "text", stage = "permit", ask = "x" }
end
