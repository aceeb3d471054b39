-- papers.lua - what is handed in with the application, and what lies ready on
-- the site.
--
-- The model code names almost none of this; nearly every switch is off until a
-- place turns it on in one line (papers.X_required). A paper that the job does
-- not mention leaves the finding open: it is never taken as there.

-- The words of `wanted` that `list` has not, as people say them.
local function lacking(list, wanted)
  local words = {}
  for _, one in ipairs(wanted) do
    if not has(list, one) then
      local word = ""
      for i = 1, #one do
        local letter = string.sub(one, i, i)
        word = word .. (letter == "_" and " " or letter)
      end
      table.insert(words, word)
    end
  end
  return words
end

-- Everything in the set must be in the job's list.
local function all_shown(list, wanted, what)
  local words = lacking(list, wanted)
  work(#wanted .. " asked for, " .. #words .. " lacking")
  if #words == 0 then return shown(true, what .. ", all that the place asks for") end
  return shown(false, what .. ", also: " .. table.concat(words, ", "))
end

-- A rule for one list: the place's set against what the job names.
local function list_rule(id, spec)
  rule(id) {
    title = spec.title,
    stage = spec.stage,
    applies = function(job, figure)
      if #figure(spec.set) == 0 then return false, spec.off end
      return true
    end,
    judge = function(job, figure)
      return all_shown(spec.list(job), figure(spec.set), spec.what)
    end,
    mend = spec.mend,
    caution = spec.caution,
  }
end

-- A rule for one paper that is there or not.
local function paper_rule(id, spec)
  rule(id) {
    title = spec.title,
    stage = spec.stage,
    applies = function(job, figure)
      if not figure(spec.switch) then return false, spec.off end
      if not spec.when then return true end
      return spec.when(job, figure)
    end,
    judge = function(job)
      return shown(spec.fact(job), spec.what)
    end,
    mend = spec.mend,
    caution = spec.caution,
  }
end

local function by_contractor(job)
  return job.permit.holder ~= "owner", "the owner takes out the permit"
end

-- With the application ------------------------------------------------------------------

list_rule("papers.application", {
  title = "What the application states", stage = "permit",
  set = "papers.application_states",
  off = "the place asks for nothing in particular on the application",
  list = function(job) return job.papers.application_states end,
  what = "an application that states what the place asks for",
  mend = "Fill in the rest of the form.",
})

list_rule("papers.handed_in", {
  title = "Other papers with the application", stage = "permit",
  set = "papers.handed_in",
  off = "no other papers are asked for with the application",
  list = function(job) return job.papers.handed_in end,
  what = "the papers asked for with the application",
  mend = "Hand in the rest.",
})

rule "papers.handed_in_overlay" {
  title = "Papers asked for with an overlay",
  stage = "permit",
  applies = function(job, figure)
    if #figure "papers.handed_in_overlay" == 0 then
      return false, "no other papers are asked for with an overlay"
    end
    return job.scope.method == "overlay", "nothing is laid over"
  end,
  judge = function(job, figure)
    return all_shown(job.papers.handed_in, figure "papers.handed_in_overlay",
      "the papers asked for with an overlay")
  end,
  mend = "Hand in the rest.",
}

-- With the application, and before the final.
local function value_rule(id, title, stage, set)
  rule(id) {
    title = title,
    stage = stage,
    applies = function(job, figure)
      if not figure "papers.value_counts" then
        return false, "the house's value calls for no papers here"
      end
      return math.floor(job.house.value_usd + 0.5) >= figure "papers.value_from",
        "the house is worth less"
    end,
    judge = function(job, figure)
      return all_shown(job.papers.handed_in, figure(set),
        "the papers asked for with a house of that value")
    end,
    mend = "Hand in the rest.",
  }
end

value_rule("papers.by_value", "Papers asked for with a dear house", "permit",
  "papers.value_papers")
value_rule("papers.by_value_final", "Papers due before the final with a dear house", "final",
  "papers.value_papers_final")

rule "papers.packets" {
  title = "Sets of the application",
  stage = "permit",
  applies = function(job, figure)
    return figure "papers.packets_count", "no number of sets is asked for"
  end,
  judge = function(job, figure)
    return at_least(job.papers.packets, figure "papers.packets_least", "count")
  end,
  mend = "Hand in as many sets as are asked for.",
}

rule "papers.approvals_marked" {
  title = "How the approval sheets are marked",
  stage = "permit",
  applies = function(job, figure)
    return figure "papers.approval_marks_count", "nothing is said about marking the sheets"
  end,
  judge = function(job, figure)
    return one_of(job.papers.approvals_marked, figure "papers.approval_marks")
  end,
  mend = "Mark the sheets again, as the place reads them.",
}

paper_rule("papers.contract", {
  title = "Copy of the contract", stage = "permit",
  switch = "papers.contract_required", off = "no copy of the contract is asked for",
  when = by_contractor,
  fact = function(job) return job.papers.contract end,
  what = "a copy of the signed contract",
  mend = "Hand in a copy of the signed contract.",
})

rule "papers.sketch" {
  title = "Roof sketch or plan",
  stage = "permit",
  applies = function(job, figure)
    return figure "papers.sketch_required", "no roof sketch is asked for"
  end,
  judge = function(job, figure)
    return at_least(job.papers.sketch_copies, figure "papers.sketch_copies_least", "count")
  end,
  mend = "Draw the roof with its areas, in as many copies as are asked for.",
}

paper_rule("papers.plans", {
  title = "Drawings for a new pitch", stage = "permit",
  switch = "papers.plans_for_pitch_required", off = "no drawings are asked for a new pitch",
  when = function(job) return job.scope.pitch_change, "no plane changes its pitch" end,
  fact = function(job) return job.papers.plans end,
  what = "drawings of the framing, because the pitch changes",
  mend = "Have the new framing drawn, and hand the drawings in.",
})

rule "papers.product_approval" {
  title = "Product approval sheets",
  stage = "permit",
  applies = function(job, figure)
    return figure "papers.approval_sheets_required", "no approval sheets are asked for"
  end,
  judge = function(job, figure)
    return at_least(job.papers.approval_sheets, figure "papers.approval_sheets_least", "count")
  end,
  mend = "Hand in the sheets of the covering and of the underlayment.",
}

paper_rule("papers.approval_numbers", {
  title = "Product approval numbers", stage = "permit",
  switch = "papers.approval_numbers_required", off = "no approval numbers are asked for",
  fact = function(job) return job.papers.approval_numbers end,
  what = "the approval number of each product",
  mend = "Look up the numbers of the very products on the truck.",
})

paper_rule("papers.maker_specification", {
  title = "Maker's specification or evaluation report", stage = "permit",
  switch = "papers.maker_specification_required",
  off = "no maker's specification is asked for with the application",
  fact = function(job) return job.papers.maker_specification end,
  what = "the maker's specification or an evaluation report",
  mend = "Hand in the maker's sheet or the report of the covering.",
})

-- A notice of commencement, where the contract is dear enough. A price at the
-- figure is on whichever side the place says.
local function notice_due(job, figure)
  if not figure "papers.commencement_required" then
    return false, "no notice of commencement is asked for"
  end
  local price, limit = job.scope.price_usd, figure "papers.commencement_price_limit"
  if math.abs(price - limit) < 0.005 then
    return figure "papers.commencement_at_price_counts", "the price is at the figure, not over it"
  end
  return price > limit, "the price is under the figure"
end

rule "papers.commencement" {
  title = "Notice of commencement recorded",
  stage = "permit",
  applies = notice_due,
  judge = function(job)
    return shown(job.papers.commencement_recorded, "a recorded notice of commencement")
  end,
  mend = "Have the owner sign the notice, and record it before the first visit.",
}

rule "papers.commencement_posted" {
  title = "Notice of commencement on the site",
  stage = "deck",
  applies = function(job, figure)
    if not figure "papers.commencement_posted_required" then
      return false, "the notice need not be posted"
    end
    return notice_due(job, figure)
  end,
  judge = function(job)
    return shown(job.papers.commencement_posted, "the recorded notice posted on the site")
  end,
  mend = "Post the recorded notice before the first visit.",
}

rule "papers.insurance" {
  title = "Insurance papers",
  stage = "permit",
  applies = function(job, figure)
    if #figure "papers.insurance" == 0 then return false, "no insurance papers are asked for" end
    return by_contractor(job)
  end,
  judge = function(job, figure)
    return all_shown(job.contractor.insurance, figure "papers.insurance", "papers on insurance")
  end,
  mend = "Hand in the certificates.",
}

rule "papers.liability" {
  title = "Sum of the liability insurance",
  stage = "permit",
  applies = function(job, figure)
    if not figure "papers.liability_counts" then
      return false, "no sum is set for liability insurance"
    end
    return by_contractor(job)
  end,
  judge = function(job, figure)
    return at_least(job.contractor.liability_usd, figure "papers.liability_least", "usd")
  end,
  mend = "Have the sum raised, and hand in the new certificate.",
}

paper_rule("papers.lead_firm", {
  title = "Lead-safe firm on an older house", stage = "permit",
  switch = "papers.lead_firm_required", off = "the permit does not ask for a lead-safe firm",
  when = function(job, figure)
    local paid, why = by_contractor(job)
    if not paid then return false, why end
    return job.house.year_built < figure "papers.lead_built_before", "the house is newer"
  end,
  fact = function(job) return job.contractor.lead_safe_firm end,
  what = "the number of a lead-safe certified firm",
  mend = "Use a lead-safe certified firm where painted wood is disturbed, and give its number.",
  caution = "Old paint on eaves and trim poisons those who scrape it and those who live there.",
})

local function association(job)
  return job.site.association, "no association has a say in this roof"
end

paper_rule("papers.association", {
  title = "The association's consent", stage = "permit",
  switch = "papers.association_letter_required", off = "no letter of an association is asked for",
  when = association,
  fact = function(job) return job.papers.association_letter end,
  what = "the association's letter of consent",
  mend = "Get the letter and hand it in.",
})

rule "papers.association_notice" {
  title = "Notice to the association",
  stage = "permit",
  applies = function(job, figure)
    if not figure "papers.association_notice_required" then
      return false, "no notice to an association is asked for"
    end
    return association(job)
  end,
  judge = function(job, figure)
    return at_least(job.papers.association_notice_days,
      figure "papers.association_notice_days_least", "days")
  end,
  mend = "Tell the association, and wait out the days.",
}

rule "papers.planning" {
  title = "Consent of the planning office",
  stage = "permit",
  applies = function(job, figure)
    if figure "papers.planning_required" then return true end
    if not figure "papers.planning_on_change" then
      return false, "the planning office is not asked here"
    end
    if job.scope.looks_change or job.scope.material_change then return true end
    return false, "neither color, look nor kind of the roof changes"
  end,
  judge = function(job)
    return shown(job.papers.planning_consent, "the consent of the planning or design office")
  end,
  mend = "Ask the planning office first.",
}

paper_rule("papers.historic", {
  title = "Certificate for a historic house", stage = "permit",
  switch = "papers.historic_required", off = "no certificate for historic houses is asked for",
  when = function(job) return job.site.historic, "the site is not historic" end,
  fact = function(job) return job.papers.historic_certificate end,
  what = "a certificate of the historic commission",
  mend = "Get the certificate before applying.",
})

rule "papers.engineer" {
  title = "Engineer's word on a heavy covering",
  stage = "permit",
  applies = function(job, figure)
    return figure "papers.engineer_counts", "no weight calls for an engineer here"
  end,
  judge = function(job, figure)
    local weight, most = job.covering.weight_lb_per_square, figure "papers.engineer_weight_limit"
    local light = at_most(weight, most, "lb_per_square")
    if math.floor(weight * 10 + 0.5) <= math.floor(most * 10 + 0.5) then return light end
    return shown(job.papers.engineer_report, "an engineer's word that the structure carries "
      .. number(weight, "lb_per_square"))
  end,
  mend = "Have an engineer look at the framing, or choose a lighter covering.",
  caution = "A roof too heavy for its rafters comes down without warning.",
}

rule "papers.double_deck" {
  title = "Engineer's word on a second deck",
  stage = "permit",
  per = "decks",
  applies = function(job, figure, deck)
    if not figure "papers.double_deck_needs_engineer" then
      return false, "a second layer of deck calls for no engineer here"
    end
    if deck.work ~= "paneled_over" then return false, "no deck is laid over this one" end
    return deck.kind ~= "spaced_board", "panels over spaced boards are the first solid deck"
  end,
  judge = function(job)
    return shown(job.papers.engineer_report, "an engineer's word on a second layer of deck")
  end,
  mend = "Take the old deck off, or have an engineer look at the framing.",
}

rule "papers.asbestos" {
  title = "Asbestos test before tear-off",
  stage = "permit",
  applies = function(job, figure)
    if not figure "papers.asbestos_test_required" then
      return false, "no test for asbestos is asked for with the permit"
    end
    if job.scope.method ~= "tear-off" and job.existing.layers_removed == 0 then
      return false, "nothing comes off"
    end
    for _, layer in ipairs(job.existing.coverings) do
      if layer.removed and has(figure "papers.asbestos_coverings", layer.kind) then return true end
    end
    return false, "no layer of a kind that is tested comes off"
  end,
  judge = function(job)
    local test = job.papers.asbestos_test
    local tested = shown(test ~= "none", "a test of the old roof for asbestos")
    if test == "found" then
      return tested:warn("Asbestos was found: those licensed for it take the roof off.")
    end
    return tested
  end,
  mend = "Have the old roof tested before anything comes off.",
  caution = "Until it is tested, neither break, saw nor grind old roofing.",
}

paper_rule("papers.waste_plan", {
  title = "Plan for the debris", stage = "permit",
  switch = "papers.waste_plan_required", off = "no plan for the debris is asked for",
  when = function(job, figure)
    if job.scope.method ~= "overlay" then return true end
    return not figure "papers.waste_overlay_exempt", "an overlay is free of it"
  end,
  fact = function(job) return job.papers.waste_plan end,
  what = "a plan for the debris",
  mend = "Say where the debris goes, and keep the weight tags.",
})

rule "papers.waste_share" {
  title = "Share of the debris that is used again",
  stage = "final",
  applies = function(job, figure)
    if not figure "papers.waste_share_counts" then
      return false, "no share of the debris is set"
    end
    return math.floor(job.scope.price_usd + 0.5) >= figure "papers.waste_share_price_from",
      "the job costs less than the figure"
  end,
  judge = function(job, figure)
    return at_least(job.papers.waste_reused_percent, figure "papers.waste_share_least", "percent")
  end,
  mend = "Send more of it to a yard that sorts, and keep the weight tags.",
}

rule "papers.underlayment_stated" {
  title = "Underlayment named on the form",
  stage = "permit",
  applies = function(job, figure)
    if not figure "papers.underlayment_stated_required" then
      return false, "the form need not name the underlayment"
    end
    return job.house.year_built <= figure "papers.underlayment_stated_built_most",
      "the house is newer than those whose form names it"
  end,
  judge = function(job, figure)
    return one_of(job.papers.underlayment_stated, figure "papers.underlayments_stated")
  end,
  mend = "Name on the form one that the place takes, and lay it.",
}

rule "papers.waste_deposit" {
  title = "Deposit for the debris",
  stage = "permit",
  applies = function(job, figure)
    if not figure "papers.waste_deposit_counts" then return false, "no deposit is asked for" end
    if job.scope.method == "overlay" and figure "papers.waste_overlay_exempt" then
      return false, "an overlay is free of it"
    end
    return true
  end,
  judge = function(job, figure)
    return at_least(job.papers.waste_deposit_usd, figure "papers.waste_deposit_least", "usd")
  end,
  mend = "Pay the deposit; it comes back with the weight tags.",
}

paper_rule("papers.site_measures", {
  title = "Chutes, fences, scaffolds and bin described", stage = "permit",
  switch = "papers.site_measures_required", off = "no description of the site is asked for",
  fact = function(job) return job.papers.site_measures end,
  what = "a description of chutes, fences, scaffolds and the bin",
  mend = "Describe how debris comes down and how people are kept clear.",
})

-- Affidavit -------------------------------------------------------------------------------

local function seen_by_inspector(job, figure)
  for _, visit in ipairs(figure "papers.affidavit_visits") do
    if job.inspection[visit].proof ~= "visit" then return false end
  end
  return true
end

-- Some places want it always, some for older houses, some only for what no
-- inspector saw.
local function affidavit_due(job, figure)
  if not figure "papers.affidavit_required" then return false, "no affidavit is asked for" end
  if figure "papers.affidavit_by_age"
    and job.house.year_built > figure "papers.affidavit_built_most" then
    return false, "the house is newer than those that need an affidavit"
  end
  if figure "papers.affidavit_unseen_only" and seen_by_inspector(job, figure) then
    return false, "an inspector sees the deck and the dry-in while they are open"
  end
  return true
end

local function affidavit_rule(id, spec)
  rule(id) {
    title = spec.title,
    stage = spec.stage,
    applies = function(job, figure)
      if spec.switch and not figure(spec.switch) then return false, spec.off end
      return affidavit_due(job, figure)
    end,
    judge = spec.judge,
    mend = spec.mend,
  }
end

affidavit_rule("papers.affidavit", {
  title = "Signed affidavit on hidden work", stage = "final",
  judge = function(job, figure)
    return all_shown(job.papers.affidavit.covers, figure "papers.affidavit_covers",
      "a signed affidavit on the hidden work")
  end,
  mend = "Have the license holder sign for the work that nobody can see any more.",
})

affidavit_rule("papers.affidavit_signer", {
  title = "Who signs the affidavit", stage = "final",
  judge = function(job, figure)
    return one_of(job.papers.affidavit.signed_by, figure "papers.affidavit_signers")
  end,
  mend = "Have it signed by one whose word the place takes.",
})

affidavit_rule("papers.affidavit_notarized", {
  title = "Affidavit notarized", stage = "final",
  switch = "papers.affidavit_notarized_required", off = "the affidavit need not be notarized",
  judge = function(job)
    return shown(job.papers.affidavit.notarized, "a notarized affidavit")
  end,
  mend = "Have it signed again before a notary.",
})

affidavit_rule("papers.affidavit_on_site", {
  title = "Affidavit on the site", stage = "final",
  switch = "papers.affidavit_on_site_required", off = "the affidavit need not be on the site",
  judge = function(job)
    return shown(job.papers.affidavit.on_site, "the affidavit on the site at the final")
  end,
  mend = "Post the affidavit with the permit card.",
})

affidavit_rule("papers.affidavit_filed", {
  title = "Affidavit on file before the final", stage = "final",
  switch = "papers.affidavit_filed_required", off = "the affidavit need not be filed beforehand",
  judge = function(job)
    return shown(job.papers.affidavit.filed, "the affidavit on file before the final")
  end,
  mend = "File it before calling for the final.",
})

-- Photographs --------------------------------------------------------------------------------
-- Asked for in every case, or only where they stand in for a visit.

local function photos_due(figure, job, visit)
  if figure "papers.photos_always" then return true end
  if job.inspection[visit].proof == "photos" then return true end
  return false, "photographs are asked for only where they stand in for a visit"
end

-- What the house has not cannot be photographed.
local OF = { chimney_saddles = "chimneys", valleys = "valleys" }

local function there(job, wanted)
  local left = {}
  for _, one in ipairs(wanted) do
    if not OF[one] or #job.roof[OF[one]] > 0 then table.insert(left, one) end
  end
  return left
end

local function photo_rule(id, visit, stage, title, mend)
  local set = "papers.photos_" .. visit
  rule(id) {
    title = title,
    stage = stage,
    applies = function(job, figure)
      if #figure(set) == 0 then return false, "the place names no photographs of this" end
      return photos_due(figure, job, visit)
    end,
    judge = function(job, figure)
      return all_shown(job.papers.photos[visit], there(job, figure(set)), "photographs")
    end,
    mend = mend,
  }
end

photo_rule("papers.photos_deck", "deck", "deck", "Photographs of the deck",
  "Photograph the rest before the underlayment goes on.")
photo_rule("papers.photos_dry_in", "dry_in", "dry-in", "Photographs of the dry-in",
  "Photograph the rest before the covering goes on.")
photo_rule("papers.photos_final", "final", "final", "Photographs of the finished roof",
  "Photograph the rest before the ladder comes down.")

-- Does the place ask for any photograph of this job at all?
local function any_photos_due(job, figure)
  for _, visit in ipairs { "deck", "dry_in", "final" } do
    if #figure("papers.photos_" .. visit) > 0 and photos_due(figure, job, visit) then
      return true
    end
  end
  return false
end

local function photo_quality(id, title, switch, off, fact, what, mend)
  rule(id) {
    title = title,
    stage = "final",
    applies = function(job, figure)
      if not figure(switch) then return false, off end
      return any_photos_due(job, figure), "no photographs are asked for"
    end,
    judge = function(job)
      return shown(fact(job), what)
    end,
    mend = mend,
  }
end

photo_quality("papers.photos_tied", "Photographs tied to the job",
  "papers.photos_tied_required", "photographs need not show the permit number or address",
  function(job) return job.papers.photos.tied_to_job end,
  "the permit number or address in or with every photograph",
  "Chalk the permit number on the deck, or put it in the subject line.")

photo_quality("papers.photos_clear", "Photographs that can be enlarged",
  "papers.photos_clear_required", "nothing is said about the sharpness of photographs",
  function(job) return job.papers.photos.clear end,
  "photographs that stay sharp when enlarged, as plain files",
  "Send them again, sharp and as plain files.")

-- On the site ----------------------------------------------------------------------------------

local function site_list(id, set, stage, title, when)
  list_rule(id, {
    title = title, stage = stage, set = set,
    off = "nothing in particular is asked for on the site " .. when,
    list = function(job) return job.papers.on_site end,
    what = "the papers asked for on the site",
    mend = "Lay the rest out before the visit.",
  })
end

site_list("papers.on_site_deck", "papers.on_site_deck", "deck",
  "Papers on the site at the deck visit",
  "at the deck visit")
site_list("papers.on_site_dry_in", "papers.on_site_dry_in", "dry-in",
  "Papers on the site at the dry-in visit", "at the dry-in visit")
site_list("papers.on_site_final", "papers.on_site_final", "final",
  "Papers on the site at the final",
  "at the final")

paper_rule("papers.wrapper", {
  title = "Shingle wrapper at the final", stage = "final",
  switch = "papers.wrapper_required", off = "no wrapper is asked for at the final",
  when = function(job)
    return job.covering.kind == "asphalt_shingle", "only asphalt shingles come in wrappers"
  end,
  fact = function(job) return job.papers.wrapper_at_final end,
  what = "a shingle wrapper on the site at the final",
  mend = "Keep a wrapper dry until the final: the stagger is checked against it.",
})
