-- inspection.lua - the inspector's visits: which ones the place has, when each
-- is held, who calls, and what must be so when the inspector comes.
--
-- Six visits are known: before anything comes off (pre), at the bare deck (deck), at
-- the nails of new deck where that is a visit of its own (nailing), at the dry-in
-- (dry_in), part-way (mid_roof), at the end (final). A place may have one only where
-- something is so (inspection.only_where.X). The
-- word mid-roof stands for five different moments in the places that use it,
-- so the place names its moment and the job says at which it calls.
--
-- For each visit a place says whether it has it (inspection.required.X) and what
-- it takes for it (inspection.proofs.X): a visit, or photographs, an affidavit,
-- the contractor's own report ... A look that a place has is never taken as held:
-- the job must say so.

local any_new_deck = reads({ facts = { "decks[].work" } }, function(job)
  for _, deck in ipairs(job.decks) do
    if deck.work ~= "kept" then return true end
  end
  return false
end)

local any_flat_plane = reads({
  facts = { "roof.slopes[].pitch" },
  figures = { "inspection.pre_flat_most" },
}, function(job, figure)
  for _, slope in ipairs(job.roof.slopes) do
    if slope.pitch <= figure "inspection.pre_flat_most" + 0.005 then return true end
  end
  return false
end)

local function any_plane(test)
  return function(job, figure)
    for _, slope in ipairs(job.roof.slopes) do
      if test(job, figure, slope) then return true end
    end
    return false
  end
end

local function of_kind(kind)
  return function(job) return job.house.kind == kind end
end

-- On what a place may make a visit depend (inspection.only_where.X): one that holds is
-- enough. They bear the names of the facts that they look at.
local CONDITIONS = {
  deck_replaced = any_new_deck,
  spaced_board = function(job)
    for _, deck in ipairs(job.decks) do
      if deck.kind == "spaced_board" then return true end
    end
    return false
  end,
  pitch = any_plane(function(_, figure, slope)
    return as_printed(slope.pitch, "rise_in_12") <= figure "inspection.flat_most"
  end),
  stories = function(job, figure)
    return job.house.stories > figure "inspection.tall_over"
  end,
  structure_altered = permit_triggers.structure,
  material_change = permit_triggers.material,
  skylights_changed = permit_triggers.skylight,
  units_moved = permit_triggers.units,
  owner = function(job) return job.permit.holder == "owner" end,
  two_family = of_kind "two_family",
  townhouse = of_kind "townhouse",
}

local meets_condition = reads({
  any_new_deck, permit_triggers.structure, permit_triggers.material, permit_triggers.skylight,
  permit_triggers.units,
  facts = { "decks[].kind", "house.kind", "house.stories", "permit.holder",
    "roof.slopes[].pitch" },
  figures = { "inspection.flat_most", "inspection.only_where.*", "inspection.tall_over" },
}, function(job, figure, visit)
  local named = figure("inspection.only_where." .. visit)
  for _, word in ipairs(named) do
    local condition = CONDITIONS[word]
    if not condition then error("inspection.only_where." .. visit .. " names " .. word
      .. ", which is no condition of rules/inspection.lua") end
    if condition(job, figure) then return true end
  end
  return #named == 0, "none of what the place has this visit for is so here"
end)

-- What narrows a visit beyond its method.
local NARROWED = {
  pre = function() return true end,
  nailing = function(job)
    return any_new_deck(job), "no new deck is nailed"
  end,
  deck = function(job, figure)
    if not figure "inspection.deck_only_new" then return true end
    return any_new_deck(job), "the deck stays as it is: only new deck is looked at"
  end,
  dry_in = function() return true end,
  mid_roof = function(job, figure)
    if not has(figure "inspection.mid_roof_coverings", job.covering.kind)
      and not (figure "inspection.mid_roof_battens_count" and job.covering.on_battens) then
      return false, "there is no mid-roof look for this kind of covering"
    end
    return has(figure "inspection.mid_roof_holders", job.permit.holder),
      "there is no mid-roof look where this holder has the permit"
  end,
  final = function() return true end,
}

