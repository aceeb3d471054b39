-- Arvada, Colorado: an old page, on IRC 2009, an example of one class fixed for
-- every product; not present law. The page shows no date. IRC 2009 has no drip
-- edge for shingles: that came in 2012, the nearest edition carried.

jurisdiction "us-co/arvada" {
  title = "Arvada, Colorado",
  follows = "model/irc-2012",
  edition = "IRC 2009 as amended (IRC 2012 taken for the rest)",
  unsure = "the page rests on IRC 2009, and IRC 2012 is taken for what it does not change",
  as_seen = "2026-11-25",
  -- West of Highway 93 the higher; the page of a later edition, since the old one has no
  -- ultimate speeds. Exposure C unless an engineer shows another.
  facts = {
    ["site.wind_vult_mph"] = { least = 136, most = 142, unit = "mph", cite = "adopted code page",
      status = "seen", source = "the city's page on the edition of 2015" },
    ["site.exposure"] = { "C", cite = "adopted code page", status = "seen",
      source = "the city's pages, old and later" },
  },
  figures = {
    ["shingle.wind_label_required"] = { true, cite = "adopted code page", status = "seen",
      source = "the city's old page" },
    ["shingle.wind_labels_D7158"] = { {}, cite = "adopted code page", status = "seen",
      source = "the city's old page names D3161 only" },
    ["shingle.wind_labels_D3161"] = { { "F" }, cite = "adopted code page", status = "seen",
      source = "the city's old page" },
    ["drip_edge.eave_required"] = { false, cite = "IRC 2009 R905.2.8", status = "seen",
      source = "trade pages: drip edge first stands in the edition of 2012" },
    ["drip_edge.rake_required"] = { false, cite = "IRC 2009 R905.2.8", status = "seen",
      source = "trade pages: drip edge first stands in the edition of 2012" },
  },
  drop = {
    ["drip_edge.lap"] = "IRC 2009 says nothing of drip edge",
    ["drip_edge.down"] = "IRC 2009 says nothing of drip edge",
    ["drip_edge.back"] = "IRC 2009 says nothing of drip edge",
    ["drip_edge.fastener_spacing"] = "IRC 2009 says nothing of drip edge",
    ["drip_edge.order_eave"] = "IRC 2009 says nothing of drip edge",
    ["drip_edge.order_rake"] = "IRC 2009 says nothing of drip edge",
  },
}
