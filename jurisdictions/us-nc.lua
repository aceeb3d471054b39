-- North Carolina: the code of 2018.
--
-- The code of 2024 was put off from 1 January 2025 to 1 July 2025, then to a
-- year after it is published and its council seated: late 2026 at the earliest.
-- It may be used early. Its day must be looked up again. The first day of the code of
-- 2018 stands in a handbook on it; that the codes of 2018 rest on those of 2015 in a
-- state notice of 2017. The text of 2024 was read, that of
-- 2018 not: where the two may differ, what a figure of 2015 asks is told as disputed.
-- Not carried: the coastal
-- high-wind chapters (45 and 46). The exemption is for one-family houses; a
-- permit's triggers here do not ask the kind of house.

local STATUTE = "G.S. 160D-1110(c)"
local TOWN = "a town's code restating the statute"
local PRICES = "the statute's figure has risen: 15,000 on a later page, 40,000 as recalled; a town "
  .. "frees roofing of like fire class whatever its price"
local MODEL = "IRC 2015"
local SPLIT = "the state's book of 2024 has 50 to 80 percent high"
local OTHERS = "the exemption is for one-family houses: others need a permit"

jurisdiction "us-nc" {
  title = "North Carolina",
  follows = "model/irc-2015",
  unsure = "the code of 2024 may be used early or be in force by now; the text of that of 2018 was "
    .. "not read",
  from = "2019-01-01",
  code = "NC 2018",
  edition = "North Carolina Residential Code 2018 (on IRC 2015)",
  as_seen = "2026-11-28",
  figures = {
    ["permit.every"] = { false, cite = STATUTE, status = "seen", source = TOWN,
      disputed = OTHERS },
    ["permit.price_counts"] = { true, cite = STATUTE, status = "seen", source = TOWN },
    ["permit.price_limit"] = { 5000, cite = STATUTE, status = "seen", source = TOWN,
      disputed = PRICES },
    ["permit.price_at_counts"] = { false, cite = STATUTE, status = "seen",
      source = TOWN .. ": 5,000 or less" },
    ["permit.structure_counts"] = { true, cite = STATUTE, status = "seen", source = TOWN,
      disputed = "by the state's book of 2024 up to 15 percent of the deck is not structural "
        .. "work" },
    -- Where the book of 2024 differs, that of 2018 may too.
    ["drip_edge.not_read"] = { true, book = "NC 2024", cite = "R905.2.8.5", status = "seen",
      source = "code text of 2024, which asks for it only where the maker does" },
    ["fasteners.per_shingle_least"] = { book = MODEL, cite = "R905.2.6",
      disputed = "the state's book of 2024 asks for six from 140 mph, from 130 where the eave is "
        .. "20 ft up, and in the mountains" },
    ["ventilation.high_share_least"] = { book = MODEL, cite = "R806.2", disputed = SPLIT,
      rival = 50 },
    ["ventilation.high_share_most"] = { book = MODEL, cite = "R806.2", disputed = SPLIT,
      rival = 80 },
    ["ice_barrier.by_table"] = { book = MODEL, cite = "R905.1.2",
      disputed = "the state's book of 2024 goes by a January mean of 25 F or less as well" },
    ["deck.nail_close_mph.C"] = { book = MODEL, cite = "Table R602.3(1) footnote f",
      disputed = "the state's book of 2024 has 115 mph", rival = 115 },
    ["wind.prescriptive_under"] = { book = MODEL, cite = "R301.2.1.1",
      disputed = "the state's book of 2024 has 130 mph", rival = 130 },
    -- Roofing that is not of like grade and fire class needs one whatever it costs.
    ["permit.material_change_counts"] = { true, cite = STATUTE, status = "seen",
      source = TOWN },
  },
}
