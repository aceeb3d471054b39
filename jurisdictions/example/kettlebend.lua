-- Kettlebend County, invented: river-bluff country in the invented state of
-- Harrow. It loosens the model code and drops two of its rules.

jurisdiction "example/kettlebend" {
  title = "Kettlebend County, Harrow",
  invented = true,
  follows = "model/irc-2018",
  from = "2024-04-01",
  code = "Kettlebend County Code",
  figures = {
    -- A third covering may go on, and the maker is not asked.
    ["layers.most"] = { 3, cite = "8-112" },
    ["layers.overlay_needs_maker"] = { false, cite = "8-112(b)" },

    ["drip_edge.rake_required"] = { false, cite = "8-116" },
    ["fasteners.kinds"] = { { "nail", "staple" }, cite = "8-118" },

    -- One measured spacing in ten may be over, by an inch at most.
    ["deck.over_spacing_share_most"] = { 10, cite = "8-120" },
    ["deck.over_spacing_most"] = { 1, cite = "8-120" },

    ["ventilation.ratio_default"] = { 200, cite = "8-124" },
    ["ventilation.on_overlay_required"] = { true, cite = "8-124(b)" },
  },
  drop = {
    ["deck.panel_gap"] = "waived by Kettlebend County Code 8-121",
    ["shingle.instructions"] = "the inspector brings them, Kettlebend County Code 8-126",
  },
}
