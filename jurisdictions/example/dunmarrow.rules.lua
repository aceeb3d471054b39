-- dunmarrow.rules.lua - Dunmarrow County's own rules, invented: the class that
-- the shingle's wrapper shows for hail.

field "covering.hail_class" { type = "choice",
  choices = { "class_1", "class_2", "class_3", "class_4", "none" }, stage = "permit",
  ask = "Which UL 2218 impact class does the shingle wrapper show?" }
field "covering.hail_wrapper_kept" { type = "yes_no", stage = "final",
  ask = "Is a wrapper that shows the impact class on the site?" }

local shingles_only = reads({ shingles_only }, function(job)
  return job.covering.kind == "asphalt_shingle", "only asphalt shingles are judged here"
end)

demand "shingle.hail_class" {
  title = "Impact class on the shingle wrapper",
  stage = "permit",
  when = { shingles_only },
  fact = "covering.hail_class", meets = "shingle.hail_classes",
  mend = "Use a shingle whose wrapper shows a class the ordinance takes.",
}

demand "shingle.hail_wrapper" {
  title = "Wrapper kept for the inspector",
  stage = "final",
  when = {
    shingles_only,
    on { "shingle.hail_wrapper_required",
      otherwise = "no wrapper is asked for under this ordinance" },
  },
  fact = "covering.hail_wrapper_kept", meets = "shingle.hail_wrapper_required",
  mend = "Keep one wrapper dry on the site until the final.",
}
