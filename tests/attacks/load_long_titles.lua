-- stops: memory
-- when: load
-- Every rule has the same long title.

local big = "x"
for _ = 1, 20 do big = big .. big end
for i = 1, 2000 do
  rule("attack.r" .. i) { title = big, stage = "permit", mend = big, judge = function() end }
end
