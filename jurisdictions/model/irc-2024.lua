-- IRC 2024: as 2021 but for underlayment where the wind is strong, a standard for synthetic
-- underlayment, the wind standard of 2022, and new numbers: laying over is R908.4, smoke
-- alarms R310, carbon monoxide R311, addresses R308.1. Its columns are those named 2024 in
-- irc/.

jurisdiction "model/irc-2024" {
  title = "International Residential Code, 2024",
  model = true,
  follows = "model/irc",
  edition = "IRC 2024",
  parts = "irc",
  column = "2024",
}
