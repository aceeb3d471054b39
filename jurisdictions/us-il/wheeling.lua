-- Wheeling, Illinois: a page on IRC 2018 without a date: a look at the ice
-- barrier, and the final.

local function seen(value)
  return { value, cite = "roofing replacement page", status = "seen",
    source = "the village's page" }
end

jurisdiction "us-il/wheeling" {
  title = "Wheeling, Illinois",
  follows = "model/irc-2018",
  edition = "IRC 2018 as amended",
  as_seen = "2026-11-25",
  read = { "visits" },
  figures = {
    ["inspection.required.dry_in"] = seen(true),
    ["inspection.required.final"] = seen(true),
  },
}
