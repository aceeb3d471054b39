-- stops: error "more than 500 impossible"
-- when: load
-- Or more that cannot be.

for i = 1, 100000 do
  impossible("i" .. i) { at = "stage", when = function() end }
end
