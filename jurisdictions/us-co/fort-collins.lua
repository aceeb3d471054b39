-- Fort Collins, Colorado: an ordinance of 1994 in force since February 1995. It
-- names exceptions for historic buildings that were not read. No edition of the
-- model code is older than 2012 here.

local function seen(value)
  return { value, cite = "Ord. 189-1994", status = "seen", source = "the city's ordinance" }
end

jurisdiction "us-co/fort-collins" {
  title = "Fort Collins, Colorado",
  follows = "model/irc-2012",
  from = "1995-02-01",
  edition = "edition not shown (IRC 2012 taken)",
  unsure = "the ordinance of 1994 was read, not the edition adopted now; IRC 2012 is taken",
  as_seen = "2026-11-25",
  facts = {
    ["site.seismic_category"] = { "B", cite = "codes and standards page", status = "seen",
      source = "the city's page on the edition of 2018" },
  },
  figures = {
    ["fire.class_required"] = seen(true),
    ["fire.classes"] = seen { "A" },
    ["fire.historic_exceptions"] = seen(true),
  },
}
