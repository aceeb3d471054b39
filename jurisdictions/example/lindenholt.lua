-- Lindenholt County, invented. Seventeen amendments of the kinds that counties publish, each
-- as a county would write it and none with Lua of its own: what a sentence asks stands
-- before its lines; cases at their limits stand in lindenholt.cases.lua.

-- One all over the county; wind and ice turn on its map and on height.
local FACTS = {
  ["site.exposure"] = { one_of = { "B", "C" }, cite = "climate table" },
  ["site.climate_zone"] = { "5A", cite = "climate table" },
  ["site.january_mean_F"] = { 28, unit = "F", cite = "climate table" },
  ["site.hail_exposure"] = { "moderate", cite = "climate table" },
  ["site.seismic_category"] = { "B", cite = "climate table" },
  ["site.high_velocity_hurricane_zone"] = { false, cite = "climate table" },
  ["site.hurricane_prone_region"] = { false, cite = "climate table" },
  ["site.fire_zone"] = { "none", cite = "climate table" },
  ["site.state_fire_area"] = { false, cite = "climate table" },
}

jurisdiction "example/lindenholt" {
  title = "Lindenholt County",
  invented = true,
  follows = "model/irc-2021",
  facts = FACTS,
  from = "2026-01-01",
  code = "Lindenholt County Code",
  zones = {
    ["site.local_wind_zone"] = { "ridge", "valley",
      ask = "Does the house stand on the ridge or in the valley, as the county's map shows them?" },
  },
  figures = {
    -- 1. No more than one layer of roofing shall remain on a house.
    ["layers.most"] = { 1, cite = "12-1" },
    -- 2. Asphalt shingles shall weigh not less than 220 pounds a square.
    ["shingle.weight_counts"] = { true, cite = "12-2" },
    ["shingle.weight_least"] = { "220 lb/square", cite = "12-2" },
    -- 3. Coverings shall carry a warranty of 30 years or more.
    ["permit.warranty_counts"] = { true, cite = "12-3" },
    ["permit.warranty_years_least"] = { 30, cite = "12-3" },
    -- 4. At 6,000 feet above the sea and higher, every eave shall have a strip of ice barrier
    -- not less than 4 feet wide.
    ["ice_barrier.by_elevation"] = { true, cite = "12-4" },
    ["ice_barrier.elevation_from"] = { 6000, cite = "12-4" },
    ["ice_barrier.strip_allowed"] = { true, cite = "12-4" },
    ["ice_barrier.strip_least"] = { "4 ft", cite = "12-4" },
    -- 5. Reroofing needs no permit ...
    ["permit.every"] = { false, cite = "12-5" },
    -- 6. ... but where 25 percent or more of the roof is renewed,
    ["permit.share_counts"] = { true, cite = "12-6" },
    ["permit.share_limit"] = { "25 %", at_counts = true, cite = "12-6" },
    -- 7. where the work costs more than 6,500 dollars,
    ["permit.price_counts"] = { true, cite = "12-7" },
    ["permit.price_limit"] = { "$6,500", cite = "12-7" },
    -- 8. on houses of two families and townhouses,
    ["permit.house_kinds_counted"] = { adds = { "two_family", "townhouse" }, cite = "12-8" },
    -- 9. or on houses of more than two stories.
    ["permit.stories_counts"] = { true, cite = "12-9" },
    -- 10. The design wind is 130 mph on the ridge and 115 mph in the valley, as the map shows
    -- them.
    ["wind.local_zones_count"] = { true, cite = "12-10" },
    ["wind.local_speed.ridge"] = { 130, unit = "mph", sense = "at_least", cite = "12-10",
      status = "invented", source = "Lindenholt County" },
    ["wind.local_speed.valley"] = { 115, unit = "mph", sense = "at_least", cite = "12-10",
      status = "invented", source = "Lindenholt County" },
    -- 11. Wood shingles and wood shakes are banned.
    ["fire.banned"] = { adds = { "wood_shingle", "wood_shake" }, cite = "12-11" },
    -- 12. Six nails to a shingle are advised; the state's four are the law.
    ["fasteners.per_shingle_least"] = { 6, advice = true, cite = "12-12" },
    -- 13. Slopes of less than 3 in 12 shall not be shingled in asphalt.
    ["slope.least.asphalt_shingle"] = { "3:12", cite = "12-13" },
    -- 14. The county shall be given 48 hours of notice before a visit.
    ["inspection.notice_required"] = { true, cite = "12-14" },
    ["inspection.notice_hours_least"] = { 48, cite = "12-14" },
    -- 15. The bare deck is looked at where any of it is replaced.
    ["inspection.required.deck"] = { true, cite = "12-15" },
    ["inspection.only_where.deck"] = { { "deck_replaced" }, cite = "12-15" },
    -- 16. A drip edge is not asked for at rakes.
    ["drip_edge.rake_required"] = { false, cite = "12-16" },
    -- 17. Insurance of the workers shall be shown.
    ["papers.workers_comp_required"] = { true, cite = "12-17" },
  },
}
