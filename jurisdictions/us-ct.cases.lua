-- Cases of Connecticut: the code's first day (the state's pages) and its own line on taped
-- joints (R905.1.1, as a town's page restates it).

local TAPED = { ["underlayments[1].deck_joints_taped"] = true,
  ["underlayments[1].tape_width_in"] = 4 }
local BARE = { ["underlayments[1].deck_joints_taped"] = false }

local function with(facts, more)
  local it = {}
  for name, value in pairs(facts) do it[name] = value end
  for name, value in pairs(more) do it[name] = value end
  return it
end

cases "underlayment.sealed_deck" {
  under = "us-ct", date = "2026-03-02",
  { "the day before", date = "2022-09-30", expect = "refused", says = "from 2022-10-01" },
  { "on the first day", date = "2022-10-01", with = TAPED, expect = "pass",
    where = "main front" },
  { "joints taped, 4 in", with = TAPED, expect = "pass", where = "main front" },
  { "strips of 3 in", with = with(TAPED, { ["underlayments[1].tape_width_in"] = 3 }),
    expect = "fail", where = "main front", required = 4, found = 3 },
  { "joints bare", with = BARE, expect = "fail", where = "main front" },
  { "the model code asks for none", under = "model/irc-2021", with = BARE,
    expect = "not_applicable", where = "main front" },
  { "boards are let off", with = with(BARE, { ["decks[1].kind"] = "board" }),
    expect = "not_applicable", where = "main front" },
  { "boards under new panels are not", with = with(BARE, { ["decks[1].kind"] = "board",
    ["decks[1].work"] = "paneled_over" }), expect = "fail", where = "main front" },
  { "two plies are no way here", with = with(BARE, {
    ["underlayments[1].plies"] = 2,
    ["underlayments[1].head_lap_in"] = 19 }), expect = "fail",
    where = "main front" },
  { "not said", without = { "underlayments[1].deck_joints_taped" },
    expect = "open", where = "main front" },
}
