-- Moss Lane, invented: a town in the woods of Fern Hollow County, in the invented state
-- of Harrow. It asks for some of the county's conditions the other way.

jurisdiction "example/mosslane" {
  title = "Town of Moss Lane, Harrow",
  invented = true,
  follows = "example/fernhollow",
  from = "2025-07-01",
  code = "Moss Lane Ordinances",
  figures = {
    ["papers.workers_comp_proofs"] = { { "certificate", "exemption" }, cite = "s. 5" },
    ["papers.without_employees_exempt"] = { true, cite = "s. 5" },
    ["alarms.wiring_access_counts"] = { false, cite = "s. 6" },
    -- The reach past the wall, and never less than a strip.
    ["ice_barrier.strip_allowed"] = { false, cite = "s. 4" },
    ["ice_barrier.strip_required"] = { true, cite = "s. 4" },
    ["ice_barrier.strip_least"] = { 48, cite = "s. 4" },
  },
}
