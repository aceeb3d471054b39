-- stops: memory
-- A file of cases has a heap of its own, and a limit of its own.

local text = "x"
while true do text = text .. text end
