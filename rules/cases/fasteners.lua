-- Cases of fasteners.lua. R905.2.5 and R905.2.6 as city reroof handouts and a
-- page of the 2018 edition give them.

local OVERLAY = { { kind = "asphalt_shingle", thickness_in = 0.25, removed = false } }

cases "fasteners.kind" {
  under = "model/irc-2021",
  { "nails", expect = "pass" },
  { "staples", with = { ["fasteners.kind"] = "staple" }, expect = "fail" },
  { "not known", without = { "fasteners.kind" }, expect = "open" },
  { "other coverings are not judged here", with = { ["covering.kind"] = "slate" },
    expect = "open", says = "not judged here" },
  { "a coating is not fastened", with = { ["covering.kind"] = "coating" },
    expect = "not_applicable" },
}

cases "fasteners.metal" {
  under = "model/irc-2021",
  { "galvanized", expect = "pass" },
  { "copper", with = { ["fasteners.metal"] = "copper" }, expect = "pass" },
  { "plated", with = { ["fasteners.metal"] = "electroplated" }, expect = "fail" },
  { "plain steel", with = { ["fasteners.metal"] = "plain_steel" }, expect = "fail" },
  { "not known", without = { "fasteners.metal" }, expect = "open" },
  { "staples are judged by kind", with = { ["fasteners.kind"] = "staple" },
    expect = "not_applicable" },
}

cases "fasteners.shank" {
  under = "model/irc-2021",
  { "11 gauge", expect = "pass", required = 0.105, found = 0.12 },
  { "12 gauge, exactly", with = { ["fasteners.shank_in"] = 0.105 }, expect = "pass" },
  { "13 gauge", with = { ["fasteners.shank_in"] = 0.092 }, expect = "fail", found = 0.092 },
  { "just under", with = { ["fasteners.shank_in"] = 0.104 }, expect = "fail" },
  { "not known", without = { "fasteners.shank_in" }, expect = "open" },
}

cases "fasteners.head" {
  under = "model/irc-2021",
  { "3/8 in, exactly", expect = "pass", required = 0.375, found = 0.375 },
  { "5/16 in", with = { ["fasteners.head_in"] = 0.3125 }, expect = "fail" },
  { "not known", without = { "fasteners.head_in" }, expect = "open" },
}

cases "fasteners.count" {
  under = "model/irc-2018",
  -- Never fewer than 4, and the maker's number when that is more (2018).
  { "4, exactly", expect = "pass", required = 4, found = 4 },
  { "3", with = { ["fasteners.per_shingle"] = 3 }, expect = "fail", required = 4, found = 3 },
  { "the maker asks for 6", with = { ["covering.nails_printed"] = 6 }, expect = "fail",
    required = 6, found = 4 },
  { "6 where the maker asks for 6", with = { ["covering.nails_printed"] = 6,
    ["fasteners.per_shingle"] = 6 }, expect = "pass" },
  { "a maker's 3 does not lower it", with = { ["covering.nails_printed"] = 3,
    ["fasteners.per_shingle"] = 3 }, expect = "fail", required = 4 },
  { "recalled only for 2021", under = "model/irc-2021", expect = "pass" },
  { "the model code knows no hurricane zone", with = {
    ["site.high_velocity_hurricane_zone"] = true }, expect = "pass", required = 4 },
  { "maker's number not known", without = { "covering.nails_printed" }, expect = "open" },
  { "not known", without = { "fasteners.per_shingle" }, expect = "open" },
  { "counted", stage = "final", with = { ["fasteners.measured_per_shingle"] = { 4, 4, 5 } },
    expect = "pass", found = 4 },
  { "one shingle short", stage = "final",
    with = { ["fasteners.measured_per_shingle"] = { 4, 3, 5 } }, expect = "fail", found = 3 },
  { "planned, but not counted", stage = "final", expect = "open" },
}

