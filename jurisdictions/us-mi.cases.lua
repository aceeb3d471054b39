-- Cases of Michigan: ice barrier everywhere (a roofer's page on the state's
-- code), two layers, and the book of 2015 on the day the stayed one was to begin.

cases "ice_barrier.kind" {
  under = "us-mi",
  { "self-adhered", expect = "pass" },
  { "none", with = { ["ice_barrier.kind"] = "none" }, expect = "fail" },
  { "not known", without = { "ice_barrier.kind" }, expect = "open" },
  { "on the day the book began", date = "2016-02-08", with = { ["ice_barrier.kind"] = "none" },
    expect = "fail" },
  { "the day before, no edition is carried", date = "2016-02-07", expect = "refused",
    says = "from 2016-02-08" },
}

cases "layers.total" {
  under = "us-mi", with = { ["scope.method"] = "overlay", ["existing.layers_removed"] = 0,
    ["existing.coverings[1].removed"] = false },
  { "one laid over one, exactly two", expect = "warn", required = 2, found = 2 },
  { "one laid over two", with = { ["existing.layers"] = 2, ["existing.coverings"] = {
    { kind = "asphalt_shingle", thickness_in = 0.25, removed = false },
    { kind = "asphalt_shingle", thickness_in = 0.25, removed = false } } },
    expect = "fail", required = 2, found = 3 },
}

-- The stayed book would ask for 6 in.
cases "deck.nail_field" {
  under = "us-mi", with = { ["decks[1].nails.field_spacing_in"] = 12 },
  { "12 in on the day the stayed book was to begin", date = "2025-08-29", expect = "pass",
    required = 12 },
}

-- Since that day it is not certain which of the two binds.
cases "slope.least" {
  under = "us-mi", with = { ["roof.slopes[1].pitch"] = "2:12" },
  { "2:12 the day before", date = "2025-08-28", expect = "pass", where = "main front" },
  { "2:12 on the day", date = "2025-08-29", expect = "pass", where = "main front",
    says = "stayed in court" },
  { "1.9:12 on the day", date = "2025-08-29", with = { ["roof.slopes[1].pitch"] = "1.9:12" },
    expect = "fail", where = "main front" },
}
