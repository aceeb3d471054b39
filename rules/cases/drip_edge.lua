-- Cases of rules/drip_edge.lua: IRC R905.2.8.5, and for closer nailing, sealed
-- flanges and places that ask for none, the invented counties.

local OVERLAY = { ["scope.method"] = "overlay", ["existing.layers_removed"] = 0,
  ["existing.coverings[1].removed"] = false }

cases "drip_edge.edges_listed" {
  under = "model/irc-2018",
  { "eave and both rakes", expect = "pass", where = "main front" },
  { "the eave as long as can be left out", with = { ["roof.edges[1].length_ft"] = 39.5 },
    expect = "pass", where = "main front" },
  { "part of the eave not listed", with = { ["roof.edges[1].length_ft"] = 39 },
    expect = "open", where = "main front", says = "39 ft" },
  { "a lower edge onto another roof", with = { ["roof.edges[1].kind"] = "onto_roof" },
    expect = "pass", where = "main front" },
  { "one side not listed", with = { ["roof.edges[4].slope"] = "main back" },
    expect = "open", where = "main front", says = "rake" },
  { "a side against a wall", with = { ["roof.edges[4].kind"] = "sidewall" },
    expect = "pass", where = "main front" },
  { "no edges at all", without = { "roof.edges" }, expect = "open", where = "main front" },
}

cases "drip_edge.eave" {
  under = "model/irc-2018",
  { "metal at the eave", expect = "pass", where = "front eave" },
  { "none at one eave", with = { ["roof.edges[1].drip_edge"] = false }, expect = "fail",
    where = "front eave" },
  { "the other eave keeps its own", with = { ["roof.edges[1].drip_edge"] = false },
    expect = "pass", where = "back eave" },
  { "not known", without = { "roof.edges[1].drip_edge" }, expect = "open",
    where = "front eave" },
  { "a rake is no eave", expect = "not_applicable", where = "front left rake" },
  { "another covering", with = { ["covering.kind"] = "slate" }, expect = "not_applicable",
    where = "front eave" },
  { "an overlay, by a sister text", with = OVERLAY, expect = "pass", where = "front eave" },
}

cases "drip_edge.eave" {
  under = "model/irc-2021",
  { "by a figure that is only recalled", expect = "pass", where = "front eave" },
  { "none", with = { ["roof.edges[1].drip_edge"] = false }, expect = "fail",
    where = "front eave" },
}

cases "drip_edge.rake" {
  under = "model/irc-2018",
  { "metal at the rake", expect = "pass", where = "front left rake" },
  { "none", with = { ["roof.edges[4].drip_edge"] = false }, expect = "fail",
    where = "front left rake" },
  { "not known", without = { "roof.edges[4].drip_edge" }, expect = "open",
    where = "front left rake" },
  { "an eave is no rake", expect = "not_applicable", where = "front eave" },
}

cases "drip_edge.rake" {
  under = "model/irc-2021",
  { "none", with = { ["roof.edges[4].drip_edge"] = false }, expect = "fail",
    where = "front left rake" },
}

cases "drip_edge.order_eave" {
  under = "model/irc-2021",
  { "underlayment over the metal", expect = "pass", where = "front eave" },
  { "under it", with = { ["roof.edges[1].underlayment_lies"] = "under_metal" },
    expect = "fail", where = "front eave" },
  { "under it with the flange sealed, which the model does not know",
    with = { ["roof.edges[1].underlayment_lies"] = "under_metal",
      ["roof.edges[1].flange_sealed"] = true }, expect = "fail", where = "front eave" },
  { "not known", without = { "roof.edges[1].underlayment_lies" }, expect = "open",
    where = "front eave" },
  { "no metal, nothing to order", with = { ["roof.edges[1].drip_edge"] = false },
    expect = "not_applicable", where = "front eave" },
  { "an overlay lays no underlayment", with = OVERLAY, expect = "not_applicable",
    where = "front eave" },
}

