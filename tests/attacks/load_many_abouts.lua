-- stops: error "more than 50 lines about the house"
-- when: load
-- Or more lines about the house.

for i = 1, 100000 do
  about("a" .. i) { says = function() return "x" end }
end
