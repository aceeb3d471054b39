-- Illinois: no state rule for a reroof.
--
-- The state's residential act covers new houses only. For an existing house a
-- city's or county's own code binds, or the shingle maker's word. So nothing is
-- judged here by the model code; its figures only give the questions a name. A
-- city's profile follows the model edition that the city adopted, not this one.
-- From 1 January 2025 local codes must be as strict in structure as a baseline.

local FAQ = "the state board's answers to common questions"

jurisdiction "us-il" {
  title = "Illinois, existing houses",
  follows = "model/irc-2018",
  borrowed = "Illinois has no rule for existing houses: the city's or county's own code binds",
  edition = "no state rule for existing houses: the city's or county's own code",
  as_seen = "2026-11-25",
  figures = {
    -- Read outright: these are due only where the city, or the maker, says so.
    ["ice_barrier.required"] = { false, cite = "Capital Development Board FAQ", status = "seen",
      source = FAQ },
    ["ice_barrier.by_table"] = { false, cite = "Capital Development Board FAQ", status = "seen",
      source = FAQ },
    ["drip_edge.eave_required"] = { false, cite = "Capital Development Board FAQ",
      status = "seen", source = FAQ },
    ["drip_edge.rake_required"] = { false, cite = "Capital Development Board FAQ",
      status = "seen", source = FAQ },
  },
}