local visit_due = reads({
  permit_counts, any_flat_plane, meets_condition,
  facts = { "covering.kind", "covering.on_battens" },
  figures = { "inspection.deck_only_new", "inspection.free_price_counts",
    "inspection.free_price_most", "inspection.methods.*", "inspection.mid_roof_battens_count",
    "inspection.mid_roof_coverings", "inspection.mid_roof_holders", "inspection.pre_flat_counts",
    "inspection.required.*" },
}, function(job, figure, visit)
  -- First, so that it also holds where nobody read which visits the place has.
  local permit, none = permit_counts(job, figure)
  if not permit then return false, none end
  if not figure("inspection.required." .. visit) then
    return false, "the place has no such visit"
  end
  if figure "inspection.free_price_counts"
    and job.scope.price_usd <= figure "inspection.free_price_most" then
    return false, "jobs of this price are not looked at"
  end
  if visit == "pre" and figure "inspection.pre_flat_counts" and any_flat_plane(job, figure) then
    return true
  end
  if not has(figure("inspection.methods." .. visit), job.scope.method) then
    return false, job.scope.method == "overlay" and "an overlay has no such visit"
      or "a tear-off has no such visit"
  end
  local so, why = meets_condition(job, figure, visit)
  if not so then return false, why end
  return NARROWED[visit](job, figure)
end)

-- Owners who do the work may have to take a visit where a contractor may not.
local proofs_named = reads({
  facts = { "permit.holder" },
  figures = { "inspection.owner_differs", "inspection.owner_proofs", "inspection.proofs.*" },
}, function(job, figure, visit)
  if visit ~= "final" and figure "inspection.owner_differs" and job.permit.holder == "owner" then
    return "inspection.owner_proofs"
  end
  return "inspection.proofs." .. visit
end)

local proofs = reads({
  proofs_named,
  figures = { "inspection.proofs.deck" },
}, function(job, figure, visit)
  return figure(proofs_named(job, figure, visit))
end)

-- Held visits: the rule of each visit, that nothing is hidden before it, and
-- that it went well before the work goes past it.
local function visit_rules(visit, spec)
  local due = reads({ visit_due }, function(job, figure) return visit_due(job, figure, visit) end)
  local at = "inspection." .. visit

  demand(at) {
    title = spec.title,
    stage = spec.stage,
    when = { due },
    fact = at .. ".proof",
    reads = { proofs_named },
    meets = { "inspection.owner_proofs", "inspection.proofs." .. visit,
      which = function(job, figure) return proofs_named(job, figure, visit) end },
    mend = spec.mend,
    caution = spec.caution,
  }
  if not spec.hidden_stage then return end

  demand(at .. "_hidden") {
    title = spec.hidden_title,
    stage = spec.hidden_stage,
    when = {
      on { "inspection.no_cover", otherwise = "work may go on before it is looked at" },
      inspected { otherwise = "told when the work has come so far" },
      due,
      is { at .. ".proof", "visit", otherwise = "shown by other means than a visit" },
    },
    fact = at .. ".hidden_first", wants = false, shown = "work left open until it was looked at",
    mend = "Open up what was hidden, and call the inspector.",
  }

  demand(at .. "_passed") {
    title = spec.passed_title,
    stage = spec.passed_stage,
    when = {
      on { "inspection.in_order", otherwise = "the next visit does not wait for this one" },
      inspected { otherwise = "told when the work has come past it" },
      due,
    },
    fact = at .. ".result", meets = "inspection.results_that_do",
    mend = "Mend what was found, and have it looked at again before going on.",
  }
end

visit_rules("pre", {
  title = "A look before the old roof is touched", stage = "permit",
  hidden_title = "Nothing touched before the first look", hidden_stage = "deck",
  passed_title = "The first look went well", passed_stage = "deck",
  mend = "Call the inspector before anything comes off or is laid over.",
})

visit_rules("deck", {
  title = "A look at the bare deck", stage = "deck",
  hidden_title = "Deck left bare until it is looked at", hidden_stage = "deck",
  passed_title = "The look at the deck went well", passed_stage = "dry-in",
  mend = "Call the inspector before the underlayment goes on.",
  caution = "Do not leave the deck open to the weather while waiting: ask for partial looks.",
})

