-- stops: error "not_carried is written"
-- Without the name of a fact nothing would be left to the department, and rules pass.
jurisdiction "example/attack" {
  title = "Attack County", invented = true, follows = "model/test",
  not_carried = { { rules = { "harmless" }, why = "the zone's own sections bind there" } },
}
