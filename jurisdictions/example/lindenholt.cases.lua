-- Lindenholt County, invented: its limits, each at the figure and just past it.

local OVERLAY = { ["scope.method"] = "overlay", ["existing.layers_removed"] = 0,
  ["existing.coverings[1].removed"] = false }

cases "layers.total" {
  under = "example/lindenholt", date = "2026-03-02",
  { "a tear-off leaves one", expect = "pass", required = 1, found = 1 },
  { "an overlay makes two", with = OVERLAY, expect = "fail", required = 1, found = 2 },
}

cases "shingle.weight" {
  under = "example/lindenholt", date = "2026-03-02", from = "paperwork",
  { "exactly 220", with = { ["covering.weight_lb_per_square"] = 220 }, expect = "pass",
    required = 220, found = 220 },
  { "219.9", with = { ["covering.weight_lb_per_square"] = 219.9 }, expect = "fail" },
}

cases "permit.warranty_years" {
  under = "example/lindenholt", date = "2026-03-02", from = "paperwork",
  without = { "covering.lifetime_warranty" },
  { "exactly 30", with = { ["covering.warranty_years"] = 30 }, expect = "pass", required = 30 },
  { "29.9", with = { ["covering.warranty_years"] = 29.9 }, expect = "fail" },
}

cases "ice_barrier.reach" {
  under = "example/lindenholt", date = "2026-03-02",
  { "exactly the strip, exactly so high", with = { ["site.elevation_ft"] = 6000,
    ["roof.edges[1].ice_barrier_reach_in"] = 48 }, expect = "pass",
    where = "front eave", required = 48, found = 48 },
  { "a hair less", with = { ["site.elevation_ft"] = 6000,
    ["roof.edges[1].ice_barrier_reach_in"] = 47.9 }, expect = "fail", where = "front eave" },
  { "a foot below the line", with = { ["site.elevation_ft"] = 5999,
    ["roof.edges[1].ice_barrier_reach_in"] = 0 }, expect = "not_applicable",
    where = "front eave" },
  { "how high is not known", expect = "open", where = "front eave", says = "above the sea" },
}

-- Words of the county's own map.
cases "wind.local_speed" {
  under = "example/lindenholt", date = "2026-03-02",
  { "the ridge, exactly", with = { ["site.local_wind_zone"] = "ridge",
    ["site.wind_vult_mph"] = 130 }, expect = "pass", required = 130 },
  { "the ridge, a mile short", with = { ["site.local_wind_zone"] = "ridge",
    ["site.wind_vult_mph"] = 129 }, expect = "fail" },
  { "the valley, exactly", with = { ["site.local_wind_zone"] = "valley",
    ["site.wind_vult_mph"] = 115 }, expect = "pass", required = 115 },
  { "which part is not known", expect = "open" },
}

-- No permit but by what is listed, each at its limit and just past it.
local function unpermitted(facts)
  facts["permit.status"] = "none"
  return facts
end

cases "permit.every" {
  under = "example/lindenholt", date = "2026-03-02", from = "paperwork",
  { "not every job needs one", with = unpermitted {}, expect = "not_applicable" },
}

cases "permit.by_share" {
  under = "example/lindenholt", date = "2026-03-02", from = "paperwork",
  { "exactly a quarter", with = unpermitted { ["scope.area_sqft"] = 322.5,
    ["scope.roof_share_percent"] = 25 }, expect = "fail" },
  { "a little less", with = unpermitted { ["scope.area_sqft"] = 321,
    ["scope.roof_share_percent"] = 24.9 }, expect = "pass" },
}

cases "permit.by_price" {
  under = "example/lindenholt", date = "2026-03-02", from = "paperwork",
  { "exactly 6,500 dollars", with = unpermitted { ["scope.price_usd"] = 6500 },
    expect = "pass", required = 6500, found = 6500 },
  { "a cent more", with = unpermitted { ["scope.price_usd"] = 6500.01 }, expect = "fail" },
}

cases "permit.by_house_kind" {
  under = "example/lindenholt", date = "2026-03-02", from = "paperwork",
  { "a townhouse", with = unpermitted { ["house.kind"] = "townhouse" }, expect = "fail" },
  { "two families", with = unpermitted { ["house.kind"] = "two_family" }, expect = "fail" },
  { "one family", with = unpermitted {}, expect = "not_applicable" },
}

cases "permit.by_stories" {
  under = "example/lindenholt", date = "2026-03-02", from = "paperwork",
  { "exactly two", with = unpermitted { ["house.stories"] = 2 }, expect = "pass",
    required = 2, found = 2 },
  { "three", with = unpermitted { ["house.stories"] = 3 }, expect = "fail" },
}

cases "papers.workers_comp" {
  under = "example/lindenholt", date = "2026-03-02", from = "paperwork",
  { "a certificate", with = { ["contractor.workers_comp"] = "certificate",
    ["contractor.has_employees"] = true }, expect = "pass" },
  { "nothing shown", with = { ["contractor.workers_comp"] = "none",
    ["contractor.has_employees"] = true }, expect = "fail" },
}

cases "drip_edge.rake" {
  under = "example/lindenholt", date = "2026-03-02",
  { "none along a rake", with = { ["roof.edges[4].drip_edge"] = false },
    expect = "not_applicable", where = "front left rake" },
}

cases "fire.material_ban" {
  under = "example/lindenholt", date = "2026-03-02",
  { "asphalt", expect = "pass" },
  { "wood shakes", with = { ["covering.kind"] = "wood_shake" }, expect = "fail" },
}

-- Advice warns who keeps to the law alone, and lets nobody off from the law.
cases "fasteners.count" {
  under = "example/lindenholt", date = "2026-03-02",
  { "the six advised", with = { ["fasteners.per_shingle"] = 6 }, expect = "pass" },
  { "the four of the law", with = { ["fasteners.per_shingle"] = 4 }, expect = "warn" },
  { "three", with = { ["fasteners.per_shingle"] = 3 }, expect = "fail" },
}

cases "slope.least" {
  under = "example/lindenholt", date = "2026-03-02",
  { "3:12, exactly", with = { ["roof.slopes[1].pitch"] = "3:12" }, expect = "pass",
    where = "main front", required = 3 },
  { "2.9:12", with = { ["roof.slopes[1].pitch"] = "2.9:12" }, expect = "fail",
    where = "main front" },
}

cases "inspection.notice" {
  under = "example/lindenholt", date = "2026-03-02",
  { "48 hours, exactly", with = { ["inspection.notice_hours"] = 48 }, expect = "pass",
    required = 48 },
  { "47 hours", with = { ["inspection.notice_hours"] = 47 }, expect = "fail" },
}

-- Looked at only where deck is replaced.
cases "inspection.deck" {
  under = "example/lindenholt", date = "2026-03-02",
  { "some of it is", with = { ["inspection.deck.proof"] = "none" }, expect = "fail" },
  { "none of it is", with = { ["decks[1].work"] = "kept", ["decks[1].unsound_sqft"] = 0,
    ["decks[1].replaced_sqft"] = 0, ["inspection.deck.proof"] = "none" },
    expect = "not_applicable" },
}
