-- Massachusetts: 780 CMR, 9th edition (on IRC 2015) and 10th (on IRC 2021).
--
-- The 10th began on 11 October 2024; the 9th could be used until 30 June 2025, by the
-- state's pages. That the 9th rests on IRC 2015 was read second-hand, its first day is
-- recalled. The state's amendments were not read.

local NINTH = "that the 9th edition rests on IRC 2015 was read second-hand"
local AMENDED = "what the state changed in the code was not read"

local function edition(number, base, from, to, unsure)
  jurisdiction "us-ma" {
    title = "Massachusetts",
    follows = "model/irc-" .. base,
    unsure = unsure,
    from = from,
    to = to,
    code = "780 CMR " .. number,
    edition = "780 CMR, " .. number .. " edition (on IRC " .. base .. ")",
    as_seen = "2026-11-28",
  }
end

edition("9th", "2015", "2018-01-01", "2024-10-11", NINTH)
edition("10th", "2021", "2024-10-11", "2025-07-01",
  "an application of this day could still go by the 9th edition; " .. AMENDED)
edition("10th", "2021", "2025-07-01", nil, AMENDED)
