-- Cases of rules/papers.lua, under Quillbank County and the town of Stillbend,
-- both invented: the model code asks for none of these papers. The demands are
-- those of real handouts, named beside each.

local QUILLBANK, STILLBEND = "example/quillbank", "example/stillbend"

local function merged(one, more)
  local with = {}
  for place, value in pairs(one) do with[place] = value end
  for place, value in pairs(more or {}) do with[place] = value end
  return with
end

-- A paper that is there or not: shown, not shown, not told, and not asked for.
local function paper(id, place, so)
  so = so or {}
  cases(id) {
    under = QUILLBANK, from = "paperwork",
    { "there", with = so, expect = "pass" },
    { "not there", with = merged(so, { [place] = false }), expect = "fail" },
    { "not told", with = so, without = { place }, expect = "open" },
    { "not asked for by an invented hamlet", under = "example/hollowferry", with = so,
      without = { place }, expect = "not_applicable" },
    { "a place that was not read", under = "model/irc-2021", with = so,
      without = { place }, expect = "open", says = "was not read: its pages on" },
  }
end

local function in_words(word)
  local words = ""
  for i = 1, #word do
    local letter = string.sub(word, i, i)
    words = words .. (letter == "_" and " " or letter)
  end
  return words
end

-- A list: whole, short of each in turn, empty, not told, and not asked for.
local function list(id, place, full, so)
  so = so or {}
  local group = {
    under = QUILLBANK, from = "paperwork",
    { "all of them", with = merged(so, { [place] = full }), expect = "pass" },
    { "an empty list", with = merged(so, { [place] = {} }), expect = "fail" },
    { "not told", with = so, without = { place }, expect = "open" },
    { "not asked for by an invented hamlet", under = "example/hollowferry", with = so,
      without = { place }, expect = "not_applicable" },
    { "a place that was not read", under = "model/irc-2021", with = so,
      without = { place }, expect = "open", says = "was not read: its pages on" },
  }
  for left_out, word in ipairs(full) do
    local rest = {}
    for i, one in ipairs(full) do
      if i ~= left_out then table.insert(rest, one) end
    end
    table.insert(group, { "without " .. in_words(word), with = merged(so, { [place] = rest }),
      expect = "fail", says = in_words(word) })
  end
  cases(id)(group)
end

local OWNER = { ["permit.holder"] = "owner" }

-- With the application ------------------------------------------------------------------

-- Two Colorado places and a Washington city: squares, coverings, layers, deck.
list("papers.application", "papers.application_states",
  { "squares", "price", "old_covering", "new_covering", "old_layers", "layers_removed",
    "deck_replaced" })

list("papers.handed_in", "papers.handed_in", { "cost_proof", "owner_notice" })

-- A Florida county and an Illinois village.
paper("papers.contract", "papers.contract")
cases "papers.contract" {
  under = QUILLBANK, from = "paperwork",
  { "an owner has no contract", with = merged(OWNER, { ["papers.contract"] = false }),
    expect = "not_applicable" },
}

-- A Florida county wants 2 sketches.
cases "papers.sketch" {
  under = QUILLBANK, from = "paperwork",
  { "two", expect = "pass", required = 2, found = 2 },
  { "one", with = { ["papers.sketch_copies"] = 1 }, expect = "fail" },
  { "not told", without = { "papers.sketch_copies" }, expect = "open" },
  { "not asked for by the model code", under = "model/irc-2021", expect = "open" },
}

-- A Texas city: plans where the pitch changes.
paper("papers.plans", "papers.plans", { ["scope.pitch_change"] = true })
cases "papers.plans" {
  under = QUILLBANK, from = "paperwork",
  { "the pitch stays", with = { ["papers.plans"] = false }, expect = "not_applicable" },
}

-- A Florida county: 2 approval sheets.
cases "papers.product_approval" {
  under = QUILLBANK, from = "paperwork",
  { "two", expect = "pass", required = 2, found = 2 },
  { "one", with = { ["papers.approval_sheets"] = 1 }, expect = "fail" },
  { "not told", without = { "papers.approval_sheets" }, expect = "open" },
}