visit_rules("nailing", {
  title = "A look at the nails of new deck", stage = "deck",
  hidden_title = "New deck left bare until its nails are looked at", hidden_stage = "deck",
  passed_title = "The look at the nails went well", passed_stage = "dry-in",
  mend = "Call the inspector when the new deck is nailed, before the underlayment goes on.",
})

visit_rules("dry_in", {
  title = "A look at the dry-in", stage = "dry-in",
  hidden_title = "Dry-in left open until it is looked at", hidden_stage = "dry-in",
  passed_title = "The look at the dry-in went well", passed_stage = "final",
  mend = "Call the inspector before the covering goes on.",
})

visit_rules("mid_roof", {
  title = "A mid-roof look", stage = "dry-in",
  hidden_title = "Mid-roof work left open until it is looked at", hidden_stage = "dry-in",
  passed_title = "The mid-roof look went well", passed_stage = "final",
  mend = "Stop where the place wants it, and call the inspector.",
})

visit_rules("final", {
  title = "A look at the finished roof", stage = "final",
  mend = "Call for the final: the permit stays open without it.",
})

-- Held is not passed. Before it is held nobody can say.
demand "inspection.final_passed" {
  title = "The final went well",
  stage = "final",
  when = {
    function(job, figure) return visit_due(job, figure, "final") end,
    inspected { otherwise = "told when the final has been held" },
    function(job)
      if job.inspection.final.result == "not_held" then
        cannot_tell("the final has not been held yet")
      end
      return true
    end,
  },
  fact = "inspection.final.result", meets = "inspection.results_that_do",
  reads = { visit_due },
  mend = "Mend what was found, and call for the final again: the permit stays open until it has "
    .. "gone well.",
}

demand "inspection.deputy" {
  title = "Deputy inspector on a nearly flat roof",
  stage = "permit",
  per = "roof.slopes",
  when = {
    on { "inspection.deputy_required", otherwise = "no deputy inspector is asked for" },
    meant { "roof.slopes[].pitch", "inspection.deputy_under",
      otherwise = "this plane is steep enough to do without" },
  },
  fact = "inspection.deputy", shown = "a deputy inspector who watches the work",
  mend = "Engage a deputy inspector before the work.",
}

-- Beside the look at the bare deck ------------------------------------------------------

demand "inspection.deck_loaded" {
  title = "Covering on the roof at the look at the deck",
  stage = "deck",
  when = {
    on { "inspection.deck_loaded_counts",
      otherwise = "nothing is said about loading the roof before the look at the deck" },
    function(job, figure) return visit_due(job, figure, "deck") end,
  },
  fact = "inspection.deck.roof_loaded", meets = "inspection.deck_loaded_wanted",
  reads = { visit_due },
  mend = "Ask when the place wants the roof loaded.",
  caution = "Spread the bundles: a stack on one rafter can break it.",
}

-- A season in which the deck may be felted before it is looked at, if enough of it
-- can still be seen afterwards. Its days are "MM-DD", and may run over the new year.
local function in_season(day, from, to)
  if from <= to then return day >= from and day <= to end
  return day >= from or day <= to
end

rule "inspection.winter_rule" {
  title = "Deck felted before the look, under the winter rule",
  stage = "deck",
  reads = {
    visit_due, proofs,
    facts = { "inspection.deck.proof", "inspection.winter.covering_sqft",
      "inspection.winter.felt_peeled", "inspection.winter.felted_on",
      "inspection.winter.letter" },
    figures = { "inspection.winter_covering_most", "inspection.winter_felt_peeled_least",
      "inspection.winter_from", "inspection.winter_to" },
  },
  applies = function(job, figure)
    local due, why = visit_due(job, figure, "deck")
    if not due then return false, why end
    if not has(proofs(job, figure, "deck"), "winter_rule") then
      return false, "the place has no winter rule"
    end
    if not inspecting() then return false, "told when the deck is felted" end
    return job.inspection.deck.proof == "winter_rule", "the deck is shown by other means"
  end,
  judge = function(job, figure)
    local winter = job.inspection.winter
    local day = string.sub(winter.felted_on, 6, 10)
    local from, to = figure("inspection.winter_from")[1], figure("inspection.winter_to")[1]
    return all_of(
      shown(in_season(day, from, to), "a day of the season, " .. from .. " to " .. to),
      shown(winter.letter, "the contractor's letter, with a sketch of the rot"),
      at_most(winter.covering_sqft, figure "inspection.winter_covering_most", "sqft"),
      at_least(winter.felt_peeled, figure "inspection.winter_felt_peeled_least", "count"))
  end,
  mend = "Lay no more of the covering, and open the felt where the inspector can see the deck.",
}

