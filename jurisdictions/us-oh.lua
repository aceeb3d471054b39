-- Ohio: the Residential Code of Ohio 2019, on IRC 2018.
--
-- It covers one-, two- and three-family houses; a job here cannot say three.
-- A revision of 2024 is reported, which was not found: from that year on what
-- the model says may no longer be what the state says. Towns may differ (one
-- asks for vents by 1/250).

local function edition(from, to, unsure)
  jurisdiction "us-oh" {
    title = "Ohio",
    follows = "model/irc-2018",
    unsure = unsure,
    from = from,
    to = to,
    code = "RCO 2019",
    edition = "Residential Code of Ohio 2019 (on IRC 2018)",
    as_seen = "2026-11-25",
  }
end

edition("2019-07-01", "2024-01-01")
edition("2024-01-01", nil, "a revision of the state's code in 2024 is reported and was not found")
