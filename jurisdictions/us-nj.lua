-- New Jersey: the one- and two-family subcode of 2021, on IRC 2021.
--
-- Its text was read (chapters 8 and 9); chapter 1 is the state's own Uniform
-- Construction Code, which was not. The state is said to ask no permit for an ordinary
-- reroof: ask the borough or township.

local TEXT = "state code text on this edition"

local function read(value, more)
  local figure = more or {}
  figure[1], figure.cite, figure.status, figure.source = value, "R905.1.2", "seen", TEXT
  return figure
end

local ADMIN = "permits, visits and papers go by the state's own code (N.J.A.C. 5:23), which was "
  .. "not read"
local NEXT = "; the state takes up each edition of the model code in its turn, and whether that of "
  .. "2024 has begun since January 2026 was not read"

local function edition(from, to, unsure)
  jurisdiction "us-nj" {
    title = "New Jersey",
    follows = "model/irc-2021",
    unsure = unsure,
    from = from,
    to = to,
    code = "NJ subcode 2021",
    edition = "New Jersey one- and two-family subcode 2021 (on IRC 2021)",
    as_seen = "2026-11-29",
    figures = {
      -- By January's mean; no table, and no history.
      ["ice_barrier.by_table"] = read(false),
      ["ice_barrier.by_january_mean"] = read(true),
      ["ice_barrier.january_mean_most"] = read(25, { unit = "F", sense = "at_most" }),
    },
  }
end

-- The text that was read is that of 15 January 2026.
edition("2022-09-06", "2026-01-15", ADMIN)
edition("2026-01-15", nil, ADMIN .. NEXT)
