-- us-ca.rules.lua - what a California job may say beyond the common fields.
--
-- California's ventilation section goes by the state's own sixteen energy
-- zones, not by the model code's (us-ca.lua, ventilation.retarder_zones).

field "site.state_climate_zone" { type = "choice",
  choices = { "state_1", "state_2", "state_3", "state_4", "state_5", "state_6", "state_7",
    "state_8", "state_9", "state_10", "state_11", "state_12", "state_13", "state_14",
    "state_15", "state_16" },
  stage = "permit", ask = "Which of the state's own energy zones (1 to 16) is the house in?" }
