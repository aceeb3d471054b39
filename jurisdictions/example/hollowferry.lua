-- Hollowferry, invented: a hamlet where the ferry was, in the invented state of
-- Harrow. It asks for no permit as such and prints no exemption for the outside of
-- a house, and says nothing more: so what the model code leaves off stays off.

jurisdiction "example/hollowferry" {
  title = "Hamlet of Hollowferry, Harrow",
  invented = true,
  follows = "model/irc-2021",
  from = "2025-01-01",
  code = "Hollowferry Bylaws",
  figures = {
    ["permit.every"] = { false, cite = "bylaw 3" },
    ["alarms.exterior_exempt"] = { false, cite = "bylaw 4" },
    ["alarms.by_permit"] = { false, cite = "bylaw 4" },
    ["alarms.co_by_permit"] = { false, cite = "bylaw 4" },
  },
}
