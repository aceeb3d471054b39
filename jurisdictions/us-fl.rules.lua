-- us-fl.rules.lua - ties from roof to wall, strengthened with the reroof; what is asked
-- where much of the deck comes off or weight is added; blisters, an early start, approvals;
-- flashing in one piece.
--
-- Due for dear houses where wind carries debris, up to a share of the price of
-- the reroof. Whether the value is the insured one or, without proof, the
-- county's, the job's answer says. What uplift each tie must hold is not carried.

field "site.wind_borne_debris" { type = "yes_no", stage = "permit",
  ask = "Does the code's map put the house in the wind-borne debris region?" }
field "house.insured_value_usd" { type = "number", unit = "usd", range = { 0, 100000000 },
  stage = "permit",
  ask = "For how much is the house insured? (without proof: the county's value of it)" }
field "papers.wall_ties" { type = "choice",
  choices = { "none", "improved", "sound_already", "due_when_built", "done_to_share",
    "beyond_share" },
  stage = "permit",
  ask = "What is done about the ties from roof to wall: nothing, all improved, found strong "
    .. "already, already due by the code they were built to, improved in the code's "
    .. "order up to the share of the price, or is the first step alone beyond that share?" }
field "papers.wall_ties_first_step_percent" { type = "number", unit = "percent",
  range = { 0, 1000 }, stage = "permit",
  ask = "What share of the reroof's price would the gable ends, or all corners, take?" }

field "papers.wall_tie_strap_lb" { type = "number", unit = "lb", range = { 0, 10000 },
  stage = "deck", ask = "For how much uplift is each strap or tie from roof to wall rated?" }
field "papers.wall_tie_nails" { type = "integer", unit = "nails", range = { 0, 60 },
  stage = "deck", ask = "How many nails at least hold each end of a strap?" }
field "papers.wall_ties_designed" { type = "yes_no", stage = "deck",
  ask = "Did an engineer design the new ties?" }
field "papers.wall_tie_uplift_lb" { type = "number", unit = "lb", range = { 1, 10000 },
  answer = "department", stage = "deck",
  ask = "What uplift must each tie hold here, by the code's table or an engineer?" }

local ties_due = reads({
  facts = { "house.insured_value_usd", "house.kind", "house.year_built", "scope.method",
    "site.wind_borne_debris" },
  figures = { "papers.wall_ties_built_before", "papers.wall_ties_house_kinds",
    "papers.wall_ties_required", "papers.wall_ties_value_from" },
}, function(job, figure)
  if not figure "papers.wall_ties_required" then return false, "no such duty here" end
  if job.scope.method ~= "tear-off" then return false, "an overlay does not bring it" end
  if not has(figure "papers.wall_ties_house_kinds", job.house.kind) then
    return false, "this kind of house is let off"
  end
  if job.house.year_built >= figure "papers.wall_ties_built_before" then
    return false, "the house was built under the statewide code"
  end
  if not job.site.wind_borne_debris then return false, "wind carries no debris here" end
  return job.house.insured_value_usd >= figure "papers.wall_ties_value_from" - 0.005,
    "the house is worth less"
end)

rule "papers.wall_ties" {
  title = "Ties from roof to wall, improved with the reroof",
  stage = "permit",
  reads = {
    facts = { "papers.wall_ties", "papers.wall_ties_first_step_percent" },
    figures = { "papers.wall_ties_share_over", "papers.wall_ties_ways" },
  },
  applies = ties_due,
  judge = function(job, figure)
    if job.papers.wall_ties ~= "beyond_share" then
      return one_of(job.papers.wall_ties, figure "papers.wall_ties_ways")
    end
    -- At the figure the step still fits into the share.
    local share = job.papers.wall_ties_first_step_percent
    local most = figure "papers.wall_ties_share_over"
    return shown(share > most + 0.05, "that the first step alone takes over "
      .. number(most, "percent") .. " of the price")
  end,
  mend = "Open the eaves at the corners, see what ties are there, and add what lacks, in the "
    .. "code's order.",
}

-- Where much of the deck comes off ----------------------------------------------------

field "papers.diaphragm_evaluated" { type = "yes_no", stage = "permit",
  ask = "Was it evaluated what wind the deck, its fastening and the ties to the walls hold?" }

-- Boards or panels that are covered over stay where they are.
local removed_percent = reads({ new_deck_sqft, roof_sqft, facts = { "decks" } }, function(job)
  local parts = { unit = "sqft" }
  for _, deck in ipairs(job.decks) do
    if deck.work ~= "paneled_over" then
      table.insert(parts, { deck.name, new_deck_sqft(job, deck) })
    end
  end
  if #parts == 0 then return 0 end
  return trade.share_percent { part = trade.sum(parts), whole = roof_sqft(job), unit = "sqft" }
end)