cases "fasteners.penetration" {
  under = "model/irc-2021",
  -- 1.25 in less 0.25 in of shingle and 0.03 in of felt leaves 0.97 in.
  { "through a 7/16 deck", expect = "pass", where = "main front", required = 0.4375,
    found = 0.97 },
  { "just through", with = { ["fasteners.length_in"] = 0.7175 }, expect = "pass",
    where = "porch", found = 0.4375 },
  { "not quite through", with = { ["fasteners.length_in"] = 0.716 }, expect = "fail",
    where = "porch" },
  { "3/4 into a 3/4 deck, exactly", with = { ["decks[1].thickness_in"] = 0.75,
    ["fasteners.length_in"] = 1.03 }, expect = "pass", where = "main front", required = 0.75 },
  { "under 3/4 into a 3/4 deck", with = { ["decks[1].thickness_in"] = 0.75,
    ["fasteners.length_in"] = 1 }, expect = "fail", where = "main front", required = 0.75,
    found = 0.72 },
  { "a 1 in nail over an old layer does not reach through 5/8", with = {
    ["scope.method"] = "overlay", ["existing.layers_removed"] = 0,
    ["existing.coverings"] = OVERLAY, ["decks[1].thickness_in"] = 0.625,
    ["fasteners.length_in"] = 1 }, expect = "fail", where = "main front", required = 0.625,
    found = 0.47 },
  { "a 1-1/2 in nail does", with = { ["scope.method"] = "overlay",
    ["existing.layers_removed"] = 0, ["existing.coverings"] = OVERLAY,
    ["decks[1].thickness_in"] = 0.625, ["fasteners.length_in"] = 1.5 }, expect = "pass",
    where = "main front", found = 0.97 },
  { "new panels over old deck: 3/4, not through the panel", with = {
    ["decks[1].work"] = "paneled_over", ["fasteners.length_in"] = 1 }, expect = "fail",
    where = "main front", required = 0.75 },
  { "old layer's thickness not known", with = { ["scope.method"] = "overlay",
    ["existing.layers_removed"] = 0,
    ["existing.coverings"] = { { kind = "asphalt_shingle", removed = false } } },
    expect = "open", where = "main front" },
  { "shingle thickness not known", without = { "covering.thickness_at_nail_in" },
    expect = "open", where = "main front" },
  { "deck not known", without = { "decks[1].thickness_in" }, expect = "open",
    where = "main front" },
  { "underlayment not known", without = { "roof.slopes[3].underlayment", "scope.method" },
    expect = "open", where = "porch" },
  { "the one underlayment of a tear-off", without = { "roof.slopes[3].underlayment" },
    expect = "pass", where = "porch" },
}

cases "fasteners.past_thin_deck" {
  under = "model/irc-2021",
  { "well past", expect = "pass", where = "porch", required = 0.125, found = 0.5325 },
  { "1/8 past, exactly", with = { ["fasteners.length_in"] = 0.8425 }, expect = "pass",
    where = "porch", found = 0.125 },
  { "hardly past", with = { ["fasteners.length_in"] = 0.8 }, expect = "warn", where = "porch",
    found = 0.0825 },
  { "length not known", without = { "fasteners.length_in" }, expect = "open", where = "porch" },
  { "a thick deck", with = { ["decks[1].thickness_in"] = 0.75 }, expect = "not_applicable",
    where = "porch" },
}

cases "fasteners.steep" {
  under = "model/irc-2018",
  { "not steep", expect = "not_applicable", where = "main front" },
  { "21:12 is not over 21:12", with = { ["roof.slopes[1].pitch"] = "21:12" },
    expect = "not_applicable", where = "main front" },
  { "over 21:12 without the maker's method", with = { ["roof.slopes[1].pitch"] = "21.1:12" },
    expect = "fail", where = "main front" },
  { "over 21:12 with it", with = { ["roof.slopes[1].pitch"] = "24:12",
    ["fasteners.steep_method"] = true }, expect = "pass", where = "main front" },
  { "recalled only for 2021", under = "model/irc-2021",
    with = { ["roof.slopes[1].pitch"] = "24:12", ["fasteners.steep_method"] = true },
    expect = "pass", where = "main front" },
  { "method not known", with = { ["roof.slopes[1].pitch"] = "24:12" },
    without = { "fasteners.steep_method" }, expect = "open", where = "main front" },
  { "slope not known", without = { "roof.slopes[3].pitch" }, expect = "open", where = "porch" },
}

