-- Michigan: the Residential Code of 2015, still in force.
--
-- Model book and first day stand in the state's own rules (R 408.30500, filed on
-- 9 October 2015, in force from 8 February 2016). They leave out R109.1: the state has
-- lines of its own on visits, which were not read, nor were its changes of chapter 9.
-- A book on the 2021 edition was to begin on 29 August 2025. An agreed court
-- order of July 2025 stayed it while suits run; whether it still does must be
-- looked up again.

local ROOFER = "read second-hand on a roofer's page about the state's code"

local function edition(from, to, unsure)
  jurisdiction "us-mi" {
    title = "Michigan",
    follows = "model/irc-2015",
    unsure = unsure,
    from = from,
    to = to,
    code = "MRC 2015",
    edition = "Michigan Residential Code 2015 (on IRC 2015)",
    as_seen = "2026-11-25",
    facts = {
      ["site.climate_zone"] = { one_of = { "5A", "6A", "7" }, book = "Michigan Energy Code",
        cite = "R 408.31060e, Table 301.1", status = "seen", source = "the rule as published" },
    },
    figures = {
      ["layers.most"] = { cite = "R908.3.1.1", status = "memory", source = ROOFER },
      ["ice_barrier.required"] = { true, cite = "R905.1.2", status = "memory", source = ROOFER },
    },
  }
end

edition("2016-02-08", "2025-08-29")
edition("2025-08-29", nil, "a book on IRC 2021, due on 29 August 2025, was stayed in court, and "
  .. "still was in August 2026: ask whether it is")
