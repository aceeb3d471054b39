-- North Carolina: the code of 2018.
--
-- The code of 2024 was put off from 1 January 2025 to 1 July 2025, then to a
-- year after it is published and its council seated: late 2026 at the earliest.
-- It may be used early. Its day must be looked up again. What each rests on,
-- and the first day of the code of 2018, are recalled. Not carried: the coastal
-- high-wind chapters (45 and 46). The exemption is for one-family houses; a
-- permit's triggers here do not ask the kind of house.

local STATUTE = "G.S. 160D-1110(c)"
local TOWN = "a town's code restating the statute"
local PRICES = "the statute's figure has risen: 15,000 on a later page, 40,000 as recalled; a town "
  .. "frees roofing of like fire class whatever its price"
local OTHERS = "the exemption is for one-family houses: others need a permit"

jurisdiction "us-nc" {
  title = "North Carolina",
  follows = "model/irc-2015",
  unsure = "that the code of 2018 rests on IRC 2015 is recalled, and the code of 2024 may be used "
    .. "early or be in force by now",
  from = "2019-01-01",
  code = "NC 2018",
  edition = "North Carolina Residential Code 2018 (on IRC 2015)",
  as_seen = "2026-11-25",
  figures = {
    ["permit.every"] = { false, cite = STATUTE, status = "seen", source = TOWN,
      disputed = OTHERS },
    ["permit.price_counts"] = { true, cite = STATUTE, status = "seen", source = TOWN },
    ["permit.price_limit"] = { 5000, cite = STATUTE, status = "seen", source = TOWN,
      disputed = PRICES },
    ["permit.price_at_counts"] = { false, cite = STATUTE, status = "seen",
      source = TOWN .. ": 5,000 or less" },
    ["permit.structure_counts"] = { true, cite = STATUTE, status = "seen", source = TOWN },
    -- Roofing that is not of like grade and fire class needs one whatever it costs.
    ["permit.material_change_counts"] = { true, cite = STATUTE, status = "seen",
      source = TOWN },
  },
}
