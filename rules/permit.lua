-- permit.lua - whether the job needs a permit, who may take it out, how long it
-- lives, and what the place ties to it.
--
-- A place either wants a permit for every reroof (permit.every) or lists what
-- triggers one. Each trigger is a rule of its own, so that the report says which
-- one bites and by how much. Any one of them is enough: a place that asks for
-- "10 percent or 2 squares, whichever is less" switches both on.
--
-- Sources differ on whether the figure itself is inside ("over 25 percent",
-- "25 percent or more"): permit.X_limit is the figure, permit.X_at_counts says
-- that a job exactly at it is already inside.

-- The permit, as far as it can be known: applied for before the work, issued and
-- numbered once it has begun. `why` may hold {found} and {limit}: what was looked at
-- before.
local function permit_in_hand(why)
  return {
    { when = is { "stage", "permit" }, fact = "permit.status", wants = { "applied", "issued" },
      shown = "a permit, " .. why },
    { when = is { "stage", "deck", "dry-in", "final" }, fact = "permit.status",
      wants = { "issued" }, shown = "an issued permit, " .. why,
      say = reads({ facts = { "permit.number", "permit.status" } }, function(job)
        return job.permit.status == "issued" and "Its number: " .. job.permit.number .. "." or nil
      end) },
  }
end

-- A trigger counts only where not every job needs a permit anyway.
local not_every_job = off { "permit.every", otherwise = "every reroof needs a permit here" }

local function triggers(switch, no)
  return { not_every_job, on { switch, otherwise = no } }
end

-- A measure up to which a job is free; past it there must be a permit. What is reckoned
-- for it is what permit_triggers reckon, so that no two rules count differently.
local function measured_trigger(id, name, trigger)
  trigger.stage = "permit"
  trigger.mend = trigger.mend or "Apply for the permit before any work."
  trigger.reads = { permit_triggers[name] }
  trigger.found = function(job, figure, slope)
    local _, found = permit_triggers[name](job, figure, slope)
    return found
  end
  trigger.instead = permit_in_hand(trigger.because)
  trigger.because = nil
  demand(id)(trigger)
end

-- Is a permit needed --------------------------------------------------------------

demand "permit.every" {
  title = "A permit for the job",
  stage = "permit",
  when = {
    on { "permit.every", otherwise = "not every reroof needs a permit here" },
    no { is_exempt_repair, otherwise = "a small repair that leaves the framing alone needs none" },
  },
  choose = permit_in_hand("because every reroof needs one"),
  mend = "Apply for the permit before any work.",
}

demand "permit.late_fee" {
  title = "No work before the permit",
  stage = "permit",
  when = {
    on { "permit.late_fee_counts", otherwise = "no fee is printed for work without a permit" },
  },
  fact = "permit.begun_before",
  wants = false,
  shown = "work that waits for the permit: a fee is charged on top where it does not",
  mend = "Stop, and apply for the permit before going on.",
}

demand "permit.by_method" {
  title = "A permit for a tear-off or an overlay",
  stage = "permit",
  when = {
    not_every_job,
    either {
      all { is { "scope.method", "overlay" },
        on { "permit.overlay_counts", otherwise = "an overlay as such needs no permit here" } },
      all { no { is { "scope.method", "overlay" } },
        on { "permit.tear_off_counts", otherwise = "a tear-off as such needs no permit here" } },
    },
  },
  choose = {
    { when = is { "scope.method", "overlay" },
      choose = permit_in_hand("because the old roof is laid over") },
    { choose = permit_in_hand("because the old roof is torn off") },
  },
  mend = "Apply for the permit before any work.",
}

measured_trigger("permit.by_area", "area", {
  title = "A permit by the size of the job",
  when = triggers("permit.area_counts", "size alone calls for no permit here"),
  unit = "sqft", up_to = "permit.area_limit", at_counts = "permit.area_at_counts",
  say = "So its size calls for no permit.",
  because = "because {found} reaches past the {limit} that are free",
})

measured_trigger("permit.by_share", "share", {
  title = "A permit by the share of the roof",
  when = triggers("permit.share_counts", "the share of the roof calls for no permit here"),
  unit = "percent", up_to = "permit.share_limit", at_counts = "permit.share_at_counts",
  say = "So its share of the roof calls for no permit.",
  because = "because {found} of the roof reaches past the {limit} that are free",
})

