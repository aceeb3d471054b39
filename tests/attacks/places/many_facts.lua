-- stops: error "states more than 2000 things"
-- There are not so many facts.

local facts = {}
for i = 1, 20000 do facts["site.f" .. i] = { true, cite = "1" } end

jurisdiction "example/attack" {
  title = "Attack", invented = true, follows = "model/test", facts = facts,
}
