-- fire.lua - the fire class of the covering, what shows it, and what a
-- wildfire zone asks of the roof's gaps, valleys, gutters and vents.
--
-- A figure lists the classes that will do, so that A is taken where B is asked
-- for. Several demands at once leave the classes that meet them all. The
-- wildfire details are off, warned of or demanded by how a place states
-- fire.wildfire_details: their figures are common practice in the model, so
-- that the place's own status decides whether what is not met fails.

-- The classes on both lists; nil stands for no demand yet.
local function both(a, b)
  if not a then return b end
  local left = {}
  for _, one in ipairs(a) do
    if has(b, one) then table.insert(left, one) end
  end
  return left
end

-- The class demanded -----------------------------------------------------------

local zone_classes = reads({
  facts = { "site.fire_zone", "site.state_fire_area" },
  figures = { "fire.classes_in.*", "fire.classes_state_area", "fire.state_area_counts",
    "fire.state_area_exempt_zones" },
}, function(job, figure)
  local zone = job.site.fire_zone
  local classes = figure("fire.classes_in." .. zone)
  if figure "fire.state_area_counts" and not has(figure "fire.state_area_exempt_zones", zone)
    and job.site.state_fire_area then
    classes = both(classes, figure "fire.classes_state_area")
  end
  -- A zone may ask for nothing: then any roof, even of no class, will do.
  return classes
end)

local share_renewed = reads({
  share_renewed,
  figures = { "fire.whole_roof_months" },
}, function(job, figure)
  local months, parts = figure "fire.whole_roof_months", { unit = "percent" }
  table.insert(parts, { "this job", job.scope.roof_share_percent })
  for _, work_done in ipairs(job.scope.earlier_roofing) do
    if is_recent(work_done.done_on, job.date, months) then
      table.insert(parts, { "done " .. work_done.done_on, work_done.roof_share_percent })
    end
  end
  return as_printed(trade.sum(parts), "percent")
end)

-- Some places ask for a class only of a large share of the roof, or where an
-- addition is large.
local is_large = reads({
  share_renewed,
  facts = { "scope.addition_floor_sqft" },
  figures = { "fire.class_addition_over", "fire.class_at_named_share", "fire.class_by_addition",
    "fire.class_by_share", "fire.class_share_over" },
}, function(job, figure)
  if figure "fire.class_by_share" then
    local share, over = share_renewed(job, figure), figure "fire.class_share_over"
    if share > over then return true end
    if share == over and figure "fire.class_at_named_share" then return true end
  end
  return figure "fire.class_by_addition"
    and as_printed(job.scope.addition_floor_sqft, "sqft") > figure "fire.class_addition_over"
end)

-- A small piece may match the old roof where the place lets it, whatever its
-- class or down to some class.
local matches_old = reads({
  share_renewed,
  facts = { "site.fire_zone" },
  figures = { "fire.match_old_adds_up", "fire.match_old_barred_zones", "fire.match_old_by_zone",
    "fire.match_old_most" },
}, function(job, figure)
  local most = figure "fire.match_old_most"
  if most <= 0 then return false end
  if figure "fire.match_old_by_zone"
    and has(figure "fire.match_old_barred_zones", job.site.fire_zone) then
    return false
  end
  if figure "fire.match_old_adds_up" then return share_renewed(job, figure) <= most end
  return as_printed(job.scope.roof_share_percent, "percent") <= most
end)

-- The classes that will do on this house; nil when any will.
local demanded = reads({
  stands_from, zone_classes, is_large, matches_old,
  facts = { "covering.fire_class", "site.lot_line_ft" },
  figures = { "fire.class_by_elevation", "fire.class_by_zone", "fire.class_elevation_from",
    "fire.class_required", "fire.classes", "fire.classes_high", "fire.classes_large",
    "fire.classes_near_line", "fire.lot_line_under", "fire.match_old_classes" },
}, function(job, figure)
  local classes
  if figure "fire.class_required" then classes = figure "fire.classes" end
  if figure "fire.class_by_zone" then classes = both(classes, zone_classes(job, figure)) end
  -- A place in the hills may ask for a class from some height on.
  if figure "fire.class_by_elevation"
    and stands_from(job, figure "fire.class_elevation_from") then
    classes = both(classes, figure "fire.classes_high")
  end
  if (figure "fire.class_by_share" or figure "fire.class_by_addition")
    and is_large(job, figure) then
    classes = both(classes, figure "fire.classes_large")
  end
  if classes and matches_old(job, figure) then
    local floor = figure "fire.match_old_classes"
    if not has(floor, "none") and not has(classes, job.covering.fire_class) then
      classes = floor
    end
  end
  local near = figure "fire.classes_near_line"
  -- The lot line is asked for only where it could narrow the demand.
  local narrows = not classes
  for _, one in ipairs(classes or {}) do narrows = narrows or not has(near, one) end
  if narrows and as_printed(job.site.lot_line_ft, "ft") < figure "fire.lot_line_under" then
    classes = both(classes, near)
  end
  if classes and has(classes, "none") then return nil end
  return classes
end)