measured_trigger("permit.by_plane_share", "plane_share", {
  title = "A permit by the share of one plane",
  per = "roof.slopes",
  when = triggers("permit.plane_share_counts", "the share of a plane calls for no permit here"),
  unit = "percent", up_to = "permit.plane_share_limit", at_counts = "permit.plane_share_at_counts",
  say = "So its share of this plane calls for no permit.",
  because = "because {found} of a plane reaches past the {limit} that are free",
})

measured_trigger("permit.by_deck", "deck", {
  title = "A permit by any new deck",
  when = triggers("permit.deck_any_counts", "a sheet of deck calls for no permit here"),
  unit = "sqft", up_to = "permit.deck_any_free",
  say = "So its new deck calls for no permit.",
  because = "because {found} of new deck is laid",
  mend = "Apply for the permit before any deck is laid.",
})

measured_trigger("permit.by_deck_share", "deck_share", {
  title = "A permit by the share of new deck",
  when = triggers("permit.deck_share_counts", "the share of new deck calls for no permit here"),
  unit = "percent", up_to = "permit.deck_share_limit", at_counts = "permit.deck_share_at_counts",
  say = "So its share of new deck calls for no permit.",
  because = "because {found} of the deck is new, past the {limit} that are free",
  mend = "Apply for the permit before any deck is laid.",
})

measured_trigger("permit.by_price", "price", {
  title = "A permit by the price",
  when = triggers("permit.price_counts", "the price calls for no permit here"),
  unit = "usd", up_to = "permit.price_limit", at_counts = "permit.price_at_counts",
  say = "So its price calls for no permit.",
  because = "because {found} reaches past the {limit} that are free",
})

-- Triggers that are there or not.
local function change_trigger(id, title, switch, no, none, why)
  local is_there = permit_triggers[string.sub(id, 11)]
  demand(id) {
    title = title,
    stage = "permit",
    when = triggers(switch, no),
    reads = { is_there },
    found = function(job) return not is_there(job) end,
    meets = switch,
    say = none,
    instead = permit_in_hand(why),
    mend = "Apply for the permit before any work.",
  }
end

change_trigger("permit.by_pitch", "A permit by a new pitch", "permit.pitch_change_counts",
  "a new pitch calls for no permit here",
  "No plane changes its pitch.", "because the pitch changes")

change_trigger("permit.by_material", "A permit by a new kind of covering",
  "permit.material_change_counts", "another kind of covering calls for no permit here",
  "The new covering is like the old.", "because the covering is not like the old")

change_trigger("permit.by_structure", "A permit by work on the framing",
  "permit.structure_counts", "work on the framing calls for no permit under this rule",
  "The framing is left alone.", "because the framing is altered")

change_trigger("permit.by_history", "A permit by a historic site", "permit.historic_counts",
  "a historic site calls for no permit of its own here",
  "The site is not historic.", "because the site is historic")

change_trigger("permit.by_spaced_deck", "A permit by taking off spaced boards",
  "permit.spaced_deck_counts", "taking off spaced boards calls for no permit here",
  "No spaced boards come off for a new deck.", "because spaced boards come off for a new deck")

change_trigger("permit.by_skylight", "A permit by a skylight", "permit.skylight_counts",
  "a skylight calls for no permit here",
  "No skylight is put in or changed.", "because a skylight is put in or changed")

change_trigger("permit.by_units", "A permit by equipment that is moved", "permit.units_counts",
  "equipment on the roof calls for no permit here",
  "No equipment on the roof is moved.", "because equipment on the roof is moved")

change_trigger("permit.by_underlayment", "A permit by new underlayment",
  "permit.underlayment_counts", "new underlayment calls for no permit here",
  "No new underlayment is laid.", "because new underlayment is laid")

change_trigger("permit.by_wildfire_zone", "A permit in a wildfire hazard zone",
  "permit.wildfire_zone_counts", "a wildfire hazard zone calls for no permit of its own here",
  "The lot is in no such zone.", "because the lot is in such a zone")

change_trigger("permit.by_solar_roof", "A permit for a solar roof", "permit.solar_roof_counts",
  "a solar roof calls for no permit of its own here",
  "No solar panels are built into the covering.", "because solar panels are built in")

