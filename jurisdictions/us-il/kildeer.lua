-- Kildeer, Illinois: a page on IRC 2009 without a date. That edition has no drip
-- edge for shingles; 2012, the nearest one carried, brought it. Illinois has no
-- rule of its own for existing houses, so the village's edition is followed.

local function seen(value, cite)
  return { value, cite = cite or "residential roof work page", status = "seen",
    source = "the village's page" }
end

local LACKS = { false, cite = "IRC 2009 R905.2.8", status = "seen",
  source = "trade pages: drip edge first stands in the edition of 2012; a city page on IRC "
    .. "2009 says the same" }
local SILENT = "IRC 2009 says nothing of drip edge"

jurisdiction "us-il/kildeer" {
  title = "Kildeer, Illinois",
  follows = "model/irc-2012",
  edition = "IRC 2009 as amended (IRC 2012 taken for the rest)",
  unsure = "the page rests on IRC 2009, and IRC 2012 is taken for what it does not change",
  as_seen = "2026-11-25",
  figures = {
    ["ice_barrier.required"] = seen(true),
    ["ice_barrier.inside_wall_least"] = seen(36),
    ["ice_barrier.rakes_required"] = seen(true, "residential roof work page: all edges"),
    ["ice_barrier.valleys_required"] = seen(true),
    ["permit.grade_counts"] = seen(true),
    ["permit.grades"] = seen { "laminated" },
    ["permit.lifetime_required"] = seen(true),
    ["deck.thickness_counts"] = seen(true),
    ["deck.thickness_least"] = seen(0.5),
    ["fire.banned"] = seen { "metal_panel", "metal_shingle" },
    ["papers.contract_required"] = seen(true),
    ["papers.liability_counts"] = seen(true),
    ["papers.liability_least"] = seen(1000000),
    ["papers.association_letter_required"] = seen(true),
    ["permit.license_required"] = seen(true),
    ["permit.licenses"] = seen { "roofing" },
    ["layers.not_over"] = seen { "wood_shake", "slate", "clay_tile", "concrete_tile",
      "asbestos_cement" },
    ["fasteners.kinds"] = seen { "nail" },
    ["drip_edge.eave_required"] = LACKS,
    ["drip_edge.rake_required"] = LACKS,
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