paper("papers.approval_numbers", "papers.approval_numbers")
paper("papers.maker_specification", "papers.maker_specification")

-- Two Florida counties: recorded when the contract is over 2,500.
paper("papers.commencement", "papers.commencement_recorded")
paper("papers.commencement_posted", "papers.commencement_posted")
for _, id in ipairs { "papers.commencement", "papers.commencement_posted" } do
  cases(id) {
    under = QUILLBANK, from = "paperwork",
    { "exactly 2,500 is not over it",
      with = { ["scope.price_usd"] = 2500, ["papers.commencement_recorded"] = false,
        ["papers.commencement_posted"] = false }, expect = "not_applicable" },
    { "exactly 2,500 is inside in the town", under = STILLBEND,
      with = { ["scope.price_usd"] = 2500, ["papers.commencement_recorded"] = false,
        ["papers.commencement_posted"] = false }, expect = "fail" },
    { "a cent more",
      with = { ["scope.price_usd"] = 2500.01, ["papers.commencement_recorded"] = false,
        ["papers.commencement_posted"] = false }, expect = "fail" },
    { "price not told", without = { "scope.price_usd" }, expect = "open" },
  }
end

-- A New York town: workers' compensation; an Illinois village: 1,000,000 liability.
list("papers.insurance", "contractor.insurance", { "workers_comp", "liability" })
cases "papers.liability" {
  under = QUILLBANK, from = "paperwork",
  { "a million", expect = "pass", required = 1000000, found = 1000000 },
  { "a dollar less", with = { ["contractor.liability_usd"] = 999999 }, expect = "fail" },
  { "not told", without = { "contractor.liability_usd" }, expect = "open" },
  { "an owner", with = OWNER, expect = "not_applicable" },
}

-- 40 CFR 745: before 1978.
paper("papers.lead_firm", "contractor.lead_safe_firm")
cases "papers.lead_firm" {
  under = QUILLBANK, from = "paperwork",
  { "built in 1977", with = { ["house.year_built"] = 1977, ["contractor.lead_safe_firm"] = false },
    expect = "fail" },
  { "built in 1978", with = { ["house.year_built"] = 1978, ["contractor.lead_safe_firm"] = false },
    expect = "not_applicable" },
  { "year not told", without = { "house.year_built" }, expect = "open" },
}

-- A Texas town and an Illinois village: a letter; a Kansas city: 2 business days.
paper("papers.association", "papers.association_letter")
cases "papers.association_notice" {
  under = QUILLBANK, from = "paperwork",
  { "two days", expect = "pass", required = 2, found = 2 },
  { "one", with = { ["papers.association_notice_days"] = 1 }, expect = "fail" },
  { "not told", without = { "papers.association_notice_days" }, expect = "open" },
  { "no association", with = { ["site.association"] = false }, expect = "not_applicable" },
  { "nobody knows whether there is one", without = { "site.association" }, expect = "open" },
}

-- Two California cities: planning first, always or when color or design change.
cases "papers.planning" {
  under = QUILLBANK, from = "paperwork",
  { "looks the same", with = { ["papers.planning_consent"] = false }, expect = "not_applicable" },
  { "another color, agreed", with = { ["scope.looks_change"] = true }, expect = "pass" },
  { "another color, nobody asked",
    with = { ["scope.looks_change"] = true, ["papers.planning_consent"] = false },
    expect = "fail" },
  { "another kind, nobody asked",
    with = { ["scope.material_change"] = true, ["papers.planning_consent"] = false },
    expect = "fail" },
  { "change not told", without = { "scope.looks_change" }, expect = "open" },
  { "the town asks always", under = STILLBEND, with = { ["papers.planning_consent"] = false },
    expect = "fail" },
}

-- An Ohio city.
paper("papers.historic", "papers.historic_certificate", { ["site.historic"] = true })