cases "fasteners.driven" {
  under = "model/irc-2021",
  { "none seen", stage = "final", with = { ["fasteners.overdriven_or_high"] = false },
    expect = "pass" },
  { "some seen", stage = "final", with = { ["fasteners.overdriven_or_high"] = true },
    expect = "fail" },
  { "not looked at", stage = "final", expect = "open" },
  { "nothing to see before", expect = "not_applicable" },
}


-- A hurricane zone's number, in an invented county that has one.
cases "fasteners.count" {
  under = "example/gullhaven",
  with = { ["site.high_velocity_hurricane_zone"] = true },
  { "4 in the zone", expect = "fail", required = 6, found = 4 },
  { "6 in the zone, exactly", with = { ["fasteners.per_shingle"] = 6 }, expect = "pass" },
  { "zone not known", without = { "site.high_velocity_hurricane_zone" }, expect = "open" },
}

-- A step to either side: 1.03 in less 0.25 in of shingle and 0.03 in of felt is
-- 3/4 in, into a deck that is thicker than that.
cases "fasteners.penetration" {
  under = "model/irc-2021", with = { ["decks[1].thickness_in"] = 1 },
  { "3/4 in into 1 in, exactly", with = { ["fasteners.length_in"] = 1.03 }, expect = "pass",
    where = "main front", required = 0.75, found = 0.75 },
  { "a thousandth short", with = { ["fasteners.length_in"] = 1.029 }, expect = "fail",
    where = "main front" },
}
cases "fasteners.head" {
  under = "model/irc-2021",
  { "a thousandth narrower", with = { ["fasteners.head_in"] = 0.374 }, expect = "fail",
    required = 0.375 },
}
cases "fasteners.past_thin_deck" {
  under = "model/irc-2021",
  -- 0.8415 less 0.25, 0.03 and 0.4375.
  { "a thousandth less", with = { ["fasteners.length_in"] = 0.8415 }, expect = "warn",
    where = "porch", required = 0.125, found = 0.124 },
  -- 1.25 less 0.25, 0.03 and 0.749.
  { "a deck a thousandth under 3/4 is thin", with = { ["decks[1].thickness_in"] = 0.749 },
    expect = "pass", where = "porch", found = 0.221 },
}
cases "fasteners.steep" {
  under = "model/irc-2018",
  { "21.01:12 without the maker's method", with = { ["roof.slopes[1].pitch"] = "21.01:12" },
    expect = "fail", where = "main front" },
}
cases "fasteners.count" {
  under = "example/gullhaven",
  { "5 in the zone", with = { ["site.high_velocity_hurricane_zone"] = true,
    ["fasteners.per_shingle"] = 5 }, expect = "fail", required = 6 },
}
cases "fasteners.metal" {
  under = "model/irc-2021",
  { "stainless", with = { ["fasteners.metal"] = "stainless" }, expect = "pass" },
  { "aluminum", with = { ["fasteners.metal"] = "aluminum" }, expect = "pass" },
}
cases "fasteners.kind" {
  under = "example/kettlebend",
  { "nails, where staples do too", expect = "pass" },
}

-- R905.2.6: four to a strip, two to an individual shingle, or what its maker prints.
local function single(nails, printed)
  return { ["covering.individual"] = true, ["fasteners.per_shingle"] = nails,
    ["covering.nails_printed"] = printed }
