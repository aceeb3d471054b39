-- Michigan: the Residential Code of 2015, still in force.
--
-- A book on the 2021 edition was to begin on 29 August 2025. An agreed court
-- order of July 2025 stayed it while suits run; whether it still does must be
-- looked up again. The day the book of 2015 began is recalled, not read.

local ROOFER = "read second-hand on a roofer's page about the state's code"

jurisdiction "us-mi" {
  title = "Michigan",
  follows = "model/irc-2015",
  from = "2016-04-20",
  code = "MRC 2015",
  edition = "Michigan Residential Code 2015 (on IRC 2015)",
  as_seen = "2026-11-25",
  figures = {
    ["layers.most"] = { cite = "R908.3.1.1", status = "memory", source = ROOFER },
    ["ice_barrier.required"] = { true, cite = "R905.1.2", status = "memory", source = ROOFER },
  },
}