demand "papers.diaphragm" {
  title = "Deck and ties evaluated where much of the deck comes off",
  stage = "permit",
  when = {
    on { "papers.diaphragm_counts", otherwise = "no such duty here" },
    is { "scope.method", "tear-off", otherwise = "an overlay takes no deck off" },
    function(job, figure)
      return whole_mph(job) > figure "papers.diaphragm_wind_over",
        "the wind is not that strong here"
    end,
    meant { "house.year_built", "papers.diaphragm_built_before",
      otherwise = "the house was built under the statewide code" },
    function(job, figure)
      return as_printed(removed_percent(job), "percent") > figure "papers.diaphragm_share_over",
        "most of the deck stays"
    end,
  },
  fact = "papers.diaphragm_evaluated", shown = "an evaluation of deck, fastening and ties: they "
    .. "must hold three quarters of the wind's loads, or be strengthened",
  reads = { whole_mph, removed_percent,
    figures = { "papers.diaphragm_share_over", "papers.diaphragm_wind_over" } },
  mend = "Have an engineer look at the deck's fastening and the ties before the deck comes off.",
}

-- Weight that is added ----------------------------------------------------------------

rule "layers.added_load" {
  title = "Weight added to the framing",
  stage = "permit",
  reads = {
    weights,
    facts = { "papers.engineer_report" },
    figures = { "layers.added_load_counts", "layers.added_load_most",
      "layers.second_layer_most" },
  },
  applies = function(job, figure)
    if not figure "layers.added_load_counts" then return false, "no such limit here" end
    local before, after = weights(job, "share")
    return after > before, "the roof gets no heavier"
  end,
  judge = function(job, figure)
    local before, after = weights(job, "share")
    if before == 0 then cannot_tell("nothing lies on the roof now to compare with") end
    local rise, most = 100 * (after - before) / before, figure "layers.added_load_most"
    work(number(before, "lb_per_square") .. " now, " .. number(after, "lb_per_square")
      .. " after the work")
    if as_printed(rise, "percent") <= most then return at_most(rise, most, "percent") end
    local layer = trade.layer_psf { lb_per_square = job.covering.weight_lb_per_square }
    local second = figure "layers.second_layer_most"
    if job.existing.layers - job.existing.layers_removed == 1
      and as_printed(layer, "psf") <= second then
      return at_most(layer, second, "psf")
    end
    return shown(job.papers.engineer_report, "an engineer's word that the framing carries "
      .. number(rise, "percent") .. " more")
  end,
  mend = "Take a lighter covering, or have the framing looked at.",
}

-- Blisters, an early start, approvals ---------------------------------------------------

field "existing.blisters" { type = "choice", choices = { "none", "cut_and_fastened", "left" },
  stage = "permit",
  ask = "Blisters in the old covering that stays: are there none, are they cut or scraped open "
    .. "and fastened down, or left?" }
field "permit.early_start_allowed" { type = "yes_no", answer = "department", stage = "permit",
  ask = "Has the building official allowed work to begin before the permit, at your own risk and "
    .. "no further than the first visit that is due?" }
field "papers.approval_uplift_holds" { type = "yes_no", answer = "paper", stage = "permit",
  ask = "Does the product approval name an uplift of at least what the wind asks of this roof, in "
    .. "each of its zones?" }

-- That the old roof can be fastened through as R905 asks (item 5) is for fasteners.penetration.
demand "layers.blisters" {
  title = "Blisters in what is laid over",
  stage = "permit",
  when = {
    function(job)
      return job.scope.method == "overlay" or job.existing.layers_removed < job.existing.layers,
        "nothing is laid over: the old covering is torn off"
    end,
  },
  fact = "existing.blisters", meets = "layers.blisters_ways",
  reads = { facts = { "existing.layers", "existing.layers_removed", "scope.method" } },
  mend = "Cut or scrape the blisters open and fasten down what is left, or tear off.",
}

demand "permit.early_start" {
  title = "Work before the permit is issued",
  stage = "permit",
  when = {
    on { "permit.early_start_counts", otherwise = "no such duty here" },
    no { is { "permit.status", "issued" }, otherwise = "the permit is issued" },
    is { "permit.begun_before", otherwise = "no work has begun" },
  },
  fact = "permit.early_start_allowed",
  shown = "the building official's leave to begin at one's own risk, no further than the first "
    .. "visit that is due",
  mend = "Stop until the permit is issued, or ask for leave to begin.",
}

demand "papers.approval_uplift" {
  title = "Uplift that the product approval names",
  stage = "permit",
  when = {
    on { "papers.approval_uplift_counts", otherwise = "no such duty here" },
    meant { "covering.kind", "papers.approval_uplift_coverings",
      otherwise = "its section does not ask it of this covering" },
  },
  fact = "papers.approval_uplift_holds",
  shown = "an approval whose uplift is at least the roof's, zone by zone",
  mend = "Use a covering whose approval holds the uplift of this roof.",
}

