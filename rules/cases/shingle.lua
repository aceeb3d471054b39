-- Cases of shingle.lua. Speeds of the D7158 classes as a trade association
-- bulletin gives them (90, 120, 150 mph, or 116, 155, 194 on the present scale);
-- those of D3161 are recalled from Table R905.2.4.1.

cases "shingle.wind_class" {
  under = "model/irc-2021",
  { "H at 115", expect = "pass", required = 194, found = 115 },
  { "D at 116, exactly", with = { ["covering.D7158_class"] = "D",
    ["site.wind_vult_mph"] = 116 }, expect = "pass", required = 116 },
  { "D at 117 with no other label", with = { ["covering.D7158_class"] = "D",
    ["covering.D3161_class"] = "none", ["site.wind_vult_mph"] = 117 }, expect = "fail",
    required = 116, found = 117 },
  { "G at 155", with = { ["covering.D7158_class"] = "G", ["site.wind_vult_mph"] = 155 },
    expect = "pass" },
  { "G at 156", with = { ["covering.D7158_class"] = "G", ["covering.D3161_class"] = "A",
    ["site.wind_vult_mph"] = 156 }, expect = "fail", required = 155 },
  { "H at 194", with = { ["site.wind_vult_mph"] = 194 }, expect = "pass" },
  { "H at 195", with = { ["site.wind_vult_mph"] = 195 }, expect = "fail", required = 194 },
  { "the other label will do, on a recalled figure", with = { ["covering.D7158_class"] = "D",
    ["site.wind_vult_mph"] = 150 }, expect = "pass", required = 194 },
  { "A by the other test at 129", with = { ["covering.D7158_class"] = "none",
    ["covering.D3161_class"] = "A", ["site.wind_vult_mph"] = 129 }, expect = "pass",
    required = 129 },
  { "A by the other test at 130", with = { ["covering.D7158_class"] = "none",
    ["covering.D3161_class"] = "A", ["site.wind_vult_mph"] = 130 }, expect = "fail" },
  { "no class on either label", with = { ["covering.D7158_class"] = "none",
    ["covering.D3161_class"] = "none" }, expect = "fail" },
  { "one label will do when the other was not read", without = { "covering.D3161_class" },
    expect = "pass" },
  { "one label too weak and the other not read", with = { ["covering.D7158_class"] = "D",
    ["site.wind_vult_mph"] = 130 }, without = { "covering.D3161_class" }, expect = "open" },
  { "neither label read", without = { "covering.D7158_class", "covering.D3161_class" },
    expect = "open" },
  { "exposure D is outside the classes", with = { ["site.exposure"] = "D" }, expect = "open",
    says = "exposure D" },
  { "exposure C is not", with = { ["site.exposure"] = "C" }, expect = "pass" },
  { "60 ft high, exactly", with = { ["house.mean_roof_height_ft"] = 60 }, expect = "pass" },
  { "height not known", without = { "house.mean_roof_height_ft" }, expect = "open" },
  { "wind not known", without = { "site.wind_vult_mph" }, expect = "open" },
  { "other coverings are not judged", with = { ["covering.kind"] = "slate" },
    expect = "open", says = "not judged here" },
  { "a coating has no class", with = { ["covering.kind"] = "coating" },
    expect = "not_applicable" },
}

cases "shingle.exposure" {
  under = "model/irc-2021",
  { "as printed", stage = "final", with = { ["covering.measured_exposure_in"] = { 5.5, 5.625 } },
    expect = "pass", required = 5.625, found = 5.625 },
  { "one course too far", stage = "final",
    with = { ["covering.measured_exposure_in"] = { 5.5, 5.75 } }, expect = "fail", found = 5.75 },
  { "not measured", stage = "final", expect = "open" },
  { "printed figure not known", stage = "final",
    with = { ["covering.measured_exposure_in"] = { 5.5 } },
    without = { "covering.exposure_printed_in" }, expect = "open" },
  { "nothing to measure before", expect = "not_applicable" },
}