-- Mid-roof: at which moment -----------------------------------------------------------

local function mid_roof_by(moment)
  return reads({ visit_due, figures = { "inspection.mid_roof_moments" } }, function(job, figure)
    local due, why = visit_due(job, figure, "mid_roof")
    if not due then return false, why end
    if moment and not has(figure "inspection.mid_roof_moments", moment) then
      return false, "the mid-roof look is at another moment here"
    end
    return true
  end)
end

demand "inspection.mid_roof_moment" {
  title = "When the mid-roof look is held",
  stage = "dry-in",
  when = mid_roof_by(nil),
  fact = "inspection.mid_roof.moment", meets = "inspection.mid_roof_moments",
  mend = "Ask what the place means by mid-roof, and call at that moment.",
}

demand "inspection.mid_roof_courses" {
  title = "Courses laid at the mid-roof look",
  stage = "dry-in",
  when = {
    mid_roof_by "courses_laid",
    on { "inspection.mid_roof_courses_count", otherwise = "no number of courses is set" },
    inspected { otherwise = "counted on the roof" },
  },
  fact = "inspection.mid_roof.courses_laid",
  meets = { "inspection.mid_roof_courses_least", "inspection.mid_roof_courses_most" },
  mend = "Lay as many courses as the place wants to see, and no more.",
}

demand "inspection.mid_roof_share" {
  title = "Covering laid at the mid-roof look",
  stage = "dry-in",
  when = {
    mid_roof_by(nil),
    on { "inspection.mid_roof_share_counts", otherwise = "no share of the covering is set" },
    inspected { otherwise = "measured on the roof" },
  },
  fact = "inspection.mid_roof.covering_percent",
  meets = { "inspection.mid_roof_share_least", "inspection.mid_roof_share_most" },
  mend = function(job, figure)
    local least = figure "inspection.mid_roof_share_least"
    if as_printed(job.inspection.mid_roof.covering_percent, "percent") < least then
      return "Lay " .. number(least, "percent") .. " before the look: there must be something to "
        .. "look at."
    end
    return "Stop sooner: what lies beneath must still be seen."
  end,
}

-- Calling ------------------------------------------------------------------------------

-- Has the place any visit that this job is due?
local any_visit = reads({ visit_due }, function(job, figure)
  for _, visit in ipairs { "final", "deck", "nailing", "dry_in", "mid_roof", "pre" } do
    if visit_due(job, figure, visit) then return true end
  end
  return false
end)

local visited = reads({ any_visit }, function(switch, off)
  local visits = all { any_visit, otherwise = "the place makes no visits" }
  if not switch then return { permit_counts, visits } end
  return { on { switch, otherwise = off }, permit_counts, visits }
end)

demand "inspection.notice" {
  title = "Notice for a visit",
  stage = "permit",
  when = visited("inspection.notice_required", "no notice is set for visits"),
  fact = "inspection.notice_hours", meets = "inspection.notice_hours_least",
  mend = "Call earlier.",
}

demand "inspection.caller" {
  title = "Who calls the inspector",
  stage = "permit",
  when = visited(nil),
  fact = "inspection.called_by", meets = "inspection.callers",
  mend = "Have the permit's holder call.",
}

