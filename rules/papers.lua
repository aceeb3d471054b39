-- papers.lua - what is handed in with the application, and what lies ready on
-- the site.
--
-- The model code names almost none of this; nearly every switch is off until a
-- place turns it on in one line (papers.X_required). A paper that the job does
-- not mention leaves the finding open: it is never taken as there.

-- With the application ------------------------------------------------------------------

demand "papers.application" {
  title = "What the application states",
  stage = "permit",
  when = { asks { "papers.application_states",
    otherwise = "the place asks for nothing in particular on the application" } },
  fact = "papers.application_states", meets = "papers.application_states",
  shown = "an application that states what the place asks for",
  mend = "Fill in the rest of the form.",
}

demand "papers.handed_in" {
  title = "Other papers with the application",
  stage = "permit",
  when = { asks { "papers.handed_in",
    otherwise = "no other papers are asked for with the application" } },
  fact = "papers.handed_in", meets = "papers.handed_in",
  shown = "the papers asked for with the application",
  mend = "Hand in the rest.",
}

demand "papers.handed_in_overlay" {
  title = "Papers asked for with an overlay",
  stage = "permit",
  when = {
    asks { "papers.handed_in_overlay",
      otherwise = "no other papers are asked for with an overlay" },
    is { "scope.method", "overlay", otherwise = "nothing is laid over" },
  },
  fact = "papers.handed_in", meets = "papers.handed_in_overlay",
  shown = "the papers asked for with an overlay",
  mend = "Hand in the rest.",
}

local DEAR = {
  on { "papers.value_counts", otherwise = "the house's value calls for no papers here" },
  meant { "house.value_usd", "papers.value_from", otherwise = "the house is worth less" },
}

demand "papers.by_value" {
  title = "Papers asked for with a dear house",
  stage = "permit",
  when = DEAR,
  fact = "papers.handed_in", meets = "papers.value_papers",
  shown = "the papers asked for with a house of that value",
  mend = "Hand in the rest.",
}

demand "papers.by_value_final" {
  title = "Papers due before the final with a dear house",
  stage = "final",
  when = DEAR,
  fact = "papers.handed_in", meets = "papers.value_papers_final",
  shown = "the papers asked for with a house of that value",
  mend = "Hand in the rest.",
}

demand "papers.packets" {
  title = "Sets of the application",
  stage = "permit",
  when = { on { "papers.packets_count", otherwise = "no number of sets is asked for" } },
  fact = "papers.packets", meets = "papers.packets_least",
  mend = "Hand in as many sets as are asked for.",
}

demand "papers.approvals_marked" {
  title = "How the approval sheets are marked",
  stage = "permit",
  when = { on { "papers.approval_marks_count",
    otherwise = "nothing is said about marking the sheets" } },
  fact = "papers.approvals_marked", meets = "papers.approval_marks",
  mend = "Mark the sheets again, as the place reads them.",
}

demand "papers.contract" {
  title = "Copy of the contract",
  stage = "permit",
  when = {
    on { "papers.contract_required", otherwise = "no copy of the contract is asked for" },
    by_contractor,
  },
  fact = "papers.contract", shown = "a copy of the signed contract",
  mend = "Hand in a copy of the signed contract.",
}

demand "papers.sketch" {
  title = "Roof sketch or plan",
  stage = "permit",
  when = { on { "papers.sketch_required", otherwise = "no roof sketch is asked for" } },
  fact = "papers.sketch_copies", meets = "papers.sketch_copies_least",
  mend = "Draw the roof with its areas, in as many copies as are asked for.",
}

demand "papers.plans" {
  title = "Drawings for a new pitch",
  stage = "permit",
  when = {
    on { "papers.plans_for_pitch_required", otherwise = "no drawings are asked for a new pitch" },
    is { "scope.pitch_change", otherwise = "no plane changes its pitch" },
  },
  fact = "papers.plans", shown = "drawings of the framing, because the pitch changes",
  mend = "Have the new framing drawn, and hand the drawings in.",
}

demand "papers.product_approval" {
  title = "Product approval sheets",
  stage = "permit",
  when = { on { "papers.approval_sheets_required",
    otherwise = "no approval sheets are asked for" } },
  fact = "papers.approval_sheets", meets = "papers.approval_sheets_least",
  mend = "Hand in the sheets of the covering and of the underlayment.",
}