-- A Colorado county: over 600 lb per 100 sq ft needs an engineer.
cases "papers.engineer" {
  under = QUILLBANK, from = "paperwork",
  { "240", with = { ["papers.engineer_report"] = false }, expect = "pass", required = 600,
    found = 240 },
  { "exactly 600",
    with = { ["covering.weight_lb_per_square"] = 600, ["papers.engineer_report"] = false },
    expect = "pass", found = 600 },
  { "a little over 600",
    with = { ["covering.weight_lb_per_square"] = 600.1, ["papers.engineer_report"] = false },
    expect = "fail" },
  { "900, with an engineer", with = { ["covering.weight_lb_per_square"] = 900 },
    expect = "pass" },
  { "900, engineer not told", with = { ["covering.weight_lb_per_square"] = 900 },
    without = { "papers.engineer_report" }, expect = "open" },
  { "weight not told", without = { "covering.weight_lb_per_square" }, expect = "open" },
}

-- A Texas city: one layer of deck, unless engineered.
local OVER = { ["decks[1].work"] = "paneled_over" }
cases "papers.double_deck" {
  under = QUILLBANK, from = "paperwork",
  { "panels over panels, with an engineer", with = OVER, expect = "pass" },
  { "panels over panels, without", with = merged(OVER, { ["papers.engineer_report"] = false }),
    expect = "fail" },
  { "panels over spaced boards",
    with = merged(OVER, { ["decks[1].kind"] = "spaced_board" }), expect = "not_applicable" },
  { "no second deck", expect = "not_applicable" },
  { "engineer not told", with = OVER, without = { "papers.engineer_report" }, expect = "open" },
}

-- A Washington city: a test when asked.
local OLD_BUILT_UP = { ["existing.coverings[1].kind"] = "built_up" }
cases "papers.asbestos" {
  under = QUILLBANK, from = "paperwork",
  { "a built-up roof, tested and free", with = OLD_BUILT_UP, expect = "pass" },
  { "asbestos-cement, not tested",
    with = { ["existing.coverings[1].kind"] = "asbestos_cement",
      ["papers.asbestos_test"] = "none" }, expect = "fail" },
  { "tested and found: the paper is there, and more follows",
    with = merged(OLD_BUILT_UP, { ["papers.asbestos_test"] = "found" }), expect = "warn" },
  { "not tested", with = merged(OLD_BUILT_UP, { ["papers.asbestos_test"] = "none" }),
    expect = "fail" },
  { "shingles are not tested here", with = { ["papers.asbestos_test"] = "none" },
    expect = "not_applicable" },
  { "test not told", with = OLD_BUILT_UP, without = { "papers.asbestos_test" },
    expect = "open" },
  { "old covering not told", without = { "existing.coverings[1].kind" }, expect = "open" },
  { "laid over on the main roof, and off the porch: nobody says that it was not this one",
    with = { ["scope.method"] = "overlay", ["existing.layers_removed"] = 0,
      ["existing.coverings[1].removed"] = false, ["existing.coverings[1].kind"] = "asbestos_cement",
      ["roof.slopes[3].old_layers_removed"] = 1, ["papers.asbestos_test"] = "none" },
    expect = "fail" },
  { "laid over everywhere", with = { ["scope.method"] = "overlay",
      ["existing.layers_removed"] = 0, ["existing.coverings[1].removed"] = false,
      ["existing.coverings[1].kind"] = "asbestos_cement", ["papers.asbestos_test"] = "none" },
    expect = "not_applicable" },
}

-- A California city: plan and deposit of at least 500; overlays are free.
local OVERLAY = { ["scope.method"] = "overlay", ["existing.layers_removed"] = 0,
  ["existing.coverings[1].removed"] = false }
