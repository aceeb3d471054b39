-- Papers: the model code asks for documents as the official wants them (R105.3, R106.1) and
-- names next to none for a reroof. So every duty here is off until a place switches it on; a
-- figure beside a switch is one that a handout prints. What a place asks stands on its own
-- pages on papers: until these were read, off is not known. Maker's instructions on the site
-- are shingle.instructions_required.

-- What was read: code texts of states that took the editions over, not the printed books. In
-- an edition that was not read such a figure counts as parallel.
local TEXTS = "state code texts on the editions of 2015 to 2024"
local NO_LINE = TEXTS .. ": no such line"
local NO_PAPER = TEXTS .. ": no such paper"
local NO_LIMIT = "local handouts, nearly all of which print no such limit"
local BOOKS = { "IRC 2015", "IRC 2018", "IRC 2021", "IRC 2024" }

-- Papers ---------------------------------------------------------------------------
figure "papers.handed_in_overlay" { {}, "R106.1", sense = "all_of", seen = NO_LINE,
  read_in = BOOKS, pages = "papers" }

figure "papers.value_counts" { false, "R106.1", sense = "equals", seen = NO_LINE, read_in = BOOKS,
  pages = "papers", stricter = true }
figure "papers.value_from" { 300000, "R106.1", unit = "usd", sense = "from",
  seen = "a checklist of a Florida city", behind = "papers.value_counts" }
figure "papers.value_papers" { { "appraisal" }, "R106.1", sense = "all_of",
  seen = "the same checklist: appraisal sheet", behind = "papers.value_counts" }

figure "papers.value_papers_final" { { "tie_affidavit" }, "R106.1", sense = "all_of",
  seen = "the same checklist: affidavits on the ties, due before the final",
  behind = "papers.value_counts" }

figure "papers.packets_count" { false, "R106.1", sense = "equals",
  seen = "state code texts on the editions of 2015 to 2024: two sets or more, which may be "
    .. "waived; off until a place counts them", read_in = BOOKS, pages = "papers",
  stricter = true }

figure "papers.packets_least" { 2, "R106.1", unit = "count", sense = "at_least",
  seen = "the same checklist", behind = "papers.packets_count" }
figure "papers.approval_marks_count" { false, "R106.1", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, pages = "papers", stricter = true }
figure "papers.approval_marks" { { "circled" }, "R106.1", sense = "one_of",
  seen = "the same checklist: circled, not highlighted", behind = "papers.approval_marks_count" }

figure "papers.affidavit_visits" { { "deck", "dry_in" }, "R109.1.5", sense = "one_of",
  seen = "Florida handouts: what no inspector saw of deck and dry-in",
  behind = "papers.affidavit_required" }

figure "papers.underlayment_stated_required" { false, "R106.1", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, pages = "papers", stricter = true }

figure "papers.underlayment_stated_built_most" { 2002, "R106.1", unit = "year", sense = "at_most",
  seen = "a Florida county's page: 2002 or prior",
  disputed = "the state's cut-off is 1 March 2002",
  behind = "papers.underlayment_stated_required" }

figure "papers.underlayments_stated" { { "no_30_felt", "self_adhered" }, "R106.1",
  sense = "one_of", seen = "the same page", behind = "papers.underlayment_stated_required" }
figure "papers.waste_share_counts" { false, "R105.3", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, pages = "papers", stricter = true }
figure "papers.waste_share_price_from" { 25000, "R105.3", unit = "usd", sense = "from",
  seen = "a California city's ordinance: from 25,000", behind = "papers.waste_share_counts" }
figure "papers.waste_share_least" { 80, "R105.3", unit = "percent", sense = "at_least",
  seen = "the same ordinance; the state asks for 65", behind = "papers.waste_share_counts" }

-- With the application -----------------------------------------------------------
figure "papers.application_states" { {}, "R105.3", sense = "all_of",
  seen = "state code texts on the editions of 2015 to 2024: seven items of any application; "
    .. "the form is the place's", read_in = BOOKS, pages = "papers" }

figure "papers.handed_in" { {}, "R106.1", sense = "all_of",
  seen = "state code texts on the editions of 2015 to 2024: two sets or more of documents, "
    .. "which may be waived", read_in = BOOKS, pages = "papers" }

figure "papers.contract_required" { false, "R105.3", sense = "equals", seen = NO_PAPER,
  read_in = BOOKS, pages = "papers", stricter = true }
figure "papers.sketch_required" { false, "R106.1", sense = "equals", seen = NO_PAPER,
  read_in = BOOKS, pages = "papers", stricter = true }

figure "papers.sketch_copies_least" { 1, "R106.1", unit = "count", sense = "at_least",
  seen = "a village ordinance: one sketch; a Florida county wants 2",
  behind = "papers.sketch_required" }

figure "papers.plans_for_pitch_required" { false, "R106.1", sense = "equals", seen = NO_PAPER,
  read_in = BOOKS, pages = "papers", stricter = true }
