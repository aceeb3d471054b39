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
  { "a plane that covers more than it can", with = { ["roof.slopes[3].plan_sqft"] = 90 },
    expect = "refused", says = "on a plane of at most 72 sq ft" },
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
  { "roll roofing at 1:12, by a recalled figure", with = { ["covering.kind"] = "roll_roofing",
    ["roof.slopes[3].pitch"] = "1:12" }, expect = "warn", where = "porch", required = 1 },
  { "roll roofing at 0.99:12", with = { ["covering.kind"] = "roll_roofing",
    ["roof.slopes[3].pitch"] = "0.99:12" }, expect = "fail", where = "porch", required = 1 },
  { "metal panels steep enough for any seam", with = { ["covering.kind"] = "metal_panel",
    ["roof.slopes[3].pitch"] = "3:12" }, expect = "warn", where = "porch", required = 3 },
  { "metal panels where the seam decides", with = { ["covering.kind"] = "metal_panel",
    ["roof.slopes[3].pitch"] = "2.99:12" }, expect = "open", where = "porch" },
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
    expect = "warn", where = "porch" },
  { "a self-adhered sheet that is not laid", with = { ["roof.slopes[3].pitch"] = "3:12",
    ["underlayments[1].kind"] = "D1970", ["underlayments[1].plies"] = 0 },
    expect = "fail", where = "porch" },
  { "plies not known", with = { ["roof.slopes[3].pitch"] = "3:12" },
    without = { "underlayments[1].plies" }, expect = "open", where = "porch" },
  { "underlayment not named", with = { ["roof.slopes[3].pitch"] = "3:12" },
    without = { "roof.slopes[3].underlayment" }, expect = "open", where = "porch" },
  { "an overlay hides what is under it", with = { ["roof.slopes[3].pitch"] = "3:12",
    ["scope.method"] = "overlay", ["existing.layers_removed"] = 0,
    ["existing.coverings[1].removed"] = false },
    without = { "roof.slopes[3].underlayment" }, expect = "open", where = "porch",
    says = "overlay" },
  { "another covering", with = { ["roof.slopes[3].pitch"] = "3:12",
    ["covering.kind"] = "wood_shake" }, expect = "not_applicable", where = "porch" },
}