cases "shingle.offset" {
  under = "model/irc-2021",
  { "as printed", stage = "final", with = { ["covering.measured_offset_in"] = { 6, 7 } },
    expect = "pass", required = 6, found = 6 },
  { "too close", stage = "final", with = { ["covering.measured_offset_in"] = { 6, 5.5 } },
    expect = "fail", found = 5.5 },
  { "not measured", stage = "final", expect = "open" },
  { "nothing to measure before", expect = "not_applicable" },
}

cases "shingle.offset_usual" {
  under = "model/irc-2021",
  { "4 in, exactly", stage = "final", with = { ["covering.measured_offset_in"] = { 4, 7 } },
    expect = "pass", required = 4, found = 4 },
  { "3 in", stage = "final", with = { ["covering.measured_offset_in"] = { 3, 7 } },
    expect = "warn", required = 4, found = 3 },
  { "not measured", stage = "final", expect = "open" },
}

cases "shingle.instructions" {
  under = "model/irc-2021",
  { "there", stage = "final", expect = "pass" },
  { "not there", stage = "final", with = { ["covering.instructions_on_site"] = false },
    expect = "fail" },
  { "not known", stage = "final", without = { "covering.instructions_on_site" },
    expect = "open" },
}

cases "shingle.standard" {
  under = "model/irc-2021",
  { "D3462", expect = "pass" },
  { "D225 is gone", with = { ["covering.made_to"] = "D225" }, expect = "fail" },
  { "none on the wrapper", with = { ["covering.made_to"] = "none" }, expect = "fail" },
  { "not known", without = { "covering.made_to" }, expect = "open" },
}

cases "shingle.standard" {
  under = "model/irc-2012",
  { "D225 still did in 2012, by a recalled figure", with = { ["covering.made_to"] = "D225" },
    expect = "warn" },
}

-- A step to either side of class D of D3161.
cases "shingle.wind_class" {
  under = "model/irc-2021",
  with = { ["covering.D7158_class"] = "none", ["covering.D3161_class"] = "D" },
  { "D by the other test at 129", with = { ["site.wind_vult_mph"] = 129 }, expect = "pass" },
  { "D by the other test at 130", with = { ["site.wind_vult_mph"] = 130 }, expect = "fail" },
}

-- One step past a figure, the smallest that prints: what a slip of it would let by.
cases "shingle.wind_class" {
  under = "model/irc-2021",
  { "F by the other test at 194", with = { ["covering.D7158_class"] = "none",
    ["site.wind_vult_mph"] = 194 }, expect = "pass", required = 194 },
}
cases "shingle.offset_usual" {
  under = "model/irc-2021", stage = "final",
  { "3.999 in", with = { ["covering.measured_offset_in"] = { 3.999, 7 } }, expect = "warn",
    required = 4, found = 3.999 },
}
cases "shingle.standard" {
  under = "model/irc-2012",
  { "D3462 did as well", expect = "warn" },
  { "no standard did not", with = { ["covering.made_to"] = "none" }, expect = "fail" },
}

-- A floor under the weight of shingles. Fern Hollow County, invented, switches it on.
cases "shingle.weight" {
  under = "example/fernhollow", from = "paperwork",
  { "exactly 240", expect = "pass", required = 240, found = 240 },
  { "239.9", with = { ["covering.weight_lb_per_square"] = 239.9 }, expect = "fail" },
  { "not known", without = { "covering.weight_lb_per_square" }, expect = "open" },
  { "slate is not meant", with = { ["covering.kind"] = "slate",
    ["covering.weight_lb_per_square"] = 200 }, expect = "not_applicable" },
  { "it does not count elsewhere", under = "example/quillbank",
    with = { ["covering.weight_lb_per_square"] = 200 }, expect = "not_applicable" },
}
