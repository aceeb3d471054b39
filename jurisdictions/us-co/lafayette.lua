-- Lafayette, Colorado: the city's design page, on IRC 2015, from 15 March 2021.
-- The page shows no date of its own.

local function seen(value, cite)
  return { value, cite = cite or "design page", status = "seen",
    source = "the city's building design page" }
end

jurisdiction "us-co/lafayette" {
  title = "Lafayette, Colorado",
  follows = "model/irc-2015",
  from = "2021-03-15",
  edition = "IRC 2015 as amended",
  as_seen = "2026-11-25",
  figures = {
    ["shingle.hail_label_required"] = seen(true),
    ["shingle.hail_labels"] = seen { "4" },
    ["shingle.hail_proofs"] = seen { "wrapper", "papers" },
    ["shingle.hail_early_exempt"] = { true, cite = "notice on the new duty", status = "memory",
      source = "read second-hand in a notice to the city's people",
      disputed = "the notice names no year and would suit a start in March 2020; the city's "
        .. "page says 2021" },
    ["shingle.hail_early_most"] = { 20190731, cite = "notice on the new duty",
      status = "memory", source = "read second-hand in a notice to the city's people" },
    ["shingle.wind_label_required"] = seen(true),
    ["shingle.wind_labels_D7158"] = seen { "G", "H" },
    ["shingle.wind_labels_D3161"] = seen { "F" },
    ["ice_barrier.required"] = seen(true),
    ["layers.most"] = seen(2),
    ["permit.every"] = seen(false),
    ["permit.area_counts"] = seen(true),
    ["permit.area_limit"] = seen(100),
    ["permit.area_at_counts"] = seen(true, "design page: from 1 square"),
  },
}
