-- stops: error "the question is longer than 1000 bytes"
-- when: load
-- Every field asks the same long question.

local big = "x"
for _ = 1, 20 do big = big .. big end
for i = 1, 2000 do
  field("attack_" .. i) { type = "text", stage = "permit", ask = big }
end
