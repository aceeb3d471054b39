-- Festus, Missouri: an answer on IRC 2009 without a date. Neither ice barrier, by
-- the city's table, nor drip edge, which the text of 2009 does not name, is asked
-- for. 2012 is the nearest edition carried.

local function seen(value, cite)
  return { value, cite = cite or "roofing answers", status = "seen",
    source = "the city's answers" }
end

local SILENT = "the city's answers: the text of IRC 2009 does not name drip edge"

jurisdiction "us-mo/festus" {
  title = "Festus, Missouri",
  follows = "model/irc-2012",
  edition = "IRC 2009 (IRC 2012 taken for the rest)",
  unsure = "the page rests on IRC 2009, and IRC 2012 is taken for what it does not change",
  as_seen = "2026-11-25",
  figures = {
    ["ice_barrier.required"] = seen(false),
    ["ice_barrier.by_table"] = seen(false),
    ["drip_edge.eave_required"] = seen(false),
    ["drip_edge.rake_required"] = seen(false),
    ["permit.every"] = seen(false),
    ["permit.structure_counts"] = seen(true),
    ["permit.deck_any_counts"] = seen(true),
    ["permit.deck_any_free"] = seen(0),
    ["permit.registration_required"] = seen(true),
  },
  drop = {
    ["drip_edge.lap"] = SILENT,
    ["drip_edge.down"] = SILENT,
    ["drip_edge.back"] = SILENT,
    ["drip_edge.fastener_spacing"] = SILENT,
    ["drip_edge.order_eave"] = SILENT,
    ["drip_edge.order_rake"] = SILENT,
  },
}
