-- baldwin-county.rules.lua - the parts of the county that roads bound.

field "site.local_wind_zone" { type = "choice",
  choices = { "south_of_US_98", "US_98_to_I_10", "I_10_to_I_65", "north_of_I_65" },
  stage = "permit",
  ask = "Does the house stand south of US 98, between it and I-10, between I-10 and I-65, or "
    .. "north of I-65?" }
