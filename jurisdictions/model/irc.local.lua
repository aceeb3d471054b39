-- What single cities and counties print beside the model code, read on their
-- own pages: all of it off here, and switched on in one line by a place. A
-- figure beside a switch is the one that a page prints.

-- What was read: code texts of states that took the editions of 2015 to 2024 over,
-- not the printed books. In another edition such a figure counts as parallel.
local TEXTS = "state code texts on the editions of 2015 to 2024"
local NO_LINE = TEXTS .. ": no such line"
local BOOKS = { "IRC 2015", "IRC 2018", "IRC 2021", "IRC 2024" }

local function off(cite)
  return { false, sense = "equals", cite = cite, status = "seen", source = NO_LINE,
    read_in = BOOKS }
end

-- The code has such a line, for every building or every permit; whether it is looked at
-- in a reroof is the place's to say.
local function by_choice(cite, what)
  return { false, sense = "equals", cite = cite, status = "seen",
    source = TEXTS .. ": " .. what, read_in = BOOKS }
end

-- What narrows or loosens a duty, off until a place prints it: it must not cast
-- doubt on a duty that a place has switched on.
local function unsaid(cite)
  return { false, sense = "equals", cite = cite, status = "seen",
    source = "local pages, nearly all of which print no such thing" }
end

local function figure_of(value, unit, sense, cite, source)
  return { value, unit = unit, sense = sense, cite = cite, status = "seen", source = source }
end

-- Which of a place's own pages would tell it: until these were read, off is not known.
local function told_by(pages, figure)
  figure.pages = pages
  return figure
end

local ANY_CLASS = { "A", "B", "C", "none" }

-- A limit, and the figure that says whether a job exactly at it counts.
local function at_said_by(at, limit)
  limit.at_figure = at
  return limit
end