demand "permit.by_house_kind" {
  title = "A permit by the kind of house",
  stage = "permit",
  when = {
    not_every_job,
    asks { "permit.house_kinds_counted", otherwise = "the kind of house calls for no permit here" },
    meant { "house.kind", "permit.house_kinds_counted",
      otherwise = "the kind of house calls for no permit here" },
  },
  choose = permit_in_hand("because of the kind of house"),
  mend = "Apply for the permit before any work.",
}

measured_trigger("permit.by_stories", "stories", {
  title = "A permit by the number of stories",
  when = triggers("permit.stories_counts", "the number of stories calls for no permit here"),
  unit = "count", up_to = "permit.stories_limit",
  say = "So its height calls for no permit.",
  because = "because the house has {found} stories",
})

measured_trigger("permit.by_load_share", "load_share", {
  title = "A permit by the weight of the new roof",
  per = "roof.slopes",
  when = triggers("permit.load_share_counts", "the new roof's weight calls for no permit here"),
  unit = "percent", up_to = "permit.load_share_limit",
  say = "So its weight calls for no permit. Where framing members carry over 200 sq ft "
    .. "each, or the snow load is higher, the department reckons with another load.",
  because = "because the new roof weighs {found} of the live load, over the {limit} that are free",
})

measured_trigger("permit.by_weight_added", "weight_added", {
  title = "A permit by pounds added to the roof",
  when = triggers("permit.weight_added_counts", "pounds added call for no permit here"),
  unit = "psf", up_to = "permit.weight_added_limit",
  say = "So its weight calls for no permit.",
  because = "because {found} are added to the roof, past the {limit} that are free",
  mend = "Apply for the permit before any work, with what shows that the structure carries it.",
})

measured_trigger("permit.by_weight_rise", "weight_rise", {
  title = "A permit by added weight",
  when = triggers("permit.weight_rise_counts", "added weight calls for no permit here"),
  unit = "percent", up_to = "permit.weight_rise_limit", at_counts = "permit.weight_rise_at_counts",
  say = "So its weight calls for no permit.",
  because = "because the roof's weight rises {found}, past the {limit} that are free",
  mend = "Apply for the permit before any work, with what shows that the structure carries it.",
})

measured_trigger("permit.by_heavy_covering", "heavy_covering", {
  title = "A permit by a heavy covering",
  when = triggers("permit.heavy_counts", "a heavy covering calls for no permit here"),
  unit = "lb_per_square", up_to = "permit.heavy_limit", at_counts = "permit.heavy_at_counts",
  say = "So its weight calls for no permit.",
  because = "because the covering weighs {found}",
  mend = "Apply for the permit before any work, with what shows that the structure carries it.",
})

-- How far the work must go -----------------------------------------------------------

-- Where the place names a day, the permit of the old roof shows that it may stay.
local rest_may_stay = reads({
  facts = { "scope.old_roof_permitted_on", "scope.rest_under_relief" },
  figures = { "permit.rest_relief", "permit.rest_relief_from" },
}, function(job, figure)
  if not figure "permit.rest_relief" or not job.scope.rest_under_relief then return false end
  local from = figure "permit.rest_relief_from"
  return from == 0 or as_date(job.scope.old_roof_permitted_on) >= from
end)

rule "permit.share_trigger" {
  title = "So much of the roof that the rest must follow",
  stage = "permit",
  reads = {
    rest_may_stay, share_renewed,
    facts = { "scope.rest_to_code", "scope.section_share_percent" },
    figures = { "permit.rest_at_counts", "permit.rest_by_section", "permit.rest_counts",
      "permit.rest_limit", "permit.rest_months" },
  },
  applies = function(job, figure)
    if not figure "permit.rest_counts" then
      return false, "no share of the roof pulls in the rest here"
    end
    if rest_may_stay(job, figure) then
      return false, "the old roof was built under a code that lets the rest stay"
    end
    return true
  end,
  judge = function(job, figure)
    local limit = figure "permit.rest_limit"
    local share = share_renewed(job, figure "permit.rest_months")
    -- A part of the roof that stands by itself may be past it where the whole is not.
    if share < 100 - 0.05 and figure "permit.rest_by_section" then
      share = math.max(share, job.scope.section_share_percent)
    end
    if not is_inside(share, limit, figure "permit.rest_at_counts", 0.1) then
      return at_most(share, limit, "percent")
    end
    -- Where nothing is left over, there is no rest.
    if share >= 100 - 0.05 then
      return shown(true, "the whole roof brought to the present code")
    end
    return shown(job.scope.rest_to_code, "the whole roof or section brought to the present code, "
      .. "because " .. number(share, "percent") .. " is done, past the " .. number(limit, "percent")
      .. " that stand alone")
  end,
  mend = "Bring the whole roof, or the section, to the present code, or do less of it.",
}

