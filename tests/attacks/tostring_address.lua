-- stops: error "table function userdata"
-- tostring gives no address.

rule "attack.tostring_address" {
  title = "Tostring address",
  stage = "final",
  judge = function(job, figure)
    error(tostring({}) .. " " .. tostring(error) .. " " .. tostring(job))
  end,
  mend = "Remove this rule.",
}
