-- stops: memory
-- when: load
-- The file itself takes all memory.

local text = "x"
while true do text = text .. text end
