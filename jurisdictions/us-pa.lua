-- Pennsylvania: the Uniform Construction Code, on the editions of 2018 and 2021.
--
-- The state's code does not reach residential repairs, nor alterations that
-- leave structure and exits alone, unless a local ordinance says so. Whether a
-- reroof is held to it at all is therefore the first question. An earlier date
-- for the editions of 2021, 13 July 2025, was dropped. Their text was held against the
-- model code's (chapters 8 and 9): it differs in the attic's smaller vent area alone.

local ACT = "Act 45 section 104(b)"
local BILL = "a bill of 2023 restating the act"
local REACH = "the state's code does not reach repairs, nor alterations that leave structure and "
  .. "exits alone, unless a local ordinance says so"
local ORDINANCE = "a local ordinance may ask for a permit all the same"

local function edition(year, base, from, to, more)
  local either
  if base == "2021" then
    either = { false, cite = "R806.2 exception", status = "seen",
      source = "state code text on this edition: one or more of the two" }
  end
  jurisdiction "us-pa" {
    title = "Pennsylvania",
    follows = "model/irc-" .. base,
    unsure = REACH .. (more or ""),
    from = from,
    to = to,
    code = "UCC " .. year,
    edition = "Pennsylvania UCC (on IRC " .. base .. ")",
    as_seen = "2026-11-28",
    figures = {
      ["permit.every"] = { false, cite = ACT, status = "seen", source = BILL,
        disputed = ORDINANCE },
      ["permit.structure_counts"] = { true, cite = ACT, status = "seen", source = BILL,
        disputed = ORDINANCE },
      ["ventilation.reduced_needs_both"] = either,
    },
  }
end

edition("2022", "2018", "2022-02-14", "2026-01-01")
-- A contract signed before may go by 2018 if the permit is sought within six months.
edition("2026", "2021", "2026-01-01", "2026-07-01",
  "; a contract signed before 1 January 2026 may go by the editions of 2018")
edition("2026", "2021", "2026-07-01")
