-- us-tx-windstorm.rules.lua - the windstorm certificate: which book, who looks
-- during the work, which papers.

field "site.windstorm_certificate" { type = "yes_no", stage = "permit",
  ask = "Is the house in the designated windstorm area, and is it to have the pool's wind cover?" }
field "papers.windstorm_applied" { type = "yes_no", stage = "permit",
  ask = "Is the application for windstorm inspection (WPI-1) filed?" }
field "papers.windstorm_listed" { type = "yes_no", stage = "permit",
  ask = "Has every roof product an evaluation listing of the state?" }
field "inspection.windstorm_by" { type = "choice",
  choices = { "nobody", "department", "appointed_engineer", "city" }, stage = "deck",
  ask = "Who looks at the work for the windstorm certificate while it is done?" }

demand "papers.windstorm_book" {
  title = "The book that the house goes by",
  stage = "permit",
  fact = "site.windstorm_certificate", meets = "papers.windstorm_book_here",
  say = "A house that is to have the certificate goes by the windstorm rule, others do not.",
  mend = "Check the job under the other of the two profiles.",
}

local due = reads({
  facts = { "site.windstorm_certificate" },
  figures = { "papers.windstorm_counts" },
}, function(job, figure)
  if not figure "papers.windstorm_counts" then return false, "no certificate is dealt with here" end
  return job.site.windstorm_certificate, "no windstorm certificate is wanted"
end)

demand "papers.windstorm_application" {
  title = "Application for windstorm inspection",
  stage = "permit",
  when = { due },
  fact = "papers.windstorm_applied", shown = "the application for windstorm inspection",
  mend = "File the application before the work begins: it must be seen while it is done.",
}

demand "papers.windstorm_products" {
  title = "Products listed for the windstorm area",
  stage = "permit",
  when = { due },
  fact = "papers.windstorm_listed", shown = "an evaluation listing of every roof product",
  mend = "Choose products with a listing, and lay them as it says.",
}

demand "inspection.windstorm" {
  title = "Windstorm inspection during the work",
  stage = "deck",
  when = { due },
  fact = "inspection.windstorm_by", meets = "papers.windstorm_inspectors",
  mend = "Have the department's inspector or an appointed engineer come before it is covered.",
  caution = "Work that nobody saw while it was done cannot be certified as done.",
}