rule "inspection.holder_calls" {
  title = "Only the permit's holder calls",
  stage = "permit",
  reads = { facts = { "inspection.called_by" }, figures = { "inspection.only_holder_calls" } },
  when = visited("inspection.only_holder_calls", "others than the holder may call"),
  judge = function(job, figure)
    return equals(job.inspection.called_by == job.permit.holder,
      figure "inspection.only_holder_calls"):say("Only the one who holds the permit may call.")
  end,
  mend = "Have the permit's holder call.",
}

demand "inspection.someone_there" {
  title = "Someone there, or a note",
  stage = "permit",
  when = visited("inspection.someone_required", "nobody need be there"),
  fact = "inspection.someone_home", shown = "a grown person there, or a note for the inspector",
  mend = "Be there, or leave a note on the door or gate; keep pets in.",
}

-- Getting up -----------------------------------------------------------------------------

demand "inspection.access" {
  title = "A way up for the inspector",
  stage = "deck",
  when = visited("inspection.access_required", "the inspector brings a way up"),
  fact = "inspection.access", meets = "inspection.accesses",
  mend = "Leave a ladder set up and tied for every visit.",
  caution = "Keep ladders away from the service drop.",
}

demand "inspection.access_tall" {
  title = "A way up a tall house",
  stage = "deck",
  when = {
    visited("inspection.tall_counts", "no other way up is asked for on a tall house"),
    meant { "house.stories", "inspection.tall_over", otherwise = "the house is not so tall" },
  },
  fact = "inspection.access", meets = "inspection.accesses_tall",
  mend = "Put up a scaffold or bring a lift, or agree on another way of looking.",
  caution = "A ladder to a third eave is longer than most are, and sways.",
}

local by_ladder = reads({ visited }, function(switch, off)
  return { visited(switch, off),
    is { "inspection.access", "ladder", otherwise = "the inspector goes up by other means" } }
end)

demand "inspection.ladder_tied" {
  title = "Ladder set up and tied",
  stage = "deck",
  when = by_ladder("inspection.ladder_tied_required", "nothing is said about tying the ladder"),
  fact = "inspection.ladder_tied", shown = "a ladder set up and tied at the top",
  mend = "Tie the ladder at the top and leave it for the visit.",
}

demand "inspection.ladder_past" {
  title = "Ladder past the eave",
  stage = "deck",
  when = by_ladder("inspection.ladder_past_counts", "no length past the eave is set"),
  fact = "inspection.ladder_past_eave_in", meets = "inspection.ladder_past_least",
  mend = "Use a longer ladder, or slide it out.",
}

demand "inspection.ladder_rating" {
  title = "Ladder's rated load",
  stage = "deck",
  when = by_ladder("inspection.ladder_rating_counts", "no rated load is set"),
  fact = "inspection.ladder_rating_lb", meets = "inspection.ladder_rating_least",
  mend = "Use a ladder of a heavier class.",
}

demand "inspection.ready" {
  title = "Work done before the inspector is called",
  stage = "deck",
  when = visited("inspection.ready_counts", "nothing is said about calling too early"),
  fact = "inspection.ready_at_call", shown = "the work of the stage all done at the call",
  mend = "Finish the stage before the call: a look in vain is often charged.",
}

demand "inspection.as_permitted" {
  title = "Roof built as the papers of the permit say",
  stage = "final",
  when = visited("inspection.as_permitted_counts", "the permit's papers are not looked at"),
  fact = "inspection.built_as_permitted", shown = "a roof built as the papers of the permit say",
  mend = "Have the change taken into the permit before the final, or build what its papers say.",
}

-- What must be so ------------------------------------------------------------------------

local on_the_day = reads({ permit_counts }, function(switch, off)
  return { on { switch, otherwise = off },
    inspected { otherwise = "seen on the day of the visit" }, permit_counts }
end)

demand "inspection.snow" {
  title = "Roof clear of snow",
  stage = "deck",
  when = on_the_day("inspection.snow_free_required", "nothing is said about snow"),
  fact = "site.snow_on_roof", wants = false, shown = "a roof clear of snow",
  mend = "Call again when the roof is clear.",
  caution = "Nobody goes onto a roof with snow or ice on it to clear it for a visit.",
}

