-- douglas-county.rules.lua - the county's own map of wildfire danger.

field "site.local_fire_zone" { type = "choice", choices = { "red", "other" }, stage = "permit",
  ask = "Is the house in the red area of the county's wildfire map, or outside it?" }
