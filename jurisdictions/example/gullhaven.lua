-- Gullhaven County, invented: it has old decks nailed again, knows hurricane
-- zones, and reads the vent rule the older way (either condition will do).

jurisdiction "example/gullhaven" {
  title = "Gullhaven County",
  invented = true,
  code = "Gullhaven County Code",
  follows = "model/irc-2021",
  from = "2024-01-01",
  figures = {
    ["deck.renail_required"] = { true, cite = "7-310" },
    ["deck.renail_built_before"] = { 2002, cite = "7-310" },
    ["deck.kept_held_to_tables"] = { true, cite = "7-312" },
    ["deck.over_spacing_share_most"] = { 5, cite = "7-314" },
    ["deck.over_spacing_most"] = { 1, cite = "7-314" },
    ["fasteners.hurricane_zone_counts"] = { true, cite = "7-320" },
    ["ventilation.reduced_needs_both"] = { false, cite = "7-330" },
    ["wind.vult_counts"] = { true, cite = "7-335" },
    ["wind.engineered_nailing_binds"] = { true, cite = "7-340" },
  },
}
