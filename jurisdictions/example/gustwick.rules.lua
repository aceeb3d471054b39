-- gustwick.rules.lua - the two halves of the county.

field "site.local_wind_zone" { type = "choice", choices = { "upland", "lowland" },
  stage = "permit",
  ask = "Does the house stand on the upland or in the lowland? (the old coach road divides them)" }
