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

jurisdiction "us-nj" {
  title = "New Jersey",
  follows = "model/irc-2021",
  unsure = "permits, visits and papers go by the state's own code (N.J.A.C. 5:23), which was not "
    .. "read",
  from = "2022-09-06",
  code = "NJ subcode 2021",
  edition = "New Jersey one- and two-family subcode 2021 (on IRC 2021)",
  as_seen = "2026-11-28",
  figures = {
    -- By January's mean; no table, and no history.
    ["ice_barrier.by_table"] = read(false),
    ["ice_barrier.by_january_mean"] = read(true),
    ["ice_barrier.january_mean_most"] = read(25, { unit = "F", sense = "at_most" }),
  },
}
