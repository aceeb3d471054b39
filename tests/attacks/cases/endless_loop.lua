-- stops: steps
-- The cases of one county do not keep the others from being run.

while true do end
