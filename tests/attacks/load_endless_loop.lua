-- stops: steps
-- when: load
-- The file itself never ends.

while true do end
