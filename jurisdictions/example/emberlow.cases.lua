-- Cases of Emberlow: the model code's sleeping figures of fire and energy, awake.

local ZONES = { "none", "moderate", "high", "very_high" }

-- The floor of 2025 is A, B or C, and no zone narrows it; but state land asks for A or B,
-- save in the moderate zone.
local classes = { under = "example/emberlow", date = "2025-06-02",
  with = { ["site.state_fire_area"] = false } }
for _, zone in ipairs(ZONES) do
  for class, outcome in pairs { A = "pass", B = "pass", C = "pass", none = "fail" } do
    table.insert(classes, { "class " .. class .. ", zone " .. zone,
      with = { ["site.fire_zone"] = zone, ["covering.fire_class"] = class }, expect = outcome })
  end
end
for class, outcome in pairs { A = "pass", B = "pass", C = "fail" } do
  table.insert(classes, { "class " .. class .. " on state land, high zone",
    with = { ["site.fire_zone"] = "high", ["site.state_fire_area"] = true,
      ["covering.fire_class"] = class }, expect = outcome })
end
table.insert(classes, { "class C on state land, moderate zone",
  with = { ["site.fire_zone"] = "moderate", ["site.state_fire_area"] = true,
    ["covering.fire_class"] = "C" }, expect = "pass" })
cases "fire.class"(classes)

-- From 2026 the zones alone: they take a roof of no class, but close to the lot line.
local unclassed = { under = "example/emberlow", date = "2026-06-01",
  with = { ["covering.fire_class"] = "none" } }
for _, zone in ipairs(ZONES) do
  table.insert(unclassed, { "no class, zone " .. zone, with = { ["site.fire_zone"] = zone },
    expect = "not_applicable" })
  table.insert(unclassed, { "no class, zone " .. zone .. ", by the lot line",
    with = { ["site.fire_zone"] = zone, ["site.lot_line_ft"] = 2 }, expect = "fail" })
end
cases "fire.class"(unclassed)

-- Cool roofs. A covering that falls short, and a house that no exception would excuse.
local function short(changes)
  local energy = { ceiling_R = 30, radiant_barrier = false, radiant_barrier_on_spaced = false,
    ducts_in_attic = true, ducts_insulated_and_sealed = false, deck_R = 0, deck_before_R = 0,
    air_space_in = 0, profile_ratio = 0, profile_share_percent = 0, mass_psf = 0 }
  for fact, value in pairs(changes or {}) do energy[fact] = value end
  return { ["scope.roof_share_percent"] = 100, ["covering.aged_reflectance"] = 0.10,
    ["covering.aged_emittance"] = 0.90, ["covering.aged_SRI"] = 5, ["energy"] = energy,
    ["roof.slopes[1].under_integrated_solar"] = false }
end

local under_panels = short()
under_panels["roof.slopes[1].under_integrated_solar"] = true

-- The model turns no exception on, so none of these helps.
cases "energy.cool_roof" {
  under = "example/emberlow", date = "2025-06-02",
  { "short, and no exception", with = short(), expect = "fail", where = "main front" },
  { "R-38 in the ceiling excuses nothing", with = short { ceiling_R = 38 }, expect = "fail",
    where = "main front" },
  { "nor a radiant barrier", with = short { radiant_barrier = true }, expect = "fail",
    where = "main front" },
  { "nor an attic without ducts", with = short { ducts_in_attic = false }, expect = "fail",
    where = "main front" },
  { "nor R-2 at the deck", with = short { deck_R = 2 }, expect = "fail", where = "main front" },
  { "nor an air space", with = short { air_space_in = 1 }, expect = "fail",
    where = "main front" },
  { "nor a profile", with = short { profile_ratio = 0.2, profile_share_percent = 50 },
    expect = "fail", where = "main front" },
  { "nor sealed ducts", with = short { ducts_insulated_and_sealed = true }, expect = "fail",
    where = "main front" },
  { "nor a heavy roof", with = short { mass_psf = 25 }, expect = "fail", where = "main front" },
  { "nor integrated panels", with = under_panels, expect = "fail", where = "main front" },
}

cases "energy.low_insulation" {
  under = "example/emberlow", date = "2025-06-02",
  with = { ["roof.slopes[1].pitch"] = "1:12" },
  { "no insulation is asked for", with = short(), expect = "not_applicable",
    where = "main front" },
}

-- Every zone, until a place names its own.
local steep = { under = "example/emberlow", date = "2025-06-02", with = short() }
local low = { under = "example/emberlow", date = "2025-06-02", with = short() }
local without_ducts = { under = "example/emberlow", date = "2026-06-01",
  with = short { ducts_in_attic = false } }
local insulated = { under = "example/emberlow", date = "2026-06-01", with = short() }
for _, zone in ipairs { "1A", "2A", "2B", "3A", "3B", "3C", "4A", "4B", "4C", "5A", "5B", "5C",
  "6A", "6B", "7", "8" } do
  local function there(pitch)
    return { ["site.climate_zone"] = zone, ["roof.slopes[1].pitch"] = pitch }
  end
  table.insert(steep, { "steep, zone " .. zone, with = there "5:12", expect = "fail",
    where = "main front" })
  table.insert(low, { "low, zone " .. zone, with = there "1:12", expect = "fail",
    where = "main front" })
  table.insert(without_ducts, { "no ducts, zone " .. zone, with = there "5:12",
    expect = "pass", where = "main front" })
  table.insert(insulated, { "zone " .. zone, with = there "1:12", expect = "fail",
    where = "main front", required = 14, found = 0 })
end
cases "energy.cool_roof"(steep)
cases "energy.cool_roof"(low)
cases "energy.cool_roof"(without_ducts)
cases "energy.low_insulation"(insulated)