cases "drip_edge.order_eave" {
  under = "example/saltmarsh",
  { "under the metal, flange sealed",
    with = { ["roof.edges[1].underlayment_lies"] = "under_metal",
      ["roof.edges[1].flange_sealed"] = true }, expect = "pass", where = "front eave" },
  { "under the metal, flange loose",
    with = { ["roof.edges[1].underlayment_lies"] = "under_metal" }, expect = "fail",
    where = "front eave" },
  { "under the metal, flange not known",
    with = { ["roof.edges[1].underlayment_lies"] = "under_metal" },
    without = { "roof.edges[1].flange_sealed" }, expect = "open", where = "front eave" },
  { "over the metal needs no seal", expect = "pass", where = "front eave" },
}

cases "drip_edge.order_rake" {
  under = "model/irc-2021",
  { "underlayment under the metal", expect = "pass", where = "front left rake" },
  { "over it", with = { ["roof.edges[4].underlayment_lies"] = "over_metal" },
    expect = "fail", where = "front left rake" },
  { "not known", without = { "roof.edges[4].underlayment_lies" }, expect = "open",
    where = "front left rake" },
}

cases "drip_edge.lap" {
  under = "model/irc-2021",
  { "2 in", expect = "pass", required = 2, found = 2 },
  { "1.9 in", with = { ["drip_edge.lap_in"] = 1.9 }, expect = "fail", required = 2,
    found = 1.9 },
  { "not known", without = { "drip_edge.lap_in" }, expect = "open" },
  { "measured", stage = "dry-in", with = { ["drip_edge.measured_lap_in"] = { 2, 3 } },
    expect = "pass", found = 2 },
  { "one measured short", stage = "dry-in",
    with = { ["drip_edge.measured_lap_in"] = { 1.5, 3 } }, expect = "fail", found = 1.5 },
  { "not measured by dry-in", stage = "dry-in", expect = "open" },
}

cases "drip_edge.down" {
  under = "model/irc-2021",
  { "1/4 in", expect = "pass", required = 0.25, found = 0.25 },
  { "3/16 in", with = { ["drip_edge.down_in"] = 0.1875 }, expect = "fail", required = 0.25,
    found = 0.188 },
  { "not known", without = { "drip_edge.down_in" }, expect = "open" },
}

cases "drip_edge.back" {
  under = "model/irc-2021",
  { "2 in", expect = "pass", required = 2, found = 2 },
  { "1 7/8 in", with = { ["drip_edge.back_in"] = 1.875 }, expect = "fail", required = 2,
    found = 1.875 },
  { "not known", without = { "drip_edge.back_in" }, expect = "open" },
}

cases "drip_edge.fastener_spacing" {
  under = "model/irc-2021",
  { "12 in", expect = "pass", required = 12, found = 12 },
  { "12.5 in", with = { ["drip_edge.fastener_spacing_in"] = 12.5 }, expect = "fail",
    required = 12, found = 12.5 },
  { "12 in in any wind", with = { ["site.wind_vult_mph"] = 180 }, expect = "pass",
    required = 12 },
  { "not known", without = { "drip_edge.fastener_spacing_in" }, expect = "open" },
  { "measured", stage = "dry-in",
    with = { ["drip_edge.measured_fastener_spacing_in"] = { 10, 12 } }, expect = "pass",
    found = 12 },
  { "one measured wide", stage = "dry-in",
    with = { ["drip_edge.measured_fastener_spacing_in"] = { 10, 13 } }, expect = "fail",
    found = 13 },
  { "not measured by dry-in", stage = "dry-in", expect = "open" },
}

-- 110 mph on the nominal scale is 142 on the ultimate one (x sqrt 0.6).
cases "drip_edge.fastener_spacing" {
  under = "example/saltmarsh",
  { "12 in below the trigger, by figures of a sister text",
    with = { ["site.wind_vult_mph"] = 141 }, expect = "pass", required = 12, found = 12 },
  { "12 in at the trigger", with = { ["site.wind_vult_mph"] = 142 }, expect = "fail",
    required = 4, found = 12 },
  { "4 in at the trigger", with = { ["site.wind_vult_mph"] = 142,
    ["drip_edge.fastener_spacing_in"] = 4 }, expect = "pass", required = 4, found = 4 },
  { "a house just 33 ft high", with = { ["house.mean_roof_height_ft"] = 33 },
    expect = "pass", required = 12 },
  { "a house higher than 33 ft", with = { ["house.mean_roof_height_ft"] = 33.5 },
    expect = "fail", required = 4, found = 12 },
  { "height not known", without = { "house.mean_roof_height_ft" }, expect = "open" },
  { "height does not matter in strong wind", with = { ["site.wind_vult_mph"] = 150,
    ["drip_edge.fastener_spacing_in"] = 4 }, without = { "house.mean_roof_height_ft" },
    expect = "pass", required = 4 },
  { "wind not known", without = { "site.wind_vult_mph" }, expect = "open" },
}