demand "papers.approval_numbers" {
  title = "Product approval numbers",
  stage = "permit",
  when = { on { "papers.approval_numbers_required",
    otherwise = "no approval numbers are asked for" } },
  fact = "papers.approval_numbers", shown = "the approval number of each product",
  mend = "Look up the numbers of the very products on the truck.",
}

demand "papers.maker_specification" {
  title = "Maker's specification or evaluation report",
  stage = "permit",
  when = { on { "papers.maker_specification_required",
    otherwise = "no maker's specification is asked for with the application" } },
  fact = "papers.maker_specification",
  shown = "the maker's specification or an evaluation report",
  mend = "Hand in the maker's sheet or the report of the covering.",
}

-- A notice of commencement, where the contract is dear enough. A price at the
-- figure is on whichever side the place says.
local notice_due = reads({
  facts = { "scope.price_usd" },
  figures = { "papers.commencement_at_price_counts", "papers.commencement_price_limit" },
}, function(job, figure)
  local price, limit = job.scope.price_usd, figure "papers.commencement_price_limit"
  if math.abs(price - limit) < 0.005 then
    return figure "papers.commencement_at_price_counts", "the price is at the figure, not over it"
  end
  return price > limit, "the price is under the figure"
end)

local NOTICE = {
  on { "papers.commencement_required", otherwise = "no notice of commencement is asked for" },
  notice_due,
}

demand "papers.commencement" {
  title = "Notice of commencement recorded",
  stage = "permit",
  when = NOTICE,
  fact = "papers.commencement_recorded", shown = "a recorded notice of commencement",
  mend = "Have the owner sign the notice, and record it before the first visit.",
}

demand "papers.commencement_posted" {
  title = "Notice of commencement on the site",
  stage = "deck",
  when = {
    on { "papers.commencement_posted_required", otherwise = "the notice need not be posted" },
    NOTICE,
  },
  fact = "papers.commencement_posted", shown = "the recorded notice posted on the site",
  mend = "Post the recorded notice before the first visit.",
}

demand "papers.insurance" {
  title = "Insurance papers",
  stage = "permit",
  when = {
    asks { "papers.insurance", otherwise = "no insurance papers are asked for" },
    by_contractor,
  },
  fact = "contractor.insurance", meets = "papers.insurance", shown = "papers on insurance",
  mend = "Hand in the certificates.",
}

demand "papers.workers_comp" {
  title = "Workers' compensation",
  stage = "permit",
  when = {
    on { "papers.workers_comp_required", otherwise = "workers' compensation is not asked after" },
    by_contractor,
    either { off "papers.without_employees_exempt", is "contractor.has_employees",
      otherwise = "the contractor employs nobody" },
  },
  fact = "contractor.workers_comp", meets = "papers.workers_comp_proofs",
  mend = "Hand in the certificate of insurance, or of exemption where the place takes one.",
}

demand "papers.liability" {
  title = "Sum of the liability insurance",
  stage = "permit",
  when = {
    on { "papers.liability_counts", otherwise = "no sum is set for liability insurance" },
    by_contractor,
  },
  fact = "contractor.liability_usd", meets = "papers.liability_least",
  mend = "Have the sum raised, and hand in the new certificate.",
}

demand "papers.lead_firm" {
  title = "Lead-safe firm on an older house",
  stage = "permit",
  when = {
    on { "papers.lead_firm_required", otherwise = "the permit does not ask for a lead-safe firm" },
    by_contractor,
    meant { "house.year_built", "papers.lead_built_before", otherwise = "the house is newer" },
  },
  fact = "contractor.lead_safe_firm", shown = "the number of a lead-safe certified firm",
  mend = "Use a lead-safe certified firm where painted wood is disturbed, and give its number.",
  caution = "Old paint on eaves and trim poisons those who scrape it and those who live there.",
}

local association = is { "site.association", otherwise = "no association has a say in this roof" }

demand "papers.association" {
  title = "The association's consent",
  stage = "permit",
  when = {
    on { "papers.association_letter_required",
      otherwise = "no letter of an association is asked for" },
    association,
  },
  fact = "papers.association_letter", shown = "the association's letter of consent",
  mend = "Get the letter and hand it in.",
}

demand "papers.association_notice" {
  title = "Notice to the association",
  stage = "permit",
  when = {
    on { "papers.association_notice_required",
      otherwise = "no notice to an association is asked for" },
    association,
  },
  fact = "papers.association_notice_days", meets = "papers.association_notice_days_least",
  mend = "Tell the association, and wait out the days.",
}

