-- Clear Creek County, Colorado: two pages on roofs and their inspections, on IRC
-- 2015. The pages show no date. The model's own edge metal and reach of the ice
-- barrier stand on them too.

local function seen(value, cite)
  return { value, cite = cite or "roof requirements page", status = "seen",
    source = "the county's roof pages" }
end

local VISITS = "reroof inspection page"

jurisdiction "us-co/clear-creek-county" {
  title = "Clear Creek County, Colorado",
  follows = "model/irc-2015",
  edition = "IRC 2015 as amended",
  as_seen = "2026-11-25",
  -- Wind and snow go by the lot, on the county's map.
  facts = {
    ["site.climate_zone"] = { "7", cite = "design criteria page", status = "seen",
      source = "the county's page" },
    ["site.ice_barrier_in_table"] = { true, cite = "design criteria page", status = "seen",
      source = "the county's page" },
    ["site.seismic_category"] = { "B", cite = "design criteria page", status = "seen",
      source = "the county's page" },
  },
  read = { "visits" },
  figures = {
    ["layers.most"] = seen(1),
    ["layers.overlay_allowed"] = seen(false),
    ["fire.class_required"] = seen(true),
    ["fire.classes"] = seen { "A" },
    ["fire.proof_required"] = seen(true),
    ["ice_barrier.required"] = seen(true),
    ["ice_barrier.inside_wall_least"] = seen(24),
    ["drip_edge.eave_required"] = seen(true),
    ["drip_edge.rake_required"] = seen(true),
    ["inspection.required.deck"] = seen(true, VISITS .. ": new deck must be seen"),
    ["inspection.deck_only_new"] = seen(true, VISITS .. ": new deck must be seen"),
    ["inspection.required.mid_roof"] = seen(true, VISITS),
    ["inspection.mid_roof_moments"] = seen({ "dried_in" },
      VISITS .. ": metal, flashing, underlayment and ice barrier on"),
    ["inspection.required.final"] = seen(true, VISITS),
    ["inspection.access_required"] = seen(true, VISITS),
    ["inspection.accesses"] = seen({ "ladder" }, VISITS .. ": a ladder set for each visit"),
    ["inspection.snow_free_required"] = seen(true, VISITS),
    ["alarms.co_affidavit_required"] = seen(true, VISITS .. ": before the final"),
  },
}