demand "inspection.labels" {
  title = "Labels there to be read",
  stage = "dry-in",
  when = on_the_day("inspection.labels_required", "no look at labels is asked for"),
  fact = "inspection.labels_kept", shown = "the labels of bundles and rolls there to be read",
  mend = "Keep a wrapper of every product until the final.",
}

demand "inspection.ties" {
  title = "Rafters tied down to the walls",
  stage = "deck",
  when = {
    on { "inspection.ties_count",
      otherwise = "ties at the rafters are not looked at with a reroof" },
  },
  fact = "roof.ties_at_each_rafter", shown = "a metal tie at every rafter or truss",
  mend = "Add ties while the edge of the deck is open.",
}

demand "inspection.site_clean" {
  title = "Site clean at the final",
  stage = "final",
  when = on_the_day("inspection.clean_required", "the site is not looked at"),
  fact = "site.clean", shown = "a site clean of debris",
  mend = "Clear debris and nails before the final.",
}

demand "inspection.bin_gone" {
  title = "Debris bin gone at the final",
  stage = "final",
  when = on_the_day("inspection.bin_gone_required", "the bin may stay"),
  fact = "site.bin_gone", shown = "the debris bin gone",
  mend = "Have the bin taken away before the final.",
}

demand "inspection.downspouts" {
  title = "Downspouts off the storm sewer",
  stage = "final",
  when = on_the_day("inspection.downspouts_count", "downspouts are not looked at"),
  fact = "site.downspouts_to_storm_sewer",
  wants = false,
  shown = "downspouts that do not run into the storm sewer",
  mend = "Let downspouts run onto the ground, away from the house.",
}

demand "inspection.solar" {
  title = "Solar panels put back",
  stage = "final",
  when = {
    on { "inspection.solar_counts",
      otherwise = "panels that are put back are not judged with this permit" },
    is { "scope.solar_reset", otherwise = "no panels are put back" },
  },
  fact = "inspection.solar_proof", meets = "inspection.solar_proofs",
  mend = "Call for a look at the panels.",
}

demand "inspection.solar_electrician" {
  title = "Electrician for the solar panels",
  stage = "permit",
  when = {
    on { "inspection.solar_electrician_required", otherwise = "no electrician is asked for" },
    is { "scope.solar_reset", otherwise = "no panels are put back" },
  },
  fact = "inspection.solar_electrician", shown = "the electrician who puts the panels back, named",
  mend = "Name a licensed electrician on the permit.",
}

-- House numbers and chimneys are looked at from the same ladder ------------------------------

local address_counts = on { "inspection.address_counts",
  otherwise = "house numbers are not looked at with a reroof" }

demand "inspection.address" {
  title = "House number posted",
  stage = "final",
  when = { address_counts },
  fact = "site.address_posted", shown = "a house number that reads from the street",
  mend = "Post the number where it reads from the street.",
}

demand "inspection.address_size" {
  title = "Size of the house number",
  stage = "final",
  when = { address_counts },
  fact = "site.address_height_in", meets = "inspection.address_height_least",
  also = { { fact = "site.address_stroke_in", meets = "inspection.address_stroke_least" } },
  mend = "Put up larger digits in a color that stands out.",
}

local function chimney_counts(switch, off)
  return { on { switch, otherwise = off },
    is { "house.solid_fuel_chimney", otherwise = "no chimney of a wood fire" } }
end

demand "inspection.spark_arrester" {
  title = "Spark arrester on the chimney",
  stage = "final",
  when = chimney_counts("inspection.spark_arrester_required", "no spark arrester is asked for"),
  fact = "house.spark_arrester", shown = "a spark arrester on every chimney of a wood fire",
  mend = "Fit a spark arrester.",
}

demand "inspection.spark_arrester_openings" {
  title = "Openings of the spark arrester",
  stage = "final",
  when = chimney_counts("inspection.spark_arrester_openings_count",
    "no openings are set for spark arresters"),
  fact = "house.spark_arrester_opening_in",
  meets = { "inspection.spark_arrester_opening_most", "inspection.spark_arrester_opening_least" },
  mend = "Fit an arrester whose openings neither let sparks through nor clog.",
}
