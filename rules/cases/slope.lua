-- Cases of rules/slope.lua. Slopes around 2:12 and 4:12 follow IRC R905.2.2.

-- The base job's roof by the plan of its house: 38 x 26 ft of walls, overhangs of
-- 12 in, so 40 x 28 ft of roof.
local PLANE_BY_PLANE = { "roof.slopes", "roof.edges", "roof.ridge_ft", "roof.form" }
local function plan(more)
  local facts = { form = "gable_porch", length_ft = 38, width_ft = 26, pitch = "5:12",
    eave_overhang_in = 12, rake_overhang_in = 12,
    porch = { length_ft = 10, depth_ft = 5, pitch = "2:12" },
    planes = { deck = "panels", underlayment = "felt" } }
  for name, value in pairs(more or {}) do facts[name] = value end
  return facts
end

cases "slope.least" {
  under = "model/irc-2021",
  { "by the plan, the porch has its own slope", with = { ["roof.footprint"] = plan() },
    without = PLANE_BY_PLANE, expect = "pass", where = "porch", required = 2, found = 2 },
  { "by the plan, the main planes have another", with = { ["roof.footprint"] = plan() },
    without = PLANE_BY_PLANE, expect = "pass", where = "main back", required = 2, found = 5 },
  { "by the plan, a porch too flat", with = { ["roof.footprint"] =
    plan { porch = { length_ft = 10, depth_ft = 5, pitch = "1.9:12" } } },
    without = PLANE_BY_PLANE, expect = "fail", where = "porch", required = 2, found = 1.9 },
  { "by the plan, the porch's slope not known", with = { ["roof.footprint"] =
    plan { porch = { length_ft = 10, depth_ft = 5 } } }, without = PLANE_BY_PLANE,
    expect = "open", where = "porch", says = "/roof/footprint/porch/pitch" },
  { "a plan without its form has no planes yet", with = { ["roof.footprint"] =
    { length_ft = 38 } }, without = PLANE_BY_PLANE, expect = "open",
    says = "/roof/footprint/form" },
  { "a porch longer than the house", with = { ["roof.footprint"] =
    plan { porch = { length_ft = 40, depth_ft = 5, pitch = "2:12" } } },
    without = PLANE_BY_PLANE, expect = "refused", says = "longer than the eave wall" },
  { "planes and a plan that differ", with = { ["roof.footprint"] = plan { width_ft = 30 } },
    expect = "refused", says = "but the roof laid out from /roof/footprint has 16 ft here" },
  { "a hip longer than its plane is", with = { ["roof.edges[8].kind"] = "hip",
    ["roof.edges[8].length_ft"] = 14 }, expect = "refused", says = "no line across" },
  { "a hip across its plane", with = { ["roof.edges[8].kind"] = "hip",
    ["roof.edges[8].length_ft"] = 13.5, ["roof.slopes[3].ridge_ft"] = 6 }, expect = "pass",
    where = "porch" },
  { "a plane that covers more than it can", with = { ["roof.slopes[3].plan_sqft"] = 90 },
    expect = "refused", says = "on a plane of at most 72 sq ft" },
  { "a plane with most of it gone", with = { ["roof.slopes[3].plan_sqft"] = 34.9 },
    expect = "refused", says = "less than half of the 72 sq ft" },
  { "half a plane, exactly", with = { ["roof.slopes[3].plan_sqft"] = 36 }, expect = "pass",
    where = "porch" },
  { "5:12", expect = "pass", where = "main front", required = 2, found = 5 },
  { "exactly 2:12", with = { ["roof.slopes[3].pitch"] = "2:12" }, expect = "pass",
    where = "porch", required = 2, found = 2 },
  { "just under 2:12", with = { ["roof.slopes[3].pitch"] = "1.99:12" }, expect = "fail",
    where = "porch", required = 2, found = 1.99 },
  { "one plane too flat leaves the others alone", with = { ["roof.slopes[3].pitch"] = "1:12" },
    expect = "pass", where = "main back" },
  { "slope not known", without = { "roof.slopes[3].pitch" }, expect = "open", where = "porch" },
  { "covering not known", without = { "covering.kind" }, expect = "open", where = "porch" },
  { "wood shingles at 3:12", with = { ["covering.kind"] = "wood_shingle",
    ["roof.slopes[3].pitch"] = "3:12" }, expect = "pass", where = "porch", required = 3 },
  { "wood shingles at 2.99:12", with = { ["covering.kind"] = "wood_shingle",
    ["roof.slopes[3].pitch"] = "2.99:12" }, expect = "fail", where = "porch", required = 3 },
  { "wood shakes at 3:12", with = { ["covering.kind"] = "wood_shake",
    ["roof.slopes[3].pitch"] = "3:12" }, expect = "pass", where = "porch", required = 3 },
  { "wood shakes at 2.99:12", with = { ["covering.kind"] = "wood_shake",
    ["roof.slopes[3].pitch"] = "2.99:12" }, expect = "fail", where = "porch", required = 3 },
  { "roll roofing at 1:12", with = { ["covering.kind"] = "roll_roofing",
    ["roof.slopes[3].pitch"] = "1:12" }, expect = "pass", where = "porch", required = 1 },
  { "roll roofing at 0.99:12", with = { ["covering.kind"] = "roll_roofing",
    ["roof.slopes[3].pitch"] = "0.99:12" }, expect = "fail", where = "porch", required = 1 },
  { "metal panels steep enough for any seam", with = { ["covering.kind"] = "metal_panel",
    ["roof.slopes[3].pitch"] = "3:12" }, expect = "pass", where = "porch", required = 3 },
  { "metal panels where the seam decides", with = { ["covering.kind"] = "metal_panel",
    ["roof.slopes[3].pitch"] = "2.99:12" }, expect = "open", where = "porch" },
  { "lapped without sealant", with = { ["covering.kind"] = "metal_panel",
    ["covering.metal_seam"] = "lapped", ["roof.slopes[3].pitch"] = "2.99:12" }, expect = "fail",
    where = "porch", required = 3 },
  { "lapped with sealant at 1/2:12", with = { ["covering.kind"] = "metal_panel",
    ["covering.metal_seam"] = "sealed", ["roof.slopes[3].pitch"] = "0.5:12" }, expect = "pass",
    where = "porch", required = 0.5 },
  { "lapped with sealant, flatter", with = { ["covering.kind"] = "metal_panel",
    ["covering.metal_seam"] = "sealed", ["roof.slopes[3].pitch"] = "0.49:12" }, expect = "fail",
    where = "porch", required = 0.5 },
  { "standing seams at 1/4:12", with = { ["covering.kind"] = "metal_panel",
    ["covering.metal_seam"] = "standing", ["roof.slopes[3].pitch"] = "0.25:12" },
    expect = "pass", where = "porch", required = 0.25 },
  { "standing seams, flatter", with = { ["covering.kind"] = "metal_panel",
    ["covering.metal_seam"] = "standing", ["roof.slopes[3].pitch"] = "0.24:12" },
    expect = "fail", where = "porch", required = 0.25 },
  { "a covering whose figure is not held", with = { ["covering.kind"] = "slate" },
    expect = "open", where = "main front" },
}

