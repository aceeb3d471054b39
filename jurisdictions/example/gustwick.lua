-- Gustwick County, invented: a bare plateau in the invented state of Harrow, which holds
-- wind engineering binding and keeps the code's coefficients for one part of a roof's
-- edges at a time; for the other parts it has low ones of its own, from a study that it
-- renews each year. In a whole set the worst coefficient hides the rest: here each of
-- them decides in its turn, and the cases beside this file watch it. The first two
-- years held the low ones for all edges.

-- One all over the place.
local FACTS = {
  ["site.wind_vult_mph"] = { 130, unit = "mph", cite = "climate table" },
  ["site.wind_design_required"] = { false, cite = "climate table" },
  ["site.exposure"] = { "C", cite = "climate table" },
  ["site.climate_zone"] = { "5A", cite = "climate table" },
  ["site.ice_barrier_in_table"] = { false, cite = "climate table" },
  ["site.january_mean_F"] = { 22, unit = "F", cite = "climate table" },
  ["site.hail_exposure"] = { "moderate", cite = "climate table" },
  ["site.seismic_category"] = { "B", cite = "climate table" },
  ["site.high_velocity_hurricane_zone"] = { false, cite = "climate table" },
  ["site.hurricane_prone_region"] = { false, cite = "climate table" },
  ["site.fire_zone"] = { "none", cite = "climate table" },
  ["site.state_fire_area"] = { false, cite = "climate table" },
  ["permit.telephone"] = { "555-0115", cite = "title page" },
}

local NEW = {
  "low.zone2", "low.zone3",
  "gable.shallow.zone2e", "gable.shallow.zone2n", "gable.shallow.zone2r",
  "gable.shallow.zone3e", "gable.shallow.zone3r",
  "gable.mid.zone2e", "gable.mid.zone2n", "gable.mid.zone2r",
  "gable.mid.zone3e", "gable.mid.zone3r",
  "gable.steep.zone2e", "gable.steep.zone2n", "gable.steep.zone2r",
  "gable.steep.zone3e", "gable.steep.zone3r",
  "hip.shallow.zone2e", "hip.shallow.zone2r", "hip.shallow.zone3",
  "hip.mid.zone2e", "hip.mid.zone2r", "hip.mid.zone3",
}
local NEWEST = { "low.zone2", "low.zone3" }
for _, form in ipairs { "gable.shallow", "gable.mid", "gable.steep", "hip.shallow", "hip.mid",
  "hip.steep" } do
  table.insert(NEWEST, form .. ".zone2")
  table.insert(NEWEST, form .. ".zone3")
end
local OLD = { "low.zone2", "low.zone3", "mid.zone2", "mid.zone3", "steep.zone2", "steep.zone3" }

-- One year's study: of the edges, the zones kept go by the code.
local function study(year, follows, prefix, zones, kept)
  local figures = {
    ["wind.engineered_nailing_binds"] = { true, cite = "art. 2" },
    ["wind.local_zones_count"] = { true, cite = "art. 3" },
    ["wind.local_speed.upland"] = { 150, unit = "mph", sense = "at_least", cite = "art. 3",
      status = "invented", source = "Gustwick County Code" },
    ["wind.local_speed.lowland"] = { 130, unit = "mph", sense = "at_least", cite = "art. 3",
      status = "invented", source = "Gustwick County Code" },
  }
  for _, zone in ipairs(zones) do
    local stays = false
    for _, one in ipairs(kept) do stays = stays or string.sub(zone, -string.len(one)) == one end
    if not stays then
      figures[prefix .. zone] = { -1.1, cite = "study of " .. year .. ", art. 4",
        status = "invented", source = "Gustwick County Code" }
    end
  end
  jurisdiction "example/gustwick" {
    title = "Gustwick County, Harrow",
    invented = true,
    facts = FACTS,
    follows = follows,
    from = year .. "-01-01",
    to = (year + 1) .. "-01-01",
    code = "Gustwick County Code",
    rules = "gustwick.rules.lua",
    figures = figures,
  }
end

study(2018, "model/irc-2018", "wind.gcp_7_10.", OLD, {})
study(2019, "model/irc-2021", "wind.gcp_7_16.", NEW, {})
study(2020, "model/irc-2018", "wind.gcp_7_10.", OLD, { "zone2" })
study(2021, "model/irc-2018", "wind.gcp_7_10.", OLD, { "zone3" })
study(2022, "model/irc-2021", "wind.gcp_7_16.", NEW, { "zone2e", "zone2" })
study(2023, "model/irc-2021", "wind.gcp_7_16.", NEW, { "zone2n" })
study(2024, "model/irc-2021", "wind.gcp_7_16.", NEW, { "zone2r" })
study(2025, "model/irc-2021", "wind.gcp_7_16.", NEW, { "zone3e" })
study(2026, "model/irc-2021", "wind.gcp_7_16.", NEW, { "zone3r", "zone3" })
study(2027, "model/irc-2024", "wind.gcp_7_22.", NEWEST, { "zone2" })
study(2028, "model/irc-2024", "wind.gcp_7_22.", NEWEST, { "zone3" })
study(2029, "model/irc-2024", "wind.gcp_7_22.", NEWEST, {})
