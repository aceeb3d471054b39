-- Sonoma County, California, outside its cities: bulletin B-07 of 7 May 2021 on
-- class A, and the county's reroof page. The bulletin does not say over which
-- months shares add up: the state's 12 are taken.

local BULLETIN = "bulletin B-07"

local function seen(value, cite)
  return { value, cite = cite or "reroof page", status = "seen",
    source = "the county's bulletin and reroof page" }
end

jurisdiction "us-ca/sonoma-county" {
  title = "Sonoma County, California (outside cities)",
  follows = "us-ca",
  from = "2021-05-07",
  edition = "California Residential Code as amended",
  as_seen = "2021-05-07",
  -- Inland exposure C, at the ocean D, B where a professional has been and says so: for
  -- each lot.
  facts = {
    ["site.wind_vult_mph"] = { 110, unit = "mph", cite = "bulletin B-29", status = "seen",
      source = "the county's bulletin of 1 April 2020, for houses by the code's tables" },
  },
  read = { "visits" },
  figures = {
    ["fire.class_by_share"] = seen(true, BULLETIN),
    ["fire.class_share_over"] = seen(50, BULLETIN),
    ["fire.class_at_named_share"] = seen(false, BULLETIN),
    ["fire.class_by_addition"] = seen(true, BULLETIN),
    ["fire.class_addition_over"] = seen(640, BULLETIN),
    ["fire.classes_large"] = seen({ "A" }, BULLETIN),
    ["papers.application_states"] = seen { "squares", "layers_removed", "deck_replaced",
      "price" },
    ["permit.violations_bar"] = seen(true),
    ["permit.holders"] = seen { "owner", "contractor" },
    ["permit.license_required"] = seen(true),
    ["permit.licenses"] = seen { "roofing" },
    ["inspection.required.pre"] = seen(true),
    ["inspection.required.final"] = seen(true),
  },
}
