-- Los Altos Hills, California: class A in all areas, by the ordinance on the 2019
-- book. Whether later books kept it was not read.

local LATER = "read in the ordinance on the 2019 book; later ones not read"

jurisdiction "us-ca/los-altos-hills" {
  title = "Los Altos Hills, California",
  follows = "us-ca",
  from = "2020-01-01",
  edition = "California Residential Code as amended (ordinance on the 2019 book)",
  as_seen = "2026-11-25",
  figures = {
    ["fire.class_required"] = { true, cite = "local R902.1.3", status = "seen", source = LATER },
    ["fire.classes"] = { { "A" }, cite = "local R902.1.3", status = "seen", source = LATER },
  },
}