local NO_DEMAND = "no fire class is asked for here: no law, zone or near lot line calls for one"

local class_is_due = reads({ demanded }, function(job, figure)
  if not demanded(job, figure) then return false, NO_DEMAND end
  if not matches_old(job, figure) then return true end
  if not has(figure "fire.match_old_classes", "none") then return true end
  return false, "so small a piece may match the old roof here"
end)

-- Coverings that count as class A without a test.
local is_deemed_A = reads({
  facts = { "covering.copper_oz", "covering.kind", "covering.over_noncombustible_deck" },
  figures = { "fire.deemed_A_any_deck", "fire.deemed_A_copper_least",
    "fire.deemed_A_noncombustible_deck" },
}, function(job, figure)
  local covering = job.covering
  if has(figure "fire.deemed_A_any_deck", covering.kind) then return true end
  if not has(figure "fire.deemed_A_noncombustible_deck", covering.kind) then return false end
  if covering.over_noncombustible_deck then return true end
  if covering.kind ~= "metal_panel" and covering.kind ~= "metal_shingle" then return false end
  return covering.copper_oz >= figure "fire.deemed_A_copper_least"
end)

rule "fire.class" {
  title = "Fire class of the covering",
  stage = "permit",
  reads = {
    demanded, is_deemed_A,
    facts = { "site.historic" },
    figures = { "fire.historic_exceptions", "fire.zones_not_read" },
  },
  applies = class_is_due,
  judge = function(job, figure)
    local classes, class = demanded(job, figure), job.covering.fire_class
    if not has(classes, class) and is_deemed_A(job, figure) then
      class = "A"
      work("this covering on this deck counts as class A without a test")
    end
    if not has(classes, class) and figure "fire.class_by_zone"
      and has(figure "fire.zones_not_read", job.site.fire_zone) then
      return not_known("which class this zone asks for: the code that says it was not read")
    end
    if not has(classes, class) and figure "fire.historic_exceptions" and job.site.historic then
      return cannot_tell("the place has exceptions for historic buildings that are not carried "
        .. "here: ask whether this house is one of them")
    end
    return one_of(class, classes)
  end,
  mend = "Use a covering, with the underlayment and deck it was listed on, of that class.",
}

demand "fire.proof" {
  title = "What shows the fire class",
  stage = "permit",
  when = { function(job, figure)
    local due, why = class_is_due(job, figure)
    if not due then return false, why end
    if not figure "fire.proof_required" then
      return false, "the place does not ask to see the class shown"
    end
    if has(demanded(job, figure), job.covering.fire_class) then return true end
    return not is_deemed_A(job, figure), "this covering counts as class A without a test"
  end },
  fact = "covering.fire_proof", meets = "fire.proofs",
  also = {
    { fact = "covering.fire_test", meets = { "fire.tests", "fire.tests_by_standard",
      which = function(job, figure)
        local test = job.covering.fire_test
        return not has(figure "fire.tests", test) and has(figure "fire.tests_by_standard", test)
          and "fire.tests_by_standard" or "fire.tests"
      end } },
  },
  reads = { class_is_due, is_deemed_A, figures = { "fire.proof_required" } },
  mend = "Keep the wrapper or listing that names the class and the test for the inspector.",
  caution = "The class belongs to the whole system: deck, underlayment and covering as listed.",
}

rule "fire.whole_roof" {
  title = "Fire class of the part of the roof that stays",
  stage = "permit",
  reads = {
    demanded,
    facts = { "existing.fire_class_left" },
    figures = { "fire.whole_roof_at_named_share", "fire.whole_roof_over",
      "fire.whole_roof_required" },
  },
  applies = function(job, figure)
    if not figure "fire.whole_roof_required" then
      return false, "no share of the roof brings the rest under the class here"
    end
    if not demanded(job, figure) then return false, NO_DEMAND end
    return share_renewed(job, figure) >= figure "fire.whole_roof_over",
      "so small a share leaves the rest of the roof as it is"
  end,
  judge = function(job, figure)
    local share, over = share_renewed(job, figure), figure "fire.whole_roof_over"
    -- Judged, not passed over: sources differ on a job exactly at the share.
    if share == over and not figure "fire.whole_roof_at_named_share" then
      return at_most(share, over, "percent"):say("Exactly that share is not more than it: only "
        .. "the new piece must be of the class.")
    end
    local will_do = { "nothing_left" }
    for _, one in ipairs(demanded(job, figure)) do table.insert(will_do, one) end
    return one_of(job.existing.fire_class_left, will_do)
  end,
  mend = "Renew the rest of the roof in a covering of that class too.",
}