figure "papers.approval_sheets_required" { false, "R106.1", sense = "equals", seen = NO_PAPER,
  read_in = BOOKS, pages = "papers", stricter = true }
figure "papers.approval_sheets_least" { 2, "R106.1", unit = "count", sense = "at_least",
  seen = "a Florida county's reroof page", behind = "papers.approval_sheets_required" }
figure "papers.approval_numbers_required" { false, "R106.1", sense = "equals", seen = NO_PAPER,
  read_in = BOOKS, pages = "papers", stricter = true }
figure "papers.maker_specification_required" { false, "R106.1.2", sense = "equals",
  seen = NO_PAPER, read_in = BOOKS, pages = "papers", stricter = true }
figure "papers.commencement_required" { false, "R105.3", sense = "equals", seen = NO_PAPER,
  read_in = BOOKS, pages = "papers", stricter = true }

figure "papers.commencement_price_limit" { 2500, "R105.3", unit = "usd", sense = "over",
  seen = "two Florida counties' reroof pages",
  disputed = "a later change of the statute, recalled, makes it 5,000",
  at_figure = "papers.commencement_at_price_counts", behind = "papers.commencement_required" }

figure "papers.commencement_at_price_counts" { false, "R105.3", sense = "equals",
  seen = "the same pages: over 2,500", stricter = true, behind = "papers.commencement_required" }
figure "papers.commencement_posted_required" { false, "R105.3", sense = "equals", seen = NO_PAPER,
  read_in = BOOKS, pages = "papers", stricter = true, behind = "papers.commencement_required" }
figure "papers.insurance" { {}, "R105.3", sense = "all_of", seen = NO_PAPER, read_in = BOOKS,
  pages = "papers" }
figure "papers.workers_comp_required" { false, "R105.3", sense = "equals", seen = NO_PAPER,
  read_in = BOOKS, pages = "papers", stricter = true }
figure "papers.without_employees_exempt" { false, "R105.3", sense = "equals", seen = NO_LIMIT,
  stricter = false }
figure "papers.workers_comp_proofs" { { "certificate" }, "R105.3", sense = "one_of",
  seen = "a New York town's page: compensation papers", behind = "papers.workers_comp_required" }
figure "papers.liability_counts" { false, "R105.3", sense = "equals", seen = NO_PAPER,
  read_in = BOOKS, pages = "papers", stricter = true }
figure "papers.liability_least" { 1000000, "R105.3", unit = "usd", sense = "at_least",
  seen = "an Illinois village's reroof page", behind = "papers.liability_counts" }
figure "papers.lead_firm_required" { false, "R105.3", sense = "equals", seen = NO_PAPER,
  read_in = BOOKS, pages = "papers", stricter = true }
figure "papers.lead_built_before" { 1978, "40 CFR 745", unit = "year", sense = "under",
  seen = "EPA renovation rule pages; two local permit forms" }
figure "papers.association_letter_required" { false, "R105.3", sense = "equals", seen = NO_PAPER,
  read_in = BOOKS, pages = "papers", stricter = true }
figure "papers.association_notice_required" { false, "R105.3", sense = "equals", seen = NO_PAPER,
  read_in = BOOKS, pages = "papers", stricter = true }
figure "papers.association_notice_days_least" { 2, "R105.3", unit = "days", sense = "at_least",
  seen = "a Kansas city's page: 2 business days", behind = "papers.association_notice_required" }
figure "papers.planning_required" { false, "R105.3", sense = "equals", seen = NO_LIMIT,
  stricter = true }
figure "papers.planning_on_change" { false, "R105.3", sense = "equals", seen = NO_PAPER,
  read_in = BOOKS, pages = "papers", stricter = true }
figure "papers.historic_required" { false, "R105.3", sense = "equals", seen = NO_PAPER,
  read_in = BOOKS, pages = "papers", stricter = true }
figure "papers.engineer_counts" { false, "R106.1", sense = "equals", seen = NO_PAPER,
  read_in = BOOKS, pages = "papers", stricter = true }

figure "papers.engineer_weight_limit" { 600, "R106.1", unit = "lb_per_square", sense = "over",
  seen = "a Colorado county's reroof page: over 600 lb per 100 sq ft",
  behind = "papers.engineer_counts" }

figure "papers.double_deck_needs_engineer" { false, "R106.1", sense = "equals", seen = NO_PAPER,
  read_in = BOOKS, pages = "papers", stricter = true }
figure "papers.asbestos_notice_required" { false, "R105.3", sense = "equals", seen = NO_PAPER,
  read_in = BOOKS, pages = "papers", stricter = true }
figure "papers.asbestos_test_required" { false, "R105.3", sense = "equals", seen = NO_PAPER,
  read_in = BOOKS, pages = "papers", stricter = true }

