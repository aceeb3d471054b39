-- stops: error "roof is not a list"
-- Only lists have a length.

rule "attack.length_of_no_list" {
  title = "Length of no list",
  stage = "final",
  judge = function(job, figure)
    return #job.roof
  end,
  mend = "Remove this rule.",
}