demand "papers.planning" {
  title = "Consent of the planning office",
  stage = "permit",
  when = { either {
    on "papers.planning_required",
    all {
      on { "papers.planning_on_change", otherwise = "the planning office is not asked here" },
      either { is "scope.looks_change", is "scope.material_change",
        otherwise = "neither color, look nor kind of the roof changes" },
    },
  } },
  fact = "papers.planning_consent", shown = "the consent of the planning or design office",
  mend = "Ask the planning office first.",
}

demand "papers.historic" {
  title = "Certificate for a historic house",
  stage = "permit",
  when = {
    on { "papers.historic_required",
      otherwise = "no certificate for historic houses is asked for" },
    is { "site.historic", otherwise = "the site is not historic" },
  },
  fact = "papers.historic_certificate", shown = "a certificate of the historic commission",
  mend = "Get the certificate before applying.",
}

demand "papers.engineer" {
  title = "Engineer's word on a heavy covering",
  stage = "permit",
  when = { on { "papers.engineer_counts", otherwise = "no weight calls for an engineer here" } },
  fact = "covering.weight_lb_per_square", up_to = "papers.engineer_weight_limit",
  instead = {
    { fact = "papers.engineer_report",
      shown = "an engineer's word that the structure carries {found}" },
  },
  mend = "Have an engineer look at the framing, or choose a lighter covering.",
  caution = "A roof too heavy for its rafters comes down without warning.",
}

demand "papers.double_deck" {
  title = "Engineer's word on a second deck",
  stage = "permit",
  per = "decks",
  when = {
    on { "papers.double_deck_needs_engineer",
      otherwise = "a second layer of deck calls for no engineer here" },
    is { "decks[].work", "paneled_over", otherwise = "no deck is laid over this one" },
    no { is { "decks[].kind", "spaced_board" },
      otherwise = "panels over spaced boards are the first solid deck" },
  },
  fact = "papers.engineer_report", shown = "an engineer's word on a second layer of deck",
  mend = "Take the old deck off, or have an engineer look at the framing.",
}

demand "papers.asbestos_notice" {
  title = "Notice on asbestos with the permit",
  stage = "permit",
  when = { on { "papers.asbestos_notice_required",
    otherwise = "no notice on asbestos is asked for" } },
  fact = "papers.asbestos_notice", shown = "the notice on asbestos on the permit",
  mend = "Ask the department for the notice, and keep it with the permit.",
  caution = "Asbestos in old roofs is for those certified to take it off.",
}

demand "papers.asbestos" {
  title = "Asbestos test before tear-off",
  stage = "permit",
  when = {
    on { "papers.asbestos_test_required",
      otherwise = "no test for asbestos is asked for with the permit" },
    function(job, figure)
      if job.scope.method ~= "tear-off" and not old_covering_comes_off(job) then
        return false, "nothing comes off"
      end
      -- Where a plane is stripped further than the list says, any layer may be meant.
      local any = planes_covered(job, true)[1]
      for _, layer in ipairs(job.existing.coverings) do
        if (any or layer.removed) and has(figure "papers.asbestos_coverings", layer.kind) then
          return true
        end
      end
      return false, "no layer of a kind that is tested comes off"
    end,
  },
  fact = "papers.asbestos_test", wants = { "free_of_it", "found" },
  shown = "a test of the old roof for asbestos",
  warn = function(job)
    return job.papers.asbestos_test == "found"
      and "Asbestos was found: those licensed for it take the roof off." or nil
  end,
  reads = {
    old_covering_comes_off,
    facts = { "existing.coverings[].kind", "scope.method" },
    figures = { "papers.asbestos_coverings" },
  },
  mend = "Have the old roof tested before anything comes off.",
  caution = "Until it is tested, neither break, saw nor grind old roofing.",
}

local not_exempt = either { no { is { "scope.method", "overlay" } },
  off "papers.waste_overlay_exempt", otherwise = "an overlay is free of it" }

demand "papers.waste_plan" {
  title = "Plan for the debris",
  stage = "permit",
  when = {
    on { "papers.waste_plan_required", otherwise = "no plan for the debris is asked for" },
    not_exempt,
  },
  fact = "papers.waste_plan", shown = "a plan for the debris",
  mend = "Say where the debris goes, and keep the weight tags.",
}

demand "papers.waste_share" {
  title = "Share of the debris that is used again",
  stage = "final",
  when = {
    on { "papers.waste_share_counts", otherwise = "no share of the debris is set" },
    meant { "scope.price_usd", "papers.waste_share_price_from",
      otherwise = "the job costs less than the figure" },
  },
  fact = "papers.waste_reused_percent", meets = "papers.waste_share_least",
  mend = "Send more of it to a yard that sorts, and keep the weight tags.",
}

