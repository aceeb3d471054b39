-- Connecticut: the State Building Code of 2022 (on IRC 2021, with amendments).
--
-- First day and model book were read on the state's own pages; of the amendments only that
-- of R905.1.1, as a town's page restates it in full. The state expected its next code, on
-- IRC 2024, for early and later for the middle of 2026: whether it has begun was not read.

local TOWN = "a town's page restating the state's amendment"
local NEXT = "the state expected its next code, on IRC 2024, in the course of 2026: ask whether "
  .. "it has begun"

local function edition(from, to, unsure)
  jurisdiction "us-ct" {
    title = "Connecticut",
    follows = "model/irc-2021",
    unsure = unsure,
    from = from,
    to = to,
    code = "CSBC 2022",
    edition = "Connecticut State Building Code 2022 (on IRC 2021)",
    as_seen = "2026-11-29",
    figures = {
      -- All joints taped, or one self-adhered sheet all over; lumber under 3 ft wide is
      -- let off, which boards always are.
      ["underlayment.sealed_deck_required"] = { true, cite = "R905.1.1", status = "seen",
        source = TOWN },
      ["underlayment.sealed_deck_methods"] = { { "full_self_adhered", "taped_joints" },
        cite = "R905.1.1", status = "seen", source = TOWN },
      ["underlayment.sealed_deck_decks"] = { { "panel" }, cite = "R905.1.1 exc. 2",
        status = "seen", source = TOWN },
      ["underlayment.tape_width_least"] = { 4, cite = "R905.1.1", status = "seen",
        source = TOWN },
      ["energy.bare_rafters_count"] = { true, cite = "N1111.1.1", status = "parallel",
        source = "the model code's line; the state's amendments were not read for it" },
    },
  }
end

local AMENDED = "of the state's amendments only that of R905.1.1 was read"
edition("2022-10-01", "2026-01-01", AMENDED)
edition("2026-01-01", nil, NEXT .. "; " .. AMENDED)
