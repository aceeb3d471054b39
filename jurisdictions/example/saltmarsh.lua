-- Saltmarsh County, invented: a windy coast whose code states its wind, seals
-- decks, nails drip edge closer in wind and bars overlays. The rule cases try those duties here.

jurisdiction "example/saltmarsh" {
  title = "Saltmarsh County",
  invented = true,
  code = "Saltmarsh County Code",
  follows = "model/irc-2018",
  from = "2024-01-01",
  figures = {
    ["layers.overlay_allowed"] = { false, cite = "14-201" },
    ["underlayment.sealed_deck_required"] = { true, cite = "14-210" },
    ["underlayment.tape_width_least"] = { 3.75, cite = "14-211" },
    ["drip_edge.sealed_flange_allowed"] = { true, cite = "14-220" },
    ["drip_edge.close_fastening"] = { true, cite = "14-221" },
    ["wind.vult_counts"] = { true, cite = "14-200" },
    ["wind.vult_least"] = { 115, cite = "14-200" },
    ["wind.engineered_nailing_binds"] = { true, cite = "14-230" },
  },
}
