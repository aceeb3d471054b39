-- Leawood, Kansas: two pages without a date. Only coverings on the city's list;
-- the class goes by the material; the permit dies 60 days after issue unless most
-- of the work is done, or it is extended. Synthetic coverings, class B at least,
-- are no kind that a job can name.

local function seen(value, cite)
  return { value, cite = cite or "re-roofing page", status = "seen",
    source = "the city's pages" }
end

jurisdiction "us-ks/leawood" {
  title = "Leawood, Kansas",
  follows = "model/irc-2021",
  edition = "edition not shown (IRC 2021 taken)",
  unsure = "the pages show no edition of the model code: IRC 2021 is taken",
  as_seen = "2026-11-25",
  figures = {
    ["permit.local_list_counts"] = seen(true),
    ["fire.class_by_material"] = seen(true),
    ["fire.classes_of.asphalt_shingle"] = seen { "A" },
    ["fire.classes_of.metal_panel"] = seen { "A", "B" },
    ["fire.classes_of.metal_shingle"] = seen { "A", "B" },
    ["permit.open_counts"] = seen(true),
    ["permit.open_days_most"] = seen(60),
    ["permit.open_excuses"] = seen { "mostly_done", "extended" },
    ["papers.association_notice_required"] = seen(true),
    ["papers.association_notice_days_least"] = seen(2),
    ["permit.license_required"] = seen(true),
  },
}
