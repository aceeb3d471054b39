-- stops: error "more than 1000 names on cards"
-- when: load
-- One name, listed again and again.

local part = { title = "x" }
for i = 1, 100000 do part[i] = "harmless" end
card "final" { part }