paper("papers.waste_plan", "papers.waste_plan")
cases "papers.waste_plan" {
  under = QUILLBANK, from = "paperwork",
  { "an overlay", with = merged(OVERLAY, { ["papers.waste_plan"] = false }),
    expect = "not_applicable" },
}
cases "papers.waste_deposit" {
  under = QUILLBANK, from = "paperwork",
  { "500", expect = "pass", required = 500, found = 500 },
  { "499", with = { ["papers.waste_deposit_usd"] = 499 }, expect = "fail" },
  { "an overlay", with = merged(OVERLAY, { ["papers.waste_deposit_usd"] = 0 }),
    expect = "not_applicable" },
  { "not told", without = { "papers.waste_deposit_usd" }, expect = "open" },
}

-- An Illinois village ordinance.
paper("papers.site_measures", "papers.site_measures")

-- Affidavit -------------------------------------------------------------------------------
-- Six Florida handouts: signed; of one, notarized; of another, only for houses of
-- 2002 or older; of a third, only for what no inspector saw.

local UNSEEN = { ["inspection.deck.proof"] = "affidavit" }
list("papers.affidavit", "papers.affidavit.covers", { "deck_nailing", "dry_in", "flashing" },
  UNSEEN)
paper("papers.affidavit_notarized", "papers.affidavit.notarized", UNSEEN)
paper("papers.affidavit_on_site", "papers.affidavit.on_site", UNSEEN)
paper("papers.affidavit_filed", "papers.affidavit.filed", UNSEEN)

cases "papers.affidavit" {
  under = QUILLBANK, from = "paperwork",
  { "an inspector saw both", with = { ["papers.affidavit.covers"] = { "none" } },
    expect = "not_applicable" },
  { "seen or not, the town wants it", under = STILLBEND,
    with = { ["papers.affidavit.covers"] = { "none" } }, expect = "fail" },
  { "a house of 2002",
    with = merged(UNSEEN, { ["house.year_built"] = 2002,
      ["papers.affidavit.covers"] = { "none" } }), expect = "fail" },
  { "a house of 2003",
    with = merged(UNSEEN, { ["house.year_built"] = 2003,
      ["papers.affidavit.covers"] = { "none" } }), expect = "not_applicable" },
  { "year not told", with = UNSEEN, without = { "house.year_built" }, expect = "open" },
  { "nobody knows what was seen", without = { "inspection.dry_in.proof" }, expect = "open" },
}

cases "papers.affidavit_signer" {
  under = QUILLBANK, from = "paperwork",
  { "the license holder", with = UNSEEN, expect = "pass" },
  { "an engineer", with = merged(UNSEEN, { ["papers.affidavit.signed_by"] = "engineer" }),
    expect = "pass" },
  { "the owner", with = merged(UNSEEN, { ["papers.affidavit.signed_by"] = "owner" }),
    expect = "fail" },
  { "not told", with = UNSEEN, without = { "papers.affidavit.signed_by" }, expect = "open" },
}

-- Photographs --------------------------------------------------------------------------------
-- Two Minnesota places take them for the visit; a Florida county wants them with the
-- affidavit, of each plane and with the permit number in them.

local function by_photos(visit) return { ["inspection." .. visit .. ".proof"] = "photos" } end

list("papers.photos_deck", "papers.photos.deck",
  { "each_plane", "nail_box_label", "nail_spacing" }, by_photos "deck")
list("papers.photos_dry_in", "papers.photos.dry_in", { "each_plane", "ice_barrier" },
  by_photos "dry_in")
list("papers.photos_final", "papers.photos.final",
  { "street_view", "pipes", "vents", "flashings" }, by_photos "final")
paper("papers.photos_tied", "papers.photos.tied_to_job", by_photos "deck")
paper("papers.photos_clear", "papers.photos.clear", by_photos "final")

for _, visit in ipairs { "deck", "dry_in", "final" } do
  cases("papers.photos_" .. visit) {
    under = QUILLBANK, from = "paperwork",
    { "a visit is held", with = { ["papers.photos." .. visit] = { "none" } },
      expect = "not_applicable" },
    { "a visit is held, and the town wants them all the same", under = STILLBEND,
      with = { ["papers.photos." .. visit] = { "none" } }, expect = "fail" },
    { "nobody knows how it is shown", without = { "inspection." .. visit .. ".proof" },
      expect = "open" },
  }
