-- stops: error "is not one all over a place"
-- What is on each roof is not for a place to say.

jurisdiction "example/attack" {
  title = "Attack", invented = true, follows = "model/test",
  facts = { ["existing.layers"] = { 0, unit = "layers", cite = "1" } },
}
