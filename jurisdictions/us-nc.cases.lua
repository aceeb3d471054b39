-- Cases of North Carolina: the price (a town's code restating the statute, and
-- later figures), framing, and a covering not like the old.

cases "permit.by_price" {
  under = "us-nc", with = { ["permit.status"] = "none" },
  { "5,000, exactly", with = { ["scope.price_usd"] = 5000 }, expect = "warn", required = 5000,
    says = "40,000" },
  { "a dollar more", with = { ["scope.price_usd"] = 5001 }, expect = "fail", says = "40,000" },
  { "with a permit", with = { ["scope.price_usd"] = 18000, ["permit.status"] = "applied" },
    expect = "pass" },
  { "price not known", expect = "open" },
  { "on the first day", date = "2019-01-01", with = { ["scope.price_usd"] = 5001 },
    expect = "fail" },
  { "the day before", date = "2018-12-31", expect = "refused", says = "from 2019-01-01" },
}
cases "permit.by_material" {
  under = "us-nc", with = { ["permit.status"] = "none" },
  { "another kind", with = { ["scope.material_change"] = true }, expect = "fail" },
  { "like the old", with = { ["scope.material_change"] = false }, expect = "pass" },
}
cases "permit.by_structure" {
  under = "us-nc", with = { ["permit.status"] = "none" },
  { "framing altered", with = { ["scope.structure_altered"] = true }, expect = "fail" },
  { "framing left alone", expect = "warn", says = "15 percent of the deck" },
}

-- On the day the code of 2024 was to begin, the code of 2018 still binds.
cases "deck.nail_field" {
  under = "us-nc", with = { ["decks[1].nails.field_spacing_in"] = 12 },
  { "12 in on 1 January 2025", date = "2025-01-01", expect = "pass", required = 12 },
  { "12 in on 1 July 2025", date = "2025-07-01", expect = "pass", required = 12,
    says = "used early" },
}

-- Where the state's book of 2024 differs from the model of 2015, either may hold.
cases "drip_edge.eave" {
  under = "us-nc", date = "2026-03-02",
  { "no metal", with = { ["roof.edges[1].drip_edge"] = false }, expect = "open",
    where = "front eave", says = "only where the maker does" },
  { "metal", expect = "pass", where = "front eave" },
}
cases "drip_edge.rake" {
  under = "us-nc", date = "2026-03-02",
  { "no metal", with = { ["roof.edges[4].drip_edge"] = false }, expect = "open",
    where = "front left rake" },
}
