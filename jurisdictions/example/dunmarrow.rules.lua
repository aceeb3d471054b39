-- dunmarrow.rules.lua - Dunmarrow County's own rules, invented: the class that
-- the shingle's wrapper shows for hail.

field "covering.hail_class" { type = "choice",
  choices = { "class_1", "class_2", "class_3", "class_4", "none" }, stage = "permit",
  ask = "Which UL 2218 impact class does the shingle wrapper show?" }
field "covering.hail_wrapper_kept" { type = "yes_no", stage = "final",
  ask = "Is a wrapper that shows the impact class on the site?" }

local function shingles_only(job)
  return job.covering.kind == "asphalt_shingle", "only asphalt shingles are judged here"
end

rule "shingle.hail_class" {
  title = "Impact class on the shingle wrapper",
  stage = "permit",
  applies = shingles_only,
  judge = function(job, figure)
    return one_of(job.covering.hail_class, figure "shingle.hail_classes")
  end,
  mend = "Use a shingle whose wrapper shows a class the ordinance takes.",
}

rule "shingle.hail_wrapper" {
  title = "Wrapper kept for the inspector",
  stage = "final",
  applies = function(job, figure)
    local shingled, why = shingles_only(job)
    if not shingled then return false, why end
    return figure "shingle.hail_wrapper_required", "no wrapper is asked for under this ordinance"
  end,
  judge = function(job, figure)
    return equals(job.covering.hail_wrapper_kept, figure "shingle.hail_wrapper_required")
  end,
  mend = "Keep one wrapper dry on the site until the final.",
}
