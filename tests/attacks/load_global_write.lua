-- stops: error "rules/attack.lua:5: 'shared' may not be set here"
-- when: load
-- Two files share no names.

shared = 1