figures {
  -- Shingles: wind and hail classes by name ------------------------------------
  ["shingle.wind_label_required"] = by_choice("R905.2.4.1",
    "every wrapper bears its class; off until a place names one"),
  ["shingle.wind_labels_D7158"] = figure_of({ "G", "H" }, nil, "one_of", "R905.2.4.1",
    "a Colorado city's page"),
  ["shingle.wind_labels_D3161"] = figure_of({ "F" }, nil, "one_of", "R905.2.4.1",
    "two Colorado cities' pages"),
  ["shingle.hail_label_required"] = off "R905.2",
  ["shingle.hail_labels"] = figure_of({ "4" }, nil, "one_of", "R905.2",
    "a Colorado city's page: class 4 of UL 2218"),
  ["shingle.hail_proofs"] = figure_of({ "wrapper", "papers" }, nil, "one_of", "R905.2",
    "the same page"),
  ["shingle.hail_early_exempt"] = unsaid "R905.2",
  ["shingle.hail_early_most"] = { 20190731, unit = "date", sense = "at_most", cite = "R905.2",
    status = "memory", source = "read second-hand in a notice to that city's people" },

  ["shingle.weight_counts"] = off "R905.2",
  ["shingle.weight_least"] = { 240, unit = "lb_per_square", sense = "at_least", cite = "R905.2",
    status = "practice", source = "no page read sets it: what common strip shingles weigh" },

  -- Layers -----------------------------------------------------------------------
  ["layers.overlay_by_listing"] = unsaid "R908.3",
  ["layers.listing_over_classes"] = figure_of({ "A", "B" }, nil, "one_of", "R908.3",
    "a California city's ordinance: class A listed over old A or B"),
  ["layers.flat_differs"] = unsaid "R908.3.1.1",
  ["layers.flat_under"] = { 2, unit = "rise_in_12", sense = "under", cite = "R908.3.1.1",
    status = "practice", source = "what is usually called flat: too flat for shingles" },
  ["layers.most_flat"] = figure_of(3, "layers", "at_most", "R908.3.1.1",
    "an Illinois village's ordinance: two old coverings may stay on flat roofs"),

  -- Fire class ---------------------------------------------------------------------
  ["fire.historic_exceptions"] = unsaid "R902.1",
  ["fire.class_by_share"] = unsaid "R902.1",
  ["fire.class_share_over"] = at_said_by("fire.class_at_named_share",
    figure_of(50, "percent", "over", "R902.1",
    "a California county's bulletin: more than half")),
  ["fire.class_at_named_share"] = unsaid "R902.1",
  ["fire.class_by_addition"] = unsaid "R902.1",
  ["fire.class_addition_over"] = figure_of(640, "sqft", "over", "R902.1",
    "the same bulletin: more new floor than that on any one story"),
  ["fire.classes_large"] = figure_of({ "A" }, nil, "one_of", "R902.1", "the same bulletin"),
  ["fire.match_old_by_zone"] = unsaid "R902.1",
  ["fire.match_old_barred_zones"] = figure_of({ "very_high" }, nil, "among", "R902.1",
    "a California city's ordinance: outside the very high zone"),
  ["fire.match_old_adds_up"] = unsaid "R902.1",
  ["fire.match_old_classes"] = figure_of(ANY_CLASS, nil, "one_of", "R902.1",
    "a California city's draft: like the old roof"),
  ["fire.ban_one_family_only"] = unsaid "R902.1",
  ["fire.ban_by_local_zone"] = unsaid "R902.1",
  ["fire.ban_local_zones"] = figure_of({ "red" }, nil, "none_of", "R902.1",
    "a Colorado county's page"),
  ["fire.class_by_material"] = off "R902.1",
  ["fire.classes_of.asphalt_shingle"] = figure_of({ "A" }, nil, "one_of", "R902.1",
    "a Kansas city's list"),
  ["fire.classes_of.metal_panel"] = figure_of({ "A", "B" }, nil, "one_of", "R902.1",
    "a Kansas city's list"),
  ["fire.classes_of.metal_shingle"] = figure_of({ "A", "B" }, nil, "one_of", "R902.1",
    "a Kansas city's list"),
  ["fire.classes_of.wood_shingle"] = figure_of({ "A", "B", "C" }, nil, "one_of", "R902.1",
    "a Colorado county's page"),
  ["fire.classes_of.wood_shake"] = figure_of({ "A", "B", "C" }, nil, "one_of", "R902.1",
    "a Colorado county's page"),
  ["fire.classes_of.slate"] = figure_of(ANY_CLASS, nil, "one_of", "R902.1",
    "those pages: not named"),
  ["fire.classes_of.clay_tile"] = figure_of(ANY_CLASS, nil, "one_of", "R902.1",
    "those pages: not named"),
  ["fire.classes_of.concrete_tile"] = figure_of(ANY_CLASS, nil, "one_of", "R902.1",
    "those pages: not named"),
  ["fire.classes_of.roll_roofing"] = figure_of(ANY_CLASS, nil, "one_of", "R902.1",
    "those pages: not named"),
  ["fire.classes_of.coating"] = figure_of(ANY_CLASS, nil, "one_of", "R902.1",
    "those pages: not named"),
  ["fire.classes_of.built_up"] = figure_of(ANY_CLASS, nil, "one_of", "R902.1",
    "those pages: not named"),
  ["fire.classes_of.coal_tar_built_up"] = figure_of(ANY_CLASS, nil, "one_of", "R902.1",
    "those pages: not named"),
  ["fire.classes_of.modified_bitumen"] = figure_of(ANY_CLASS, nil, "one_of", "R902.1",
    "those pages: not named"),
  ["fire.classes_of.thermoset_membrane"] = figure_of(ANY_CLASS, nil, "one_of", "R902.1",
    "those pages: not named"),
  ["fire.classes_of.thermoplastic_membrane"] = figure_of(ANY_CLASS, nil, "one_of", "R902.1",
    "those pages: not named"),
  ["fire.classes_of.spray_foam"] = figure_of(ANY_CLASS, nil, "one_of", "R902.1",
    "those pages: not named"),

  -- Deck, ice barrier, drip edge, wind ------------------------------------------------
  ["deck.solid_counts_for_all"] = unsaid "R905",
  ["deck.thickness_counts"] = off "R803.2",
  ["deck.thickness_least"] = figure_of(0.5, "in", "at_least", "R803.2",
    "an Illinois village's page: 1/2 in"),
  ["deck.thickness_kinds"] = figure_of({ "panel", "board", "spaced_board" }, nil, "among",
    "R803.2", "the same page names no kind"),
  ["deck.thickness_new_only"] = unsaid "R803.2",
  ["deck.thickness_over_only"] = unsaid "R803.2",
  ["deck.shear_listing_allowed"] = unsaid "R803.2",
  ["deck.panel_edges_hidden_required"] = off "R803.2",
  ["deck.panel_joints_count"] = off "R803.2.3",
  ["ice_barrier.one_family_exempt"] = unsaid "R905.1.2",
  ["ice_barrier.strip_required"] = off "R905.1.2",
  ["ice_barrier.strip_allowed"] = unsaid "R905.1.2",
  ["ice_barrier.strip_least"] = { 36, unit = "in", sense = "at_least", cite = "R905.1.2",
    status = "practice", source = "common practice: one course, as wide as the roll" },
  ["ice_barrier.rakes_required"] = off "R905.1.2",
  ["ice_barrier.valleys_required"] = off "R905.1.2",
  ["drip_edge.variance_allowed"] = unsaid "R104.10",
  ["wind.vult_counts"] = off "R301.2.1",
  ["wind.vult_least"] = { 115, unit = "mph", sense = "at_least", cite = "R301.2.1",
    status = "memory", source = "recalled: the map's speed for most of the country inland" },
  ["wind.local_zones_count"] = off "R301.2.1",
  ["wind.local_speed_on_vasd"] = unsaid "R301.2.1",

  -- Permit --------------------------------------------------------------------------
  ["permit.part_as_new_counts"] = off "R908.1",
  ["permit.part_as_new_limit"] = at_said_by("permit.part_as_new_at_counts",
    figure_of(26, "percent", "over", "R908.1",
    "a California city's ordinance: 26 percent or more in 12 months")),
  ["permit.part_as_new_at_counts"] = { true, sense = "equals", cite = "R908.1", status = "seen",
    source = "the same ordinance: or more" },
  ["permit.part_as_new_months"] = figure_of(12, "months", "at_least", "R908.1",
    "the same ordinance"),
  ["permit.small_counts"] = off "R105.2.2",
  ["permit.small_under"] = figure_of(500, "sqft", "under", "R105.2.2",
    "an old Florida city handout: repairs under 5 squares"),
  ["permit.right_of_way_clear_required"] = off "R105.3",
  ["permit.bin_deposit_required"] = off "R105.3",
  ["permit.open_excuses"] = { {}, sense = "one_of", cite = "R105.5", status = "seen",
    source = "local pages, which print different ones or none" },
  ["permit.certificate_required"] = off "R110.1",

  -- Papers ---------------------------------------------------------------------------
  ["papers.handed_in_overlay"] = { {}, sense = "all_of", cite = "R106.1", status = "seen",
    source = NO_LINE, read_in = BOOKS, pages = "papers" },
  ["papers.value_counts"] = told_by("papers", off "R106.1"),
  ["papers.value_from"] = figure_of(300000, "usd", "from", "R106.1",
    "a checklist of a Florida city"),
  ["papers.value_papers"] = figure_of({ "appraisal" }, nil, "all_of", "R106.1",
    "the same checklist: appraisal sheet"),
  ["papers.value_papers_final"] = figure_of({ "tie_affidavit" }, nil, "all_of", "R106.1",
    "the same checklist: affidavits on the ties, due before the final"),
  ["papers.packets_count"] = told_by("papers", by_choice("R106.1",
    "two sets or more, which may be waived; off until a place counts them")),
  ["papers.packets_least"] = figure_of(2, "count", "at_least", "R106.1", "the same checklist"),
  ["papers.approval_marks_count"] = told_by("papers", off "R106.1"),
  ["papers.approval_marks"] = figure_of({ "circled" }, nil, "one_of", "R106.1",
    "the same checklist: circled, not highlighted"),
  ["papers.affidavit_visits"] = figure_of({ "deck", "dry_in" }, nil, "one_of", "R109.1.5",
    "Florida handouts: what no inspector saw of deck and dry-in"),
  ["papers.underlayment_stated_required"] = told_by("papers", off "R106.1"),
  ["papers.underlayment_stated_built_most"] = { 2002, unit = "year", sense = "at_most",
    cite = "R106.1", status = "seen", source = "a Florida county's page: 2002 or prior",
    disputed = "the state's cut-off is 1 March 2002" },
  ["papers.underlayments_stated"] = figure_of({ "no_30_felt", "self_adhered" }, nil, "one_of",
    "R106.1", "the same page"),
  ["papers.waste_share_counts"] = told_by("papers", off "R105.3"),
  ["papers.waste_share_price_from"] = figure_of(25000, "usd", "from", "R105.3",
    "a California city's ordinance: from 25,000"),
  ["papers.waste_share_least"] = figure_of(80, "percent", "at_least", "R105.3",
    "the same ordinance; the state asks for 65"),

  ["permit.late_fee_counts"] = by_choice("R108.6",
    "a further fee for work before the permit; its amount is the place's"),

  -- Inspection -------------------------------------------------------------------------
  ["inspection.ready_counts"] = told_by("visits", off "R109.3"),
  ["inspection.as_permitted_counts"] = told_by("visits", by_choice("R106.4",
    "work as the permit shows it; off until a place looks at it")),
  -- No reroof handout asks for it either way: a place that does says which.
  ["inspection.deck_loaded_counts"] = told_by("visits", off "R109.1.5"),
  ["inspection.deck_loaded_wanted"] = { true, sense = "equals",
    cite = "R109.1.5 says nothing of it", status = "practice",
    source = "a city's list for new houses: loaded by the frame inspection" },
  -- Days of the year as month and day; the season runs over the new year.
  ["inspection.winter_from"] = figure_of({ "10-15" }, nil, "one_of", "R109.1.5",
    "a California city's page: from 15 October"),
  ["inspection.winter_to"] = figure_of({ "04-15" }, nil, "one_of", "R109.1.5",
    "the same page: to 15 April"),
  ["inspection.winter_covering_most"] = figure_of(50, "sqft", "at_most", "R109.1.5",
    "the same page: half a square of the covering"),
  ["inspection.winter_felt_peeled_least"] = figure_of(3, "count", "at_least", "R109.1.5",
    "the same page: felt peeled in 3 or 4 places"),
  ["inspection.mid_roof_battens_count"] = unsaid "R109.1.5",
  ["inspection.deputy_required"] = told_by("visits", off "R109.1.5"),
  ["inspection.deputy_under"] = figure_of(0.25, "rise_in_12", "under", "R109.1.5",
    "an older page of a California city: under 1/4 in to the foot"),
}