cases "slope.double_underlayment" {
  under = "model/irc-2021",
  { "two plies at 3:12", with = { ["roof.slopes[3].pitch"] = "3:12",
    ["underlayments[1].plies"] = 2 }, expect = "pass", where = "porch", required = 2, found = 2 },
  { "one ply at 3:12", with = { ["roof.slopes[3].pitch"] = "3:12" }, expect = "fail",
    where = "porch", required = 2, found = 1 },
  { "exactly 4:12 needs one", expect = "not_applicable", where = "porch" },
  { "18.43 degrees is 4:12", with = { ["roof.slopes[3].pitch"] = "18.43 deg" },
    expect = "not_applicable", where = "porch" },
  { "just under 4:12", with = { ["roof.slopes[3].pitch"] = "3.99:12" }, expect = "fail",
    where = "porch" },
  { "exactly 2:12", with = { ["roof.slopes[3].pitch"] = "2:12" }, expect = "fail",
    where = "porch" },
  { "exactly 2:12 with two plies", with = { ["roof.slopes[3].pitch"] = "2:12",
    ["underlayments[1].plies"] = 2 }, expect = "pass", where = "porch" },
  { "under 2:12 no underlayment helps", with = { ["roof.slopes[3].pitch"] = "1.99:12",
    ["underlayments[1].plies"] = 2 }, expect = "not_applicable", where = "porch" },
  { "the steep planes of the same roof", with = { ["roof.slopes[3].pitch"] = "3:12" },
    expect = "not_applicable", where = "main front" },
  { "one self-adhered sheet, by a recalled figure", with = { ["roof.slopes[3].pitch"] = "3:12",
    ["underlayments[1].kind"] = "D1970", ["underlayments[1].fastener"] = "adhered" },
    expect = "pass", where = "porch" },
  { "a self-adhered sheet that is not laid", with = { ["roof.slopes[3].pitch"] = "3:12",
    ["underlayments[1].kind"] = "D1970", ["underlayments[1].plies"] = 0 },
    expect = "fail", where = "porch" },
  { "plies not known", with = { ["roof.slopes[3].pitch"] = "3:12" },
    without = { "underlayments[1].plies" }, expect = "open", where = "porch" },
  { "underlayment not named", with = { ["roof.slopes[3].pitch"] = "3:12" },
    without = { "roof.slopes[3].underlayment", "scope.method" }, expect = "open", where = "porch" },
  { "the one underlayment of a tear-off", with = { ["roof.slopes[3].pitch"] = "3:12" },
    without = { "roof.slopes[3].underlayment" }, expect = "fail", where = "porch", found = 1 },
  { "an overlay hides what is under it", with = { ["roof.slopes[3].pitch"] = "3:12",
    ["scope.method"] = "overlay", ["existing.layers_removed"] = 0,
    ["existing.coverings[1].removed"] = false },
    without = { "roof.slopes[3].underlayment" }, expect = "open", where = "porch",
    says = "overlay" },
  { "another covering", with = { ["roof.slopes[3].pitch"] = "3:12",
    ["covering.kind"] = "wood_shake" }, expect = "not_applicable", where = "porch" },
}