end
cases "fasteners.count" {
  under = "model/irc-2021",
  { "two in an individual shingle", with = single(2, 2), expect = "pass", required = 2 },
  { "its maker prints three", with = single(2, 3), expect = "fail", required = 3 },
  { "two in a strip", with = { ["covering.individual"] = false, ["fasteners.per_shingle"] = 2,
    ["covering.nails_printed"] = 2 }, expect = "fail", required = 4 },
}

-- R905.2.5: through a deck thinner than 3/4 in, or 3/4 in into it. Boards of 3/4 in at the
-- eaves under 0.25 in of shingle and 0.03 in of felt: 1.03 in is just enough.
cases "fasteners.eave_penetration" {
  under = "model/irc-2021",
  with = { ["decks[2]"] = { name = "eave boards", kind = "board", thickness_in = 0.75,
    work = "kept" }, ["roof.edges[1].deck"] = "eave boards" },
  { "the nails of the rest", expect = "pass", where = "front eave", required = 0.75,
    found = 0.97 },
  { "shorter ones, exactly enough", with = { ["fasteners.eave_length_in"] = 1.03 },
    expect = "pass", where = "front eave", found = 0.75 },
  { "3/4 in nails", with = { ["fasteners.eave_length_in"] = 0.75 }, expect = "fail",
    where = "front eave", found = 0.47 },
  { "length not known", without = { "fasteners.length_in" }, expect = "open",
    where = "front eave" },
  { "one deck all over", expect = "not_applicable", where = "porch eave" },
}

-- Practice only: a nail has to go through a thin deck.
cases "fasteners.seen_below" {
  under = "model/irc-2021", stage = "final",
  { "none seen", with = { ["fasteners.seen_below"] = false }, expect = "pass" },
  { "some seen", with = { ["fasteners.seen_below"] = true }, expect = "warn" },
  { "not told of, nor any deck seen from below", expect = "not_applicable" },
  { "no deck seen from below", with = { ["decks[1].seen_from_below"] = false },
    expect = "not_applicable" },
  { "a deck seen from below", with = { ["decks[1].seen_from_below"] = true }, expect = "open",
    says = "/fasteners/seen_below" },
  { "a deck seen from below, no points", with = { ["decks[1].seen_from_below"] = true,
    ["fasteners.seen_below"] = false }, expect = "pass" },
  { "a deck seen from below, with points", with = { ["decks[1].seen_from_below"] = true,
    ["fasteners.seen_below"] = true }, expect = "warn" },
  { "what is laid not known", with = { ["fasteners.seen_below"] = false },
    without = { "covering.kind" }, expect = "open" },
}

-- Two old layers on the porch, one on the main roof, and the porch stripped: the nail goes
-- through what lies on its own plane.
local BY_PLANE = { ["scope.method"] = "overlay", ["existing.layers"] = 2,
  ["existing.layers_removed"] = 1, ["existing.coverings"] = {
    { kind = "asphalt_shingle", thickness_in = 0.25, removed = true },
    { kind = "asphalt_shingle", thickness_in = 0.25, removed = false } },
  ["roof.slopes[1].old_layers"] = 1, ["roof.slopes[2].old_layers"] = 1,
  ["roof.slopes[3].old_layers"] = 2, ["roof.slopes[3].old_layers_removed"] = 2 }
cases "fasteners.penetration" {
  under = "model/irc-2021", with = BY_PLANE,
  -- 1.25 in less 0.25 of new and 0.25 of old covering and 0.03 of felt, and without the old.
  { "over the one old layer", expect = "pass", where = "main front", found = 0.72 },
  { "through the new one alone", expect = "pass", where = "porch", found = 0.97 },
  { "too short for the plane that is laid over", with = { ["fasteners.length_in"] = 0.9 },
    expect = "fail", where = "main front" },
  { "long enough for the one that is stripped", with = { ["fasteners.length_in"] = 0.9 },
    expect = "pass", where = "porch" },
}
