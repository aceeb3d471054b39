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
-- numbered once it has begun.
local function permit_shown(job, why)
  local status = job.permit.status
  if job.stage == "permit" then return shown(status ~= "none", "a permit, " .. why) end
  local shows = shown(status == "issued", "an issued permit, " .. why)
  if status == "issued" then shows:say("Its number: " .. job.permit.number .. ".") end
  return shows
end

local function every_job(figure)
  return figure "permit.every"
end

-- A trigger counts only where not every job needs a permit anyway.
local function triggers(switch, off)
  return {
    function(job, figure)
      return not every_job(figure), "every reroof needs a permit here"
    end,
    on { switch, otherwise = off },
  }
end

-- Is a permit needed --------------------------------------------------------------

rule "permit.every" {
  title = "A permit for the job",
  stage = "permit",
  applies = function(job, figure)
    if not every_job(figure) then return false, "not every reroof needs a permit here" end
    return not is_exempt_repair(job, figure),
      "a small repair that leaves the framing alone needs none"
  end,
  judge = function(job)
    return permit_shown(job, "because every reroof needs one")
  end,
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

rule "permit.by_method" {
  title = "A permit for a tear-off or an overlay",
  stage = "permit",
  applies = function(job, figure)
    if every_job(figure) then return false, "every reroof needs a permit here" end
    if permit_triggers.method(job, figure) then return true end
    return false, job.scope.method == "overlay" and "an overlay as such needs no permit here"
      or "a tear-off as such needs no permit here"
  end,
  judge = function(job)
    return permit_shown(job, job.scope.method == "overlay" and "because the old roof is laid over"
      or "because the old roof is torn off")
  end,
  mend = "Apply for the permit before any work.",
}

rule "permit.by_area" {
  title = "A permit by the size of the job",
  stage = "permit",
  when = triggers("permit.area_counts", "size alone calls for no permit here"),
  judge = function(job, figure)
    local inside, area, limit = permit_triggers.area(job, figure)
    if not inside then
      return at_most(area, limit, "sqft"):say("So its size calls for no permit.")
    end
    return permit_shown(job, "because " .. number(area, "sqft") .. " reaches past the "
      .. number(limit, "sqft") .. " that are free")
  end,
  mend = "Apply for the permit before any work.",
}

rule "permit.by_share" {
  title = "A permit by the share of the roof",
  stage = "permit",
  when = triggers("permit.share_counts", "the share of the roof calls for no permit here"),
  judge = function(job, figure)
    local inside, share, limit = permit_triggers.share(job, figure)
    if not inside then
      return at_most(share, limit, "percent"):say("So its share of the roof calls for no permit.")
    end
    return permit_shown(job, "because " .. number(share, "percent") .. " of the roof reaches past "
      .. "the " .. number(limit, "percent") .. " that are free")
  end,
  mend = "Apply for the permit before any work.",
}

rule "permit.by_plane_share" {
  title = "A permit by the share of one plane",
  stage = "permit",
  per = "roof.slopes",
  when = triggers("permit.plane_share_counts", "the share of a plane calls for no permit here"),
  judge = function(job, figure, slope)
    local inside, share, limit = permit_triggers.plane_share(job, figure, slope)
    if not inside then
      return at_most(share, limit, "percent"):say("So its share of this plane calls for no permit.")
    end
    return permit_shown(job, "because " .. number(share, "percent") .. " of a plane reaches past "
      .. "the " .. number(limit, "percent") .. " that are free")
  end,
  mend = "Apply for the permit before any work.",
}

rule "permit.by_deck" {
  title = "A permit by any new deck",
  stage = "permit",
  when = triggers("permit.deck_any_counts", "a sheet of deck calls for no permit here"),
  judge = function(job, figure)
    local inside, new, free = permit_triggers.deck(job, figure)
    if not inside then
      return at_most(new, free, "sqft"):say("So its new deck calls for no permit.")
    end
    return permit_shown(job, "because " .. number(new, "sqft") .. " of new deck is laid")
  end,
  mend = "Apply for the permit before any deck is laid.",
}

rule "permit.by_deck_share" {
  title = "A permit by the share of new deck",
  stage = "permit",
  when = triggers("permit.deck_share_counts", "the share of new deck calls for no permit here"),
  judge = function(job, figure)
    local inside, share, limit = permit_triggers.deck_share(job, figure)
    if not inside then
      return at_most(share, limit, "percent"):say("So its share of new deck calls for no permit.")
    end
    return permit_shown(job, "because " .. number(share, "percent") .. " of the deck is new, past "
      .. "the " .. number(limit, "percent") .. " that are free")
  end,
  mend = "Apply for the permit before any deck is laid.",
}

rule "permit.by_price" {
  title = "A permit by the price",
  stage = "permit",
  when = triggers("permit.price_counts", "the price calls for no permit here"),
  judge = function(job, figure)
    local inside, price, limit = permit_triggers.price(job, figure)
    if not inside then
      return at_most(price, limit, "usd"):say("So its price calls for no permit.")
    end
    return permit_shown(job, "because " .. number(price, "usd") .. " reaches past the "
      .. number(limit, "usd") .. " that are free")
  end,
  mend = "Apply for the permit before any work.",
}

-- Triggers that are there or not.
local function change_trigger(id, title, switch, off, none, why)
  local fact = permit_triggers[string.sub(id, 11)]
  rule(id) {
    title = title,
    stage = "permit",
    when = triggers(switch, off),
    judge = function(job, figure)
      local wanted = figure(switch)
      if not fact(job) then return equals(not fact(job), wanted):say(none) end
      return permit_shown(job, why)
    end,
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

rule "permit.by_house_kind" {
  title = "A permit by the kind of house",
  stage = "permit",
  applies = function(job, figure)
    if every_job(figure) then return false, "every reroof needs a permit here" end
    return permit_triggers.house_kind(job, figure),
      "the kind of house calls for no permit here"
  end,
  judge = function(job)
    return permit_shown(job, "because of the kind of house")
  end,
  mend = "Apply for the permit before any work.",
}

rule "permit.by_stories" {
  title = "A permit by the number of stories",
  stage = "permit",
  when = triggers("permit.stories_counts", "the number of stories calls for no permit here"),
  judge = function(job, figure)
    local stories, limit = job.house.stories, figure "permit.stories_limit"
    if not permit_triggers.stories(job, figure) then
      return at_most(stories, limit, "count"):say("So its height calls for no permit.")
    end
    return permit_shown(job, "because the house has " .. number(stories) .. " stories")
  end,
  mend = "Apply for the permit before any work.",
}

rule "permit.by_load_share" {
  title = "A permit by the weight of the new roof",
  stage = "permit",
  per = "roof.slopes",
  when = triggers("permit.load_share_counts", "the new roof's weight calls for no permit here"),
  judge = function(job, figure, slope)
    local inside, share, limit = permit_triggers.load_share(job, figure, slope)
    if not inside then
      return at_most(share, limit, "percent")
        :say("So its weight calls for no permit. Where framing members carry over 200 sq ft "
          .. "each, or the snow load is higher, the department reckons with another load.")
    end
    return permit_shown(job, "because the new roof weighs " .. number(share, "percent")
      .. " of the live load, over the " .. number(limit, "percent") .. " that are free")
  end,
  mend = "Apply for the permit before any work.",
}

rule "permit.by_weight_added" {
  title = "A permit by pounds added to the roof",
  stage = "permit",
  when = triggers("permit.weight_added_counts", "pounds added call for no permit here"),
  judge = function(job, figure)
    local inside, added, limit = permit_triggers.weight_added(job, figure)
    if not inside then
      return at_most(added, limit, "psf"):say("So its weight calls for no permit.")
    end
    return permit_shown(job, "because " .. number(added, "psf") .. " are added to the roof, past "
      .. "the " .. number(limit, "psf") .. " that are free")
  end,
  mend = "Apply for the permit before any work, with what shows that the structure carries it.",
}

rule "permit.by_weight_rise" {
  title = "A permit by added weight",
  stage = "permit",
  when = triggers("permit.weight_rise_counts", "added weight calls for no permit here"),
  judge = function(job, figure)
    local inside, rise, limit = permit_triggers.weight_rise(job, figure)
    if not inside then
      return at_most(rise, limit, "percent"):say("So its weight calls for no permit.")
    end
    return permit_shown(job, "because the roof's weight rises " .. number(rise, "percent")
      .. ", past the " .. number(limit, "percent") .. " that are free")
  end,
  mend = "Apply for the permit before any work, with what shows that the structure carries it.",
}

rule "permit.by_heavy_covering" {
  title = "A permit by a heavy covering",
  stage = "permit",
  when = triggers("permit.heavy_counts", "a heavy covering calls for no permit here"),
  judge = function(job, figure)
    local inside, weight, limit = permit_triggers.heavy_covering(job, figure)
    if not inside then
      return at_most(weight, limit, "lb_per_square"):say("So its weight calls for no permit.")
    end
    return permit_shown(job, "because the covering weighs " .. number(weight, "lb_per_square"))
  end,
  mend = "Apply for the permit before any work, with what shows that the structure carries it.",
}

-- How far the work must go -----------------------------------------------------------

-- Where the place names a day, the permit of the old roof shows that it may stay.
local function rest_may_stay(job, figure)
  if not figure "permit.rest_relief" or not job.scope.rest_under_relief then return false end
  local from = figure "permit.rest_relief_from"
  return from == 0 or as_date(job.scope.old_roof_permitted_on) >= from
end

rule "permit.share_trigger" {
  title = "So much of the roof that the rest must follow",
  stage = "permit",
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

local function shingles(job)
  return job.covering.kind == "asphalt_shingle", "only asphalt shingles come in these make-ups"
end

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
rule "permit.kind" {
  title = "The right kind of permit",
  stage = "permit",
  applies = function(job, figure)
    if not figure "permit.small_counts" then return false, "there is one kind of permit here" end
    return job.permit.status ~= "none", "there is no permit"
  end,
  judge = function(job, figure)
    local small = job.scope.extent == "repair"
      and not is_inside(agreed_area(job), figure "permit.small_under", true, 0.1)
    return one_of(job.permit.kind, small and { "small_repair", "reroof" } or { "reroof" })
  end,
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

rule "permit.life" {
  title = "Permit not lapsed by standing still",
  stage = "deck",
  applies = function(job, figure)
    if not figure "permit.life_counts" then return false, "a permit does not lapse here" end
    if not inspecting() then return false, "counted once the permit is issued" end
    return permit_counts(job, figure)
  end,
  judge = function(job, figure)
    if figure "permit.life_is_local" then
      return not_known("how long a permit lives: the state leaves it to the city or county")
    end
    local idle, life = job.permit.longest_idle_days, figure "permit.life_days"
    if idle <= life or not job.permit.extended then return at_most(idle, life, "days") end
    local longer = trade.sum { { "life", life }, { "extension", figure "permit.extension_days" },
      unit = "days" }
    return at_most(idle, longer, "days")
  end,
  mend = "Ask for an extension in writing before the permit lapses, or apply anew.",
}

-- An extension is so many more days, not leave for good.
local function days_with_extension(figure)
  return trade.sum { { "from issue", figure "permit.open_days_most" },
    { "extension", figure "permit.extension_days" }, unit = "days" }
end

rule "permit.open" {
  title = "Permit not run out since it was issued",
  stage = "deck",
  applies = function(job, figure)
    if not figure "permit.open_counts" then
      return false, "no time from the day of issue is set for the whole job"
    end
    if not inspecting() then return false, "counted once the permit is issued" end
    return permit_counts(job, figure)
  end,
  judge = function(job, figure)
    local days, most = job.permit.open_days, figure "permit.open_days_most"
    if days <= most then return at_most(days, most, "days") end
    -- Any one excuse that the place takes is enough.
    local permit, excused = job.permit, at_most(days, most, "days")
    for _, excuse in ipairs(figure "permit.open_excuses") do
      if excuse == "extended" then
        if permit.extended then
          excused = any_of(excused, at_most(days, days_with_extension(figure), "days"))
        end
      else
        local given
        if excuse == "mostly_done" then given = permit.mostly_done
        else given = permit.delay_explained end
        excused = any_of(excused, shown(given, "an excuse that the place takes: the work mostly "
          .. "done by then, or the delay explained"))
      end
    end
    return excused
  end,
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