-- Roofs that drain: 1/4 in to the foot, coal tar half of it. A state's rule prints these
-- of the building code's sister sections, so that what is met only warns.
for _, kind in ipairs { "built_up", "modified_bitumen", "thermoset_membrane",
  "thermoplastic_membrane", "spray_foam", "coating" } do
  cases "slope.least" {
    under = "model/irc-2021", with = { ["covering.kind"] = kind },
    { kind .. " at 1/4:12", with = { ["roof.slopes[3].pitch"] = "0.25:12" }, expect = "warn",
      where = "porch", required = 0.25, found = 0.25 },
    { kind .. " under it", with = { ["roof.slopes[3].pitch"] = "0.24:12" }, expect = "fail",
      where = "porch", required = 0.25 },
    { kind .. ", slope not known", without = { "roof.slopes[3].pitch" }, expect = "open",
      where = "porch" },
  }
end
cases "slope.least" {
  under = "model/irc-2021", with = { ["covering.kind"] = "coal_tar_built_up" },
  { "coal tar at 1/8:12", with = { ["roof.slopes[3].pitch"] = "0.125:12" }, expect = "warn",
    where = "porch" },
  { "coal tar under it", with = { ["roof.slopes[3].pitch"] = "0.11:12" }, expect = "fail",
    where = "porch" },
}
-- What else the code asks of them is not carried, and said to be open.
for _, rule in ipairs { "underlayment.kind", "fasteners.kind",
  "shingle.wind_class" } do
  cases(rule) {
    under = "model/irc-2021", with = { ["covering.kind"] = "thermoplastic_membrane" },
    { "a membrane", expect = "open", says = "is not judged here" },
  }
end
cases "permit.every" {
  under = "model/irc-2021", with = { ["covering.kind"] = "modified_bitumen" },
  { "a membrane takes a permit too", expect = "pass" },
  { "none", with = { ["permit.status"] = "none" }, expect = "fail" },
}

-- Parts of one roof: a membrane on the porch, or its old covering left.
local MEMBRANE = { ["roof.slopes[3].gets"] = "modified_bitumen",
  ["roof.slopes[3].pitch"] = "0.5:12" }
