-- Cases of Maiden, beside the model edition that the state's book rests on.

cases "permit.by_price" {
  under = "us-nc/maiden", from = "paperwork", with = { ["permit.status"] = "none" },
  { "5,000, exactly", with = { ["scope.price_usd"] = 5000 }, expect = "pass",
    required = 5000 },
  { "5,001", with = { ["scope.price_usd"] = 5001 }, expect = "fail" },
  { "any reroof under IRC 2015", under = "model/irc-2015",
    with = { ["scope.price_usd"] = 900 }, expect = "not_applicable" },
}

cases "permit.by_material" {
  under = "us-nc/maiden", from = "paperwork",
  { "a cheap job of another class", with = { ["permit.status"] = "none",
    ["scope.price_usd"] = 4000, ["scope.material_change"] = true }, expect = "fail" },
}

cases "permit.by_structure" {
  under = "us-nc/maiden", from = "paperwork",
  { "a cheap job on a rafter", with = { ["permit.status"] = "none",
    ["scope.price_usd"] = 4000, ["scope.structure_altered"] = true }, expect = "fail" },
}
