-- Vail, Colorado: ordinance 3 of 2008 (after 3 of 2007) bans wood roofs and asks
-- for class A everywhere. The day it began was not shown.

local function seen(value)
  return { value, cite = "Ord. 3-2008", status = "seen", source = "the town's ordinance" }
end

jurisdiction "us-co/vail" {
  title = "Vail, Colorado",
  follows = "model/irc-2012",
  edition = "edition not shown (IRC 2012 taken)",
  unsure = "the ordinance of 2008 was read, not the edition adopted now; IRC 2012 is taken",
  as_seen = "2026-11-25",
  figures = {
    ["fire.banned"] = seen { "wood_shingle", "wood_shake" },
    ["fire.class_required"] = seen(true),
    ["fire.classes"] = seen { "A" },
  },
}
