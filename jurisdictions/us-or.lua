-- Oregon: the Residential Specialty Code of 2023.
--
-- Until 1 April 2024 the book before it could still be used; which that was is
-- not carried. That the book of 2023 rests on IRC 2021 is recalled. Not carried
-- either: the wildfire section for mapped lots, whose law was changed later.

local LOW = "read second-hand on a low-grade copy of the state's notice"
local BASE = "that the state's book of 2023 rests on IRC 2021 is recalled, not read"

local function edition(from, to, unsure)
  jurisdiction "us-or" {
    title = "Oregon",
    follows = "model/irc-2021",
    unsure = unsure,
    from = from,
    to = to,
    code = "ORSC 2023",
    edition = "Oregon Residential Specialty Code 2023 (on IRC 2021)",
    as_seen = "2026-11-25",
    rules = "us-or.rules.lua",
    figures = {
      -- Two coverings there already: strip. Since 1 April 2003.
      ["layers.most"] = { 2, cite = "R908.3", status = "memory", source = LOW },
      ["layers.peeled_counts"] = { true, cite = "R908.3", status = "memory", source = LOW },
      ["fire.forest_counts"] = { true, sense = "equals", cite = "R902; ORS 215.730",
        status = "seen", source = "an older copy of the state's chapter 9" },
    },
  }
end

edition("2023-10-01", "2024-04-01",
  "the book before could be used until 1 April 2024, and " .. BASE)
edition("2024-04-01", nil, BASE)