rule "permit.part_as_new" {
  title = "So much of the roof that the part done is built as new",
  stage = "permit",
  reads = {
    share_renewed,
    facts = { "scope.part_as_new" },
    figures = { "permit.part_as_new_at_counts", "permit.part_as_new_counts",
      "permit.part_as_new_limit", "permit.part_as_new_months" },
  },
  applies = function(job, figure)
    return figure "permit.part_as_new_counts", "no share of the roof makes the part count as new"
  end,
  judge = function(job, figure)
    local limit = figure "permit.part_as_new_limit"
    local share = share_renewed(job, figure "permit.part_as_new_months")
    if not is_inside(share, limit, figure "permit.part_as_new_at_counts", 0.1) then
      return at_most(share, limit, "percent"):say("So the part done need not be built as new.")
    end
    return shown(job.scope.part_as_new, "the part done built as on a new building, because "
      .. number(share, "percent") .. " is done")
  end,
  mend = "Build the part as the code asks of new buildings, or do less of it.",
}

demand "permit.whole_planes" {
  title = "Planes are replaced whole",
  stage = "permit",
  per = "roof.slopes",
  when = {
    on { "permit.whole_planes_required", otherwise = "part of a plane may be replaced here" },
    function(job, figure, slope)
      return slope.replaced_percent ~= 0, "this plane is left alone"
    end,
  },
  fact = "roof.slopes[].replaced_percent", meets = "permit.whole_planes_least",
  mend = "Replace the covering of the whole plane.",
}

rule "permit.joins" {
  title = "Where coverings of two kinds meet",
  stage = "permit",
  reads = {
    facts = { "scope.joins" },
    figures = { "permit.joins_allowed", "permit.joins_count" },
  },
  applies = function(job, figure)
    return figure "permit.joins_count", "the place does not say where coverings may meet"
  end,
  judge = function(job, figure)
    local allowed = figure "permit.joins_allowed"
    if #job.scope.joins == 0 then
      return cannot_tell("the list of joins is empty: say none, or where they are")
    end
    local worst = one_of("none", { "none" })
    for _, join in ipairs(job.scope.joins) do
      if join ~= "none" then worst = all_of(worst, one_of(join, allowed)) end
    end
    return worst
  end,
  mend = "Carry the new covering to the next ridge, hip or open valley.",
}

-- What may go on ------------------------------------------------------------------------
-- Bans by kind of covering are fire.material_ban; these tell coverings of one kind
-- apart.

local shingles = is { "covering.kind", "asphalt_shingle",
  otherwise = "only asphalt shingles come in these make-ups" }

demand "permit.grade" {
  title = "Make-up of the shingles",
  stage = "permit",
  when = {
    on { "permit.grade_counts", otherwise = "any make-up of shingle may go on" },
    shingles,
  },
  fact = "covering.grade", meets = "permit.grades",
  mend = "Choose a shingle of a make-up that the place takes.",
}

demand "permit.warranty" {
  title = "Lifetime warranty on the shingles",
  stage = "permit",
  when = {
    on { "permit.lifetime_required", otherwise = "no length of warranty is asked for" },
    shingles,
  },
  fact = "covering.lifetime_warranty", shown = "a maker's warranty for life",
  mend = "Choose a shingle with such a warranty.",
}

rule "permit.warranty_years" {
  title = "Years of the warranty on the shingles",
  stage = "permit",
  reads = {
    facts = { "covering.lifetime_warranty", "covering.warranty_years" },
    figures = { "permit.warranty_years_least" },
  },
  when = {
    on { "permit.warranty_counts", otherwise = "no length of warranty is set in years" },
    shingles,
  },
  judge = function(job, figure)
    local least = figure "permit.warranty_years_least"
    if known(job.covering, "lifetime_warranty") and job.covering.lifetime_warranty then
      return shown(true, "a warranty for life, which is no less than "
        .. number(least, "years"))
    end
    return at_least(job.covering.warranty_years, least, "years")
  end,
  mend = "Choose a shingle with a longer warranty.",
}