rule "fire.material_ban" {
  title = "Coverings that the place bans",
  stage = "permit",
  reads = {
    facts = { "covering.kind", "house.kind", "site.fire_zone" },
    facts_of_some_places = { "site.local_fire_zone" },
    figures = { "fire.ban_by_local_zone", "fire.ban_local_zones", "fire.ban_one_family_only",
      "fire.ban_zones", "fire.banned", "fire.banned_in_zones" },
  },
  applies = function(job, figure)
    local banned, there = figure "fire.banned", figure "fire.banned_in_zones"
    return #banned > 0 or #there > 0, "no covering is banned here"
  end,
  judge = function(job, figure)
    local banned, kind = figure "fire.banned", job.covering.kind
    if has(banned, kind) then
      if figure "fire.ban_one_family_only" and job.house.kind ~= "one_family" then
        return one_of(job.house.kind, { "two_family", "townhouse" })
          :say("This covering is banned on one-family houses only.")
      end
      return none_of(kind, banned)
    end
    local in_zones = figure "fire.banned_in_zones"
    if #in_zones == 0 or not has(in_zones, kind) then
      return none_of(kind, #banned > 0 and banned or in_zones)
    end
    -- Banned in some zones: the zone decides, the state's or one of the place's
    -- own map, whose field stands beside its profile.
    if figure "fire.ban_by_local_zone" then
      return none_of(job.site.local_fire_zone, figure "fire.ban_local_zones")
        :say("This covering is banned in that zone, whatever its class.")
    end
    local ban_zones, free = figure "fire.ban_zones", {}
    for _, zone in ipairs { "none", "moderate", "high", "very_high" } do
      if not has(ban_zones, zone) then table.insert(free, zone) end
    end
    return one_of(job.site.fire_zone, free)
      :say("This covering is banned in the other fire zones, whatever its class.")
  end,
  mend = "Choose another covering; no fire class lifts the ban.",
}

demand "fire.class_by_material" {
  title = "Fire class that the place asks of this kind of covering",
  stage = "permit",
  when = {
    on { "fire.class_by_material", otherwise = "no class is asked for by kind of covering" },
    function(job, figure)
      return not has(figure("fire.classes_of." .. job.covering.kind), "none"),
        "no class is asked of this kind of covering"
    end,
  },
  fact = "covering.fire_class", meets = "fire.classes_of", by = "covering.kind",
  reads = { figures = { "fire.classes_of.*" } },
  mend = "Use a covering of this kind with that class, or another kind.",
}

-- Wood and panels --------------------------------------------------------------

local is_wood = reads({ facts = { "covering.kind" } }, function(job)
  return is_wood_kind(job.covering.kind), "the covering is not wood"
end)

local wood_is_classed = reads({ is_wood, class_is_due }, function(job, figure)
  local wood, why = is_wood(job)
  if not wood then return false, why end
  return class_is_due(job, figure)
end)

demand "fire.wood_treated" {
  title = "Treatment of classed wood shingles and shakes",
  stage = "permit",
  when = { wood_is_classed },
  fact = "covering.wood_pressure_treated", meets = "fire.wood_treated_required",
  say = "A class comes with pressure treatment, not with a coating.",
  mend = "Use pressure-treated fire-retardant wood, or another covering.",
}

demand "fire.wood_label" {
  title = "Label on every bundle of classed wood",
  stage = "dry-in",
  when = { wood_is_classed },
  fact = "covering.wood_bundles_labeled", meets = "fire.wood_labels_required",
  say = "Each bundle's label names the class; keep the labels for the inspector.",
  mend = "Send unlabeled bundles back.",
}

demand "fire.wood_weathering" {
  title = "Weathering test of wood coverings",
  stage = "permit",
  when = {
    is_wood,
    on { "fire.wood_weathering_required", otherwise = "no weathering test is asked for here" },
  },
  fact = "covering.wood_weathering_years", meets = "fire.wood_weathering_years_least",
  mend = "Use wood whose listing shows those years of natural weathering.",
}

demand "fire.pv" {
  title = "Fire class of solar panels put on the roof",
  stage = "permit",
  when = {
    on { "fire.pv_class_required", otherwise = "no class of solar panels is asked for here" },
    is { "solar.put_on", otherwise = "no solar panels go on, or back on, the roof" },
    function(job, figure) return demanded(job, figure) ~= nil, NO_DEMAND end,
  },
  fact = "solar.fire_class", meets = { sense = "one_of", limit = demanded },
  mend = "Use panels and racks listed together for that class.",
}

-- Wildfire details -------------------------------------------------------------

local details_asked = reads({
  facts = { "site.fire_zone" },
  figures = { "fire.wildfire_details", "fire.wildfire_zones" },
}, function(job, figure)
  if not figure "fire.wildfire_details" then
    return false, "the wildfire details are not asked of a reroof here"
  end
  return has(figure "fire.wildfire_zones", job.site.fire_zone),
    "the house is in none of the fire zones concerned"
end)

demand "fire.gaps" {
  title = "Space between covering and deck",
  stage = "dry-in",
  when = {
    details_asked,
    is { "covering.leaves_space", otherwise = "the covering lies flat on the deck" },
  },
  fact = "covering.space_is", meets = "fire.gap_ways",
  also = {
    { when = is { "covering.space_is", "cap_sheet" },
      fact = "covering.cap_sheet_lb", meets = "fire.cap_sheet_least" },
  },
  mend = "Stop the space against embers, or lay mineral-surfaced cap sheet over the deck.",
}

demand "fire.eave_stop" {
  title = "Open ends of the covering at eave and ridge",
  stage = "dry-in",
  when = {
    details_asked,
    is { "covering.leaves_space", otherwise = "the covering lies flat on the deck" },
  },
  fact = "covering.ends_stopped", meets = "fire.ends_stopped_required",
  say = "Bird stops or the like keep embers out.",
  mend = "Close the ends with noncombustible stops made for this profile.",
}

local metal_is_exposed = reads({
  details_asked,
  facts = { "roof.valleys[].kind", "roof.valleys[].lining" },
}, function(job, figure, valley)
  local asked, why = details_asked(job, figure)
  if not asked then return false, why end
  if valley.kind ~= "open" then return false, "the valley's lining is not exposed" end
  return valley.lining == "metal", "the lining is not metal"
end)

demand "fire.valley_metal" {
  title = "Thickness of exposed valley metal",
  stage = "dry-in",
  per = "roof.valleys",
  when = { metal_is_exposed },
  fact = "roof.valleys[].thickness_in", meets = "fire.valley_metal_least",
  mend = "Use thicker corrosion-resistant metal.",
}

demand "fire.valley_underlay" {
  title = "Cap sheet under exposed valley metal",
  stage = "dry-in",
  per = "roof.valleys",
  when = { metal_is_exposed },
  fact = "roof.valleys[].cap_sheet_width_in", meets = "fire.valley_strip_least",
  also = {
    { fact = "roof.valleys[].cap_sheet_lb", meets = "fire.cap_sheet_least" },
    { fact = "roof.valleys[].cap_sheet_full_length",
      shown = "cap sheet the full length of the valley" },
  },
  mend = "Lay cap sheet under the metal, the full length of the valley.",
}

demand "fire.gutters" {
  title = "Keeping leaves out of gutters",
  stage = "final",
  when = {
    details_asked,
    is { "gutters.fitted", otherwise = "the house has no gutters" },
  },
  fact = "gutters.guarded", meets = "fire.gutter_guard_required",
  say = "Noncombustible guards are the usual way.",
  mend = "Fit gutter guards.",
}

demand "fire.vent_mesh" {
  title = "Vents that keep embers out",
  stage = "final",
  per = "attics[].vents",
  when = {
    on { "fire.wildfire_details",
      otherwise = "the wildfire details are not asked of a reroof here" },
    details_asked,
  },
  choose = {
    { when = { on "fire.vent_listing_accepted", is "attics[].vents[].ember_listed" },
      fact = "attics[].vents[].ember_listed",
      shown = "a vent listed as keeping out flame and embers" },
    { fact = "attics[].vents[].mesh_noncombustible",
      shown = "mesh that neither burns nor corrodes",
      also = { { fact = "attics[].vents[].screen_opening_in",
        meets = { "fire.mesh_least", "fire.mesh_most" } } } },
  },
  mend = "Change the vent for a listed one, or its mesh for one that fine.",
  caution = "Finer mesh passes less air: count the vent's net free area again.",
}
