-- Papers: the model code asks for documents as the official wants them (R105.3,
-- R106.1) and names next to none for a reroof. So every duty here is off until
-- a place switches it on; a figure beside a switch is one that a handout prints.
-- What a place asks stands on its own pages on papers: until these were read, off is
-- not known. Maker's instructions on the site are shingle.instructions_required.

-- What was read: code texts of states that took the editions of 2015 to 2024 over,
-- not the printed books. In another edition such a figure counts as parallel.
local TEXTS = "state code texts on the editions of 2015 to 2024"
local NO_LINE = TEXTS .. ": no such paper"
local BOOKS = { "IRC 2015", "IRC 2018", "IRC 2021", "IRC 2024" }

local function off(cite)
  return { false, sense = "equals", cite = cite, status = "seen", source = NO_LINE,
    read_in = BOOKS, pages = "papers" }
end

local function none(cite)
  return { {}, sense = "all_of", cite = cite, status = "seen", source = NO_LINE, read_in = BOOKS,
    pages = "papers" }
end

-- The code asks for something of the kind of every permit; what a reroof must bring
-- is the place's own list, so nothing is asked for here.
local function left_to_the_place(cite, what)
  return { {}, sense = "all_of", cite = cite, status = "seen",
    source = TEXTS .. ": " .. what, read_in = BOOKS, pages = "papers" }
end

local function figure_of(value, unit, sense, cite, source)
  return { value, unit = unit, sense = sense, cite = cite, status = "seen", source = source }
end

-- What narrows a duty, off until a place prints it: it must not cast doubt on a
-- duty that a place has switched on.
local function unsaid(cite)
  return { false, sense = "equals", cite = cite, status = "seen",
    source = "local handouts, nearly all of which print no such limit" }
end

figures {
  -- With the application -----------------------------------------------------------
  ["papers.application_states"] = left_to_the_place("R105.3",
    "seven items of any application; the form is the place's"),
  ["papers.handed_in"] = left_to_the_place("R106.1",
    "two sets or more of documents, which may be waived"),
  ["papers.contract_required"] = off "R105.3",
  ["papers.sketch_required"] = off "R106.1",
  ["papers.sketch_copies_least"] = figure_of(1, "count", "at_least", "R106.1",
    "a village ordinance: one sketch; a Florida county wants 2"),
  ["papers.plans_for_pitch_required"] = off "R106.1",
  ["papers.approval_sheets_required"] = off "R106.1",
  ["papers.approval_sheets_least"] = figure_of(2, "count", "at_least", "R106.1",
    "a Florida county's reroof page"),
  ["papers.approval_numbers_required"] = off "R106.1",
  ["papers.maker_specification_required"] = off "R106.1.2",
  ["papers.commencement_required"] = off "R105.3",
  ["papers.commencement_price_limit"] = { 2500, unit = "usd", sense = "over", cite = "R105.3",
    status = "seen", source = "two Florida counties' reroof pages",
    disputed = "a later change of the statute, recalled, makes it 5,000",
    at_figure = "papers.commencement_at_price_counts" },
  ["papers.commencement_at_price_counts"] = { false, sense = "equals", cite = "R105.3",
    status = "seen", source = "the same pages: over 2,500" },
  ["papers.commencement_posted_required"] = off "R105.3",
  ["papers.insurance"] = none "R105.3",
  ["papers.workers_comp_required"] = off "R105.3",
  ["papers.without_employees_exempt"] = unsaid "R105.3",
  ["papers.workers_comp_proofs"] = figure_of({ "certificate" }, nil, "one_of", "R105.3",
    "a New York town's page: compensation papers"),
  ["papers.liability_counts"] = off "R105.3",
  ["papers.liability_least"] = figure_of(1000000, "usd", "at_least", "R105.3",
    "an Illinois village's reroof page"),
  ["papers.lead_firm_required"] = off "R105.3",
  ["papers.lead_built_before"] = figure_of(1978, "year", "under", "40 CFR 745",
    "EPA renovation rule pages; two local permit forms"),
  ["papers.association_letter_required"] = off "R105.3",
  ["papers.association_notice_required"] = off "R105.3",
  ["papers.association_notice_days_least"] = figure_of(2, "days", "at_least", "R105.3",
    "a Kansas city's page: 2 business days"),
  ["papers.planning_required"] = unsaid "R105.3",
  ["papers.planning_on_change"] = off "R105.3",
  ["papers.historic_required"] = off "R105.3",
  ["papers.engineer_counts"] = off "R106.1",
  ["papers.engineer_weight_limit"] = figure_of(600, "lb_per_square", "over", "R106.1",
    "a Colorado county's reroof page: over 600 lb per 100 sq ft"),
  ["papers.double_deck_needs_engineer"] = off "R106.1",
  ["papers.asbestos_notice_required"] = off "R105.3",
  ["papers.asbestos_test_required"] = off "R105.3",
  ["papers.asbestos_coverings"] = figure_of({ "built_up", "roll_roofing", "asphalt_shingle",
    "asbestos_cement" }, nil, "among", "40 CFR 61 subpart M",
    "a Washington city's page; Code of Federal Regulations, appendix A"),
  ["papers.waste_plan_required"] = off "R105.3",
  ["papers.waste_overlay_exempt"] = unsaid "R105.3",
  ["papers.waste_deposit_counts"] = off "R105.3",
  ["papers.waste_deposit_least"] = figure_of(500, "usd", "at_least", "R105.3",
    "a California city's reroof page"),
  ["papers.site_measures_required"] = off "R105.3",

  -- Affidavit -------------------------------------------------------------------------
  ["papers.affidavit_required"] = off "R109.1.5",
  ["papers.affidavit_by_age"] = unsaid "R109.1.5",
  ["papers.affidavit_built_most"] = { 2002, unit = "year", sense = "at_most", cite = "R109.1.5",
    status = "seen", source = "a Florida county's page: house of 2002 or older",
    disputed = "the state's cut-off is 1 March 2002" },
  ["papers.affidavit_unseen_only"] = unsaid "R109.1.5",
  ["papers.affidavit_covers"] = figure_of({ "deck_nailing" }, nil, "all_of", "R109.1.5",
    "five Florida handouts: the nailing of the deck"),
  ["papers.affidavit_signers"] = figure_of({ "license_holder" }, nil, "one_of", "R109.1.5",
    "Florida handouts: the contractor who holds the license"),
  ["papers.affidavit_notarized_required"] = off "R109.1.5",
  ["papers.affidavit_on_site_required"] = off "R109.1.5",
  ["papers.affidavit_filed_required"] = off "R109.1.5",

  -- Photographs -------------------------------------------------------------------------
  ["papers.photos_always"] = unsaid "R109.1.5",
  ["papers.photos_deck"] = none "R109.1.5",
  ["papers.photos_dry_in"] = none "R109.1.5",
  ["papers.photos_final"] = none "R109.1.6",
  ["papers.photos_tied_required"] = off "R109.1.5",
  ["papers.photos_clear_required"] = off "R109.1.5",

  -- On the site ---------------------------------------------------------------------------
  ["papers.on_site_deck"] = left_to_the_place("R106.3.1",
    "a reviewed set on the site, where there is one"),
  ["papers.on_site_dry_in"] = left_to_the_place("R106.3.1",
    "a reviewed set on the site, where there is one"),
  ["papers.on_site_final"] = left_to_the_place("R106.3.1",
    "a reviewed set on the site, where there is one"),
  ["papers.wrapper_required"] = off "R109.1.6",
}
