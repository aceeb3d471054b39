-- The model's own line and word, which are common practice: what meets them warns. The front
-- eave at 5:12: (12 in overhang + 6 in wall + 24 in) x 1.08333 = 45.5 in.

cases "ice_barrier.reach" {
  under = "example/frostledge", date = "2025-03-02",
  { "at 7,000 ft, exactly, none", with = { ["site.elevation_ft"] = 7000,
    ["roof.edges[1].ice_barrier_reach_in"] = 0 }, expect = "fail", where = "front eave" },
  { "a foot below", with = { ["site.elevation_ft"] = 6999,
    ["roof.edges[1].ice_barrier_reach_in"] = 0 }, expect = "not_applicable",
    where = "front eave" },
  { "how high is not known", expect = "open", where = "front eave" },
}

cases "ice_barrier.reach" {
  under = "example/frostledge", date = "2026-03-02",
  { "in the ice zone, none", with = { ["site.local_ice_zone"] = "ice",
    ["roof.edges[1].ice_barrier_reach_in"] = 0 }, expect = "fail", where = "front eave" },
  { "in the mild one", with = { ["site.local_ice_zone"] = "mild",
    ["roof.edges[1].ice_barrier_reach_in"] = 0 }, expect = "not_applicable",
    where = "front eave" },
  { "which is not known", expect = "open", where = "front eave" },
}
