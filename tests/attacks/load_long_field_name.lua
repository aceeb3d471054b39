-- stops: error "rules/attack.lua:5"
-- when: load
-- Paths are bounded in depth.

field "roof.slopes[].a.b.c.d.e.f.g.h" { type = "text", stage = "permit", ask = "x" }