demand "papers.underlayment_stated" {
  title = "Underlayment named on the form",
  stage = "permit",
  when = {
    on { "papers.underlayment_stated_required",
      otherwise = "the form need not name the underlayment" },
    meant { "house.year_built", "papers.underlayment_stated_built_most",
      otherwise = "the house is newer than those whose form names it" },
  },
  fact = "papers.underlayment_stated", meets = "papers.underlayments_stated",
  mend = "Name on the form one that the place takes, and lay it.",
}

demand "papers.waste_deposit" {
  title = "Deposit for the debris",
  stage = "permit",
  when = {
    on { "papers.waste_deposit_counts", otherwise = "no deposit is asked for" },
    not_exempt,
  },
  fact = "papers.waste_deposit_usd", meets = "papers.waste_deposit_least",
  mend = "Pay the deposit; it comes back with the weight tags.",
}

demand "papers.site_measures" {
  title = "Chutes, fences, scaffolds and bin described",
  stage = "permit",
  when = { on { "papers.site_measures_required",
    otherwise = "no description of the site is asked for" } },
  fact = "papers.site_measures", shown = "a description of chutes, fences, scaffolds and the bin",
  mend = "Describe how debris comes down and how people are kept clear.",
}

-- Affidavit -------------------------------------------------------------------------------

local seen_by_inspector = reads({
  facts = { "inspection.deck.proof", "inspection.dry_in.proof" },
  facts_of_some_places = { "inspection.pre.proof", "inspection.nailing.proof",
    "inspection.mid_roof.proof", "inspection.final.proof" },
  figures = { "papers.affidavit_visits" },
}, function(job, figure)
  for _, visit in ipairs(figure "papers.affidavit_visits") do
    if job.inspection[visit].proof ~= "visit" then return false end
  end
  return true
end)

-- Some places want it always, some for older houses, some only for what no
-- inspector saw.
local affidavit_narrowed = reads({
  seen_by_inspector,
  facts = { "house.year_built" },
  figures = { "papers.affidavit_built_most", "papers.affidavit_by_age",
    "papers.affidavit_unseen_only" },
}, function(job, figure)
  if figure "papers.affidavit_by_age"
    and job.house.year_built > figure "papers.affidavit_built_most" then
    return false, "the house is newer than those that need an affidavit"
  end
  if figure "papers.affidavit_unseen_only" and seen_by_inspector(job, figure) then
    return false, "an inspector sees the deck and the dry-in while they are open"
  end
  return true
end)

local affidavit_due = {
  on { "papers.affidavit_required", otherwise = "no affidavit is asked for" },
  affidavit_narrowed,
}

demand "papers.affidavit" {
  title = "Signed affidavit on hidden work",
  stage = "final",
  when = affidavit_due,
  fact = "papers.affidavit.covers", meets = "papers.affidavit_covers",
  shown = "a signed affidavit on the hidden work",
  mend = "Have the license holder sign for the work that nobody can see any more.",
}

demand "papers.affidavit_signer" {
  title = "Who signs the affidavit",
  stage = "final",
  when = affidavit_due,
  fact = "papers.affidavit.signed_by", meets = "papers.affidavit_signers",
  mend = "Have it signed by one whose word the place takes.",
}

demand "papers.affidavit_notarized" {
  title = "Affidavit notarized",
  stage = "final",
  when = {
    on { "papers.affidavit_notarized_required", otherwise = "the affidavit need not be notarized" },
    affidavit_due,
  },
  fact = "papers.affidavit.notarized", shown = "a notarized affidavit",
  mend = "Have it signed again before a notary.",
}

demand "papers.affidavit_on_site" {
  title = "Affidavit on the site",
  stage = "final",
  when = {
    on { "papers.affidavit_on_site_required",
      otherwise = "the affidavit need not be on the site" },
    affidavit_due,
  },
  fact = "papers.affidavit.on_site", shown = "the affidavit on the site at the final",
  mend = "Post the affidavit with the permit card.",
}

demand "papers.affidavit_filed" {
  title = "Affidavit on file before the final",
  stage = "final",
  when = {
    on { "papers.affidavit_filed_required",
      otherwise = "the affidavit need not be filed beforehand" },
    affidavit_due,
  },
  fact = "papers.affidavit.filed", shown = "the affidavit on file before the final",
  mend = "File it before calling for the final.",
}