local STAYS = { ["roof.slopes[3].gets"] = "old_stays", ["roof.slopes[3].pitch"] = "1:12" }
cases "slope.least" {
  under = "model/irc-2021",
  { "a membrane on a flat porch", with = MEMBRANE, expect = "warn", where = "porch",
    required = 0.25, found = 0.5 },
  { "the main roof is held to its shingles", with = MEMBRANE, expect = "pass",
    where = "main front", required = 2 },
  { "a flat porch that is left alone", with = STAYS, expect = "not_applicable",
    where = "porch" },
  { "lapped metal on the porch", with = { ["roof.slopes[3].gets"] = "metal_panel" },
    expect = "pass", where = "porch" },
  { "metal on a flat porch, its seams not told of", with = {
    ["roof.slopes[3].gets"] = "metal_panel", ["roof.slopes[3].pitch"] = "1:12",
    ["covering.metal_seam"] = "standing" }, expect = "open", where = "porch" },
  { "shingles after all", with = { ["roof.slopes[3].gets"] = "new_covering",
    ["roof.slopes[3].pitch"] = "1:12" }, expect = "fail", where = "porch" },
  { "the job's own covering, called another", with = {
    ["roof.slopes[3].gets"] = "asphalt_shingle", ["roof.slopes[3].other_checked"] = true },
    expect = "refused", says = "which is what the job puts on" },
  { "no plane gets the covering", with = { ["roof.slopes[1].gets"] = "old_stays",
    ["roof.slopes[2].gets"] = "old_stays", ["roof.slopes[3].gets"] = "old_stays" },
    expect = "refused", says = "no plane gets" },
  { "left alone, and yet the whole roof renewed", with = { ["roof.slopes[3].gets"] = "old_stays",
    ["scope.roof_share_percent"] = 100 }, expect = "refused", says = "the whole roof" },
  { "left alone, and yet replaced", with = { ["roof.slopes[3].gets"] = "old_stays",
    ["roof.slopes[3].replaced_percent"] = 10 }, expect = "refused", says = "said to be replaced" },
}
cases "slope.other_covering" {
  under = "model/irc-2021",
  { "a membrane, not checked", with = MEMBRANE, expect = "open", where = "porch",
    says = "/roof/slopes/2/other_checked" },
  { "a membrane, which nobody checks", where = "porch", expect = "open",
    with = { ["roof.slopes[3].gets"] = "modified_bitumen",
      ["roof.slopes[3].other_checked"] = false }, says = "as a job of its own" },
  { "a membrane with a job of its own", with = { ["roof.slopes[3].gets"] = "modified_bitumen",
    ["roof.slopes[3].other_checked"] = true }, expect = "pass", where = "porch" },
  { "the planes that get shingles", with = MEMBRANE, expect = "not_applicable",
    where = "main front" },
  { "the old covering left", with = STAYS, expect = "not_applicable", where = "porch" },
  { "all alike", expect = "not_applicable", where = "porch" },
}
-- Two layers on the porch alone, which come off; the one of the main roof is laid over.
cases "slope.other_covering" {
  under = "model/irc-2021",
  with = { ["scope.method"] = "overlay", ["existing.layers"] = 2, ["existing.layers_removed"] = 1,
    ["existing.coverings"] = { { kind = "asphalt_shingle", removed = true },
      { kind = "asphalt_shingle", removed = false } },
    ["roof.slopes[1].old_layers"] = 1, ["roof.slopes[2].old_layers"] = 1,
    ["roof.slopes[3].old_layers"] = 2, ["roof.slopes[3].old_layers_removed"] = 2 },
  { "stripped, not checked", expect = "open", where = "porch",
    says = "/roof/slopes/2/other_checked" },
  { "stripped, which nobody checks", with = { ["roof.slopes[3].other_checked"] = false },
    expect = "open", where = "porch", says = "as a tear-off of its own" },
  { "stripped, with a job of its own", with = { ["roof.slopes[3].other_checked"] = true },
    expect = "pass", where = "porch" },
  { "laid over", expect = "not_applicable", where = "main front" },
  { "one of its two left", with = { ["roof.slopes[3].old_layers_removed"] = 1 },
    expect = "not_applicable", where = "porch" },
  { "stripped with all the others", with = { ["scope.method"] = "tear-off" },
    expect = "not_applicable", where = "porch" },
}
-- What is asked of the job's covering is not asked of such a plane.
for _, one in ipairs { { "underlayment.plies", "porch" }, { "underlayment.kind", "porch" },
  { "slope.double_underlayment", "porch" }, { "fasteners.penetration", "porch" },
  { "layers.dead_load", "porch" }, { "drip_edge.edges_listed", "porch" },
  { "drip_edge.eave", "porch eave" }, { "drip_edge.rake", "porch left rake" } } do
  cases(one[1]) {
    under = "model/irc-2021",
    { "the old covering left", with = { ["roof.slopes[3].gets"] = "old_stays",
      ["roof.slopes[3].pitch"] = "3:12" }, expect = "not_applicable", where = one[2],
      says = "stays" },
    { "another covering", with = { ["roof.slopes[3].gets"] = "built_up",
      ["roof.slopes[3].pitch"] = "3:12" }, expect = "not_applicable", where = one[2],
      says = "another covering" },
  }
end
cases "ice_barrier.reach" {
  under = "example/frostmere",
  { "the porch's old covering stays", with = { ["roof.slopes[3].gets"] = "old_stays" },
    expect = "not_applicable", where = "porch eave" },
}

-- A plane of which nothing is said, beside one that gets another covering.
cases "slope.least" {
  under = "model/irc-2021", with = { ["roof.slopes[3].gets"] = "modified_bitumen",
    ["roof.slopes[1].gets"] = "new_covering" },
  { "taken for the job's covering, and told", expect = "pass", where = "main back",
    says = "is taken for the job's covering" },
  { "too flat for it, and told", with = { ["roof.slopes[2].pitch"] = "1.9:12" }, expect = "fail",
    where = "main back", says = "is taken for the job's covering" },
}
cases "slope.least" {
  under = "model/irc-2021", with = { ["covering.kind"] = "metal_panel",
    ["covering.metal_seam"] = "standing", ["roof.slopes[3].gets"] = "modified_bitumen" },
  { "metal on a plane of which nothing is said", expect = "pass", where = "main back",
    says = "is taken for the job's covering" },
  { "and lower than lapped seams may be", with = { ["roof.slopes[2].pitch"] = "2:12" },
    expect = "pass", where = "main back", says = "is taken for the job's covering" },
}
