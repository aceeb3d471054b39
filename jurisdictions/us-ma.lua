-- Massachusetts: 780 CMR, 9th edition (on IRC 2015) and 10th (on IRC 2021).
--
-- The 10th began on 11 October 2024. Until when the 9th could still be used is
-- disputed: the state's page says 31 December 2024, a later page 30 June 2025.
-- What each rests on was read second-hand; the 9th's first day is recalled.

local NINTH = "that the 9th edition rests on IRC 2015 was read second-hand"
local TENTH = "that the 10th edition rests on IRC 2021 was read second-hand"

local function edition(number, base, from, to, unsure)
  jurisdiction "us-ma" {
    title = "Massachusetts",
    follows = "model/irc-" .. base,
    unsure = unsure,
    from = from,
    to = to,
    code = "780 CMR " .. number,
    edition = "780 CMR, " .. number .. " edition (on IRC " .. base .. ")",
    as_seen = "2026-11-25",
  }
end

edition("9th", "2015", "2018-01-01", "2024-10-11", NINTH)
edition("10th", "2021", "2024-10-11", "2025-01-01",
  "an application of this day could still go by the 9th edition; " .. TENTH)
edition("10th", "2021", "2025-01-01", "2025-07-01",
  "the 9th edition could be used to 31 December 2024 by the state's page, to 30 June 2025 by a "
    .. "later one; " .. TENTH)
edition("10th", "2021", "2025-07-01", nil, TENTH)
