-- stops: error "rules/attack.lua:5: unexpected symbol near '='"
-- when: load
-- Named with its line.

local x = = 1
