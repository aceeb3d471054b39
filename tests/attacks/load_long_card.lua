-- stops: error "more than 200 parts of cards"
-- when: load
-- One part, listed again and again.

local part, parts = { title = "x", "harmless" }, {}
for i = 1, 100000 do parts[i] = part end
card "final" (parts)