end

-- On the site ----------------------------------------------------------------------------------

list("papers.on_site_deck", "papers.on_site", { "roof_plan", "nail_box_label" })
list("papers.on_site_dry_in", "papers.on_site", { "product_approvals", "maker_instructions" })
list("papers.on_site_final", "papers.on_site", { "affidavit", "weight_tags" })

-- A Florida county checks the stagger against the wrapper.
paper("papers.wrapper", "papers.wrapper_at_final")
cases "papers.wrapper" {
  under = QUILLBANK, from = "paperwork",
  { "slate comes in none", with = { ["covering.kind"] = "slate",
    ["papers.wrapper_at_final"] = false }, expect = "not_applicable" },
}

-- What the model code does not ask, it does not find fault with.
for id, bad in pairs {
  ["papers.product_approval"] = { ["papers.approval_sheets"] = 0 },
  ["papers.liability"] = { ["contractor.liability_usd"] = 0 },
  ["papers.association_notice"] = { ["papers.association_notice_days"] = 0 },
  ["papers.planning"] = { ["scope.looks_change"] = true, ["papers.planning_consent"] = false },
  ["papers.engineer"] = { ["covering.weight_lb_per_square"] = 900,
    ["papers.engineer_report"] = false },
  ["papers.asbestos"] = { ["existing.coverings[1].kind"] = "asbestos_cement",
    ["papers.asbestos_test"] = "none" },
  ["papers.waste_deposit"] = { ["papers.waste_deposit_usd"] = 0 },
} do
  cases(id) {
    under = "example/hollowferry", from = "paperwork",
    { "not asked for by an invented hamlet, bad as it is", with = bad, expect = "not_applicable" },
    { "a place that was not read", under = "model/irc-2021", with = bad, expect = "open",
      says = "was not read: its pages on" },
  }
end
cases "papers.double_deck" {
  under = "model/irc-2021", from = "paperwork",
  { "not asked for by the model code", with = merged(OVER, { ["papers.engineer_report"] = false }),
    expect = "open", where = "panels" },
}

-- Workers' compensation: a New York town asks for its papers, as does Fern Hollow County,
-- invented. Its town takes an exemption as well, and lets off who employs nobody.
local function comp(shown, employs)
  return { ["contractor.workers_comp"] = shown, ["contractor.has_employees"] = employs }
end
cases "papers.workers_comp" {
  under = "example/fernhollow", from = "paperwork",
  { "insured", with = comp("certificate"), expect = "pass" },
  { "exempted", with = comp("exemption"), expect = "fail" },
  { "nothing shown", with = comp("none"), expect = "fail" },
  { "nothing shown, nobody employed", with = comp("none", false), expect = "fail" },
  { "an owner", with = { ["permit.holder"] = "owner", ["inspection.called_by"] = "owner",
    ["contractor.workers_comp"] = "none" }, expect = "not_applicable" },
  { "not told", expect = "open" },
  { "the town takes an exemption", under = "example/mosslane", with = comp("exemption", true),
    expect = "pass" },
  { "nobody employed, in the town", under = "example/mosslane", with = comp("none", false),
    expect = "not_applicable" },
  { "employees not told of, in the town", under = "example/mosslane", with = comp("none"),
    expect = "open" },
  { "a county that does not ask", under = "example/quillbank", with = comp("none"),
    expect = "not_applicable" },
  { "a place that was not read", under = "model/irc-2021", with = comp("none"),
    expect = "open" },
}

cases "papers.asbestos_notice" {
  under = "example/fernhollow", from = "paperwork",
  { "on the permit", with = { ["papers.asbestos_notice"] = true }, expect = "pass" },
  { "lacking", with = { ["papers.asbestos_notice"] = false }, expect = "fail" },
  { "not told", expect = "open" },
  { "not asked for elsewhere", under = "example/quillbank", expect = "not_applicable" },
}
