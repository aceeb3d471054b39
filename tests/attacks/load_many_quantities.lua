-- stops: error "more than 500 quantities"
-- when: load
-- Or more things to buy.

for i = 1, 100000 do
  quantity("q" .. i) { title = "x", amount = function() end }
end