demand "permit.local_list" {
  title = "Covering on the place's own list",
  stage = "permit",
  when = { on { "permit.local_list_counts", otherwise = "the place keeps no list of coverings" } },
  fact = "covering.on_local_list", shown = "a covering that is on the place's list",
  mend = "Choose from the list, or ask the place to add this one.",
}

-- Who -----------------------------------------------------------------------------------

demand "permit.holder" {
  title = "Who takes out the permit",
  stage = "permit",
  fact = "permit.holder", meets = "permit.holders",
  mend = "Have the owner or the contractor take it out.",
}

demand "permit.license" {
  title = "Contractor's license",
  stage = "permit",
  when = {
    on { "permit.license_required",
      otherwise = "no contractor's license is asked for with the permit" },
    by_contractor,
  },
  fact = "contractor.license", meets = "permit.licenses",
  mend = "Show the license that the place asks of roofers.",
}

demand "permit.registration" {
  title = "Contractor registered with the place",
  stage = "permit",
  when = {
    on { "permit.registration_required",
      otherwise = "no registration of the contractor is asked for" },
    by_contractor,
  },
  fact = "contractor.registered", shown = "a contractor registered or licensed with the place",
  mend = "Register with the place before applying.",
}

local function by_owner(switch, off)
  return { on { switch, otherwise = off },
    is { "permit.holder", "owner", otherwise = "a contractor takes out the permit" } }
end

demand "permit.owner_lives_there" {
  title = "An owner who does the work lives in the house",
  stage = "permit",
  when = by_owner("permit.owner_must_live_there", "the owner need not live in the house"),
  fact = "permit.owner_lives_there", shown = "an owner who lives in the house",
  mend = "Have a licensed contractor take out the permit.",
}

demand "permit.owner_statement" {
  title = "Statement of an owner who does the work",
  stage = "permit",
  when = by_owner("permit.owner_statement_required", "the owner signs no statement here"),
  fact = "permit.owner_statement", meets = "permit.owner_statements",
  mend = "Sign the owner's statement as the place wants it signed.",
}

demand "permit.overdue" {
  title = "No other permit left open too long",
  stage = "permit",
  when = {
    on { "permit.overdue_bars", otherwise = "another open permit does not stand in the way here" },
    by_contractor,
  },
  fact = "contractor.overdue_permits",
  wants = false,
  shown = "no other permit of the contractor overdue",
  mend = "Close the old permit first.",
}

demand "permit.violations" {
  title = "No violation open on the property",
  stage = "permit",
  when = {
    on { "permit.violations_bar", otherwise = "open violations do not stand in the way here" },
  },
  fact = "site.open_violations", wants = false, shown = "no code violation open on the property",
  mend = "Clear the violation first, or ask for a permit that does.",
}

demand "permit.right_of_way" {
  title = "Leave to use the street or sidewalk",
  stage = "permit",
  when = {
    on { "permit.right_of_way_required",
      otherwise = "use of the street is not judged with this permit" },
    is { "site.right_of_way_used", otherwise = "nothing stands in the street or on the sidewalk" },
  },
  fact = "site.right_of_way_permit", shown = "a permit for the street or sidewalk",
  mend = "Keep everything on the lot, or get the permit.",
}

demand "permit.right_of_way_clear" {
  title = "Nothing kept in the street or on the sidewalk",
  stage = "permit",
  when = { on { "permit.right_of_way_clear_required", otherwise = "the street may be used here" } },
  fact = "site.right_of_way_used", wants = false, shown = "street and sidewalk left clear",
  mend = "Keep everything on the lot.",
}

demand "permit.bin_deposit" {
  title = "Deposit for the debris bin",
  stage = "permit",
  when = {
    on { "permit.bin_deposit_required", otherwise = "no deposit for a bin is asked for" },
    is { "site.bin_used", otherwise = "there is no debris bin" },
  },
  fact = "site.bin_deposit", shown = "the deposit for the debris bin, paid",
  mend = "Pay the deposit with the bin's permit.",
}

-- A repair under a size has a permit of its own, which does for nothing else.
local kinds_that_do = reads({
  agreed_area,
  figures = { "permit.small_under" },
}, function(job, figure)
  local small = job.scope.extent == "repair"
    and not is_inside(agreed_area(job), figure "permit.small_under", true, 0.1)
  return small and { "small_repair", "reroof" } or { "reroof" }
end)

