-- us-fl.rules.lua - ties from roof to wall, strengthened with the reroof.
--
-- Due for dear houses where wind carries debris, up to a share of the price of
-- the reroof. Whether the value is the insured one or, without proof, the
-- county's, the job's answer says. What uplift each tie must hold is not carried.

field "site.wind_borne_debris" { type = "yes_no", stage = "permit",
  ask = "Does the code's map put the house in the wind-borne debris region?" }
field "house.insured_value_usd" { type = "number", unit = "usd", range = { 0, 100000000 },
  stage = "permit",
  ask = "For how much is the house insured? (without proof: the county's value of it)" }
field "papers.wall_ties" { type = "choice",
  choices = { "none", "improved", "sound_already", "due_when_built", "done_to_share",
    "beyond_share" },
  stage = "permit",
  ask = "What is done about the ties from roof to wall: nothing, all improved, found strong "
    .. "already, already due by the code they were built to, improved in the code's "
    .. "order up to the share of the price, or is the first step alone beyond that share?" }
field "papers.wall_ties_first_step_percent" { type = "number", unit = "percent",
  range = { 0, 1000 }, stage = "permit",
  ask = "What share of the reroof's price would the gable ends, or all corners, take?" }

rule "papers.wall_ties" {
  title = "Ties from roof to wall, improved with the reroof",
  stage = "permit",
  applies = function(job, figure)
    if not figure "papers.wall_ties_required" then return false, "no such duty here" end
    if job.scope.method ~= "tear-off" then return false, "an overlay does not bring it" end
    if not has(figure "papers.wall_ties_house_kinds", job.house.kind) then
      return false, "this kind of house is let off"
    end
    if job.house.year_built >= figure "papers.wall_ties_built_before" then
      return false, "the house was built under the statewide code"
    end
    if not job.site.wind_borne_debris then return false, "wind carries no debris here" end
    return job.house.insured_value_usd >= figure "papers.wall_ties_value_from" - 0.005,
      "the house is worth less"
  end,
  judge = function(job, figure)
    if job.papers.wall_ties ~= "beyond_share" then
      return one_of(job.papers.wall_ties, figure "papers.wall_ties_ways")
    end
    -- At the figure the step still fits into the share.
    local share = job.papers.wall_ties_first_step_percent
    local most = figure "papers.wall_ties_share_over"
    return shown(share > most + 0.05, "that the first step alone takes over "
      .. number(most, "percent") .. " of the price")
  end,
  mend = "Open the eaves at the corners, see what ties are there, and add what lacks, in the "
    .. "code's order.",
}
