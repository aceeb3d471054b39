-- Douglas County, Colorado: its roofing page, on the codes of 2021. No rules for
-- strong wind or severe climate bind there. An older stored copy of the page, on
-- the codes of 2012, adds the class of wood roofs outside the red area.
-- What the page says after the red area was cut off; that the county makes its
-- mid-roof look within 24 hours of the call is its own promise.

local function seen(value, cite)
  return { value, cite = cite or "roofing permits page", status = "seen",
    source = "the county's roofing page" }
end

local NO_WIND = "the county's page: no high-wind rules apply"

jurisdiction "us-co/douglas-county" {
  title = "Douglas County, Colorado",
  follows = "model/irc-2021",
  edition = "IRC 2021 as amended",
  as_seen = "2026-11-25",
  rules = "douglas-county.rules.lua",
  figures = {
    ["inspection.required.mid_roof"] = seen(true),
    ["inspection.mid_roof_coverings"] = seen { "slate", "clay_tile", "concrete_tile" },
    ["inspection.mid_roof_battens_count"] = seen(true),
    ["inspection.ladder_tied_required"] = seen(true),
    ["papers.engineer_counts"] = seen(true),
    ["papers.engineer_weight_limit"] = seen(600),
    ["fire.banned_in_zones"] = seen { "wood_shingle", "wood_shake" },
    ["fire.ban_by_local_zone"] = seen(true),
    ["fire.ban_local_zones"] = seen { "red" },
    ["fire.class_by_material"] = seen(true, "roofing permits page, older copy"),
    ["fire.classes_of.wood_shingle"] = seen({ "A", "B", "C" }, "roofing permits page, older copy"),
    ["fire.classes_of.wood_shake"] = seen({ "A", "B", "C" }, "roofing permits page, older copy"),
    ["fire.classes_of.asphalt_shingle"] = seen { "A", "B", "C", "none" },
    ["fire.classes_of.metal_panel"] = seen { "A", "B", "C", "none" },
    ["fire.classes_of.metal_shingle"] = seen { "A", "B", "C", "none" },
  },
  drop = {
    ["underlayment.fasteners"] = NO_WIND,
    ["underlayment.lap_spacing"] = NO_WIND,
    ["underlayment.field_spacing"] = NO_WIND,
    ["underlayment.cap"] = NO_WIND,
    ["underlayment.cap_thickness"] = NO_WIND,
    ["underlayment.shank"] = NO_WIND,
    ["underlayment.bite"] = NO_WIND,
  },
}