demand "permit.kind" {
  title = "The right kind of permit",
  stage = "permit",
  when = {
    on { "permit.small_counts", otherwise = "there is one kind of permit here" },
    no { is { "permit.status", "none" }, otherwise = "there is no permit" },
  },
  fact = "permit.kind", meets = { limit = kinds_that_do, sense = "one_of" },
  mend = "Take out the permit for a reroof.",
}

demand "permit.bin" {
  title = "Leave for the debris bin",
  stage = "permit",
  when = {
    on { "permit.bin_required", otherwise = "no permit for a bin is asked for" },
    is { "site.bin_used", otherwise = "there is no debris bin" },
  },
  fact = "site.bin_permit", shown = "a permit for the debris bin",
  mend = "Get the bin's permit before it comes.",
}

-- While the work goes on ------------------------------------------------------------------

local function needs_card(switch, off)
  return { on { switch, otherwise = off },
    no { is { "permit.status", "none" }, otherwise = "there is no permit to keep there" } }
end

demand "permit.posted" {
  title = "Permit kept on the site",
  stage = "deck",
  when = needs_card("permit.posted_required", "the permit need not be on the site"),
  fact = "permit.posted", meets = "permit.posted_required",
  say = "It stays there from the first day until the final.",
  mend = "Have the permit or a copy of it on the site before work begins, and until the final.",
}

demand "permit.visible" {
  title = "Permit card seen from the street",
  stage = "deck",
  when = needs_card("permit.visible_required", "the card need not be seen from the street"),
  fact = "permit.seen_from_street", shown = "a card that can be seen from the street",
  mend = "Hang the card where it can be read from the street.",
}

demand "permit.life" {
  title = "Permit not lapsed by standing still",
  stage = "deck",
  when = {
    on { "permit.life_counts", otherwise = "a permit does not lapse here" },
    inspected { otherwise = "counted once the permit is issued" },
    permit_counts,
  },
  open = {
    { when = on "permit.life_is_local", asks_place = true,
      says = "how long a permit lives: the state leaves it to the city or county" },
  },
  fact = "permit.longest_idle_days", meets = "permit.life_days",
  instead = {
    { when = is "permit.extended", fact = "permit.longest_idle_days", meets = {
      "permit.life_days", "permit.extension_days", unit = "days", sense = "at_most",
      limit = function(job, figure)
        return trade.sum { { "life", figure "permit.life_days" },
          { "extension", figure "permit.extension_days" }, unit = "days" }
      end } },
  },
  mend = "Ask for an extension in writing before the permit lapses, or apply anew.",
}

-- An extension is so many more days, not leave for good.
local days_with_extension = reads({
  figures = { "permit.extension_days", "permit.open_days_most" },
}, function(job, figure)
  return trade.sum { { "from issue", figure "permit.open_days_most" },
    { "extension", figure "permit.extension_days" }, unit = "days" }
end)

local function is_excuse(word)
  return reads({ figures = { "permit.open_excuses" } }, function(job, figure)
    return has(figure "permit.open_excuses", word)
  end)
end

local EXCUSED = "an excuse that the place takes: the work mostly done by then, or the delay "
  .. "explained"

demand "permit.open" {
  title = "Permit not run out since it was issued",
  stage = "deck",
  when = {
    on { "permit.open_counts",
      otherwise = "no time from the day of issue is set for the whole job" },
    inspected { otherwise = "counted once the permit is issued" },
    permit_counts,
  },
  fact = "permit.open_days", meets = "permit.open_days_most",
  -- Any one excuse that the place takes is enough.
  instead = {
    { when = { is_excuse "mostly_done" }, fact = "permit.mostly_done", shown = EXCUSED },
    { when = { is_excuse "delay_explained" }, fact = "permit.delay_explained", shown = EXCUSED },
    { when = { is_excuse "extended", is "permit.extended" }, fact = "permit.open_days", meets = {
      "permit.open_days_most", "permit.extension_days", unit = "days", sense = "at_most",
      limit = days_with_extension } },
  },
  mend = "Call for the final now, or ask for more time in writing.",
}

demand "permit.certificate" {
  title = "Certificate at the end",
  stage = "final",
  when = {
    on { "permit.certificate_required", otherwise = "no certificate is asked for at the end" },
    inspected { otherwise = "asked for at the end" },
    permit_counts,
  },
  fact = "permit.certificate", shown = "a certificate of compliance issued by the place",
  mend = "Ask for the certificate once the final has gone well.",
}