-- Photographs --------------------------------------------------------------------------------
-- Asked for in every case, or only where they stand in for a visit.

local photos_due = reads({
  facts = { "inspection.deck.proof", "inspection.dry_in.proof", "inspection.final.proof" },
  figures = { "papers.photos_always" },
}, function(figure, job, visit)
  if figure "papers.photos_always" then return true end
  if job.inspection[visit].proof == "photos" then return true end
  return false, "photographs are asked for only where they stand in for a visit"
end)

-- What the house has not cannot be photographed.
local OF = { chimney_saddles = "chimneys", valleys = "valleys" }

local there = reads({
  facts = { "roof.chimneys" }, facts_of_some_places = { "roof.valleys" },
}, function(job, wanted)
  local left = {}
  for _, one in ipairs(wanted) do
    if not OF[one] or #job.roof[OF[one]] > 0 then table.insert(left, one) end
  end
  return left
end)

local function photo_rule(id, visit, stage, title, mend)
  local set = "papers.photos_" .. visit
  rule(id) {
    title = title,
    stage = stage,
    reads = { photos_due, there, facts = { "papers.photos." .. visit }, figures = { set } },
    applies = function(job, figure)
      if #figure(set) == 0 then return false, "the place names no photographs of this" end
      return photos_due(figure, job, visit)
    end,
    judge = function(job, figure)
      return has_all(job.papers.photos[visit], there(job, figure(set)), "photographs")
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
local any_photos_due = reads({
  photos_due,
  figures = { "papers.photos_deck", "papers.photos_dry_in", "papers.photos_final" },
}, function(job, figure)
  for _, visit in ipairs { "deck", "dry_in", "final" } do
    if #figure("papers.photos_" .. visit) > 0 and photos_due(figure, job, visit) then
      return true
    end
  end
  return false
end)

demand "papers.photos_tied" {
  title = "Photographs tied to the job",
  stage = "final",
  when = {
    on { "papers.photos_tied_required",
      otherwise = "photographs need not show the permit number or address" },
    all { any_photos_due, otherwise = "no photographs are asked for" },
  },
  fact = "papers.photos.tied_to_job",
  shown = "the permit number or address in or with every photograph",
  mend = "Chalk the permit number on the deck, or put it in the subject line.",
}

demand "papers.photos_clear" {
  title = "Photographs that can be enlarged",
  stage = "final",
  when = {
    on { "papers.photos_clear_required",
      otherwise = "nothing is said about the sharpness of photographs" },
    all { any_photos_due, otherwise = "no photographs are asked for" },
  },
  fact = "papers.photos.clear",
  shown = "photographs that stay sharp when enlarged, as plain files",
  mend = "Send them again, sharp and as plain files.",
}

-- On the site ----------------------------------------------------------------------------------

demand "papers.on_site_deck" {
  title = "Papers on the site at the deck visit",
  stage = "deck",
  when = { asks { "papers.on_site_deck",
    otherwise = "nothing in particular is asked for on the site at the deck visit" } },
  fact = "papers.on_site", meets = "papers.on_site_deck",
  shown = "the papers asked for on the site",
  mend = "Lay the rest out before the visit.",
}

demand "papers.on_site_dry_in" {
  title = "Papers on the site at the dry-in visit",
  stage = "dry-in",
  when = { asks { "papers.on_site_dry_in",
    otherwise = "nothing in particular is asked for on the site at the dry-in visit" } },
  fact = "papers.on_site", meets = "papers.on_site_dry_in",
  shown = "the papers asked for on the site",
  mend = "Lay the rest out before the visit.",
}

demand "papers.on_site_final" {
  title = "Papers on the site at the final",
  stage = "final",
  when = { asks { "papers.on_site_final",
    otherwise = "nothing in particular is asked for on the site at the final" } },
  fact = "papers.on_site", meets = "papers.on_site_final",
  shown = "the papers asked for on the site",
  mend = "Lay the rest out before the visit.",
}

demand "papers.wrapper" {
  title = "Shingle wrapper at the final",
  stage = "final",
  when = {
    on { "papers.wrapper_required", otherwise = "no wrapper is asked for at the final" },
    is { "covering.kind", "asphalt_shingle",
      otherwise = "only asphalt shingles come in wrappers" },
  },
  fact = "papers.wrapper_at_final", shown = "a shingle wrapper on the site at the final",
  mend = "Keep a wrapper dry until the final: the stagger is checked against it.",
}