-- One continuous piece of flashing along a wall -------------------------------------------

field "roof.walls[].flange_in_cement" { type = "yes_no", stage = "dry-in",
  ask = "Is this flashing set in flashing cement, over the underlayment, its edge sealed?" }
field "roof.walls[].flange_spacing_in" { type = "number", unit = "in", range = { 0.5, 48 },
  stage = "dry-in",
  ask = "How far apart at most are the fasteners in each flange of this flashing?" }
field "roof.walls[].flashing_lap_in" { type = "number", unit = "in", range = { 0, 24 },
  stage = "dry-in", ask = "How far do the pieces of this flashing lap?" }

local one_piece = all {
  is { "roof.walls[].kind", "sidewall", otherwise = "the roof does not pass along a wall here" },
  is { "roof.walls[].flashing_is", "new", otherwise = "no new flashing is laid here" },
  is { "roof.walls[].flashing", "continuous", otherwise = "this is not one continuous piece" },
}

demand "flashing.one_piece_cement" {
  title = "Cement under and over a continuous flashing",
  stage = "dry-in",
  per = "roof.walls",
  when = { shingles_only, on { "flashing.one_piece_cement_required",
    otherwise = "no cement is asked for here" }, one_piece },
  fact = "roof.walls[].flange_in_cement",
  shown = "the flashing set in cement over the underlayment, and its edge and nails sealed",
  mend = "Set the flashing in cement and seal the edge with cement and membrane.",
}

demand "flashing.one_piece_spacing" {
  title = "Fasteners in the flanges of a continuous flashing",
  stage = "dry-in",
  per = "roof.walls",
  when = { shingles_only, one_piece },
  fact = "roof.walls[].flange_spacing_in", meets = "flashing.one_piece_spacing_most",
  mend = "Fasten both flanges closer.",
}

demand "flashing.one_piece_lap" {
  title = "Laps of a continuous flashing",
  stage = "dry-in",
  per = "roof.walls",
  when = { shingles_only, one_piece },
  fact = "roof.walls[].flashing_lap_in", meets = "flashing.one_piece_lap_least",
  mend = "Lap the pieces further and seal the laps with cement.",
}

-- Straps of a least strength and least nails do, in place of a design, whatever a table asks
-- by wind, span and overhang (706.8.1, as a page on the 7th edition restates it). That table
-- binds what was there before and is to stay, and straps that a design makes lighter. Its
-- rows for the corners were seen on a page of an older edition, its notes were not: what it
-- comes to at a house is told by the department or an engineer.
rule "papers.wall_tie_straps" {
  title = "Straps from roof to wall",
  stage = "deck",
  reads = {
    ties_due,
    facts = { "papers.wall_tie_nails", "papers.wall_tie_strap_lb", "papers.wall_tie_uplift_lb",
      "papers.wall_ties", "papers.wall_ties_designed" },
    figures = { "papers.wall_tie_nails_least", "papers.wall_tie_strap_least" },
  },
  applies = function(job, figure)
    local due, why = ties_due(job, figure)
    if not due then return false, why end
    local done = job.papers.wall_ties
    return done == "improved" or done == "done_to_share", "no straps are put in"
  end,
  judge = function(job, figure)
    local strap, nails = job.papers.wall_tie_strap_lb, job.papers.wall_tie_nails
    local least = figure "papers.wall_tie_strap_least"
    local nails_least = figure "papers.wall_tie_nails_least"
    local usual = as_printed(strap, "lb") >= least and nails >= nails_least
    if usual or not job.papers.wall_ties_designed then
      return all_of(at_least(strap, least, "lb"), at_least(nails, nails_least, "nails"))
    end
    return at_least(strap, job.papers.wall_tie_uplift_lb, "lb")
  end,
  mend = "Use straps of that rating, with all their nails.",
}

rule "papers.wall_tie_uplift" {
  title = "Uplift that the ties found there hold",
  stage = "deck",
  reads = {
    ties_due,
    facts = { "papers.wall_tie_strap_lb", "papers.wall_tie_uplift_lb", "papers.wall_ties" },
    figures = { "papers.wall_tie_strap_least" },
  },
  applies = function(job, figure)
    local due, why = ties_due(job, figure)
    if not due then return false, why end
    return job.papers.wall_ties == "sound_already", "no old ties are relied on"
  end,
  judge = function(job, figure)
    figure "papers.wall_tie_strap_least" -- R908.8.1 cites the table
    return at_least(job.papers.wall_tie_strap_lb, job.papers.wall_tie_uplift_lb, "lb")
  end,
  mend = "Put in straps beside the ties that are too weak.",
}