-- One step past a figure, the smallest that prints: what a slip of it would let by.
cases "drip_edge.lap" {
  under = "model/irc-2021",
  { "a thousandth short", with = { ["drip_edge.lap_in"] = 1.999 }, expect = "fail",
    required = 2 },
  { "in Florida a thousandth short of 3", under = "us-fl", date = "2024-06-01",
    with = { ["drip_edge.lap_in"] = 2.999 }, expect = "fail", required = 3 },
}
cases "drip_edge.down" {
  under = "model/irc-2021",
  { "a thousandth short", with = { ["drip_edge.down_in"] = 0.249 }, expect = "fail",
    required = 0.25 },
  { "in Florida a thousandth short of 1/2", under = "us-fl", date = "2024-06-01",
    with = { ["drip_edge.down_in"] = 0.499 }, expect = "fail", required = 0.5 },
}
cases "drip_edge.back" {
  under = "model/irc-2021",
  { "a thousandth short", with = { ["drip_edge.back_in"] = 1.999 }, expect = "fail",
    required = 2 },
}
cases "drip_edge.fastener_spacing" {
  under = "model/irc-2021",
  { "a thousandth over", with = { ["drip_edge.fastener_spacing_in"] = 12.001 },
    expect = "fail", required = 12 },
  { "in Tamarack a thousandth over 8", under = "example/tamarack",
    with = { ["drip_edge.fastener_spacing_in"] = 8.001 }, expect = "fail", required = 8 },
}
cases "drip_edge.fastener_spacing" {
  under = "example/saltmarsh",
  { "a thousandth over 4 where it is windy", with = { ["site.wind_vult_mph"] = 142,
    ["drip_edge.fastener_spacing_in"] = 4.001 }, expect = "fail", required = 4 },
  { "a house a hundredth of a foot higher", with = { ["house.mean_roof_height_ft"] = 33.01 },
    expect = "fail", required = 4 },
}

-- What cannot be.
cases "drip_edge.edges_listed" {
  under = "model/irc-2021",
  { "a roof without edges", with = { ["roof.edges"] = {} }, expect = "refused",
    says = "has 0 items" },
  { "an eave longer than its plane", with = { ["roof.edges[1].length_ft"] = 41 },
    expect = "refused", says = "an eave of 41 ft on a plane whose lower edge is 40 ft" },
  { "a rake longer than its plane", with = { ["roof.edges[4].length_ft"] = 16 },
    expect = "refused", says = "a rake of 16 ft" },
  { "more ridge than planes meet at", with = { ["roof.ridge_ft"] = 93 }, expect = "refused",
    says = "93 ft of ridge" },
  { "a plane without length", with = { ["roof.slopes[3].eave_ft"] = 0,
    ["roof.slopes[3].ridge_ft"] = 0 }, expect = "refused", says = "has no area" },
  { "rakes called hips on a roof without hips", with = { ["roof.hip_ft"] = 0,
    ["roof.edges[4].kind"] = "hip" }, expect = "refused", says = "no hip, but" },
  { "a hip beside a plane that does not narrow", with = { ["roof.hip_ft"] = 40,
    ["roof.edges[4].kind"] = "hip" }, expect = "refused",
    says = "the upper edge is not shorter than the lower one" },
  { "a rake called a valley on a roof without valleys", with = { ["roof.valley_ft"] = 0,
    ["roof.edges[4].kind"] = "valley" }, expect = "refused", says = "no valley, but" },
  { "every eave onto another roof", with = { ["roof.edges[1].kind"] = "onto_roof",
    ["roof.edges[2].kind"] = "onto_roof", ["roof.edges[3].kind"] = "onto_roof" },
    expect = "refused", says = "lies onto another roof" },
}

-- Illinois asks for none, at eaves or rakes.
cases "drip_edge.edges_listed" {
  under = "us-il",
  { "no edge is asked for", expect = "not_applicable", where = "main front" },
}