figure "papers.asbestos_coverings" {
  { "built_up", "roll_roofing", "asphalt_shingle", "asbestos_cement" }, "40 CFR 61 subpart M",
  sense = "among", seen = "a Washington city's page; Code of Federal Regulations, appendix A" }

figure "papers.waste_plan_required" { false, "R105.3", sense = "equals", seen = NO_PAPER,
  read_in = BOOKS, pages = "papers", stricter = true }
figure "papers.waste_overlay_exempt" { false, "R105.3", sense = "equals", seen = NO_LIMIT,
  stricter = false }
figure "papers.waste_deposit_counts" { false, "R105.3", sense = "equals", seen = NO_PAPER,
  read_in = BOOKS, pages = "papers", stricter = true }
figure "papers.waste_deposit_least" { 500, "R105.3", unit = "usd", sense = "at_least",
  seen = "a California city's reroof page", behind = "papers.waste_deposit_counts" }
figure "papers.site_measures_required" { false, "R105.3", sense = "equals", seen = NO_PAPER,
  read_in = BOOKS, pages = "papers", stricter = true }

-- Affidavit -------------------------------------------------------------------------
figure "papers.affidavit_required" { false, "R109.1.5", sense = "equals", seen = NO_PAPER,
  read_in = BOOKS, pages = "papers", stricter = true }

figure "papers.affidavit_by_age" { false, "R109.1.5", sense = "equals", seen = NO_LIMIT,
  stricter = false, behind = "papers.affidavit_required" }

figure "papers.affidavit_built_most" { 2002, "R109.1.5", unit = "year", sense = "at_most",
  seen = "a Florida county's page: house of 2002 or older",
  disputed = "the state's cut-off is 1 March 2002", behind = "papers.affidavit_required" }

figure "papers.affidavit_unseen_only" { false, "R109.1.5", sense = "equals", seen = NO_LIMIT,
  stricter = false, behind = "papers.affidavit_required" }
figure "papers.affidavit_covers" { { "deck_nailing" }, "R109.1.5", sense = "all_of",
  seen = "five Florida handouts: the nailing of the deck", behind = "papers.affidavit_required" }

figure "papers.affidavit_signers" { { "license_holder" }, "R109.1.5", sense = "one_of",
  seen = "Florida handouts: the contractor who holds the license",
  behind = "papers.affidavit_required" }

figure "papers.affidavit_notarized_required" { false, "R109.1.5", sense = "equals",
  seen = NO_PAPER, read_in = BOOKS, pages = "papers", stricter = true,
  behind = "papers.affidavit_required" }

figure "papers.affidavit_on_site_required" { false, "R109.1.5", sense = "equals", seen = NO_PAPER,
  read_in = BOOKS, pages = "papers", stricter = true, behind = "papers.affidavit_required" }
figure "papers.affidavit_filed_required" { false, "R109.1.5", sense = "equals", seen = NO_PAPER,
  read_in = BOOKS, pages = "papers", stricter = true, behind = "papers.affidavit_required" }

-- Photographs -------------------------------------------------------------------------
figure "papers.photos_always" { false, "R109.1.5", sense = "equals", seen = NO_LIMIT,
  stricter = true }

figure "papers.photos_deck" { {}, "R109.1.5", sense = "all_of", seen = NO_PAPER, read_in = BOOKS,
  pages = "papers" }
figure "papers.photos_dry_in" { {}, "R109.1.5", sense = "all_of", seen = NO_PAPER,
  read_in = BOOKS, pages = "papers" }
figure "papers.photos_final" { {}, "R109.1.6", sense = "all_of", seen = NO_PAPER, read_in = BOOKS,
  pages = "papers" }
figure "papers.photos_tied_required" { false, "R109.1.5", sense = "equals", seen = NO_PAPER,
  read_in = BOOKS, pages = "papers", stricter = true }
figure "papers.photos_clear_required" { false, "R109.1.5", sense = "equals", seen = NO_PAPER,
  read_in = BOOKS, pages = "papers", stricter = true }

-- On the site ---------------------------------------------------------------------------
figure "papers.on_site_deck" { {}, "R106.3.1", sense = "all_of",
  seen = "state code texts on the editions of 2015 to 2024: a reviewed set on the site, where "
    .. "there is one", read_in = BOOKS, pages = "papers" }

figure "papers.on_site_dry_in" { {}, "R106.3.1", sense = "all_of",
  seen = "state code texts on the editions of 2015 to 2024: a reviewed set on the site, where "
    .. "there is one", read_in = BOOKS, pages = "papers" }

figure "papers.on_site_final" { {}, "R106.3.1", sense = "all_of",
  seen = "state code texts on the editions of 2015 to 2024: a reviewed set on the site, where "
    .. "there is one", read_in = BOOKS, pages = "papers" }

figure "papers.wrapper_required" { false, "R109.1.6", sense = "equals", seen = NO_PAPER,
  read_in = BOOKS, pages = "papers", stricter = true }
